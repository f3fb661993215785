package gripwright.language.check;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.expression.Condition;
import gripwright.expression.Condition.Quantifier;
import gripwright.expression.Condition.Relation;
import gripwright.expression.Expression;
import gripwright.expression.Expression.Operation;
import gripwright.expression.Expression.Summary;
import gripwright.expression.Kind;
import gripwright.expression.Literal;
import gripwright.expression.Type;
import gripwright.finding.Message;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.DateText;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Text;
import gripwright.language.syntax.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Makes a typed expression of what is written in a rule. Every mistake is reported once, at the
 * fewest words that show it; what stands around a mistake is not blamed for it. Not thread-safe.
 */
final class ExpressionCheck {

  private static final List<String> SCALES =
      Arrays.stream(GradeScale.values()).map(GradeScale::word).toList();

  private final Ledger ledger;
  private final ExpressionText text;
  private final ExpressionPaths paths;
  private final ExpressionWords words;
  private final Kinds kinds = new Kinds();

  ExpressionCheck(ParsedFile file, Ledger ledger, RuleNames names, Kind root) {
    this.ledger = ledger;
    text = new ExpressionText(file);
    paths = new ExpressionPaths(ledger, root);
    words = new ExpressionWords(text, ledger, names);
  }

  /** Returns a condition, or nothing if it has a mistake, which was reported. */
  Optional<Expression> truth(Expr expr) {
    Optional<Expression> found = value(expr);
    if (found.isPresent() && found.get().type() != Type.Plain.TRUTH) {
      return wanted(expr, found.get(), Terms.of("value-truth"));
    }
    return found;
  }

  private Optional<Expression> wanted(Expr expr, Expression found, Message wanted) {
    ledger.error(
        expr,
        "type.wanted",
        "text",
        text.of(expr),
        "found",
        found.type().words(),
        "wanted",
        wanted);
    return Optional.empty();
  }

  private Optional<Expression> value(Expr expr) {
    return expr.accept(kinds);
  }

  /** Makes an expression of each kind of value. */
  private final class Kinds implements Expr.Visitor<Optional<Expression>> {
    @Override
    public Optional<Expression> amount(Amount amount) {
      return Optional.of(new Literal.Amount(amount.value(), Optional.ofNullable(amount.unit())));
    }

    @Override
    public Optional<Expression> dateText(DateText date) {
      return Optional.of(Expression.date(date.value()));
    }

    @Override
    public Optional<Expression> text(Text value) {
      return outside(value);
    }

    @Override
    public Optional<Expression> percentOfMax(Expr.PercentOfMax level) {
      return Optional.of(Expression.percentOfMax(level.percent()));
    }

    @Override
    public Optional<Expression> percentOf(Expr.PercentOf share) {
      return ExpressionCheck.this.percentOf(share);
    }

    @Override
    public Optional<Expression> reserveLevel(Expr.ReserveLevel value) {
      return outside(value);
    }

    @Override
    public Optional<Expression> effortLevel(Expr.EffortLevel value) {
      return outside(value);
    }

    @Override
    public Optional<Expression> gradeLiteral(Expr.GradeLiteral grade) {
      return ExpressionCheck.this.grade(grade);
    }

    @Override
    public Optional<Expression> pathExpr(Expr.PathExpr path) {
      return paths.find(path);
    }

    @Override
    public Optional<Expression> has(Expr.Has has) {
      return paths.first(has.name()).map(Expression::exists);
    }

    @Override
    public Optional<Expression> binary(Expr.Binary binary) {
      return ExpressionCheck.this.binary(binary);
    }

    @Override
    public Optional<Expression> not(Expr.Not not) {
      return truth(not.operand()).map(Expression::not);
    }

    @Override
    public Optional<Expression> negate(Expr.Negate negate) {
      return quantity(negate.operand()).map(Expression::negated);
    }

    @Override
    public Optional<Expression> is(Expr.Is is) {
      return ExpressionCheck.this.value(is.subject()).flatMap(subject -> words.is(is, subject));
    }

    @Override
    public Optional<Expression> in(Expr.In in) {
      return ExpressionCheck.this.in(in);
    }

    @Override
    public Optional<Expression> betweenExpr(Expr.BetweenExpr between) {
      return ExpressionCheck.this.between(between);
    }

    @Override
    public Optional<Expression> aggregate(Expr.Aggregate aggregate) {
      return ExpressionCheck.this.aggregate(aggregate);
    }

    @Override
    public Optional<Expression> quantifier(Expr.Quantifier quantifier) {
      return ExpressionCheck.this.quantifier(quantifier);
    }

    /** Reports what has no place in a rule. */
    private Optional<Expression> outside(Expr value) {
      ledger.error(value, "type.not-in-rules", "text", text.of(value));
      return Optional.empty();
    }
  }

  private Optional<Expression> grade(Expr.GradeLiteral grade) {
    return ledger
        .word(grade.scale(), "scale", GradeScale::parse, SCALES)
        .flatMap(
            scale ->
                ledger.word(
                    grade.grade(),
                    Terms.of("grade-of", "scale", scale.word()),
                    written -> Ability.find(scale, written),
                    Ability.grades(scale)))
        .map(Expression::grade);
  }

