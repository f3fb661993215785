package gripwright.export.text;

import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.export.words.Words;
import gripwright.finding.Finding;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.Caution;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.MissedSession;
import gripwright.schedule.Note;
import gripwright.schedule.PlanWeek;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Writes a season for a coach: athlete and goal, the joint angles in each grip, then each week with
 * its days in order, the loads of every exercise, the findings about the week and its totals, and
 * the cautions at the end. Equal sessions of a week are one entry with their days.
 *
 * <p>Plain text only, at most 80 columns if names are of ordinary length; words and date formats
 * come from a message bundle. Stateless and thread-safe.
 */
public final class SeasonText {

  private final CompiledPlan compiled;
  private final ExerciseTable testTable;
  private final Words words;
  private final int dayWidth;
  private final WeekNotes notes;
  private final LogNotes log;
  private final SessionEntries sessions;
  private final Page page = new Page();

  private SeasonText(
      CompiledPlan compiled, Words words, Function<Finding, Optional<String>> source) {
    this.compiled = compiled;
    this.words = words;
    dayWidth = words.dayWidth();
    log = new LogNotes(words);
    testTable = new ExerciseTable(words, compiled.retests().stream().map(DatedRetest::exercises));
    sessions = new SessionEntries(compiled, words);
    notes = new WeekNotes(compiled, words, source);
  }

  /**
   * Returns the season of a compiled plan.
   *
   * @param compiled dated sessions
   * @param wording words of the text and of its findings
   * @param source file and line that a finding is about, such as {@code winter.grip:12}; empty
   *     where there is no text
   */
  public static String of(
      CompiledPlan compiled, Wording wording, Function<Finding, Optional<String>> source) {
    return new SeasonText(compiled, new Words(wording), source).write();
  }

  /**
   * Returns the text that replaces a season whose sessions may not be used: the athlete, and every
   * error with what to do about it.
   *
   * @param compiled a plan for the athlete
   * @param errors the errors that block it, at least one: errors of the plan, the athlete or the
   *     log
   * @param wording words of the text and of its findings
   * @param source file and line that a finding is about; empty where there is no text
   */
  public static String stopped(
      CompiledPlan compiled,
      List<Finding> errors,
      Wording wording,
      Function<Finding, Optional<String>> source) {
    return new SeasonText(compiled, new Words(wording), source).writeStopped(errors, source);
  }

  private String writeStopped(List<Finding> errors, Function<Finding, Optional<String>> source) {
    title();
    page.gap();
    page.wrapped("", words.count("season.stopped", errors.size()));
    for (Finding error : errors) {
      page.gap();
      String file = source.apply(error).map(s -> " (" + s + ")").orElse("");
      page.wrapped("  ", WeekNotes.sentence(words.report(error), words) + Page.clean(file));
      words.advice(error).ifPresent(advice -> page.wrapped("    ", Page.clean(advice)));
    }
    page.gap();
    cautions();
    return page.toString();
  }

  private String write() {
    head();
    testsOutside(0);
    for (PlanWeek week : compiled.weeks()) {
      page.gap();
      week(week);
    }
    compiled.plan().testWeeksOutside().stream()
        .filter(week -> week > 0)
        .forEach(this::testsOutside);
    page.gap();
    cautions();
    return page.toString();
  }

  private void written(String indent, Predicate<Note> which) {
    compiled.notes().stream()
        .filter(which)
        .forEach(note -> page.wrapped(indent, Page.clean(words.of(note))));
  }

  private void cautions() {
    written("* ", note -> note.about() == Note.About.PROTOCOL || note.about() == Note.About.GRIP);
    for (Caution caution : compiled.cautions()) {
      page.wrapped("* ", Page.clean(words.of(caution)));
    }
  }

  private void title() {
    Plan plan = compiled.plan();
    page.wrapped("", words.capitals(Page.clean(plan.title().orElse(plan.name()))));
    page.wrapped(
        "",
        words.say(
            "season.for", "athlete", Page.clean(compiled.athlete().title()), "mass", bodyMass()));
  }

