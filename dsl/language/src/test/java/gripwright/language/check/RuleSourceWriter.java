package gripwright.language.check;

import gripwright.expression.Condition;
import gripwright.expression.Expression;
import gripwright.expression.Literal;
import gripwright.quantity.Numbers;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes rules as Java source that builds them, the form of the built-in rules in core. */
final class RuleSourceWriter {

  private static final String HEAD =
      """
      // Generated from rules.grip by StandardRulesTest of the language module, which proves the two
      // equal. Run that test with -Dgripwright.bless=true to write this file anew; do not edit it.
      package gripwright.rule;

      import static gripwright.expression.Expression.amount;
      import static gripwright.expression.Expression.grade;
      import static gripwright.expression.Expression.percent;
      import static gripwright.expression.Expression.percentOfMax;
      import static gripwright.expression.Expression.subject;

      import gripwright.ability.Ability;
      import gripwright.ability.GradeScale;
      import gripwright.expression.Expression;
      import gripwright.expression.Kind;
      import gripwright.expression.Scope;
      import gripwright.finding.Topic;
      import gripwright.quantity.Unit;
      import java.util.List;
      import java.util.Optional;

      /** The built-in rules, which every plan is held to. */
      public final class StandardRules {
      """;

  private static final Map<Condition.Relation, String> RELATIONS =
      Map.of(
          Condition.Relation.LESS, "lessThan",
          Condition.Relation.AT_MOST, "atMost",
          Condition.Relation.GREATER, "moreThan",
          Condition.Relation.AT_LEAST, "atLeast",
          Condition.Relation.EQUAL, "equalTo",
          Condition.Relation.NOT_EQUAL, "notEqualTo");

  private static final Map<Expression.Operation, String> OPERATIONS =
      Map.of(
          Expression.Operation.PLUS, "plus",
          Expression.Operation.MINUS, "minus",
          Expression.Operation.TIMES, "times",
          Expression.Operation.DIVIDED_BY, "dividedBy");

  private RuleSourceWriter() {}

  /** Returns the whole file; the formatter lays it out. */
  static String write(List<RuleSet> sets) {
    StringBuilder java = new StringBuilder(HEAD);
    for (RuleSet set : sets) {
      String rules =
          set.rules().stream().map(r -> camel(r.name()) + "()").collect(Collectors.joining(", "));
      java.append("  /** Rules: ").append(set.title().orElse(set.name())).append(". */\n");
      java.append("  public static final RuleSet ").append(constant(set)).append(" = new RuleSet(");
      java.append(quoted(set.name())).append(", ").append(optional(set.title()));
      java.append(", List.of(").append(rules).append("));\n\n");
    }
    java.append("  private StandardRules() {}\n\n");
    java.append("  /** Returns all of them, in the order of the text. */\n");
    java.append("  public static List<RuleSet> sets() { return List.of(");
    java.append(sets.stream().map(RuleSourceWriter::constant).collect(Collectors.joining(", ")));
    java.append("); }\n");
    sets.forEach(set -> set.rules().forEach(rule -> java.append('\n').append(method(rule))));
    return java.append("}\n").toString();
  }

  /** The set {@code standard-gates} is {@code GATES}; {@code standard} keeps its name. */
  private static String constant(RuleSet set) {
    return set.name().replaceFirst("^standard-", "").toUpperCase(Locale.ROOT).replace('-', '_');
  }

  private static String method(Rule rule) {
    StringBuilder java = new StringBuilder();
    java.append("  private static Rule ").append(camel(rule.name())).append("() { return Rule.");
    java.append(rule.severity().word()).append('(').append(quoted(rule.name()));
    java.append(", Scope.").append(rule.scope().name()).append(')');
    rule.topic().ifPresent(t -> java.append(".about(Topic.").append(t.name()).append(')'));
    rule.when().ifPresent(when -> java.append(".when(").append(source(when)).append(')'));
    java.append(".require(").append(source(rule.require())).append(')');
    java.append(".message(").append(quoted(rule.message())).append(')');
    rule.source().ifPresent(s -> java.append(".source(").append(quoted(s)).append(')'));
    java.append(rule.neverWaived() ? ".neverWaived()" : "");
    return java.append(".build(); }\n").toString();
  }

