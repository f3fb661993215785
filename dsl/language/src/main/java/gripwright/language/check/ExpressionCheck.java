package gripwright.language.check;

import gripwright.expression.Expression;
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
import java.util.List;
import java.util.Optional;

/**
 * Builds typed expressions from the text of a rule. Every mistake is reported once, at the fewest
 * words that show it, and not again for the expressions around it. Not thread-safe.
 */
final class ExpressionCheck {

  private final Diagnostics diagnostics;
  private final ExpressionText text;
  private final ExpressionPaths paths;
  private final ExpressionWords words;
  private final OperatorCheck operators;
  private final CollectionCheck collections;
  private final Written written = new Written();
  private final Calculated calculated = new Calculated();

  ExpressionCheck(ParsedFile file, Diagnostics diagnostics, RuleNames names, Kind root) {
    this.diagnostics = diagnostics;
    text = new ExpressionText(file);
    paths = new ExpressionPaths(diagnostics, root);
    words = new ExpressionWords(text, diagnostics, names);
    operators = new OperatorCheck(this, diagnostics, text);
    collections = new CollectionCheck(this, diagnostics, text, paths);
  }

  /** Returns a condition; empty if it has a mistake, which is reported. */
  Optional<Expression> truth(Expr expr) {
    Optional<Expression> found = value(expr);
    if (found.isPresent() && found.get().type() != Type.Plain.TRUTH) {
      return wanted(expr, found.get(), Terms.of("value-truth"));
    }
    return found;
  }

  /** Reports a value of the wrong type. */
  Optional<Expression> wanted(Expr expr, Expression found, Message wanted) {
    diagnostics.error(
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

  /** Returns a value; empty if it has a mistake, which is reported. */
  Optional<Expression> value(Expr expr) {
    return expr.accept(written);
  }

  /** Builds an expression from a literal or a name. */
  private final class Written implements Expr.Visitor<Optional<Expression>> {
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
    public Optional<Expression> reserveLevel(Expr.ReserveLevel value) {
      return outside(value);
    }

    @Override
    public Optional<Expression> effortLevel(Expr.EffortLevel value) {
      return outside(value);
    }

    @Override
    public Optional<Expression> gradeLiteral(Expr.GradeLiteral grade) {
      return new Words(diagnostics).ability(grade).map(Expression::grade);
    }

    @Override
    public Optional<Expression> pathExpr(Expr.PathExpr path) {
      return paths.find(path);
    }

    @Override
    public Optional<Expression> calculation(Expr.Calculation value) {
      return value.accept(calculated);
    }

    /** Reports a value that is not allowed in a rule. */
    private Optional<Expression> outside(Expr value) {
      diagnostics.error(value, "type.not-in-rules", "text", text.of(value));
      return Optional.empty();
    }
  }

  /** Builds an expression from a calculation. */
  private final class Calculated implements Expr.Calculation.Visitor<Optional<Expression>> {
    @Override
    public Optional<Expression> percentOf(Expr.PercentOf share) {
      Optional<Expression> of = value(share.of());
      if (of.isEmpty()) {
        return of;
      }
      return of.get().type() instanceof Type.Quantity || of.get().type() == Type.Plain.LEVEL
          ? Optional.of(Expression.percent(share.percent()).times(of.get()))
          : wanted(share.of(), of.get(), Terms.of("number"));
    }

    @Override
    public Optional<Expression> has(Expr.Has has) {
      return paths.first(has.name()).map(Expression::exists);
    }

    @Override
    public Optional<Expression> binary(Expr.Binary binary) {
      return operators.check(binary);
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
      return value(is.subject()).flatMap(subject -> words.is(is, subject));
    }

    @Override
    public Optional<Expression> in(Expr.In in) {
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

    @Override
    public Optional<Expression> betweenExpr(Expr.BetweenExpr between) {
      Optional<Expression> subject = value(between.subject());
      Optional<Expression> low = value(between.low());
      Optional<Expression> high = value(between.high());
      if (subject.isEmpty() || low.isEmpty() || high.isEmpty()) {
        return Optional.empty();
      }
      Expression value = subject.get();
      boolean fits =
          operators.comparable(between, between.subject(), value, between.low(), low.get())
              && operators.comparable(
                  between, between.subject(), value, between.high(), high.get());
      return fits ? Optional.of(value.between(low.get(), high.get())) : Optional.empty();
    }

    @Override
    public Optional<Expression> aggregate(Expr.Aggregate aggregate) {
      return collections.aggregate(aggregate);
    }

    @Override
    public Optional<Expression> quantifier(Expr.Quantifier quantifier) {
      return collections.quantifier(quantifier);
    }
  }

  private Optional<Expression> quantity(Expr expr) {
    Optional<Expression> found = value(expr);
    return found.isPresent() && !(found.get().type() instanceof Type.Quantity)
        ? wanted(expr, found.get(), Terms.of("number"))
        : found;
  }

  private Optional<Expression> inWords(Expr.In in, Expression subject) {
    List<Word> options = new ArrayList<>();
    for (Expr option : in.options()) {
      if (option instanceof Expr.PathExpr path && path.words().size() == 1) {
        options.add(path.words().get(0));
      } else {
        diagnostics.error(
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
      sound &=
          value.isPresent() && operators.comparable(in, in.subject(), subject, option, value.get());
      if (sound) {
        Expression equal = subject.equalTo(value.orElseThrow());
        any = Optional.of(any.map(a -> a.or(equal)).orElse(equal));
      }
    }
    return sound ? any : Optional.empty();
  }
}
