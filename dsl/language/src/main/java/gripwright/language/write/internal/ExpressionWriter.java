package gripwright.language.write.internal;

import gripwright.expression.Condition;
import gripwright.expression.Condition.Quantifier;
import gripwright.expression.Expression;
import gripwright.expression.Expression.Operation;
import gripwright.expression.Expression.Summary;
import gripwright.expression.ExpressionVisitor;
import gripwright.expression.Kind;
import gripwright.expression.Literal;
import gripwright.expression.Property;
import gripwright.expression.Type;
import gripwright.language.write.Unwritable;
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

  /** An operator of lower precedence is put in brackets inside one of higher precedence. */
  private static final int OR = 0;

  private static final int AND = 1;
  private static final int NOT = 2;
  private static final int COMPARE = 3;
  private static final int SUM = 4;
  private static final int PRODUCT = 5;
  private static final int UNARY = 6;
  private static final int PRIMARY = 7;

  private static final Literal.Visitor<String> LITERALS =
      new Literal.Visitor<>() {
        @Override
        public String amount(Literal.Amount amount) {
          return ExpressionWriter.amount(amount);
        }

        @Override
        public String percentOfMax(Literal.PercentOfMax share) {
          return Written.number(share.percent()) + " % max";
        }

        @Override
        public String grade(Literal.Grade grade) {
          return grade.ability().toString();
        }

        @Override
        public String date(Literal.Date date) {
          return date.day().toString();
        }
      };

  private final List<Kind> subjects = new ArrayList<>();
  private final Pieces pieces = new Pieces();

  /** Prepares to write conditions of rules with this kind of subject. */
  ExpressionWriter(Kind root) {
    subjects.add(root);
  }

  /** Returns a condition as it is written. */
  String write(Expression condition) {
    return at(condition, OR);
  }

  private String at(Expression e, int least) {
    Piece piece = e.accept(pieces);
    return piece.binding() < least ? "(" + piece.text() + ")" : piece.text();
  }

  /**
   * A part of a condition as it is written.
   *
   * @param binding its precedence
   */
  private record Piece(String text, int binding) {}

  private final class Pieces implements ExpressionVisitor<Piece> {
    @Override
    public Piece literal(Literal literal) {
      return new Piece(literal.accept(LITERALS), PRIMARY);
    }

    @Override
    public Piece truth(Condition.Truth truth) {
      throw unnamed(truth);
    }

    @Override
    public Piece subject(Expression.Subject subject) {
      if (finds(subject.kind().word(), subject, false)) {
        return new Piece(subject.kind().word(), PRIMARY);
      }
      throw unnamed(subject);
    }

    @Override
    public Piece get(Expression.Get get) {
      boolean bare =
          get.of() instanceof Expression.Subject subject && finds(get.property(), subject, true);
      return new Piece(bare ? get.property() : path(get.of()) + "." + get.property(), PRIMARY);
    }

    @Override
    public Piece has(Condition.Has has) {
      return new Piece("has " + path(has.value()), PRIMARY);
    }

    @Override
    public Piece compare(Condition.Compare c) {
      String sign = " " + c.relation().symbol() + " ";
      return new Piece(at(c.left(), SUM) + sign + at(c.right(), SUM), COMPARE);
    }

    @Override
    public Piece between(Condition.Between b) {
      String bounds = at(b.low(), SUM) + " and " + at(b.high(), SUM);
      return new Piece(at(b.value(), SUM) + " between " + bounds, COMPARE);
    }

    @Override
    public Piece is(Condition.Is is) {
      return new Piece(oneOf(is, false), COMPARE);
    }

    @Override
    public Piece arithmetic(Expression.Arithmetic a) {
      if (isShare(a)) {
        return new Piece(at(a.left(), OR) + " of " + at(a.right(), PRIMARY), PRIMARY);
      }
      int own =
          switch (a.operation()) {
            case PLUS, MINUS -> SUM;
            case TIMES, DIVIDED_BY -> PRODUCT;
          };
      String sign = " " + a.operation().symbol() + " ";
      return new Piece(at(a.left(), own) + sign + at(a.right(), own + 1), own);
    }

    @Override
    public Piece negate(Expression.Negate negate) {
      return new Piece("-" + at(negate.operand(), UNARY), UNARY);
    }

    @Override
    public Piece and(Condition.And and) {
      return new Piece(at(and.left(), AND) + " and " + at(and.right(), NOT), AND);
    }

    @Override
    public Piece or(Condition.Or or) {
      return new Piece(at(or.left(), OR) + " or " + at(or.right(), AND), OR);
    }

    @Override
    public Piece not(Condition.Not not) {
      return not.operand() instanceof Condition.Is is
          ? new Piece(oneOf(is, true), COMPARE)
          : new Piece("not " + at(not.operand(), NOT), NOT);
    }

    @Override
    public Piece summarize(Expression.Summarize summarize) {
      return new Piece(summary(summarize), PRIMARY);
    }

    @Override
    public Piece quantify(Condition.Quantify quantify) {
      return new Piece(quantity(quantify), PRIMARY);
    }
  }

  private static Unwritable unnamed(Expression e) {
    return new Unwritable("a part of a rule for which there is no name: " + e);
  }

  private static String amount(Literal.Amount amount) {
    if (amount.value() < 0) {
      throw new Unwritable(
          "a number below zero in a rule: it is written as one with its sign turned");
    }
    String unit = amount.unit().map(Unit::symbol).orElse("");
    boolean one = amount.value() == 1 && unit.length() > 1 && unit.endsWith("s");
    String word = one ? unit.substring(0, unit.length() - 1) : unit;
    return Written.number(amount.value()) + (word.isEmpty() ? "" : " " + word);
  }

  private String oneOf(Condition.Is is, boolean not) {
    String value = at(is.value(), SUM);
    return is.words().size() == 1
        ? value + (not ? " is not " : " is ") + is.words().get(0)
        : value + (not ? " not in " : " in ") + String.join(", ", is.words());
  }

  /** Returns whether a product is written as a percentage of something. */
  private static boolean isShare(Expression.Arithmetic a) {
    return a.operation() == Operation.TIMES
        && a.left() instanceof Literal.Amount amount
        && amount.unit().equals(Optional.of(Unit.PERCENT));
  }

  private String summary(Expression.Summarize s) {
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

  /**
   * Returns the value of a collection; brackets keep a percentage at the end from being read with
   * the {@code of} that follows.
   */
  private String each(Expression value) {
    String text = write(value);
    return text.endsWith("%") ? "(" + text + ")" : text;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  private String quantity(Condition.Quantify q) {
    String collection = path(q.collection());
    boolean plain = q.quantifier() == Quantifier.ANY && q.body().equals(new Condition.Truth(true));
    subjects.add(kind(q.collection()));
    String where = q.where().map(w -> " where " + write(w)).orElse("");
    String body = plain ? "" : ": " + write(q.body());
    subjects.remove(subjects.size() - 1);
    return word(q.quantifier()) + "(" + collection + where + body + ")";
  }

  private static Kind kind(Expression collection) {
    return ((Type.Many) collection.type()).kind();
  }

  /** Returns the name of a subject or a property; nothing else has a name. */
  private String path(Expression e) {
    if (e instanceof Expression.Subject || e instanceof Expression.Get) {
      return at(e, OR);
    }
    throw unnamed(e);
  }

  /** Returns whether a word is read as a property of the wanted subject, or as the subject. */
  private boolean finds(String word, Expression.Subject wanted, boolean property) {
    for (int depth = 0; depth < subjects.size(); depth++) {
      Kind kind = subjects.get(subjects.size() - 1 - depth);
      boolean has = Property.find(kind, word).isPresent();
      if (has || kind.word().equals(word)) {
        return has == property && depth == wanted.depth() && kind == wanted.kind();
      }
    }
    return false;
  }
}
