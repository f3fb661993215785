package gripwright.expression;

import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** The readers of properties from the subjects of rules. */
@FunctionalInterface
public interface PropertyReaders {

  /** Readers for an expression that is only checked and never evaluated. */
  PropertyReaders NONE =
      property -> {
        if (property.type() == Type.Plain.TRUTH) {
          return new TruthAccess(thing -> false);
        }
        return property.type().ordered()
            ? new NumberAccess(thing -> Double.NaN)
            : new ObjectAccess(thing -> null);
      };

  /** The reader of a property. */
  sealed interface Access {
    /** Returns what the visitor returns for the kind of value that is read. */
    <R> R accept(Visitor<R> visitor);

    /**
     * One method for each kind of value that is read.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> {
      /** Visits a number, level, grade or date. */
      R number(NumberAccess access);

      /** Visits a truth. */
      R truth(TruthAccess access);

      /** Visits a word, a thing or a list of things. */
      R object(ObjectAccess access);
    }
  }

  /** Reads a number, level, grade or date; NaN if it is missing. */
  record NumberAccess(ToDoubleFunction<Object> read) implements Access {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.number(this);
    }
  }

  /** Reads a truth. */
  record TruthAccess(Predicate<Object> read) implements Access {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.truth(this);
    }
  }

  /** Reads a word, a thing or a list of things; null if it is missing. */
  record ObjectAccess(Function<Object, @Nullable Object> read) implements Access {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.object(this);
    }
  }

  /** Returns the reader of a property of the catalogue. */
  Access of(Property property);
}
