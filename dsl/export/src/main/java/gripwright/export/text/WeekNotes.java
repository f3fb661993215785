package gripwright.export.text;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.ReportedFinding;
import gripwright.schedule.PlanWeek;
import gripwright.season.CompiledPlan;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The findings of a plan, sorted into the weeks they are about. A finding about several weeks is
 * told in full in the first and recalled in the others.
 */
final class WeekNotes {

  /**
   * A finding and where it shows.
   *
   * @param finding worded
   * @param weeks plan weeks it is about; empty if about the plan as a whole
   */
  private record Note(ReportedFinding finding, NavigableSet<Integer> weeks) {}

  private final List<Note> notes = new ArrayList<>();
  private final CompiledPlan plan;

  /** Plan weeks, by block and week of the block and by themselves. */
  private final Map<String, Integer> weeks = new LinkedHashMap<>();

  WeekNotes(CompiledPlan plan, Function<Finding, ReportedFinding> wording) {
    this.plan = plan;
    for (PlanWeek week : plan.weeks()) {
      weeks.put(week.block() + " " + week.blockWeek(), week.number());
      weeks.put(Integer.toString(week.number()), week.number());
    }
    for (Finding finding : plan.findings()) {
      List<ModelPath> places =
          finding.places().isEmpty() ? List.of(finding.place()) : finding.places();
      NavigableSet<Integer> shown = new TreeSet<>();
      places.forEach(place -> weekOf(place).ifPresent(shown::add));
      notes.add(new Note(wording.apply(finding), shown));
    }
  }

  /** Adds what is said about the plan as a whole. */
  void addWhole(Page page) {
    for (Note note : notes) {
      if (note.weeks().isEmpty()) {
        tell(page, "", note.finding());
      }
    }
  }

  /** Tells whether something is said about the plan as a whole. */
  boolean hasWhole() {
    return notes.stream().anyMatch(n -> n.weeks().isEmpty());
  }

  /** Adds what is said about a week: what is new in full, what was said before in a line. */
  void add(Page page, int week) {
    Set<String> recalled = new LinkedHashSet<>();
    for (Note note : notes) {
      if (note.weeks().contains(week)) {
        if (note.weeks().first() == week) {
          tell(page, "  ", note.finding());
        } else {
          recalled.add("  " + head(note.finding()) + ": as in week " + note.weeks().first());
        }
      }
    }
    recalled.forEach(page::line);
  }

  private static void tell(Page page, String indent, ReportedFinding finding) {
    String lead = indent + head(finding) + ": ";
    String sentence = Page.clean(finding.message());
    String file = finding.file() == null ? "" : " (" + finding.file() + ":" + finding.line() + ")";
    page.wrapped(indent, lead.strip() + " " + sentence + Page.clean(file));
    if (finding.waivedBecause() != null) {
      page.wrapped(indent + "  ", "because: " + Page.clean(finding.waivedBecause()));
    }
  }

  /** Returns how grave a finding is, with its code. */
  static String head(ReportedFinding finding) {
    return (finding.waivedBecause() == null ? "" : "waived ")
        + finding.severity().word()
        + "["
        + finding.code()
        + "]";
  }

  private OptionalInt weekOf(ModelPath place) {
    Optional<LocalDate> date = step(place, "date").flatMap(WeekNotes::parse);
    if (date.isPresent()) {
      return plan.weeks().stream()
          .filter(w -> !date.get().isBefore(w.from()) && !date.get().isAfter(w.to()))
          .mapToInt(PlanWeek::number)
          .findFirst();
    }
    Optional<String> week = step(place, "week");
    if (week.isEmpty()) {
      return OptionalInt.empty();
    }
    // Without a block, the week is one of the plan.
    String block = step(place, "block").map(b -> b + " ").orElse("");
    Integer found = weeks.get(block + week.get());
    return found == null ? OptionalInt.empty() : OptionalInt.of(found);
  }

  private static Optional<String> step(ModelPath place, String kind) {
    return place.steps().stream()
        .filter(s -> s.kind().equals(kind))
        .map(ModelPath.Step::name)
        .findFirst();
  }

  private static Optional<LocalDate> parse(String date) {
    try {
      return Optional.of(LocalDate.parse(date));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
