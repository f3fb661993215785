package gripwright.export.csv;

import gripwright.export.csv.TidyTable.Column;
import gripwright.trial.Allocation;
import gripwright.trial.Allocation.Label;
import gripwright.trial.Allocation.Revealed;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;

/** Tables of a trial's allocation. Stateless and thread-safe. */
public final class AllocationCsv {

  /** What the table of {@link #assessments} is about, as a title. */
  public static final String ASSESSMENTS_TITLE = "Participants by label, with their visits";

  private AllocationCsv() {}

  /**
   * Returns the table for those who measure: every participant at every visit, by label. It has
   * neither arm nor block, stratum or number, and rows are in the order of the labels; the same key
   * and number of participants give the same table, whatever the arms are.
   *
   * @param visits the same for everybody, in their order: days, or names such as {@code before}
   * @throws IllegalArgumentException if there is no visit or one twice, a name is blank or has
   *     control characters, or days are not in order
   */
  public static TidyTable assessments(Allocation allocation, List<String> visits) {
    boolean days = check(visits);
    TidyTable.Builder table =
        TidyTable.named("assessments", "A visit of a participant, by label.")
            .column(
                column("label", TidyTable.Type.STRING, "Stands for a participant; it says no arm."))
            .column(column("visit", TidyTable.Type.INTEGER, "Number of the visit, from 1."))
            .column(
                days
                    ? column("day", TidyTable.Type.DATE, "Day of the visit.")
                    : column("name", TidyTable.Type.STRING, "Name of the visit."));
    List<String> labels =
        allocation.labels().stream().map(Label::text).sorted(Comparator.naturalOrder()).toList();
    for (String label : labels) {
      for (int visit = 1; visit <= visits.size(); visit++) {
        table.row(List.of(label, Integer.toString(visit), visits.get(visit - 1)));
      }
    }
    return table.build();
  }

  /**
   * Returns the table of the participants who were revealed, and of nobody else: it can be
   * published with the results.
   *
   * @param comparison its name
   * @param revealed in the order of their inclusion
   */
  public static TidyTable revealed(String comparison, List<Revealed> revealed) {
    TidyTable.Builder table =
        TidyTable.named("allocation", "A participant whose arm was revealed.")
            .column(column("comparison", TidyTable.Type.STRING, "Name of the comparison."))
            .column(column("stratum", TidyTable.Type.STRING, "Name of the stratum."))
            .column(
                column(
                    "number",
                    TidyTable.Type.INTEGER,
                    "Number of the participant in the stratum, in the order of inclusion."))
            .column(column("arm", TidyTable.Type.STRING, "Name of the arm."))
            .column(column("commitment", TidyTable.Type.STRING, "SHA-256 of key, salt and list."));
    for (Revealed each : revealed) {
      table.row(
          List.of(
              comparison,
              each.stratum(),
              Integer.toString(each.number()),
              each.arm(),
              each.commitment()));
    }
    return table.build();
  }

  /** Returns whether all visits are days. */
  private static boolean check(List<String> visits) {
    if (visits.isEmpty() || new HashSet<>(visits).size() < visits.size()) {
      throw new IllegalArgumentException("one visit or more, each once: " + visits);
    }
    for (String visit : visits) {
      if (visit.isBlank() || visit.chars().anyMatch(Character::isISOControl)) {
        throw new IllegalArgumentException("not the name of a visit: \"" + visit + "\"");
      }
    }
    boolean days = visits.stream().allMatch(AllocationCsv::isDay);
    if (days && !visits.stream().sorted().toList().equals(visits)) {
      throw new IllegalArgumentException("visits are not in the order of their days: " + visits);
    }
    return days;
  }

  private static boolean isDay(String visit) {
    if (!visit.matches("\\d{4}-\\d{2}-\\d{2}")) {
      return false;
    }
    try {
      return LocalDate.parse(visit).getYear() > 0;
    } catch (DateTimeParseException e) {
      return false;
    }
  }

  private static Column column(String name, TidyTable.Type type, String description) {
    return new Column(name, type, "", description, "", false);
  }
}
