package gripwright.export.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.DuplicateHeaderMode;

/**
 * Builds and reads CSV text by RFC 4180: fields separated by commas, lines that end in carriage
 * return and line feed, and quotes where a field needs them. Callers never see an exception or a
 * type of the CSV library. Not thread-safe.
 */
final class CsvText {

  /** The format; a header is a line like the others. */
  static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW)
          .setIgnoreEmptyLines(true)
          .get();

  private final StringBuilder text = new StringBuilder();
  private final CSVPrinter csv;

  CsvText() {
    this(FORMAT);
  }

  private CsvText(CSVFormat format) {
    try {
      csv = new CSVPrinter(text, format);
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  /** Returns a text whose lines end in a line feed alone. */
  static CsvText withLineFeeds() {
    return new CsvText(FORMAT.builder().setRecordSeparator('\n').get());
  }

  /** Adds a line. */
  void line(List<String> fields) {
    try {
      csv.printRecord(fields);
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  private static UncheckedIOException impossible(IOException e) {
    return new UncheckedIOException("writing to memory failed", e);
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
