package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.athlete.Equipment;
import gripwright.athlete.Slot;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.history.LogTimeline;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.TestKind;
import gripwright.planning.load.HandFindings;
import gripwright.planning.placement.LoggedRetests;
import gripwright.planning.placement.Placement;
import gripwright.planning.placement.RetestDay;
import gripwright.protocol.Level;
import gripwright.quantity.Load;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlacementReason;
import gripwright.strength.KnownLight;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds days for the tests that are due in a week. */
final class TestDays {

  /** The days without training after which a test is reported; the library's own number. */
  private static final int BREAK_DAYS = 14;

  private final Plan plan;
  private final Athlete athlete;
  private final ModelPath root;
  private final HandFindings hands;
  private final LookAhead lookAhead;
  private final LoggedRetests logged;
  private final SessionExpansion expansion;

  TestDays(
      LogTimeline timeline, HandFindings hands, LookAhead lookAhead, SessionExpansion expansion) {
    this.expansion = expansion;
    this.plan = timeline.plan();
    this.athlete = timeline.athlete();
    this.logged = new LoggedRetests(plan, timeline.log());
    this.root = plan.path().then("for", athlete.name());
    this.hands = hands;
    this.lookAhead = lookAhead;
  }

  /**
   * The tests of a week.
   *
   * @param sessions the week's sessions without those replaced by a test
   * @param tests its tests
   */
  record Tested(List<DatedSession> sessions, List<DatedRetest> tests) {}

  /**
   * A week with tests.
   *
   * @param number its number, from 1; 0 before the plan, above its last after it
   * @param first first day
   * @param block name of its block; empty outside the plan
   * @param last the last day of training before it; empty if none is known
   * @param context progress in it
   */
  record Week(
      int number, LocalDate first, String block, Optional<LocalDate> last, WeekContext context) {}

  /** The hard work near a week, including its sessions and some of its tests. */
  interface Near {
    List<Placement.HardDay> with(List<DatedSession> sessions, List<DatedRetest> tests);
  }

  /**
   * Returns the tests of a week.
   *
   * @param placed the week's sessions
   * @param near the hard work near the week
   * @param found receives findings about what can't be met
   */
  Tested of(Week week, List<DatedSession> placed, Near near, FindingList found) {
    List<DatedSession> kept = new ArrayList<>(placed);
    List<DatedRetest> tests = new ArrayList<>();
    for (int n = 1; n <= plan.retests().size(); n++) {
      PlannedTest retest = plan.retests().get(n - 1);
      ModelPath place = root.then("retest", n).then("week", week.number());
      boolean due = retest.isDueIn(week.number(), plan.weeks());
      if (due && lookAhead.tapers(week.number())) {
        found.add(Finding.advice("plan.retest-tapered", place).with("week", week.number()));
      } else if (due) {
        noteSetups(retest, place, found);
        noteMinutes(retest, place, longest(), found);
        Optional<RetestDay.Found> day =
            new RetestDay(retest, lookAhead.minutes(retest), lookAhead.places(retest).open())
                .find(week.first(), athlete, near.with(kept, tests), kept)
                .or(() -> asLogged(retest, week.first()));
        if (day.isEmpty()) {
          found.add(Finding.warning("plan.retest-no-day", place).with("week", week.number()));
          continue;
        }
        day.get()
            .displaced()
            .filter(session -> lookAhead.minutes(retest) <= longest())
            .ifPresent(
                session ->
                    noteMinutes(
                        retest, place, athlete.availableOn(session.date()).toMinutes(), found));
        day.get().displaced().ifPresent(kept::remove);
        DatedRetest dated =
            warmed(week, retest, dated(week, retest, place, day.get()), most(placed), found);
        noteBreak(retest, dated, lastTraining(week, kept, dated.date()), found);
        tests.add(dated);
        retest.setups().stream() // tests are hard
            .flatMap(s -> hands.notForced(s, place).stream())
            .forEach(found::add);
        day.get()
            .displaced()
            .ifPresent(
                session ->
                    found.add(
                        Finding.advice("plan.retest-displaces", place)
                            .with("week", week.number())
                            .with("session", session.name())));
      }
    }
    return new Tested(List.copyOf(kept), List.copyOf(tests));
  }

  /** Returns the day of tests that were done although the plan has no day for them. */
  private Optional<RetestDay.Found> asLogged(PlannedTest retest, LocalDate first) {
    return logged
        .dayIn(retest, first)
        .map(
            day ->
                new RetestDay.Found(
                    day,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    new PlacementReason.TestedOnDay()));
  }

