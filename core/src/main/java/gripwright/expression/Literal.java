package gripwright.expression;

import gripwright.ability.Ability;
import gripwright.quantity.Dimension;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.util.Optional;

/** A literal value of an ordered type, represented as a number. */
public sealed interface Literal extends Expression {

  /**
   * Returns the value as a number: in the base unit, as a share, an IRCRA number or a day count.
   */
  double number();

  /** Returns what the visitor returns for the kind of this value. */
  <R> R accept(Visitor<R> visitor);

  @Override
  default <R> R accept(ExpressionVisitor<R> visitor) {
    return visitor.literal(this);
  }

  /**
   * A number, with a unit or without.
   *
   * @param value in that unit
   * @param unit empty for a pure number
   */
  record Amount(double value, Optional<Unit> unit) implements Literal {
    /**
     * Checks the value.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Amount {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("not a number: " + value);
      }
    }

    @Override
    public Type type() {
      return new Type.Quantity(unit.map(Unit::dimension).orElse(Dimension.NUMBER));
    }

    @Override
    public double number() {
      return unit.map(u -> u.toBase(value)).orElse(value);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.amount(this);
    }
  }

  /**
   * A share of the reference maximum.
   *
   * @param percent 60 for {@code 60 % max}
   */
  record PercentOfMax(double percent) implements Literal {
    @Override
    public Type type() {
      return Type.Plain.LEVEL;
    }

    @Override
    public double number() {
      return percent / 100;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.percentOfMax(this);
    }
  }

  /**
   * A climbing grade.
   *
   * @param ability the grade
   */
  record Grade(Ability ability) implements Literal {
    @Override
    public Type type() {
      return Type.Plain.GRADE;
    }

    @Override
    public double number() {
      return ability.ircra();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.grade(this);
    }
  }

  /**
   * A day of the calendar.
   *
   * @param day the day
   */
  record Date(LocalDate day) implements Literal {
    @Override
    public Type type() {
      return Type.Plain.DATE;
    }

    @Override
    public double number() {
      return day.toEpochDay();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.date(this);
    }
  }

  /**
   * One method for each kind of literal.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits a number, with a unit or without. */
    R amount(Amount amount);

    /** Visits a share of the reference maximum. */
    R percentOfMax(PercentOfMax share);

    /** Visits a climbing grade. */
    R grade(Grade grade);

    /** Visits a day of the calendar. */
    R date(Date date);
  }
}
