package gripwright.tools.command;

import gripwright.trial.Allocation.Line;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The participants who were revealed so far, a CSV that is only ever added to. */
final class RevealedLog {

  private static final String HEADING = "stratum,number,arm,commitment";

  private final Path file;
  private final List<String> lines;

  private RevealedLog(Path file, List<String> lines) {
    this.file = file;
    this.lines = lines;
  }

  /**
   * Reads the log; one that doesn't exist is empty.
   *
   * @throws UsageException if it can't be read or is another kind of file
   */
  static RevealedLog read(Path file, String written) throws UsageException {
    if (!Files.exists(file)) {
      return new RevealedLog(file, new ArrayList<>(List.of(HEADING)));
    }
    try {
      List<String> lines = new ArrayList<>(Files.readAllLines(file, StandardCharsets.UTF_8));
      if (lines.isEmpty() || !lines.get(0).equals(HEADING)) {
        throw new UsageException("`" + written + "` is not a log of revealed participants");
      }
      return new RevealedLog(file, lines);
    } catch (IOException e) {
      throw new UsageException("cannot read `" + written + "`: " + e.getMessage());
    }
  }

  /** Returns the number of the last participant of a stratum who was revealed; 0 for none. */
  int last(String stratum) {
    int last = 0;
    for (String line : lines) {
      String[] fields = line.split(",", -1);
      if (fields.length == 4 && fields[0].equals(stratum) && fields[1].matches("\\d{1,9}")) {
        last = Math.max(last, Integer.parseInt(fields[1]));
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
    for (String line : lines.subList(1, lines.size())) {
      if (!line.isBlank() && !line.endsWith("," + commitment)) {
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
    lines.add(line.stratum() + "," + line.number() + "," + line.arm() + "," + commitment);
    Output.replace(file, String.join("\n", lines) + "\n");
  }
}