  private Optional<Expression> quantity(Expr expr) {
    Optional<Expression> found = value(expr);
    return found.isPresent() && !(found.get().type() instanceof Type.Quantity)
        ? wanted(expr, found.get(), Terms.of("number"))
        : found;
  }

  private Optional<Expression> percentOf(Expr.PercentOf share) {
    Optional<Expression> of = value(share.of());
    if (of.isEmpty()) {
      return of;
    }
    return of.get().type() instanceof Type.Quantity || of.get().type() == Type.Plain.LEVEL
        ? Optional.of(Expression.percent(share.percent()).times(of.get()))
        : wanted(share.of(), of.get(), Terms.of("number"));
  }

  private Optional<Expression> binary(Expr.Binary binary) {
    return switch (binary.operator()) {
      case OR -> both(binary, this::truth).map(b -> b.left().or(b.right()));
      case AND -> both(binary, this::truth).map(b -> b.left().and(b.right()));
      case LESS -> compare(binary, Relation.LESS);
      case AT_MOST -> compare(binary, Relation.AT_MOST);
      case GREATER -> compare(binary, Relation.GREATER);
      case AT_LEAST -> compare(binary, Relation.AT_LEAST);
      case EQUAL -> compare(binary, Relation.EQUAL);
      case NOT_EQUAL -> compare(binary, Relation.NOT_EQUAL);
      case PLUS -> arithmetic(binary, Operation.PLUS, Terms.of("added"));
      case MINUS -> arithmetic(binary, Operation.MINUS, Terms.of("subtracted"));
      case TIMES -> arithmetic(binary, Operation.TIMES, Terms.of("multiplied"));
      case DIVIDE -> arithmetic(binary, Operation.DIVIDED_BY, Terms.of("divided"));
    };
  }

  private record Sides(Expression left, Expression right) {}

  private Optional<Sides> both(
      Expr.Binary binary, java.util.function.Function<Expr, Optional<Expression>> read) {
    Optional<Expression> left = read.apply(binary.left());
    Optional<Expression> right = read.apply(binary.right());
    return left.flatMap(one -> right.map(other -> new Sides(one, other)));
  }

  private Optional<Expression> compare(Expr.Binary binary, Relation relation) {
    Optional<Expression> left = value(binary.left());
    if (left.isPresent() && ExpressionWords.takesWords(left.get())) {
      ledger.error(
          binary,
          "type.word-compared",
          "text",
          text.of(binary.left()),
          "found",
          left.get().type().words(),
          "sign",
          relation.symbol());
      return Optional.empty();
    }
    Optional<Expression> right = value(binary.right());
    if (left.isEmpty() || right.isEmpty()) {
      return Optional.empty();
    }
    return comparable(binary, binary.left(), left.get(), binary.right(), right.get())
        ? Optional.of(new Condition.Compare(relation, left.get(), right.get()))
        : Optional.empty();
  }

  private boolean comparable(Expr whole, Expr left, Expression one, Expr right, Expression other) {
    boolean fits = one.type().comparesWith(other.type());
    if (!fits) {
      mismatch(whole, left, one, right, other, Terms.of("compared"));
    }
    return fits;
  }

  /** Reports two values that do not go together, at the one that is written out, if one is. */
  private void mismatch(
      Expr whole, Expr left, Expression one, Expr right, Expression other, Message deed) {
    Expr at = isLiteral(right) ? right : isLiteral(left) ? left : whole;
    boolean units = one.type() instanceof Type.Quantity && other.type() instanceof Type.Quantity;
    ledger.error(
        at,
        units ? "unit.sides" : "type.sides",
        "left",
        text.of(left),
        "leftType",
        one.type().words(),
        "right",
        text.of(right),
        "rightType",
        other.type().words(),
        "deed",
        deed);
  }

  private static boolean isLiteral(Expr expr) {
    return expr instanceof Amount
        || expr instanceof DateText
        || expr instanceof Expr.PercentOfMax
        || expr instanceof Expr.GradeLiteral;
  }

  private Optional<Expression> arithmetic(Expr.Binary binary, Operation operation, Message deed) {
    Optional<Sides> sides = both(binary, this::value);
    if (sides.isEmpty()) {
      return Optional.empty();
    }
    Expression left = sides.get().left();
    Expression right = sides.get().right();
    if (operation == Operation.DIVIDED_BY
        && binary.right() instanceof Amount amount
        && amount.value() == 0) {
      ledger.error(binary.right(), "value.divisor", "text", text.of(binary));
      return Optional.empty();
    }
    Optional<Type> type =
        switch (operation) {
          case PLUS -> left.type().plus(right.type());
          case MINUS -> left.type().minus(right.type());
          case TIMES -> left.type().times(right.type());
          case DIVIDED_BY -> left.type().dividedBy(right.type());
        };
    if (type.isEmpty()) {
      mismatch(binary, binary.left(), left, binary.right(), right, deed);
      return Optional.empty();
    }
    return Optional.of(new Expression.Arithmetic(operation, left, right));
  }

