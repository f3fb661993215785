package gripwright.export.text;

import gripwright.export.words.Words;
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
import java.util.stream.Stream;

/**
 * Writes one day of a compiled plan with the steps behind each of its numbers: why a session is on
 * that day, and for every exercise what each step of the calculation gave and from which values.
 *
 * <p>Plain text only; words and date formats come from a message bundle. Stateless and thread-safe.
 */
public final class DayText {

  private static final String INDENT = "    ";

  /** Greatest width of the first column; a longer step takes space from the third. */
  private static final int STEP_WIDTH = 24;

  private final CompiledPlan compiled;
  private final LocalDate date;
  private final Words words;
  private final LogNotes log;
  private final Page page = new Page();

  private DayText(CompiledPlan compiled, LocalDate date, Words words) {
    this.compiled = compiled;
    this.date = date;
    this.words = words;
    log = new LogNotes(words);
  }

  /**
   * Returns the sessions of a day and where their numbers come from; if there is none, a sentence
   * that names the nearest days with a session.
   *
   * @param compiled dated sessions
   * @param date any day
   * @param wording words of the text
   */
  public static String of(CompiledPlan compiled, LocalDate date, Wording wording) {
    return new DayText(compiled, date, new Words(wording)).write();
  }

  private String write() {
    page.wrapped(
        "",
        words.say(
            "season.day",
            "date",
            words.dayAndYear(date),
            "athlete",
            Page.clean(compiled.athlete().title())));
    page.wrapped("", where());
    List<DatedSession> sessions = compiled.sessionsOn(date);
    List<DatedRetest> retests =
        compiled.retests().stream().filter(r -> r.date().equals(date)).toList();
    if (compiled.climbing().contains(date)) {
      page.gap();
      page.line(words.say("season.day-climbing"));
    }
    retests.forEach(this::retest);
    sessions.forEach(this::session);
    compiled
        .schedule()
        .missedOn(date)
        .forEach(
            missed -> {
              page.gap();
              page.wrapped("", log.missed(missed));
            });
    log.addChanges(page, compiled.on(date));
    if (sessions.isEmpty() && retests.isEmpty() && compiled.schedule().missedOn(date).isEmpty()) {
      page.gap();
      page.wrapped("", nothing());
    }
    page.gap();
    for (Caution caution : compiled.on(date).cautions()) {
      page.wrapped("* ", Page.clean(words.of(caution)));
    }
    return page.toString();
  }

  private String where() {
    return compiled.weeks().stream()
        .filter(w -> !date.isBefore(w.from()) && !date.isAfter(w.to()))
        .findFirst()
        .map(this::where)
        .orElseGet(() -> words.say("season.day-plan", "plan", compiled.plan().name()));
  }

  private String where(PlanWeek week) {
    String where =
        words.say(
            "season.day-week",
            "plan",
            compiled.plan().name(),
            "week",
            week.number(),
            "block",
            week.block(),
            "week-of-block",
            week.blockWeek());
    String eased = week.eased() ? words.say("season.day-eased", "where", where) : where;
    return week.away() ? words.say("season.day-away", "where", eased) : eased;
  }

  private void retest(DatedRetest retest) {
    page.gap();
    page.wrapped(
        "",
        LogNotes.at(
            words,
            retest.time(),
            retest.place(),
            words.say(
                "season.test",
                "what",
                new TestWords(words).what(retest),
                "setups",
                new TestWords(words).setups(retest))));
    page.wrapped(
        "  ",
        words.say("season.day-because", "reason", Page.clean(words.of(retest.placedBecause()))));
    if (!retest.insteadOf().isEmpty()) {
      page.wrapped("  ", words.say("season.day-instead", "session", retest.insteadOf()));
    }
    new TestWords(words)
        .addBody(page, "  ", retest, new ExerciseTable(words, Stream.of(retest.exercises())));
  }

  private void session(DatedSession session) {
    page.gap();
    page.wrapped("", log.head(session));
    page.wrapped(
        "  ",
        words.say("season.day-because", "reason", Page.clean(words.of(session.placedBecause()))));
    log.addTexts(page, "  ", session);
    ExerciseTable table = new ExerciseTable(words, session.exercises().stream().map(List::of));
    int steps =
        session.exercises().stream()
            .flatMap(e -> e.why().stream())
            .mapToInt(w -> words.step(w).length())
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
      page.line(
          "  "
              + words.say(
                  "season.day-exercise",
                  "number",
                  exercise.order(),
                  "protocol",
                  exercise.protocol()));
      table.add(page, exercise);
      for (Derivation link : exercise.why()) {
        page.wrapped(
            INDENT
                + Page.padRight(words.step(link), Math.min(steps, STEP_WIDTH))
                + "  "
                + Page.padLeft(amount(link), amounts)
                + "  ",
            Page.clean(words.of(link)));
      }
    }
  }

  private String amount(Derivation link) {
    String unit = words.unit(link);
    return Numbers.plain(link.value(), 2) + (unit.isEmpty() ? "" : " " + unit);
  }

  private String nothing() {
    SortedSet<LocalDate> days = new TreeSet<>();
    compiled.sessions().forEach(s -> days.add(s.date()));
    compiled.retests().forEach(r -> days.add(r.date()));
    if (compiled.athlete().isAway(date)) {
      return words.say("season.day-absent");
    }
    Optional<LocalDate> before =
        days.headSet(date).isEmpty() ? Optional.empty() : Optional.of(days.headSet(date).last());
    Optional<LocalDate> after =
        days.tailSet(date).isEmpty() ? Optional.empty() : Optional.of(days.tailSet(date).first());
    String key =
        before.isPresent()
            ? after.isPresent() ? "season.day-nothing-between" : "season.day-nothing-after"
            : after.isPresent() ? "season.day-nothing-before" : "season.day-nothing";
    return words.say(
        key,
        "before",
        before.map(words::dayAndYear).orElse(""),
        "after",
        after.map(words::dayAndYear).orElse(""));
  }
}