  private void head() {
    title();
    Plan plan = compiled.plan();
    page.wrapped(
        "",
        words.say(
            "season.span",
            "from",
            words.dayAndYear(plan.from()),
            "to",
            words.dayAndYear(plan.to()),
            "weeks",
            words.count("page.weeks", plan.weeks()),
            "blocks",
            words.commas(
                plan.blocks().stream()
                    .map(b -> words.say("season.block", "block", b.name(), "weeks", b.weeks()))
                    .toList())));
    plan.towards().ifPresent(goal -> page.wrapped("", goal(goal)));
    plan.supervisedBy().ifPresent(who -> page.wrapped("", supervised(who)));
    written("", note -> note.about() == Note.About.PLAN);
    compiled.clearances().forEach(injury -> page.wrapped("", cleared(injury)));
    page.gap();
    page.wrapped("", words.say("season.legend"));
    if (Stream.concat(
            compiled.sessions().stream().flatMap(session -> session.exercises().stream()),
            compiled.retests().stream().flatMap(test -> test.exercises().stream()))
        .anyMatch(exercise -> exercise.scheme().hasBound())) {
      page.wrapped("", words.say("season.legend-bound"));
    }
    HandTable hand = new HandTable(compiled, words);
    if (!hand.isEmpty()) {
      page.gap();
      hand.add(page);
    }
    log.addChanges(page, compiled);
    if (notes.hasWhole()) {
      page.gap();
      notes.addWhole(page);
    }
  }

  private String supervised(String who) {
    return words.say("season.supervised", "by", Page.clean(who));
  }

  private String cleared(Injury injury) {
    return words.say(
        injury.clearedBy().isPresent() ? "season.cleared-by" : "season.cleared",
        "injury",
        injury.place(),
        "date",
        words.dayAndYear(injury.cleared().orElseThrow()),
        "by",
        Page.clean(injury.clearedBy().orElse("")));
  }

  private Load bodyMass() {
    return compiled.sessions().isEmpty()
        ? compiled.athlete().bodyMass()
        : compiled.sessions().get(0).bodyMass();
  }

  private String goal(Plan.Goal goal) {
    long days = ChronoUnit.DAYS.between(compiled.plan().from(), goal.date());
    String date = words.dayAndYear(goal.date());
    String towards =
        goal.title()
            .map(t -> words.say("season.goal-titled", "title", Page.clean(t), "date", date))
            .orElseGet(() -> words.say("season.goal", "date", date));
    String inTime =
        days > 0 ? words.say("season.goal-left", "goal", towards, "left", weeks(days)) : towards;
    return compiled.plan().taper().map(taper -> tapered(inTime, taper)).orElse(inTime);
  }

  private String weeks(long days) {
    String weeks = words.count("page.weeks", days / 7);
    return days % 7 == 0 ? weeks : words.and(List.of(weeks, words.count("page.days", days % 7)));
  }

  private String tapered(String goal, Plan.Taper taper) {
    return words.say(
        "season.goal-tapered",
        "goal",
        goal,
        "weeks",
        words.count("page.weeks", taper.weeks()),
        "percent",
        Numbers.plain(taper.setsFraction() * 100, 1));
  }

  /** Something that happens on a day. */
  private record Entry(LocalDate date, int order, Runnable write) {}

  private void week(PlanWeek week) {
    String left =
        words.say(
            "season.week",
            "week",
            week.number(),
            "weeks",
            compiled.plan().weeks(),
            "from",
            words.day(week.from()),
            "to",
            words.day(week.to()),
            "block",
            block(week));
    List<String> marks = new ArrayList<>();
    if (week.eased()) {
      marks.add(words.say("season.eased"));
    }
    if (compiled.plan().taperIn(week.from()).isPresent()) {
      marks.add(words.say("season.taper"));
    }
    if (week.away()) {
      marks.add(words.say("season.away"));
    }
    page.line(left + (marks.isEmpty() ? "" : "  " + words.commas(marks)));
    if (week.blockWeek() == 1) {
      written("  ", note -> note.about() == Note.About.BLOCK && note.name().equals(week.block()));
    }
    List<Entry> entries = entries(week);
    if (entries.isEmpty()) {
      page.line("  " + words.say("season.nothing"));
    }
    entries.forEach(e -> e.write().run());
    notes.add(page, week.number());
    totals(week);
  }