  private Optional<Expression> in(Expr.In in) {
    Optional<Expression> subject = value(in.subject());
    if (subject.isEmpty()) {
      return subject;
    }
    Optional<Expression> found =
        ExpressionWords.takesWords(subject.get())
            ? inWords(in, subject.get())
            : inValues(in, subject.get());
    return in.negated() ? found.map(Expression::not) : found;
  }

  private Optional<Expression> inWords(Expr.In in, Expression subject) {
    List<Word> options = new ArrayList<>();
    for (Expr option : in.options()) {
      if (option instanceof Expr.PathExpr path && path.words().size() == 1) {
        options.add(path.words().get(0));
      } else {
        ledger.error(
            option, "type.word-wanted", "text", text.of(option), "found", subject.type().words());
      }
    }
    if (options.isEmpty()) {
      return Optional.empty();
    }
    Optional<Expression> found = words.words(subject, options);
    return options.size() == in.options().size() ? found : Optional.empty();
  }

  private Optional<Expression> inValues(Expr.In in, Expression subject) {
    Optional<Expression> any = Optional.empty();
    boolean sound = true;
    for (Expr option : in.options()) {
      Optional<Expression> value = value(option);
      sound &= value.isPresent() && comparable(in, in.subject(), subject, option, value.get());
      if (sound) {
        Expression equal = subject.equalTo(value.orElseThrow());
        any = Optional.of(any.map(a -> a.or(equal)).orElse(equal));
      }
    }
    return sound ? any : Optional.empty();
  }

  private Optional<Expression> between(Expr.BetweenExpr between) {
    Optional<Expression> subject = value(between.subject());
    Optional<Expression> low = value(between.low());
    Optional<Expression> high = value(between.high());
    if (subject.isEmpty() || low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    Expression value = subject.get();
    boolean fits =
        comparable(between, between.subject(), value, between.low(), low.get())
            && comparable(between, between.subject(), value, between.high(), high.get());
    return fits ? Optional.of(value.between(low.get(), high.get())) : Optional.empty();
  }

  private Optional<Expression> collection(Expr.PathExpr path) {
    Optional<Expression> found = paths.find(path);
    return found.isPresent() && !(found.get().type() instanceof Type.Many)
        ? wanted(path, found.get(), Terms.of("several-things"))
        : found;
  }

  private Optional<Expression> aggregate(Expr.Aggregate aggregate) {
    Optional<Summary> summary = summary(aggregate.function());
    Optional<Expression> collection = collection(aggregate.collection());
    if (summary.isEmpty() || collection.isEmpty()) {
      return Optional.empty();
    }
    paths.enter(((Type.Many) collection.get().type()).kind());
    Expr each = aggregate.value();
    Optional<Expression> value = each == null ? Optional.empty() : summed(summary.get(), each);
    Optional<Expression> where =
        aggregate.where() == null ? Optional.empty() : truth(aggregate.where());
    paths.leave();
    return value.isPresent() == (each != null) && where.isPresent() == (aggregate.where() != null)
        ? Optional.of(new Expression.Summarize(summary.get(), collection.get(), value, where))
        : Optional.empty();
  }

  private Optional<Summary> summary(Word function) {
    List<String> known =
        Arrays.stream(Summary.values()).map(s -> s.name().toLowerCase(Locale.ROOT)).toList();
    return ledger.word(
        function,
        "way-to-sum-up",
        word ->
            known.contains(word)
                ? Optional.of(Summary.values()[known.indexOf(word)])
                : Optional.empty(),
        known);
  }

  private Optional<Expression> summed(Summary summary, Expr expr) {
    Optional<Expression> found = value(expr);
    if (found.isEmpty()) {
      return found;
    }
    Type type = found.get().type();
    boolean fits =
        switch (summary) {
          case SUM, COUNT -> type instanceof Type.Quantity;
          case MEAN -> type instanceof Type.Quantity || type == Type.Plain.LEVEL;
          case LARGEST, SMALLEST -> type.ordered();
        };
    return fits ? found : wanted(expr, found.get(), Terms.of("number"));
  }

  private Optional<Expression> quantifier(Expr.Quantifier quantifier) {
    Optional<Expression> collection = collection(quantifier.collection());
    if (collection.isEmpty()) {
      return collection;
    }
    boolean every = quantifier.function().text().equals("every");
    paths.enter(((Type.Many) collection.get().type()).kind());
    Optional<Expression> where =
        quantifier.where() == null ? Optional.empty() : truth(quantifier.where());
    Optional<Expression> body =
        quantifier.body() == null
            ? Optional.of(new Condition.Truth(true))
            : truth(quantifier.body());
    paths.leave();
    if (every && quantifier.body() == null) {
      ledger.error(quantifier, "value.every-what", "text", text.of(quantifier));
      return Optional.empty();
    }
    return body.isPresent() && where.isPresent() == (quantifier.where() != null)
        ? Optional.of(
            new Condition.Quantify(
                every ? Quantifier.EVERY : Quantifier.ANY, collection.get(), where, body.get()))
        : Optional.empty();
  }
}
