package gripwright.export.text;

import java.util.regex.Pattern;

/**
 * Builds a text line by line: without trailing blanks, and with long sentences broken between
 * words. Not thread-safe.
 */
final class Page {

  /** Width of an ordinary terminal, in columns. */
  static final int WIDTH = 80;

  private static final int REPLACEMENT = 0xFFFD;

  private static final Pattern BLANKS = Pattern.compile(" +");

  private final StringBuilder text = new StringBuilder();

  /** Adds a line as it is, trailing blanks left out. */
  void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  /** Adds whole lines of another page. */
  void block(String lines) {
    text.append(lines);
  }

  /** Adds an empty line. */
  void gap() {
    text.append('\n');
  }

  /** Adds a sentence; further lines are indented to the start of its first word. */
  void wrapped(String lead, String sentence) {
    String indent = " ".repeat(lead.length());
    StringBuilder line = new StringBuilder(lead);
    boolean empty = true;
    for (String word : BLANKS.split(sentence.strip(), -1)) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line.setLength(0);
        line.append(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    line(line.toString());
  }

  /** Adds a sentence with further lines indented by two blanks. */
  void hanging(String sentence) {
    Page rest = new Page();
    rest.wrapped("  ", sentence);
    text.append(rest.toString().substring(2));
  }

  @Override
  public String toString() {
    return text.toString();
  }

  static String padRight(String cell, int width) {
    return cell + " ".repeat(Math.max(0, width - cell.length()));
  }

  static String padLeft(String cell, int width) {
    return " ".repeat(Math.max(0, width - cell.length())) + cell;
  }

  /** Returns a text written by a user, without control characters that would affect a terminal. */
  static String clean(String written) {
    StringBuilder out = new StringBuilder(written.length());
    written
        .codePoints()
        .map(c -> c == '\t' || c == '\n' ? ' ' : isObeyed(c) ? REPLACEMENT : c)
        .forEach(out::appendCodePoint);
    return out.toString();
  }

  private static boolean isObeyed(int codePoint) {
    int type = Character.getType(codePoint);
    return type == Character.CONTROL
        || type == Character.SURROGATE
        || (type == Character.FORMAT && codePoint != 0x200D);
  }
}
