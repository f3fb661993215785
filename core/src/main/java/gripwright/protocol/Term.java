package gripwright.protocol;

import java.util.Objects;

/**
 * A place in a protocol that is either fixed or filled by a named parameter.
 *
 * @param <T> what stands there: an {@code Integer}, a {@code Duration} or a {@code Level}
 */
public sealed interface Term<T> {

  /**
   * A value that every use of the protocol shares.
   *
   * @param value the value
   * @param <T> its kind
   */
  record Fixed<T>(T value) implements Term<T> {
    /** Refuses null. */
    public Fixed {
      Objects.requireNonNull(value, "value");
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
