package gripwright.export.csv;

import java.util.List;

/**
 * Builds CSV text by RFC 4180: fields separated by commas, lines that end in carriage return and
 * line feed, and quotes where a field needs them. Not thread-safe.
 */
final class CsvText {

  private final StringBuilder text = new StringBuilder();

  /** Adds a line. */
  void line(List<String> fields) {
    for (int i = 0; i < fields.size(); i++) {
      text.append(i == 0 ? "" : ",").append(quoted(fields.get(i)));
    }
    text.append("\r\n");
  }

  private static String quoted(String field) {
    boolean needed = field.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
    return needed ? '"' + field.replace("\"", "\"\"") + '"' : field;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
