package gripwright.export.text;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ReportedFinding;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.Caution;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.MissedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A season as a coach reads it: who it is for and what it works towards, how the athlete's fingers
 * lie in its grips, then each week on a screen of its own with its days in order, the loads of
 * every exercise, what there is to say about the week and what it adds up to, and the cautions at
 * the foot.
 *
 * <p>Plain characters only, at most 80 columns where names are of ordinary length, the same in
 * every locale. Stateless and thread-safe.
 */
public final class SeasonText {

  private static final String LEGEND =
      "Each line: grip and edge, sets x holds x time, rest between holds/sets, total load, kilos"
          + " added to or taken off body mass, share of the maximum.";

  private final CompiledPlan compiled;
  private final Map<String, ExerciseTable> tables = new HashMap<>();
  private final WeekNotes notes;
  private final Page page = new Page();

  private SeasonText(CompiledPlan compiled, Function<Finding, ReportedFinding> wording) {
    this.compiled = compiled;
    compiled.sessions().stream()
        .collect(Collectors.groupingBy(DatedSession::name))
        .forEach((name, sessions) -> tables.put(name, new ExerciseTable(sessions)));
    notes = new WeekNotes(compiled, wording);
  }

  /**
   * Returns the season of a compiled plan.
   *
   * @param compiled dated sessions
   * @param wording puts a finding into words
   */
  public static String of(CompiledPlan compiled, Function<Finding, ReportedFinding> wording) {
    return new SeasonText(compiled, wording).write();
  }

  private String write() {
    head();
    for (PlanWeek week : compiled.weeks()) {
      page.gap();
      week(week);
    }
    page.gap();
    for (Caution caution : compiled.cautions()) {
      page.wrapped("* ", Page.clean(Wording.english().say(caution)));
    }
    return page.toString();
  }

  private void head() {
    Plan plan = compiled.plan();
    page.wrapped("", Page.clean(plan.title().orElse(plan.name())).toUpperCase(Locale.ROOT));
    page.wrapped("", "for " + Page.clean(compiled.athlete().title()) + ", body mass " + bodyMass());
    page.wrapped(
        "",
        Page.dayAndYear(plan.from())
            + " to "
            + Page.dayAndYear(plan.to())
            + ", "
            + Page.count(plan.weeks(), "week")
            + ": "
            + plan.blocks().stream()
                .map(b -> b.name() + " " + b.weeks())
                .collect(Collectors.joining(", ")));
    plan.towards().ifPresent(goal -> page.wrapped("", goal(goal)));
    page.gap();
    page.wrapped("", LEGEND);
    HandTable hand = new HandTable(compiled);
    if (!hand.isEmpty()) {
      page.gap();
      hand.add(page);
    }
    LogNotes.addChanges(page, compiled);
    if (notes.hasWhole()) {
      page.gap();
      notes.addWhole(page);
    }
  }

  private Load bodyMass() {
    return compiled.sessions().isEmpty()
        ? compiled.athlete().bodyMass()
        : compiled.sessions().get(0).bodyMass();
  }

  private String goal(Plan.Goal goal) {
    long days = ChronoUnit.DAYS.between(compiled.plan().from(), goal.date());
    String left =
        Page.count(days / 7, "week") + (days % 7 == 0 ? "" : " and " + Page.count(days % 7, "day"));
    return "towards "
        + goal.title().map(t -> Page.clean(t) + ", ").orElse("")
        + Page.dayAndYear(goal.date())
        + (days > 0 ? ", " + left + " after the first day" : "")
        + compiled.plan().taper().map(SeasonText::taper).orElse("");
  }

  private static String taper(Plan.Taper taper) {
    return "; tapered over "
        + Page.count(taper.weeks(), "week")
        + " to "
        + Numbers.plain(taper.setsFraction() * 100, 1)
        + " % of the sets";
  }

  /** Something that happens on a day. */
  private record Entry(LocalDate date, int order, Runnable write) {}

  private void week(PlanWeek week) {
    String left =
        "WEEK "
            + week.number()
            + " of "
            + compiled.plan().weeks()
            + "  "
            + Page.day(week.from())
            + " - "
            + Page.day(week.to())
            + "  "
            + week.block()
            + blockWeek(week);
    List<String> marks = new ArrayList<>();
    if (week.eased()) {
      marks.add("EASED");
    }
    if (compiled.plan().taperIn(week.from()).isPresent()) {
      marks.add("TAPER");
    }
    if (week.away()) {
      marks.add("AWAY");
    }
    page.line(left + (marks.isEmpty() ? "" : "  " + String.join(", ", marks)));
    List<Entry> entries = entries(week);
    if (entries.isEmpty()) {
      page.line("  nothing planned");
    }
    entries.forEach(e -> e.write().run());
    notes.add(page, week.number());
    totals(week);
  }

