package gripwright.season;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Topic;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Pain.Kind;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.Cause;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Happened;
import gripwright.schedule.MissedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.wording.Words;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a log makes of a plan: the past as it was done, and the weeks that follow from it. */
class LoggedSeasonTest {

  /** Tuesday and Saturday of each week, 5 sets of 10 s at 84 % max, 2 % more a week. */
  private static CompiledPlan compile(Log log) {
    return compile(log, Advance.weekly(Advance.loadByPercent(2)));
  }

  private static CompiledPlan compile(Log log, Advance advance) {
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                Block.named("base", 6)
                    .session(SessionPlan.of("strength", 2, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
                    .advance(advance)
                    .build())
            .build();
    return Planner.compile(plan, Skarvdal.ylva().build(), log, List.of());
  }

  /** A day of the plan by its week, from 1, and the days after Monday. */
  private static LocalDate day(int week, int after) {
    return MONDAY.plusDays(7L * (week - 1) + after);
  }

  private static final int MON = 0;
  private static final int TUE = 1;
  private static final int WED = 2;
  private static final int THU = 3;
  private static final int SAT = 5;
  private static final int SUN = 6;

  /** The logged details of an exercise. */
  private record Felt(int sets, double load, double effort, double pain) {
    static final Felt FINE = new Felt(5, 0, 7, 0);
  }

  private static LogEntry.Trained trained(LocalDate date, Felt felt) {
    return trained(date, HALF_CRIMP, felt);
  }

  private static LogEntry.Trained trained(LocalDate date, Grip grip, Felt felt) {
    return new LogEntry.Trained(
        date,
        "strength",
        List.of(
            LogEntry.Done.builder("single-holds", Setup.of(grip, EDGE))
                .sets(felt.sets())
                .load(
                    felt.load() > 0 ? Optional.of(Load.ofKilograms(felt.load())) : Optional.empty())
                .effort(felt.effort())
                .pain(felt.pain())
                .build()),
        Optional.empty());
  }

  private static LogEntry.Skipped skipped(LocalDate date) {
    return new LogEntry.Skipped(date, "strength", Optional.of("late shift"));
  }

  private static LogEntry.Pain pain(LocalDate date, double score) {
    return LogEntry.Pain.builder(date, Finger.RING, score).kind(Kind.DULL).build();
  }

  private static Log log(LogEntry... lines) {
    Log log = Skarvdal.tested();
    for (LogEntry line : lines) {
      log = log.with(line);
    }
    return log;
  }

  private static Log week(Log log, int week, Felt felt) {
    return log.with(trained(day(week, TUE), felt)).with(trained(day(week, SAT), felt));
  }

  /** Level of the first session of each week, in per cent; {@code -} if there is none. */
  private static String levels(CompiledPlan plan) {
    return plan.weeks().stream()
        .map(
            w ->
                plan.sessionsOf(w.number()).stream()
                    .filter(s -> s.happened().isEmpty())
                    .findFirst()
                    .map(LoggedSeasonTest::level)
                    .orElse("-"))
        .collect(Collectors.joining(" "));
  }

  private static String level(DatedSession session) {
    return Numbers.plain(session.exercises().get(0).percentOfMax().orElse(Double.NaN), 2);
  }

  private static String days(CompiledPlan plan, int week) {
    return plan.sessionsOf(week).stream()
        .map(
            s ->
                s.date().getDayOfWeek().name().substring(0, 3)
                    + s.happened()
                        .map(h -> " " + h.kind().name().toLowerCase(Locale.ROOT))
                        .orElse(""))
        .collect(Collectors.joining(", "));
  }

  private static String heldBack(CompiledPlan plan, int week) {
    return plan.sessionsOf(week).get(0).exercises().get(0).why().stream()
        .filter(w -> Words.step(w).equals("held back"))
        .map(Words::say)
        .collect(Collectors.joining(" | "));
  }

  @Test
  void aLogOfGoodWeeksChangesNothing() {
    String unlogged = levels(compile(Skarvdal.tested()));
    assertEquals("84 85.68 87.39 89.14 90.92 92.74", unlogged);
    CompiledPlan plan = compile(week(Skarvdal.tested(), 1, Felt.FINE));
    assertEquals("- 85.68 87.39 89.14 90.92 92.74", levels(plan));
    assertEquals(Optional.of(day(1, SAT)), plan.lastKnownDay());
    assertEquals("TUE done, SAT done", days(plan, 1));
    assertEquals(List.of(), plan.missed());
  }

  @Test
  void pastDaysShowTheLoggedTraining() {
    CompiledPlan plan =
        compile(log(trained(day(1, WED), new Felt(3, 60, 8, 1)), trained(day(1, SAT), Felt.FINE)));
    DatedSession first = plan.sessions().get(0);
    assertEquals(day(1, WED), first.date());
    assertEquals(Happened.Kind.IN_PART, first.happened().orElseThrow().kind());
    assertEquals(day(1, TUE), first.happened().orElseThrow().planned().orElseThrow().date());
    assertEquals(3, first.exercises().get(0).scheme().sets());
    assertEquals(60, first.exercises().get(0).totalLoad().kilograms());
    assertEquals(3 * 10 * 60, first.loadIndex(), 1e-9);
    double saturday = plan.sessions().get(1).loadIndex();
    assertEquals(1800 + saturday, plan.weeks().get(0).loadIndex(), 1e-9);
  }

  @Test
  void restOfAWeekKeepsItsDaysIfGapsAllow() {
    assertEquals(
        "TUE done, SAT",
        days(compile(log(trained(day(1, TUE), Felt.FINE))), 1),
        "Thursday would be free, but Saturday was planned");
    assertEquals("WED done, SAT", days(compile(log(trained(day(1, WED), Felt.FINE))), 1));
  }

  @Test
  void aSkippedSessionIsNotMadeUp() {
    CompiledPlan plan = compile(log(skipped(day(1, TUE))));
    assertEquals("SAT", days(plan, 1));
    MissedSession missed = plan.missed().get(0);
    assertEquals(MissedSession.Kind.SKIPPED, missed.kind());
    assertEquals(Optional.of("late shift"), missed.note());
    assertEquals("84 85.68 87.39 89.14 90.92 92.74", levels(plan));
  }

  @Test
  void sessionWithoutALogEntryCountsAsNotTrained() {
    CompiledPlan plan = compile(log(trained(day(1, SAT), Felt.FINE)));
    assertEquals(
        List.of(day(1, TUE)), plan.missed().stream().map(m -> m.planned().date()).toList());
    assertEquals(MissedSession.Kind.NOT_LOGGED, plan.missed().get(0).kind());
  }

  @Test
  void firstWeekAfterASkippedOneIsLower() {
    Log log =
        week(Skarvdal.tested(), 1, Felt.FINE).with(skipped(day(2, TUE))).with(skipped(day(2, SAT)));
    CompiledPlan plan = compile(log);
    assertEquals("- - 75.6 84 85.68 87.39", levels(plan));
    assertEquals(0, plan.weeks().get(1).loadIndex());
  }

  @Test
  void afterTwoSkippedWeeksTheReturnTakesTwoWeeks() {
    Log log =
        week(Skarvdal.tested(), 1, Felt.FINE)
            .with(skipped(day(2, TUE)))
            .with(skipped(day(2, SAT)))
            .with(skipped(day(3, TUE)))
            .with(skipped(day(3, SAT)));
    assertEquals("- - - 67.2 75.6 84", levels(compile(log)));
  }

  @Test
  void nothingGetsHarderAfterMissedSetsAndTheLoadStaysAtWhatWasDone() {
    CompiledPlan plan = compile(week(Skarvdal.tested(), 1, new Felt(3, 66, 8, 0)));
    assertEquals(66, plan.sessionsOf(2).get(0).exercises().get(0).totalLoad().kilograms(), 1.25);
    assertTrue(plan.sessionsOf(2).get(0).exercises().get(0).totalLoad().kilograms() <= 66);
    assertTrue(heldBack(plan, 2).contains("3 of 5 sets on 2027-03-02"), heldBack(plan, 2));
  }

  @Test
  void nothingGetsHarderAfterTooMuchEffort() {
    CompiledPlan plan = compile(week(Skarvdal.tested(), 1, new Felt(5, 0, 9.5, 0)));
    assertEquals("84", level(plan.sessionsOf(2).get(0)));
    assertTrue(heldBack(plan, 2).contains("effort 9.5 on 2027-03-02, above 9"));
    assertEquals(
        "85.68",
        level(compile(week(Skarvdal.tested(), 1, new Felt(5, 0, 9, 0))).sessionsOf(2).get(0)));
  }

  @Test
  void afterTroubleTheNextTwoSessionsAreHeldAndNoMore() {
    for (Felt trouble : List.of(new Felt(5, 0, 9.5, 0), new Felt(4, 0, 7, 0))) {
      CompiledPlan plan = compile(week(Skarvdal.tested(), 1, trouble));
      assertEquals("- 84 85.68 87.39 89.14 90.92", levels(plan));
      double held = load(plan, 2);
      assertEquals(held, plan.sessionsOf(2).get(1).exercises().get(0).totalLoad().kilograms());
      assertTrue(load(plan, 3) > held, load(plan, 3) + " after " + held);
      assertTrue(load(plan, 4) > load(plan, 3), load(plan, 4) + " after " + load(plan, 3));
    }
  }

  @Test
  void loadLimitedByTroubleReturnsByTenPerCentAWeek() {
    CompiledPlan plan = compile(week(Skarvdal.tested(), 1, new Felt(4, 50, 7, 0)));
    assertEquals(50, load(plan, 2), 1e-9, "held");
    assertTrue(load(plan, 3) > 50 && load(plan, 3) <= 55, "" + load(plan, 3));
    assertTrue(load(plan, 4) > load(plan, 3) && load(plan, 4) <= 60.5, "" + load(plan, 4));
  }

  @Test
  void mildPainKeepsTheNextTwoSessionsAndNoMore() {
    Log log = week(Skarvdal.tested(), 1, Felt.FINE);
    assertEquals(
        "- 85.68 87.39 89.14 90.92 92.74", levels(compile(log.with(pain(day(1, SUN), 2)))));
    CompiledPlan late = compile(log.with(pain(day(1, SUN), 3)));
    assertEquals("- 84 85.68 87.39 89.14 90.92", levels(late));
    assertTrue(heldBack(late, 2).contains("pain ring 3 on 2027-03-07"), heldBack(late, 2));
    CompiledPlan early = compile(log.with(pain(day(1, MON), 5)));
    assertEquals("- 85.68 87.39 89.14 90.92 92.74", levels(early), "two sessions since");
  }

  @Test
  void painOfAFingerInUseIsAReasonWhateverTheGrip() {
    Log log =
        week(Skarvdal.tested(), 1, Felt.FINE)
            .with(LogEntry.Pain.builder(day(1, SUN), Finger.LITTLE, 4).kind(Kind.DULL).build());
    assertTrue(heldBack(compile(log), 2).contains("little"));
    Log drag =
        week(Skarvdal.tested(), 1, Felt.FINE)
            .with(trained(day(1, THU), DRAG, new Felt(3, 50, 7, 4)));
    assertTrue(heldBack(compile(drag), 2).contains("in training"), "a grip with the same fingers");
  }

  @Test
  void loggedClimbingKeepsItsGap() {
    CompiledPlan plan =
        compile(
            log(
                trained(day(1, TUE), Felt.FINE),
                LogEntry.Climbed.builder(day(1, 4), true, "hard", Duration.ofHours(2)).build()));
    assertEquals("TUE done", days(plan, 1), "hard on Friday leaves no Saturday");
    assertEquals(
        List.of("plan.session-not-made-up"),
        plan.findings().stream().map(f -> f.code()).filter(c -> c.startsWith("plan.")).toList());
  }

  @Test
  void anEarnedStepIsLostByTroubleBeforeItIsTaken() {
    Advance earned =
        new Advance(
            new Advance.Progress(
                Advance.loadByPercent(2.5),
                new Advance.WhenLogged(true, OptionalDouble.of(8), OptionalDouble.empty(), 2)),
            Optional.empty(),
            Optional.empty());
    Log log = week(Skarvdal.tested(), 1, Felt.FINE);
    assertEquals("86.1", level(compile(log, earned).sessionsOf(2).get(0)));
    CompiledPlan sore = compile(log.with(pain(day(1, SUN), 4)), earned);
    assertTrue(sore.sessionsOf(2).get(0).exercises().get(0).percentOfMax().orElseThrow() <= 84);
  }

  @Test
  void aTestChangesOnlyWhatComesAfterIt() {
    Log log = week(Skarvdal.tested(), 1, Felt.FINE);
    CompiledPlan before = compile(log);
    CompiledPlan after =
        compile(
            log.with(
                new LogEntry.Tested(Skarvdal.test(HALF_CRIMP, day(2, THU), 99), Optional.empty())));
    assertEquals(before.sessionsOf(1), after.sessionsOf(1));
    assertEquals(
        before.sessionsOf(2).get(0).exercises().get(0).totalLoad(),
        after.sessionsOf(2).get(0).exercises().get(0).totalLoad());
    assertTrue(
        after
                .sessionsOf(3)
                .get(0)
                .exercises()
                .get(0)
                .totalLoad()
                .compareTo(before.sessionsOf(3).get(0).exercises().get(0).totalLoad())
            > 0);
  }

  @Test
  void aWeekOffAfterPainThatStopsReturnsLower() {
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                Block.named("base", 5)
                    .session(SessionPlan.of("strength", 2, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
                    .build())
            .build();
    Athlete resting =
        Skarvdal.ylva()
            .away(new Athlete.Absence(day(1, SUN), day(2, SUN), Optional.of("finger rests")))
            .build();
    Log log = week(Skarvdal.tested(), 1, Felt.FINE);
    assertEquals("- - 84 84 84", levels(Planner.compile(plan, resting, log, List.of())));
    Log sore = log.with(pain(day(1, SAT), 6));
    assertEquals("- - 67.2 75.6 84", levels(Planner.compile(plan, resting, sore, List.of())));
  }

  private static List<PlannedExercise> firsts(CompiledPlan plan) {
    return plan.weeks().stream()
        .map(w -> plan.sessionsOf(w.number()).get(0).exercises().get(0))
        .toList();
  }

  private static double load(CompiledPlan plan, int week) {
    return firsts(plan).get(week - 1).totalLoad().kilograms();
  }

  @Test
  void limitedLoadReturnsByTenPerCentAWeekWithoutOtherSteps() {
    Log log =
        week(Skarvdal.tested(), 1, Felt.FINE)
            .with(trained(day(1, SUN), new Felt(5, 50, 7, 0)))
            .with(pain(day(1, SUN), 4));
    Advance sets = Advance.weekly(new Advance.SetsTo(9, 1));
    CompiledPlan plan = compile(log, sets);
    double whole = load(compile(Skarvdal.tested(), sets), 1);
    assertEquals(50, load(plan, 2), 1e-9, "held");
    assertTrue(load(plan, 3) > 50 && load(plan, 3) <= 55, "" + load(plan, 3));
    assertTrue(load(plan, 4) > load(plan, 3) && load(plan, 4) <= 60.5, "" + load(plan, 4));
    assertTrue(whole > 66.6, "so that it takes more than three weeks: " + whole);
    assertEquals(
        List.of(5, 5, 5, 5, 5), firsts(plan).stream().skip(1).map(e -> e.scheme().sets()).toList());
    assertTrue(heldBack(plan, 3).contains("by at most 10 % a week, from 50 kg"), heldBack(plan, 3));
    assertTrue(
        plan.changes().stream()
            .flatMap(c -> c.because().stream())
            .anyMatch(Cause.LoadReturns.class::isInstance));
  }

  @Test
  void loadDoesNotReturnInAnEasedWeek() {
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                Block.named("base", 6)
                    .session(SessionPlan.of("strength", 2, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
                    .ease(3, 0.5)
                    .build())
            .build();
    Log log =
        week(Skarvdal.tested(), 1, Felt.FINE)
            .with(trained(day(1, SUN), new Felt(5, 50, 7, 0)))
            .with(pain(day(1, SUN), 4));
    CompiledPlan compiled = Planner.compile(plan, Skarvdal.ylva().build(), log, List.of());
    assertEquals(50, load(compiled, 2), 1e-9);
    assertEquals(50, load(compiled, 3), 1e-9, "eased");
    assertTrue(load(compiled, 4) > 50 && load(compiled, 4) <= 55, "" + load(compiled, 4));
  }

  private static LocalDate dateOf(ModelPath place) {
    return place.steps().stream()
        .filter(step -> step.kind().equals("date"))
        .map(step -> LocalDate.parse(step.name()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void painThatRisesTwiceInARowStops() {
    Log rising =
        week(week(week(Skarvdal.tested(), 1, Felt.FINE), 2, Felt.FINE), 3, Felt.FINE)
            .with(pain(day(1, SUN), 0))
            .with(pain(day(2, SUN), 1))
            .with(pain(day(3, SUN), 3));
    CompiledPlan plan = compile(rising);
    assertTrue(
        heldBack(plan, 4).contains("pain ring 3, rising week on week, on 2027-03-21"),
        heldBack(plan, 4));
    Finding stop =
        plan.findings().stream()
            .filter(f -> f.code().equals("rule.painful-finger"))
            .findFirst()
            .orElseThrow();
    assertTrue(stop.blocks(), "as in a review");
    assertEquals(day(4, TUE), dateOf(stop.places().get(0)));
    assertEquals(
        plan.sessions().get(plan.sessions().size() - 1).date(),
        dateOf(stop.places().get(stop.places().size() - 1)),
        "to the end, without a score");
    Log steady =
        week(week(week(Skarvdal.tested(), 1, Felt.FINE), 2, Felt.FINE), 3, Felt.FINE)
            .with(pain(day(1, SUN), 1))
            .with(pain(day(2, SUN), 1))
            .with(pain(day(3, SUN), 2));
    assertEquals("", heldBack(compile(steady), 4));
  }

  @Test
  void daysStayWhereTheyAreWhenALogMakesLoadsLighter() {
    Log log =
        week(Skarvdal.tested(), 1, Felt.FINE)
            .with(trained(day(1, SUN), new Felt(5, 50, 7, 0)))
            .with(pain(day(1, SUN), 4));
    CompiledPlan light = compile(log);
    CompiledPlan plan = compile(Skarvdal.tested());
    assertEquals(false, light.sessionsOf(3).get(0).hard());
    for (int week = 2; week <= 6; week++) {
      assertEquals(days(plan, week), days(light, week));
    }
  }

  private static LogEntry.Trained extra(LocalDate date, String protocol, OptionalDouble effort) {
    return new LogEntry.Trained(
        date,
        "extra",
        List.of(
            LogEntry.Done.builder(protocol, Setup.of(HALF_CRIMP, EDGE))
                .sets(2)
                .load(Load.ofKilograms(70))
                .effort(effort)
                .build()),
        Optional.empty());
  }

  @Test
  void unplannedSessionCountsInTheWeeklyLoad() {
    double seconds =
        StandardProtocols.MAX_HOLDS.bind(Map.of()).withSets(2).timeUnderLoad().toSeconds();
    Log log = week(Skarvdal.tested(), 1, Felt.FINE);
    CompiledPlan with = compile(log.with(extra(day(1, THU), "max-holds", OptionalDouble.empty())));
    DatedSession extra = with.sessionsOf(1).get(1);
    assertEquals("extra", extra.name());
    assertEquals(70 * seconds, extra.loadIndex(), 1e-6);
    assertEquals(
        compile(log).weeks().get(0).loadIndex() + 70 * seconds,
        with.weeks().get(0).loadIndex(),
        1e-6);
  }

  @Test
  void unplannedSessionKeepsItsGap() {
    Log log = log(trained(day(1, TUE), Felt.FINE));
    LogEntry friday = extra(day(1, 4), "max-holds", OptionalDouble.empty());
    assertEquals("TUE done, SAT", days(compile(log), 1));
    assertEquals("TUE done", days(compile(log.with(friday)), 1), "hard on Friday");
    assertEquals(
        "TUE done, SAT",
        days(compile(log.with(extra(day(1, 4), "max-holds", OptionalDouble.of(5)))), 1));
  }

  @Test
  void unconfirmedHighTestDoesNotRaiseLoads() {
    LogEntry high =
        new LogEntry.Tested(Skarvdal.test(HALF_CRIMP, day(1, SUN), 140), Optional.empty());
    Log log = week(Skarvdal.tested(), 1, Felt.FINE);
    assertEquals(load(compile(log), 3), load(compile(log.with(high)), 3), 1e-9);
    LogEntry second =
        new LogEntry.Tested(Skarvdal.test(HALF_CRIMP, day(2, SUN), 135), Optional.empty());
    assertTrue(load(compile(log.with(high).with(second)), 3) > load(compile(log), 3));
    LogEntry low =
        new LogEntry.Tested(Skarvdal.test(HALF_CRIMP, day(1, SUN), 40), Optional.empty());
    assertTrue(load(compile(log.with(low)), 3) < load(compile(log), 3), "caution");
  }

  @Test
  void dueTestWithoutALogEntryIsReported() {
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                Block.named("base", 2)
                    .session(SessionPlan.of("strength", 1, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
                    .build())
            .retest(
                PlannedTest.every(List.of(Setup.of(HALF_CRIMP, EDGE)), Duration.ofSeconds(7), 1))
            .build();
    Log log = log(trained(day(1, TUE), Felt.FINE), trained(day(2, TUE), Felt.FINE));
    LogEntry tested =
        new LogEntry.Tested(Skarvdal.test(HALF_CRIMP, day(1, SUN), 92), Optional.empty());
    Athlete ylva = Skarvdal.ylva().build();
    assertEquals(1, notLogged(Planner.compile(plan, ylva, log, List.of())));
    assertEquals(0, notLogged(Planner.compile(plan, ylva, log.with(tested), List.of())));
  }

  private static long notLogged(CompiledPlan plan) {
    return plan.findings().stream().filter(f -> f.isAbout(Topic.TEST_NOT_LOGGED)).count();
  }
}
