package gripwright.protocol;

import java.util.Objects;
import java.util.function.Function;

/**
 * A value in a protocol that is either fixed or a named parameter.
 *
 * @param <T> type of value: an {@code Integer}, a {@code Duration} or a {@code Level}
 */
public sealed interface Term<T> {

  /** Returns the fixed value or the value of the parameter. */
  T value(Function<? super Given<T>, ? extends T> given);

  /**
   * A fixed value, the same in every use of the protocol.
   *
   * @param value the value
   * @param <T> its kind
   */
  record Fixed<T>(T value) implements Term<T> {
    /** Refuses null. */
    public Fixed {
      Objects.requireNonNull(value, "value");
    }

    @Override
    public T value(Function<? super Given<T>, ? extends T> given) {
      return value;
    }
  }

  /**
   * A value that a use of the protocol may set.
   *
   * @param parameter the parameter's name
   * @param <T> its kind
   */
  record Given<T>(String parameter) implements Term<T> {
    /** Refuses null. */
    public Given {
      Objects.requireNonNull(parameter, "parameter");
    }

    @Override
    public T value(Function<? super Given<T>, ? extends T> given) {
      return given.apply(this);
    }
  }

  /** Returns a fixed value. */
  static <T> Term<T> of(T value) {
    return new Fixed<>(value);
  }

  /** Returns a reference to a parameter. */
  static <T> Term<T> given(String parameter) {
    return new Given<>(parameter);
  }
}