  private String blockWeek(PlanWeek week) {
    return compiled.plan().blocks().stream()
        .filter(b -> b.name().equals(week.block()))
        .map(Block::weeks)
        .findFirst()
        .map(weeks -> " " + week.blockWeek() + "/" + weeks)
        .orElse("");
  }

  private List<Entry> entries(PlanWeek week) {
    List<Entry> entries = new ArrayList<>();
    for (Athlete.Absence absence : compiled.athlete().away()) {
      if (!absence.to().isBefore(week.from()) && !absence.from().isAfter(week.to())) {
        LocalDate first = absence.from().isBefore(week.from()) ? week.from() : absence.from();
        entries.add(new Entry(first, 0, () -> absence(absence)));
      }
    }
    for (LocalDate day : compiled.climbing()) {
      if (!day.isBefore(week.from()) && !day.isAfter(week.to())) {
        entries.add(new Entry(day, 1, () -> climbing(day)));
      }
    }
    for (DatedRetest retest : compiled.retests()) {
      if (retest.week() == week.number()) {
        entries.add(new Entry(retest.date(), 2, () -> retest(retest)));
      }
    }
    for (DatedSession session : compiled.sessionsOf(week.number())) {
      entries.add(new Entry(session.date(), 3, () -> session(session)));
    }
    for (MissedSession missed : compiled.missed()) {
      if (missed.planned().week() == week.number()) {
        LocalDate day = missed.planned().date();
        entries.add(new Entry(day, 3, () -> page.wrapped(lead(day), LogNotes.missed(missed))));
      }
    }
    entries.sort(Comparator.comparing(Entry::date).thenComparing(Entry::order));
    return entries;
  }

  private void absence(Athlete.Absence absence) {
    page.wrapped(
        "  ",
        "away "
            + Page.day(absence.from())
            + " - "
            + Page.day(absence.to())
            + absence.note().map(n -> ": " + Page.clean(n)).orElse(""));
  }

  private void climbing(LocalDate day) {
    String time =
        compiled.log().of(LogEntry.Climbed.class).stream()
            .filter(c -> c.date().equals(day))
            .map(LogEntry.Climbed::time)
            .findFirst()
            .or(() -> usualClimbing(day))
            .map(t -> ", " + t.toMinutes() + " min")
            .orElse("");
    page.line(lead(day) + "climbing" + time + ", hard");
  }

  private Optional<Duration> usualClimbing(LocalDate day) {
    return compiled.athlete().climbing().stream()
        .filter(c -> c.hard() && c.day() == day.getDayOfWeek())
        .map(Athlete.ClimbingDay::time)
        .findFirst();
  }

  private void retest(DatedRetest retest) {
    page.wrapped(
        lead(retest.date()),
        "test, hold "
            + ExerciseTable.time(retest.hold())
            + ": "
            + retest.setups().stream().map(ExerciseTable::setup).collect(Collectors.joining(", "))
            + (retest.insteadOf().isEmpty() ? "" : " (instead of " + retest.insteadOf() + ")"));
  }

  private void session(DatedSession session) {
    String protocols =
        session.exercises().stream()
            .map(PlannedExercise::protocol)
            .distinct()
            .collect(Collectors.joining(", "));
    page.wrapped(
        lead(session.date()),
        session.name()
            + LogNotes.head(session)
            + ", "
            + session.minutes()
            + " min"
            + (session.hard() ? ", hard" : "")
            + (protocols.isEmpty() ? "" : ": " + protocols));
    ExerciseTable table = Objects.requireNonNull(tables.get(session.name()));
    for (PlannedExercise exercise : session.exercises()) {
      table.add(page, exercise);
    }
    LogNotes.addDone(page, session, compiled.timeline());
  }

  private static String lead(LocalDate date) {
    return "  " + Page.padRight(Page.day(date), "Tue 26 Jan".length()) + "  ";
  }

  /**
   * Tells a week's load beside that of the last week that was not eased: an eased one says little.
   */
  private void totals(PlanWeek week) {
    if (week.loadIndex() <= 0) {
      return;
    }
    String change =
        compiled.weeks().stream()
            .filter(w -> w.number() < week.number() && w.loadIndex() > 0 && !w.eased())
            .max(Comparator.comparingInt(PlanWeek::number))
            .map(before -> change(before, week))
            .orElse("");
    page.line(
        "  total: "
            + Numbers.plain(week.timeUnderLoadSeconds(), 0)
            + " s under load, load "
            + Numbers.plain(week.loadIndex(), 0)
            + " kg s"
            + change);
  }

  private static String change(PlanWeek before, PlanWeek week) {
    double percent = (week.loadIndex() / before.loadIndex() - 1) * 100;
    String rounded = Numbers.plain(percent, 0);
    String sign = rounded.startsWith("-") || rounded.equals("0") ? "" : "+";
    return " (" + sign + rounded + " % on week " + before.number() + ")";
  }
}