  private String block(PlanWeek week) {
    return compiled.plan().blocks().stream()
        .filter(b -> b.name().equals(week.block()))
        .map(Block::weeks)
        .findFirst()
        .map(
            weeks ->
                words.say(
                    "season.week-of-block",
                    "block",
                    week.block(),
                    "week",
                    week.blockWeek(),
                    "weeks",
                    weeks))
        .orElse(week.block());
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
    for (SessionEntries.Entry entry : sessions.of(week.number())) {
      entries.add(new Entry(entry.days().get(0), 3, () -> sessions.add(page, entry)));
    }
    for (MissedSession missed : compiled.missed()) {
      if (missed.planned().week() == week.number()) {
        LocalDate day = missed.planned().date();
        entries.add(new Entry(day, 3, () -> page.wrapped(lead(day), log.missed(missed))));
      }
    }
    entries.sort(Comparator.comparing(Entry::date).thenComparing(Entry::order));
    return entries;
  }

  private void absence(Athlete.Absence absence) {
    String from = words.day(absence.from());
    String days =
        absence.from().equals(absence.to())
            ? from
            : words.say("season.absence-days", "from", from, "to", words.day(absence.to()));
    page.wrapped(
        "  ",
        absence
            .note()
            .map(note -> words.say("season.absence-note", "days", days, "note", Page.clean(note)))
            .orElseGet(() -> words.say("season.absence", "days", days)));
  }

  private void climbing(LocalDate day) {
    String climbing =
        compiled.log().of(LogEntry.Climbed.class).stream()
            .filter(c -> c.date().equals(day))
            .map(LogEntry.Climbed::time)
            .findFirst()
            .or(() -> usualClimbing(day))
            .map(t -> words.say("season.climbing-time", "time", t.toMinutes() + " min"))
            .orElseGet(() -> words.say("season.climbing"));
    page.line(lead(day) + climbing);
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
        LogNotes.at(
            words,
            retest.time(),
            retest.place(),
            words.say(
                retest.insteadOf().isEmpty() ? "season.test" : "season.test-instead",
                "what",
                new TestWords(words).what(retest),
                "setups",
                new TestWords(words).setups(retest),
                "session",
                retest.insteadOf())));
    new TestWords(words).addBody(page, "    ", retest, testTable);
  }

  /** Writes the tests of a week before or after those of the plan. */
  private void testsOutside(int week) {
    List<DatedRetest> tests =
        compiled.retests().stream()
            .filter(test -> week == 0 ? test.week() < 1 : test.week() == week)
            .sorted(Comparator.comparing(DatedRetest::date))
            .toList();
    if (tests.isEmpty()) {
      return;
    }
    LocalDate first = compiled.plan().firstDayOf(week);
    page.gap();
    page.line(
        words.say(
            week == 0 ? "season.tests-before" : "season.tests-after",
            "week",
            compiled.plan().weeks(),
            "from",
            words.day(first),
            "to",
            words.day(first.plusDays(6))));
    tests.forEach(this::retest);
  }

  private String lead(LocalDate date) {
    return "  " + Page.padRight(words.day(date), dayWidth) + "  ";
  }

  /**
   * Adds a week's load next to that of the last uneased week, since an eased week is no basis for
   * comparison.
   */
  private void totals(PlanWeek week) {
    if (week.loadIndex() <= 0) {
      return;
    }
    String seconds = Numbers.plain(week.timeUnderLoadSeconds(), 0);
    String load = Numbers.plain(week.loadIndex(), 0);
    String total =
        compiled.weeks().stream()
            .filter(w -> w.number() < week.number() && w.loadIndex() > 0 && !w.eased())
            .max(Comparator.comparingInt(PlanWeek::number))
            .map(
                before ->
                    words.say(
                        "season.total-change",
                        "seconds",
                        seconds,
                        "load",
                        load,
                        "percent",
                        change(before, week),
                        "week",
                        before.number()))
            .orElseGet(() -> words.say("season.total", "seconds", seconds, "load", load));
    page.line("  " + total);
  }

  private static String change(PlanWeek before, PlanWeek week) {
    double percent = (week.loadIndex() / before.loadIndex() - 1) * 100;
    String rounded = Numbers.plain(percent, 0);
    String sign = rounded.startsWith("-") || rounded.equals("0") ? "" : "+";
    return sign + rounded;
  }
}