  private static Optional<LocalDate> lastTraining(
      Week week, List<DatedSession> sessions, LocalDate day) {
    return Stream.concat(
            week.last().stream(),
            sessions.stream().map(DatedSession::date).filter(date -> date.isBefore(day)))
        .max(Comparator.naturalOrder());
  }

  /**
   * Reports a test after a time without training. A test that says no more than a time and an
   * interval is left out, as before tests could say more.
   */
  private static void noteBreak(
      PlannedTest retest, DatedRetest test, Optional<LocalDate> last, FindingList found) {
    last.map(day -> ChronoUnit.DAYS.between(day, test.date()))
        .filter(days -> days > BREAK_DAYS && !retest.isPlain())
        .ifPresent(
            days ->
                found.add(
                    Finding.advice("plan.test-after-break", test.path())
                        .with("week", test.week())
                        .with("days", days.intValue())));
  }

  /** Returns the time of the day with the most time, in minutes. */
  private long longest() {
    return athlete.available().stream()
        .map(Slot::time)
        .max(Comparator.naturalOrder())
        .orElse(Duration.ZERO)
        .toMinutes();
  }

  /**
   * Reports tests that take longer than there is time.
   *
   * @param available minutes
   */
  private void noteMinutes(PlannedTest retest, ModelPath place, long available, FindingList found) {
    int minutes = lookAhead.minutes(retest);
    if (minutes > available && !retest.isPlain()) {
      found.add(
          Finding.error("plan.test-too-long", place)
              .with("minutes", minutes)
              .with("longest", available));
    }
  }

  /** Reports tests on a missing edge or with a grip that the hand can't take. */
  private void noteSetups(PlannedTest retest, ModelPath place, FindingList found) {
    Optional<String> at = lookAhead.places(retest).built().get(0);
    Equipment equipment = athlete.equipmentAt(at);
    retest.setups().stream()
        .filter(s -> !equipment.has(s.edge()))
        .findFirst()
        .ifPresent(
            s -> {
              Finding missing =
                  Finding.error("plan.edge-missing", place)
                      .with("edge", s.edge())
                      .with("owned", equipment.edges().stream().map(Object::toString).toList());
              found.add(at.map(name -> missing.with("place", name)).orElse(missing));
            });
    retest.setups().stream()
        .filter(s -> equipment.has(s.edge()))
        .flatMap(s -> hands.outOfReach(s, place).stream())
        .forEach(found::add);
  }

  private static double most(List<DatedSession> sessions) {
    return sessions.stream().mapToDouble(DatedSession::loadIndex).max().orElse(0);
  }

  /**
   * Returns a test with its load and the exercises of its warm-up.
   *
   * @param session the greatest load-time of a session of the week, in kg s
   */
  private DatedRetest warmed(
      Week week, PlannedTest retest, DatedRetest test, double session, FindingList found) {
    if (retest.kind() instanceof TestKind.ToFailure failure) {
      return exercised(week, retest, loaded(week, failure.level(), test, found), session, found);
    }
    return exercised(week, retest, test, session, found);
  }

  /** Returns a test to failure with its loads, and reports those that are not known. */
  private DatedRetest loaded(Week week, Level level, DatedRetest test, FindingList found) {
    DatedRetest.Builder loaded = test.toBuilder();
    for (Setup setup : test.setups()) {
      Optional<Load> load = expansion.loadOf(week.context(), setup, level, test);
      load.ifPresent(known -> loaded.load(setup, known));
      if (load.isEmpty() && !KnownLight.forbidsTests(athlete, setup, test.date())) {
        found.add(
            Finding.warning("plan.test-load", test.path())
                .with("setup", setup)
                .with("level", level));
      }
    }
    return loaded.build();
  }

  private DatedRetest exercised(
      Week week, PlannedTest retest, DatedRetest test, double session, FindingList found) {
    if (retest.exercises().isEmpty()) {
      return test;
    }
    return test.toBuilder()
        .warmUp(
            new DatedRetest.WarmUp(
                test.warmUp().minutes(),
                test.warmUp().text(),
                expansion.warmUps(week.context(), retest, test, session, found)))
        .build();
  }

  private static DatedRetest dated(
      Week week, PlannedTest retest, ModelPath place, RetestDay.Found found) {
    return DatedRetest.of(
            found.day(),
            week.number(),
            week.block(),
            retest,
            place.then("date", found.day().toString()))
        .time(found.time())
        .place(found.place())
        .insteadOf(found.displaced().map(DatedSession::name).orElse(""))
        .placedBecause(found.because())
        .build();
  }
}
