package gripwright.tools.command;

import gripwright.export.csv.CsvRows;
import gripwright.trial.Allocation.Line;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The participants who were revealed so far, a CSV that is only ever added to. */
final class RevealedLog {

  private static final List<String> HEADING = List.of("stratum", "number", "arm", "commitment");
  private static final int STRATUM = 0;
  private static final int NUMBER = 1;
  private static final int COMMITMENT = 3;

  private final Path file;
  private final List<List<String>> rows;

  private RevealedLog(Path file, List<List<String>> rows) {
    this.file = file;
    this.rows = new ArrayList<>(rows);
  }

  /**
   * Reads the log; one that doesn't exist is empty.
   *
   * @throws UsageException if it can't be read or is another kind of file
   */
  static RevealedLog read(Path file, String written) throws UsageException {
    if (!Files.exists(file)) {
      return new RevealedLog(file, List.of(HEADING));
    }
    String text;
    try {
      text = Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UsageException("cannot read `" + written + "`: " + e.getMessage());
    }
    List<List<String>> rows =
        CsvRows.of(text.startsWith("\uFEFF") ? text.substring(1) : text).orElse(List.of());
    if (rows.isEmpty() || !rows.get(0).equals(HEADING)) {
      throw new UsageException("`" + written + "` is not a log of revealed participants");
    }
    for (List<String> row : rows.subList(1, rows.size())) {
      if (row.size() != HEADING.size() || !row.get(NUMBER).matches("[1-9]\\d{0,8}")) {
        throw new UsageException(
            "`"
                + written
                + "` has a line that is no revealed participant: `"
                + String.join(",", row)
                + "`");
      }
    }
    return new RevealedLog(file, rows);
  }

  private List<List<String>> participants() {
    return rows.subList(1, rows.size());
  }

  /** Returns the number of the last participant of a stratum who was revealed; 0 for none. */
  int last(String stratum) {
    int last = 0;
    for (List<String> row : participants()) {
      if (row.get(STRATUM).equals(stratum)) {
        last = Math.max(last, Integer.parseInt(row.get(NUMBER)));
      }
    }
    return last;
  }

  /**
   * Checks that everybody in it was revealed from the same list.
   *
   * @throws UsageException if a line has another commitment
   */
  void checkList(String commitment) throws UsageException {
    for (List<String> row : participants()) {
      if (!row.get(COMMITMENT).equals(commitment)) {
        throw new UsageException(
            "`"
                + file.getFileName()
                + "` was begun with another list: key, arms, strata and number of participants"
                + " must stay as they were");
      }
    }
  }

  /** Adds a participant. */
  void append(Line line, String commitment) throws UsageException {
    rows.add(List.of(line.stratum(), Integer.toString(line.number()), line.arm(), commitment));
    Output.replace(file, CsvRows.lines(rows));
  }
}
