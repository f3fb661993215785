package gripwright.published;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A row of {@code values.csv}: a published value, and what is done with it.
 *
 * @param id name of the row, unique
 * @param section what it is about
 * @param quantity what was measured or calculated
 * @param value as published: a number, several, a range, an order, or a rule
 * @param unit of the value
 * @param tolerance the source's own spread
 * @param citation the publication
 * @param provenance {@code seen} where the publication was read; {@code derived} where the value
 *     follows from published ones by arithmetic
 * @param compared false if nothing of the library is compared with it
 * @param reason why not, empty if it is compared
 */
record PublishedValue(
    String id,
    String section,
    String quantity,
    String value,
    String unit,
    String tolerance,
    String citation,
    String provenance,
    boolean compared,
    String reason) {

  private static final int COLUMNS = 10;
  private static final Pattern AUTHOR_AND_YEAR =
      Pattern.compile("^(\\p{Lu}[\\p{L}-]+(?: Law)?) \\p{Lu}{1,3}\\b.*?\\b((?:19|20)\\d\\d)\\b");

  /** Returns all rows in the order of the file. */
  static List<PublishedValue> all() {
    return rows("values.csv").stream().map(PublishedValue::of).toList();
  }

  private static PublishedValue of(List<String> cells) {
    if (cells.size() != COLUMNS) {
      throw new IllegalStateException("not a row of values.csv: " + cells);
    }
    return new PublishedValue(
        cells.get(0),
        cells.get(1),
        cells.get(2),
        cells.get(3),
        cells.get(4),
        cells.get(5),
        cells.get(6),
        cells.get(7),
        cells.get(8).equals("compared"),
        cells.get(9));
  }

  /** Tells whether the value was read in the publication itself, or follows from one that was. */
  boolean verified() {
    return provenance.equals("seen")
        || provenance.equals("derived; seen")
        || provenance.equals("common practice");
  }

  /** Returns the first author and the year, or the whole citation where it has no such. */
  String shortSource() {
    Matcher author = AUTHOR_AND_YEAR.matcher(citation);
    if (!author.find()) {
      return citation;
    }
    String name = author.group(1) + " " + author.group(2);
    return citation.contains("(abstract)") ? name + " (abstract)" : name;
  }

  /** Returns the lines of a table beside this class but the first, split into cells. */
  static List<List<String>> rows(String file) {
    List<List<String>> rows = new ArrayList<>();
    try (InputStream bytes =
            Objects.requireNonNull(PublishedValue.class.getResourceAsStream(file), file);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      lines.lines().skip(1).map(PublishedValue::cells).forEach(rows::add);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return rows;
  }

  /** Splits a line of CSV; a cell with a comma is in quotes. */
  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (char c : line.toCharArray()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }
}
