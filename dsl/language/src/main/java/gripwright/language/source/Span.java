package gripwright.language.source;

/**
 * A stretch of characters in a file, in UTF-16 units from its first character.
 *
 * @param start offset of the first character, 0 or more
 * @param length how many, 0 or more; 0 marks a point between two characters
 */
public record Span(int start, int length) {

  /**
   * Checks the range.
   *
   * @throws IllegalArgumentException if start or length is negative
   */
  public Span {
    if (start < 0 || length < 0) {
      throw new IllegalArgumentException("not a span: " + start + "+" + length);
    }
  }

  /** Returns the span between two offsets. */
  public static Span between(int start, int end) {
    return new Span(start, end - start);
  }

  /** Returns the offset after the last character. */
  public int end() {
    return start + length;
  }

  /** Returns the shortest span that covers this one and another. */
  public Span to(Span other) {
    return between(Math.min(start, other.start), Math.max(end(), other.end()));
  }

  /** Returns whether the other span lies within this one. */
  public boolean contains(Span other) {
    return start <= other.start && other.end() <= end();
  }
}
