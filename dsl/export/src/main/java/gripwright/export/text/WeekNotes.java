package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import gripwright.finding.Topic;
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
 * The findings of a plan by week. A finding about several weeks appears in full in the first week.
 * Errors and warnings appear in short form in the others; advice and reminders appear once, with
 * their weeks.
 */
final class WeekNotes {

  /**
   * A finding and the weeks it concerns.
   *
   * @param finding the finding with its sentences
   * @param source file and line; empty if there are none
   * @param advice how to correct it; empty if there is none
   * @param once whether it appears in its first week only
   * @param weeks plan weeks it concerns; empty if it concerns the plan as a whole
   */
  private record Note(
      ReportedFinding finding,
      Optional<String> source,
      Optional<String> advice,
      boolean once,
      NavigableSet<Integer> weeks) {}

  private final List<Note> notes = new ArrayList<>();
  private final CompiledPlan plan;
  private final Words words;

  /** Plan week numbers, by block with week of the block, and by plan week. */
  private final Map<String, Integer> weeks = new LinkedHashMap<>();

  WeekNotes(CompiledPlan plan, Words words, Function<Finding, Optional<String>> source) {
    this.plan = plan;
    this.words = words;
    for (PlanWeek week : plan.weeks()) {
      weeks.put(week.block() + " " + week.blockWeek(), week.number());
      weeks.put(Integer.toString(week.number()), week.number());
    }
    for (Finding finding : plan.findings()) {
      List<ModelPath> places =
          finding.places().isEmpty() ? List.of(finding.place()) : finding.places();
      NavigableSet<Integer> shown = new TreeSet<>();
      places.forEach(place -> weekOf(place).ifPresent(shown::add));
      boolean once = finding.severity() == Severity.ADVICE || finding.isAbout(Topic.REHABILITATION);
      notes.add(
          new Note(
              words.report(finding), source.apply(finding), words.advice(finding), once, shown));
    }
  }

  /** Adds the findings about the plan as a whole. */
  void addWhole(Page page) {
    for (Note note : notes) {
      if (note.weeks().isEmpty()) {
        tell(page, "", note);
      }
    }
  }

  /** Returns whether there are findings about the plan as a whole. */
  boolean hasWhole() {
    return notes.stream().anyMatch(n -> n.weeks().isEmpty());
  }

  /** Adds the findings about a week: new ones in full, earlier ones in one line. */
  void add(Page page, int week) {
    Set<String> recalled = new LinkedHashSet<>();
    for (Note note : notes) {
      if (note.weeks().contains(week)) {
        if (note.weeks().first() == week) {
          tell(page, "  ", note);
        } else if (!note.once()) {
          recalled.add(
              "  "
                  + words.say(
                      "page.finding-again",
                      "finding",
                      head(note.finding(), words),
                      "week",
                      note.weeks().first()));
        }
      }
    }
    recalled.forEach(page::line);
  }

  private void tell(Page page, String indent, Note note) {
    ReportedFinding finding = note.finding();
    String file = note.source().map(s -> " (" + s + ")").orElse("");
    String head = head(finding, words);
    if (note.once() && note.weeks().size() > 1) {
      head = words.say("page.finding-in-weeks", "finding", head, "weeks", ranges(note.weeks()));
    }
    page.wrapped(indent, sentence(head, finding, words) + Page.clean(file));
    if (finding.waivedBecause() != null) {
      page.wrapped(
          indent + "  ", words.say("page.because", "reason", Page.clean(finding.waivedBecause())));
      return;
    }
    note.advice()
        .ifPresent(
            advice ->
                page.wrapped(
                    indent + "  ",
                    words.say(
                        "page.said-of",
                        "what",
                        words.say("common.fix"),
                        "sentence",
                        Page.clean(advice))));
  }

  /** Writes numbers of weeks, as in {@code 1-4, 6}. */
  private String ranges(NavigableSet<Integer> weeks) {
    List<String> ranges = new ArrayList<>();
    for (Integer first : weeks) {
      if (weeks.contains(first - 1)) {
        continue;
      }
      int last = first;
      while (weeks.contains(last + 1)) {
        last++;
      }
      ranges.add(
          last == first
              ? first.toString()
              : words.say("page.week-range", "from", first, "to", last));
    }
    return words.commas(ranges);
  }

  /** Returns the severity and code of a finding. */
  private static String head(ReportedFinding finding, Words words) {
    return words.say(
        finding.waivedBecause() == null ? "page.finding" : "page.finding-waived",
        "severity",
        words.say("common." + finding.severity().word()),
        "code",
        finding.code());
  }

  /** Returns a finding in one line: severity, code and sentence. */
  static String sentence(ReportedFinding finding, Words words) {
    return sentence(head(finding, words), finding, words);
  }

  private static String sentence(String head, ReportedFinding finding, Words words) {
    return words.say("page.said-of", "what", head, "sentence", Page.clean(finding.message()));
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
    // Without a block, the number is that of a plan week.
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
