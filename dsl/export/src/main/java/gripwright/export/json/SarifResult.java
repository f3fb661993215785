package gripwright.export.json;

import gripwright.finding.ReportedFinding;
import java.util.List;
import java.util.Optional;

/**
 * A finding with the additional data that SARIF needs. Immutable.
 *
 * @param finding the finding with its sentences
 * @param region its characters in its file; empty if the finding has no file, or its file could not
 *     be read
 * @param places all places in the model with the same mistake, as text; may be empty
 * @param related other places of the text that help to understand it
 */
public record SarifResult(
    ReportedFinding finding, Optional<Region> region, List<String> places, List<Related> related) {

  /** Copies the places. */
  public SarifResult {
    places = List.copyOf(places);
    related = List.copyOf(related);
  }

  /**
   * A stretch of characters. Lines and columns count from 1; columns are UTF-16 units, and a byte
   * order mark takes none.
   *
   * @param startLine line of the first character
   * @param startColumn column of the first character
   * @param endLine line of the last character
   * @param endColumn the column after the last character
   */
  public record Region(int startLine, int startColumn, int endLine, int endColumn) {}

  /**
   * Another place.
   *
   * @param words its description, such as {@code first defined here}
   * @param file path relative to the project root, with {@code /}
   * @param region its characters
   */
  public record Related(String words, String file, Region region) {}
}
