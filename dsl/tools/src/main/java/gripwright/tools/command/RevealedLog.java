package gripwright.tools.command;

import gripwright.export.csv.CsvRows;
import gripwright.trial.Allocation.Line;
import gripwright.trial.Allocation.Revealed;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The participants who were revealed so far, a CSV that is only ever added to. */
final class RevealedLog {

  private static final List<String> HEADING = List.of("stratum", "number", "arm", "commitment");

  private final Path file;
  private final List<Revealed> participants;

  private RevealedLog(Path file, List<Revealed> participants) {
    this.file = file;
    this.participants = participants;
  }

  /**
   * Reads the log; one that doesn't exist is empty.
   *
   * @throws UsageException if it can't be read or is another kind of file
   */
  static RevealedLog read(Path file, String written) throws UsageException {
    List<Revealed> participants = new ArrayList<>();
    if (!Files.exists(file)) {
      return new RevealedLog(file, participants);
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
      participants.add(
          revealed(row)
              .orElseThrow(
                  () ->
                      new UsageException(
                          "`"
                              + written
                              + "` has a line that is no revealed participant: `"
                              + String.join(",", row)
                              + "`")));
    }
    return new RevealedLog(file, participants);
  }

  private static Optional<Revealed> revealed(List<String> row) {
    if (row.size() != HEADING.size() || !row.get(1).matches("\\d{1,9}")) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Revealed(row.get(0), Integer.parseInt(row.get(1)), row.get(2), row.get(3)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** Returns the number of the last participant of a stratum who was revealed; 0 for none. */
  int last(String stratum) {
    return participants.stream()
        .filter(each -> each.stratum().equals(stratum))
        .mapToInt(Revealed::number)
        .max()
        .orElse(0);
  }

  /**
   * Checks that everybody in it was revealed from the same list.
   *
   * @throws UsageException if a line has another commitment
   */
  void checkList(String commitment) throws UsageException {
    if (!participants.stream().allMatch(each -> each.commitment().equals(commitment))) {
      throw new UsageException(
          "`"
              + file.getFileName()
              + "` was begun with another list: key, arms, strata and number of participants"
              + " must stay as they were");
    }
  }

  /**
   * Returns everybody in it, for publication.
   *
   * @param arms names of the arms of the trial
   * @throws UsageException if a line has an arm that is none of these, or another list than the
   *     first, or a participant wasn't revealed after the one before
   */
  List<Revealed> published(Collection<String> arms) throws UsageException {
    Map<String, Integer> last = new HashMap<>();
    for (Revealed each : participants) {
      checkList(each.commitment());
      if (!arms.contains(each.arm())) {
        throw new UsageException(
            "`"
                + file.getFileName()
                + "` has an arm `"
                + each.arm()
                + "` that the comparison hasn't: it has "
                + String.join(", ", arms));
      }
      if (last.merge(each.stratum(), 1, Integer::sum) != each.number()) {
        throw new UsageException(
            "`"
                + file.getFileName()
                + "` lacks participant "
                + last.get(each.stratum())
                + " of `"
                + each.stratum()
                + "`, or has one twice: participants are revealed one after the other");
      }
    }
    return List.copyOf(participants);
  }

  /** Adds a participant. */
  void append(Line line, String commitment) throws UsageException {
    participants.add(new Revealed(line.stratum(), line.number(), line.arm(), commitment));
    List<List<String>> rows = new ArrayList<>(List.of(HEADING));
    for (Revealed each : participants) {
      rows.add(
          List.of(each.stratum(), Integer.toString(each.number()), each.arm(), each.commitment()));
    }
    Output.replace(file, CsvRows.lines(rows));
  }
}
