package gripwright.language.finding;

/**
 * Prints characters of a file on a terminal: their width, and replacements for those that would
 * move the cursor, change colours or change the direction of writing.
 */
final class Glyphs {

  /** Columns from one tab stop to the next. */
  static final int TAB = 4;

  private static final int REPLACEMENT = 0xFFFD;

  /**
   * First and last code points two columns wide: the wide and fullwidth ranges of Unicode Standard
   * Annex 11, rounded to whole blocks.
   */
  private static final int[] WIDE = {
    0x1100, 0x115F, 0x2E80, 0x303E, 0x3041, 0x33FF, 0x3400, 0x4DBF, 0x4E00, 0x9FFF, 0xA000, 0xA4CF,
    0xAC00, 0xD7A3, 0xF900, 0xFAFF, 0xFE30, 0xFE6F, 0xFF00, 0xFF60, 0xFFE0, 0xFFE6, 0x1F300,
        0x1F64F,
    0x1F680, 0x1F6FF, 0x1F900, 0x1F9FF, 0x1FA70, 0x1FAFF, 0x20000, 0x3FFFD
  };

  private Glyphs() {}

  /** Returns the code point to print for a code point; 0 to print nothing. */
  static int shown(int codePoint) {
    if (codePoint == 0xFEFF) {
      return 0;
    }
    if (codePoint == 0x200D) { // joins the parts of one emoji
      return codePoint;
    }
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          REPLACEMENT;
      default -> codePoint;
    };
  }

  /** Returns how many columns a printed code point takes. */
  static int width(int codePoint) {
    int type = Character.getType(codePoint);
    if (codePoint == 0
        || type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT) {
      return 0;
    }
    for (int i = 0; i < WIDE.length; i += 2) {
      if (codePoint >= WIDE[i] && codePoint <= WIDE[i + 1]) {
        return 2;
      }
    }
    return 1;
  }

  /** Returns a text that can be printed on one line. */
  static String printable(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .map(c -> c == '\t' ? ' ' : shown(c))
        .filter(c -> c != 0)
        .forEach(out::appendCodePoint);
    return out.toString();
  }
}
