package gripwright.export.csv;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads and writes CSV by RFC 4180; lines that are read may end in any way. Stateless and
 * thread-safe.
 *
 * @since 1.0
 */
public final class CsvRows {

  private CsvRows() {}

  /**
   * Returns the fields of each line, the header included; empty if the text is no CSV. Empty lines
   * are left out.
   */
  public static Optional<List<List<String>>> of(String text) {
    List<List<String>> rows = new ArrayList<>();
    try {
      for (CSVRecord line : CsvText.FORMAT.parse(new StringReader(text))) {
        rows.add(List.copyOf(line.toList()));
      }
    } catch (IOException | UncheckedIOException e) {
      return Optional.empty();
    }
    return Optional.of(rows);
  }

  /** Returns rows as CSV. */
  public static String text(List<List<String>> rows) {
    return text(rows, new CsvText());
  }

  /** Returns rows as CSV whose lines end in a line feed alone, for a file that people read. */
  public static String lines(List<List<String>> rows) {
    return text(rows, CsvText.withLineFeeds());
  }

  private static String text(List<List<String>> rows, CsvText text) {
    rows.forEach(text::line);
    return text.toString();
  }
}
