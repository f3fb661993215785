package gripwright.expression;

import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.quantity.Dimension;
import java.util.Locale;
import java.util.Optional;

/** The type of an expression's value, known before evaluation. */
public sealed interface Type {

  /**
   * A number with a dimension. Percentages are pure numbers: 115 % is 1.15.
   *
   * @param dimension what it measures
   */
  record Quantity(Dimension dimension) implements Type {
    /** A pure number. */
    public static final Quantity NUMBER = new Quantity(Dimension.NUMBER);

    /** A time. */
    public static final Quantity TIME = new Quantity(Dimension.TIME);

    @Override
    public boolean ordered() {
      return true;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.quantity(this);
    }

    @Override
    public Message words() {
      return dimension
          .word()
          .map(word -> Clause.of("term." + word))
          .orElseGet(() -> Clause.of("term.quantity", "unit", dimension.unit()));
    }

    @Override
    public String toString() {
      return dimension.toString();
    }
  }

  /** A value of a plain kind. */
  enum Plain implements Type {
    /** A share of the reference maximum; 0.6 is {@code 60 % max}. Not a number on its own. */
    LEVEL,
    /** A climbing grade; all scales compare by their IRCRA number. */
    GRADE,
    /** A day of the calendar. */
    DATE,
    /** Yes or no. */
    TRUTH;

    @Override
    public Message words() {
      return Clause.of("term.value-" + this);
    }

    @Override
    public boolean ordered() {
      return this != TRUTH;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.plain(this);
    }

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * One of some words.
   *
   * @param vocabulary the words
   */
  record Word(Vocabulary vocabulary) implements Type {
    @Override
    public boolean ordered() {
      return false;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.word(this);
    }

    @Override
    public Message words() {
      return Clause.of("term.word-for", "what", vocabulary.name());
    }

    @Override
    public String toString() {
      return "word for " + vocabulary.what();
    }
  }

  /**
   * A thing with properties.
   *
   * @param kind what it is
   */
  record One(Kind kind) implements Type {
    @Override
    public boolean ordered() {
      return false;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.one(this);
    }

    @Override
    public Message words() {
      return kind.one();
    }

    @Override
    public String toString() {
      return kind.word();
    }
  }

  /**
   * Several things.
   *
   * @param kind what each is
   */
  record Many(Kind kind) implements Type {
    @Override
    public boolean ordered() {
      return false;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.many(this);
    }

    @Override
    public Message words() {
      return Clause.of("term.several", "things", kind.many());
    }

    @Override
    public String toString() {
      return "several of " + kind.word();
    }
  }

  /** Returns its name in a coach's words, such as {@code a time}. */
  Message words();

  /**
   * Returns whether values of this type have an order: all types except words, truths and things.
   */
  boolean ordered();

  /** Returns what the visitor returns for this kind of type. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of type.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits a number with a dimension. */
    R quantity(Quantity quantity);

    /** Visits a value of a plain kind. */
    R plain(Plain plain);

    /** Visits one of some words. */
    R word(Word word);

    /** Visits a thing with properties. */
    R one(One one);

    /** Visits several things. */
    R many(Many many);
  }

  /** Returns whether values of the two types can be compared: equal types that have an order. */
  default boolean comparesWith(Type other) {
    return ordered() && equals(other);
  }

  /** Returns the type of a sum with another type, if there is one. */
  default Optional<Type> plus(Type other) {
    if (equals(other) && (this instanceof Quantity || this == Plain.LEVEL)) {
      return Optional.of(this);
    }
    return this == Plain.DATE && other.equals(Quantity.TIME)
        ? Optional.of(Plain.DATE)
        : Optional.empty();
  }

  /** Returns the type of a difference from another type, if there is one. */
  default Optional<Type> minus(Type other) {
    return this == Plain.DATE && other == Plain.DATE ? Optional.of(Quantity.TIME) : plus(other);
  }

  /** Returns the type of a product with another type, if there is one. */
  default Optional<Type> times(Type other) {
    if (this instanceof Quantity one && other instanceof Quantity two) {
      return Optional.of(new Quantity(one.dimension().times(two.dimension())));
    }
    if ((this == Plain.LEVEL && other.equals(Quantity.NUMBER))
        || (equals(Quantity.NUMBER) && other == Plain.LEVEL)) {
      return Optional.of(Plain.LEVEL);
    }
    return Optional.empty();
  }

  /** Returns the type of a quotient by another type, if there is one. */
  default Optional<Type> dividedBy(Type other) {
    if (this instanceof Quantity one && other instanceof Quantity two) {
      return Optional.of(new Quantity(one.dimension().dividedBy(two.dimension())));
    }
    if (this == Plain.LEVEL && other == Plain.LEVEL) {
      return Optional.of(Quantity.NUMBER);
    }
    return this == Plain.LEVEL && other.equals(Quantity.NUMBER)
        ? Optional.of(Plain.LEVEL)
        : Optional.empty();
  }
}
