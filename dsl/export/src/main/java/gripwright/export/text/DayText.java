package gripwright.export.text;

import gripwright.quantity.Numbers;
import gripwright.schedule.Caution;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Derivation;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * One day of a compiled plan with the chain behind each of its numbers: why it lies on that day,
 * and for every exercise what each step of the reckoning gave and what it was made from.
 *
 * <p>Plain characters only, the same in every locale. Stateless and thread-safe.
 */
public final class DayText {

  private static final String INDENT = "    ";

  /** Widest first column; a longer step takes its room from the third. */
  private static final int STEP_WIDTH = 24;

  private final CompiledPlan compiled;
  private final LocalDate date;
  private final Page page = new Page();

  private DayText(CompiledPlan compiled, LocalDate date) {
    this.compiled = compiled;
    this.date = date;
  }

  /**
   * Returns what a plan has on a day and where its numbers come from; a sentence that names the
   * nearest days with a session if it has nothing.
   *
   * @param compiled dated sessions
   * @param date any day
   */
  public static String of(CompiledPlan compiled, LocalDate date) {
    return new DayText(compiled, date).write();
  }

  private String write() {
    page.wrapped("", Page.dayAndYear(date) + ", " + Page.clean(compiled.athlete().title()));
    page.wrapped("", "plan " + compiled.plan().name() + where());
    List<DatedSession> sessions = compiled.sessionsOn(date);
    List<DatedRetest> retests =
        compiled.retests().stream().filter(r -> r.date().equals(date)).toList();
    if (compiled.climbing().contains(date)) {
      page.gap();
      page.line("hard climbing, which counts as a hard day for every finger");
    }
    retests.forEach(this::retest);
    sessions.forEach(this::session);
    compiled
        .schedule()
        .missedOn(date)
        .forEach(
            missed -> {
              page.gap();
              page.wrapped("", LogNotes.missed(missed));
            });
    LogNotes.addChanges(page, compiled.on(date));
    if (sessions.isEmpty() && retests.isEmpty() && compiled.schedule().missedOn(date).isEmpty()) {
      page.gap();
      page.wrapped("", nothing());
    }
    page.gap();
    for (Caution caution : compiled.on(date).cautions()) {
      page.wrapped("* ", Page.clean(Wording.english().say(caution)));
    }
    return page.toString();
  }

  private String where() {
    return compiled.weeks().stream()
        .filter(w -> !date.isBefore(w.from()) && !date.isAfter(w.to()))
        .findFirst()
        .map(DayText::where)
        .orElse("");
  }

  private static String where(PlanWeek week) {
    return ", week "
        + week.number()
        + ", block "
        + week.block()
        + " week "
        + week.blockWeek()
        + (week.eased() ? ", eased" : "")
        + (week.away() ? ", away" : "");
  }

  private void retest(DatedRetest retest) {
    page.gap();
    page.wrapped(
        "",
        "test, hold "
            + ExerciseTable.time(retest.hold())
            + ": "
            + retest.setups().stream().map(ExerciseTable::setup).collect(Collectors.joining(", ")));
    page.wrapped(
        "  ", "on this day because: " + Page.clean(Wording.english().say(retest.placedBecause())));
    if (!retest.insteadOf().isEmpty()) {
      page.wrapped("  ", "it takes the place of " + retest.insteadOf());
    }
  }

  private void session(DatedSession session) {
    page.gap();
    page.wrapped(
        "",
        session.name()
            + LogNotes.head(session)
            + ", "
            + session.minutes()
            + " min"
            + (session.hard() ? ", hard" : ""));
    page.wrapped(
        "  ", "on this day because: " + Page.clean(Wording.english().say(session.placedBecause())));
    ExerciseTable table = new ExerciseTable(List.of(session));
    int steps =
        session.exercises().stream()
            .flatMap(e -> e.why().stream())
            .mapToInt(w -> Wording.english().step(w).length())
            .max()
            .orElse(0);
    int amounts =
        session.exercises().stream()
            .flatMap(e -> e.why().stream())
            .mapToInt(w -> amount(w).length())
            .max()
            .orElse(0);
    for (PlannedExercise exercise : session.exercises()) {
      page.gap();
      page.line("  " + exercise.order() + ". " + exercise.protocol());
      table.add(page, exercise);
      for (Derivation link : exercise.why()) {
        page.wrapped(
            INDENT
                + Page.padRight(Wording.english().step(link), Math.min(steps, STEP_WIDTH))
                + "  "
                + Page.padLeft(amount(link), amounts)
                + "  ",
            Page.clean(Wording.english().say(link)));
      }
    }
  }

  private static String amount(Derivation link) {
    return Numbers.plain(link.value(), 2)
        + (Wording.english().unit(link).isEmpty() ? "" : " " + Wording.english().unit(link));
  }

  private String nothing() {
    SortedSet<LocalDate> days = new TreeSet<>();
    compiled.sessions().forEach(s -> days.add(s.date()));
    compiled.retests().forEach(r -> days.add(r.date()));
    if (compiled.athlete().isAway(date)) {
      return "away: nothing is planned.";
    }
    Optional<LocalDate> before =
        days.headSet(date).isEmpty() ? Optional.empty() : Optional.of(days.headSet(date).last());
    Optional<LocalDate> after =
        days.tailSet(date).isEmpty() ? Optional.empty() : Optional.of(days.tailSet(date).first());
    return "nothing is planned on this day"
        + before.map(d -> "; the last session before is on " + Page.dayAndYear(d)).orElse("")
        + after.map(d -> "; the next is on " + Page.dayAndYear(d)).orElse("")
        + ".";
  }
}