  private static String camel(String kebab) {
    StringBuilder camel = new StringBuilder();
    for (String word : kebab.split("-")) {
      camel.append(
          camel.isEmpty()
              ? word
              : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
    }
    return camel.toString();
  }

  private static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private static String optional(Optional<String> text) {
    return text.map(t -> "Optional.of(" + quoted(t) + ")").orElse("Optional.empty()");
  }

  private static String number(double value) {
    return Numbers.plain(value, 9);
  }

  /** Writes an expression as the calls that build it. */
  static String source(Expression e) {
    if (e instanceof Expression.Subject subject) {
      return subject.depth() == 0
          ? "subject(Kind." + subject.kind() + ")"
          : "Expression.outer(Kind." + subject.kind() + ", " + subject.depth() + ")";
    }
    if (e instanceof Expression.Get get) {
      return source(get.of()) + ".get(" + quoted(get.property()) + ")";
    }
    if (e instanceof Literal.Amount amount) {
      return amount(amount);
    }
    if (e instanceof Literal.PercentOfMax level) {
      return "percentOfMax(" + number(level.percent()) + ")";
    }
    if (e instanceof Literal.Grade grade) {
      return "grade(Ability.of(GradeScale."
          + grade.ability().scale()
          + ", "
          + quoted(grade.ability().grade())
          + "))";
    }
    if (e instanceof Condition.Has has) {
      return source(has.value()) + ".exists()";
    }
    if (e instanceof Condition.Not not) {
      return source(not.operand()) + ".not()";
    }
    if (e instanceof Condition.And and) {
      return source(and.left()) + ".and(" + source(and.right()) + ")";
    }
    if (e instanceof Condition.Or or) {
      return source(or.left()) + ".or(" + source(or.right()) + ")";
    }
    if (e instanceof Condition.Is is) {
      String words =
          is.words().stream().map(RuleSourceWriter::quoted).collect(Collectors.joining(", "));
      return source(is.value()) + ".is(" + words + ")";
    }
    if (e instanceof Condition.Compare compare) {
      String name = RELATIONS.get(compare.relation());
      return source(compare.left()) + "." + name + "(" + source(compare.right()) + ")";
    }
    if (e instanceof Expression.Arithmetic arithmetic) {
      String name = OPERATIONS.get(arithmetic.operation());
      return source(arithmetic.left()) + "." + name + "(" + source(arithmetic.right()) + ")";
    }
    if (e instanceof Condition.Quantify quantify) {
      return quantify(quantify);
    }
    if (e instanceof Expression.Summarize count && count.summary() == Expression.Summary.COUNT) {
      return source(count.collection())
          + count.where().map(where -> ".countWhere(" + source(where) + ")").orElse(".count()");
    }
    throw new IllegalArgumentException("no built-in rule uses " + e.getClass().getSimpleName());
  }

  private static String amount(Literal.Amount amount) {
    if (amount.unit().isEmpty()) {
      return "Expression.number(" + number(amount.value()) + ")";
    }
    return amount.unit().get() == gripwright.quantity.Unit.PERCENT
        ? "percent(" + number(amount.value()) + ")"
        : "amount(" + number(amount.value()) + ", Unit." + amount.unit().get().name() + ")";
  }

  private static String quantify(Condition.Quantify quantify) {
    String name = quantify.quantifier().name().toLowerCase(Locale.ROOT);
    String body = source(quantify.body());
    return source(quantify.collection())
        + "."
        + quantify
            .where()
            .map(where -> name + "Where(" + source(where) + ", " + body + ")")
            .orElse(name + "(" + body + ")");
  }
}
