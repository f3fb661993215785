package gripwright.finding;

import java.util.List;
import java.util.Map;

/**
 * A list of values or messages.
 *
 * @param style how they are joined
 * @param parts all parts, since only the wording shortens the list
 * @param most most parts put into words; the others are counted
 */
public record Listing(Style style, List<?> parts, int most) implements Message {

  /** How parts are joined. */
  public enum Style {
    /** With commas. */
    COMMAS,
    /** With commas, and the word for "and" before the last. */
    AND,
    /** With commas, and the word for "or" before the last. */
    OR,
    /** As clauses of one sentence. */
    CLAUSES
  }

  /** Copies the parts. */
  public Listing {
    parts = List.copyOf(parts);
  }

  /** Returns parts that are all put into words. */
  public static Listing of(Style style, List<?> parts) {
    return new Listing(style, parts, Integer.MAX_VALUE);
  }

  /** Returns parts of which only the first few are put into words. */
  public static Listing first(int most, Style style, List<?> parts) {
    return new Listing(style, parts, most);
  }

  /**
   * Returns parts of which only the first few are put into words, unless only one would be left
   * out: it takes no more space than a count.
   */
  public static Listing few(int most, Style style, List<?> parts) {
    return parts.size() <= most + 1 ? of(style, parts) : first(most, style, parts);
  }

  @Override
  public String key() {
    return switch (style) {
      case COMMAS -> "common.list";
      case AND -> "common.list-and";
      case OR -> "common.list-or";
      case CLAUSES -> "common.clauses";
    };
  }

  @Override
  public Map<String, Object> arguments() {
    return Map.of("parts", parts);
  }
}
