package gripwright.language.write;

import gripwright.expression.Expression;
import gripwright.expression.Expression.Operation;
import gripwright.expression.Expression.Quantifier;
import gripwright.expression.Expression.Summary;
import gripwright.expression.Kind;
import gripwright.expression.Property;
import gripwright.expression.Type;
import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Writes the conditions of rules, with brackets only where they are needed. Names are found from
 * the innermost thing outwards, as in reading. Not thread-safe.
 */
final class ExpressionWriter {

  /** What binds weaker stands in brackets inside what binds stronger. */
  private static final int OR = 0;

  private static final int AND = 1;
  private static final int NOT = 2;
  private static final int COMPARE = 3;
  private static final int SUM = 4;
  private static final int PRODUCT = 5;
  private static final int UNARY = 6;
  private static final int PRIMARY = 7;

  private final List<Kind> subjects = new ArrayList<>();

  /** Prepares for the conditions of rules that look at a kind of thing. */
  ExpressionWriter(Kind root) {
    subjects.add(root);
  }

  /** Returns a condition as it is written. */
  String write(Expression condition) {
    return at(condition, OR);
  }

  private String at(Expression e, int least) {
    String text = text(e);
    return binding(e) < least ? "(" + text + ")" : text;
  }

  private static int binding(Expression e) {
    if (e instanceof Expression.Or) {
      return OR;
    }
    if (e instanceof Expression.And) {
      return AND;
    }
    if (e instanceof Expression.Not not) {
      return not.operand() instanceof Expression.Is ? COMPARE : NOT;
    }
    if (e instanceof Expression.Compare
        || e instanceof Expression.Between
        || e instanceof Expression.Is) {
      return COMPARE;
    }
    if (e instanceof Expression.Arithmetic a) {
      boolean sum = a.operation() == Operation.PLUS || a.operation() == Operation.MINUS;
      return sum ? SUM : isShare(a) ? PRIMARY : PRODUCT;
    }
    return e instanceof Expression.Negate ? UNARY : PRIMARY;
  }

  private String text(Expression e) {
    if (e instanceof Expression.Or or) {
      return at(or.left(), OR) + " or " + at(or.right(), AND);
    }
    if (e instanceof Expression.And and) {
      return at(and.left(), AND) + " and " + at(and.right(), NOT);
    }
    if (e instanceof Expression.Not not) {
      return not.operand() instanceof Expression.Is is
          ? is(is, true)
          : "not " + at(not.operand(), NOT);
    }
    if (e instanceof Expression.Is is) {
      return is(is, false);
    }
    if (e instanceof Expression.Compare c) {
      return at(c.left(), SUM) + " " + c.relation().symbol() + " " + at(c.right(), SUM);
    }
    if (e instanceof Expression.Between b) {
      return at(b.value(), SUM) + " between " + at(b.low(), SUM) + " and " + at(b.high(), SUM);
    }
    if (e instanceof Expression.Arithmetic a) {
      return arithmetic(a);
    }
    if (e instanceof Expression.Negate negate) {
      return "-" + at(negate.operand(), UNARY);
    }
    if (e instanceof Expression.Summarize summarize) {
      return summarize(summarize);
    }
    return e instanceof Expression.Quantify quantify ? quantify(quantify) : value(e);
  }

  private String value(Expression e) {
    if (e instanceof Expression.Amount amount) {
      return amount(amount);
    }
    if (e instanceof Expression.PercentOfMax level) {
      return Written.number(level.percent()) + " % max";
    }
    if (e instanceof Expression.Grade grade) {
      return grade.ability().toString();
    }
    if (e instanceof Expression.Date date) {
      return date.day().toString();
    }
    if (e instanceof Expression.Has has) {
      return "has " + path(has.value());
    }
    return path(e);
  }

  private static String amount(Expression.Amount amount) {
    if (amount.value() < 0) {
      throw new Unwritable(
          "a number below zero in a rule: it is written as one with its sign turned");
    }
    String unit = amount.unit().map(Unit::symbol).orElse("");
    boolean one = amount.value() == 1 && unit.length() > 1 && unit.endsWith("s");
    String word = one ? unit.substring(0, unit.length() - 1) : unit;
    return Written.number(amount.value()) + (word.isEmpty() ? "" : " " + word);
  }

  private String is(Expression.Is is, boolean not) {
    String value = at(is.value(), SUM);
    return is.words().size() == 1
        ? value + (not ? " is not " : " is ") + is.words().get(0)
        : value + (not ? " not in " : " in ") + String.join(", ", is.words());
  }

  /** A percentage of something is a product that has words of its own. */
  private static boolean isShare(Expression.Arithmetic a) {
    return a.operation() == Operation.TIMES
        && a.left() instanceof Expression.Amount amount
        && amount.unit().equals(Optional.of(Unit.PERCENT));
  }

  private String arithmetic(Expression.Arithmetic a) {
    if (isShare(a)) {
      return text(a.left()) + " of " + at(a.right(), PRIMARY);
    }
    int own = binding(a);
    return at(a.left(), own) + " " + a.operation().symbol() + " " + at(a.right(), own + 1);
  }

  private String summarize(Expression.Summarize s) {
    String collection = path(s.collection());
    subjects.add(kind(s.collection()));
    String of = s.value().map(value -> each(value) + " of ").orElse("");
    String where = s.where().map(w -> " where " + write(w)).orElse("");
    subjects.remove(subjects.size() - 1);
    if (s.value().isPresent() == (s.summary() == Summary.COUNT)) {
      throw new Unwritable("a " + word(s.summary()) + " with or without what is summed up");
    }
    return word(s.summary()) + "(" + of + collection + where + ")";
  }

  /** A percentage at the end would seem to take the {@code of} that follows. */
  private String each(Expression value) {
    String text = write(value);
    return text.endsWith("%") ? "(" + text + ")" : text;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  private String quantify(Expression.Quantify q) {
    String collection = path(q.collection());
    boolean plain = q.quantifier() == Quantifier.ANY && q.body().equals(new Expression.Truth(true));
    subjects.add(kind(q.collection()));
    String where = q.where().map(w -> " where " + write(w)).orElse("");
    String body = plain ? "" : ": " + write(q.body());
    subjects.remove(subjects.size() - 1);
    return word(q.quantifier()) + "(" + collection + where + body + ")";
  }

  private static Kind kind(Expression collection) {
    return ((Type.Many) collection.type()).kind();
  }

  private String path(Expression e) {
    if (e instanceof Expression.Get get) {
      if (get.of() instanceof Expression.Subject subject && finds(get.property(), subject, true)) {
        return get.property();
      }
      return path(get.of()) + "." + get.property();
    }
    if (e instanceof Expression.Subject subject && finds(subject.kind().word(), subject, false)) {
      return subject.kind().word();
    }
    throw new Unwritable("a part of a rule for which there is no name: " + e);
  }

  /** Tells whether a word stands for a property of a thing, or for the thing. */
  private boolean finds(String word, Expression.Subject wanted, boolean property) {
    for (int outward = 0; outward < subjects.size(); outward++) {
      Kind kind = subjects.get(subjects.size() - 1 - outward);
      boolean has = Property.find(kind, word).isPresent();
      if (has || kind.word().equals(word)) {
        return has == property && outward == wanted.outward() && kind == wanted.kind();
      }
    }
    return false;
  }
}
