package gripwright.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.grip.Grip;
import gripwright.hand.Finger;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
import gripwright.log.LogEntry.Pain.Kind;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Level;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Derivation;
import gripwright.schedule.LoadLink;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;

/** What holds for every log of a plan's weeks, whatever was done, skipped or felt. */
class LoggedSeasonProperties {

  /** The outcome of a planned session. */
  private enum Fate {
    DONE,
    LATE,
    SKIPPED,
    SILENT
  }

  /**
   * The log of a session.
   *
   * @param fate whether and when
   * @param sets how many were left out
   * @param load share of the planned load; 0 where no load is logged
   * @param effort 0 to 10
   * @param pain 0 to 10
   */
  record Went(Fate fate, int sets, double load, double effort, double pain) {}

  /**
   * Log entries other than training.
   *
   * @param day days after the plan's first
   * @param what 0 hard climbing, 1 easy climbing, else pain of so much in the ring finger
   */
  record Beside(int day, int what) {}

  /**
   * A plan and its log so far.
   *
   * @param plan what the coach wrote
   * @param athlete for whom
   * @param went the sessions so far, in the order planned
   * @param beside what else was logged
   */
  record Story(Plan plan, Athlete athlete, List<Went> went, List<Beside> beside) {

    CompiledPlan unlogged() {
      return Planner.compile(plan, athlete, Skarvdal.tested(), List.of());
    }

    CompiledPlan logged(Log log) {
      return Planner.compile(plan, athlete, log, List.of());
    }

    List<LogEntry> lines() {
      List<LogEntry> lines = new ArrayList<>();
      List<DatedSession> planned = unlogged().sessions();
      for (int i = 0; i < Math.min(went.size(), planned.size()); i++) {
        Went how = went.get(i);
        DatedSession session = planned.get(i);
        switch (how.fate()) {
          case DONE -> lines.add(trained(session, session.date(), how));
          case LATE -> lines.add(trained(session, session.date().plusDays(1), how));
          case SKIPPED ->
              lines.add(new LogEntry.Skipped(session.date(), session.name(), Optional.empty()));
          case SILENT -> {}
        }
      }
      LocalDate last =
          lines.stream().map(LogEntry::date).max(LocalDate::compareTo).orElse(plan.from());
      for (Beside each : beside) {
        LocalDate day = plan.from().plusDays(each.day());
        if (!day.isAfter(last)) {
          lines.add(line(day, each.what()));
        }
      }
      return lines;
    }

    private static LogEntry line(LocalDate day, int what) {
      return what < 2
          ? LogEntry.Climbed.builder(
                  day, what == 0, what == 0 ? "hard" : "easy", Duration.ofHours(2))
              .build()
          : pain(day, what);
    }

    private static LogEntry trained(DatedSession session, LocalDate day, Went how) {
      List<Done> done = new ArrayList<>();
      for (PlannedExercise exercise : session.exercises()) {
        int planned = exercise.scheme().sets();
        done.add(
            Done.builder(exercise.protocol(), exercise.setup())
                .sets(Math.max(1, planned - how.sets()))
                .setsPlanned(planned)
                .load( // the planned number stays the same, whatever is logged
                    how.load() == 0
                        ? Optional.empty()
                        : Optional.of(exercise.totalLoad().times(how.load())))
                .effort(how.effort())
                .pain(how.pain())
                .build());
      }
      return new LogEntry.Trained(day, session.name(), done, Optional.empty());
    }
  }

  private static LogEntry pain(LocalDate day, double score) {
    return LogEntry.Pain.builder(day, Finger.RING, score).kind(Kind.DULL).build();
  }

  private static Log log(List<LogEntry> lines) {
    Log log = Skarvdal.tested();
    for (LogEntry line : lines) {
      log = log.with(line);
    }
    return log;
  }

  @Provide
  Arbitrary<Story> stories() {
    Arbitrary<Went> went =
        Combinators.combine(
                Arbitraries.frequency(
                    net.jqwik.api.Tuple.of(6, Fate.DONE),
                    net.jqwik.api.Tuple.of(1, Fate.LATE),
                    net.jqwik.api.Tuple.of(2, Fate.SKIPPED),
                    net.jqwik.api.Tuple.of(1, Fate.SILENT)),
                Arbitraries.of(0, 0, 0, 0, 1, 3),
                Arbitraries.of(0.0, 0.0, 1.0, 0.9),
                Arbitraries.of(5.0, 7.0, 8.0, 9.0, 9.5),
                Arbitraries.of(0.0, 0.0, 1.0, 2.0, 3.0, 6.0))
            .as(Went::new);
    Arbitrary<Beside> beside =
        Combinators.combine(Arbitraries.integers().between(0, 40), Arbitraries.of(0, 0, 1, 2, 4, 6))
            .as(Beside::new);
    Arbitrary<Athlete> athletes =
        Arbitraries.of(
            Skarvdal.ylva().build(),
            Skarvdal.ylva().available(DayOfWeek.MONDAY, Duration.ofMinutes(90)).build(),
            Skarvdal.ylva()
                .climbing(
                    new Athlete.ClimbingDay(DayOfWeek.SUNDAY, true, "hard", Duration.ofHours(2)))
                .build());
    return Combinators.combine(
            plans(), athletes, went.list().ofMinSize(1).ofMaxSize(9), beside.list().ofMaxSize(3))
        .as(Story::new);
  }

  private static Arbitrary<Plan> plans() {
    Arbitrary<Advance> advance =
        Arbitraries.of(
            Advance.weekly(Advance.loadByPercent(2)),
            Advance.every(2, new Advance.LoadBy(Load.ofKilograms(1.25))),
            Advance.weekly(new Advance.SetsTo(7, 1)),
            Advance.weekly(new Advance.HoldTo(Duration.ofSeconds(14), Duration.ofSeconds(1))),
            Advance.weekly(new Advance.EdgeTo(Length.ofMillimetres(15), Length.ofMillimetres(5))));
    Arbitrary<Grip> grip = Arbitraries.of(Skarvdal.HALF_CRIMP, Skarvdal.DRAG);
    return Combinators.combine(
            advance,
            grip,
            Arbitraries.of(0.6, 0.78, 0.84),
            Arbitraries.integers().between(1, 2),
            Arbitraries.of(0, 3, 4),
            Arbitraries.of(true, false))
        .as(
            (step, which, level, perWeek, eased, introduced) -> {
              Exercise exercise =
                  Exercise.of(Skarvdal.HOLDS, which, Skarvdal.EDGE)
                      .with("level", new Level.OfMax(level));
              Block.Builder block =
                  Block.named("base", 7)
                      .session(SessionPlan.of("strength", perWeek, exercise))
                      .advance(step);
              if (eased > 0) {
                block.ease(eased, 0.6);
              }
              if (introduced) {
                block.introduce(which, 0.4, 3);
              }
              return Plan.named("spring")
                  .athlete("ylva")
                  .from(Skarvdal.MONDAY)
                  .block(block.build())
                  .build();
            });
  }

  /** Planned sessions by week, name and number among those of the same name. */
  private static Map<String, DatedSession> planned(CompiledPlan plan) {
    Map<String, DatedSession> byPlace = new HashMap<>();
    Map<String, Integer> counts = new HashMap<>();
    for (DatedSession session : plan.sessions()) {
      int number = counts.merge(session.week() + session.name(), 1, Integer::sum);
      byPlace.put(session.week() + " " + session.name() + " " + number, session);
    }
    return byPlace;
  }

  /** Fails if a future session in one plan is harder than in another. */
  private static void assertNotHarder(CompiledPlan one, CompiledPlan than) {
    Map<String, DatedSession> others = planned(than);
    planned(one)
        .forEach(
            (place, session) -> {
              boolean ahead =
                  session.happened().isEmpty()
                      && (others.get(place) == null || others.get(place).happened().isEmpty());
              if (ahead) {
                DatedSession other = others.get(place);
                assertTrue(
                    other != null || plannedCount(one, session) <= plannedCount(than, session),
                    "an extra session: " + place);
                for (int i = 0; other != null && i < session.exercises().size(); i++) {
                  assertNotHarder(session.exercises().get(i), other.exercises().get(i), place);
                }
              }
            });
  }

  /** Counts the sessions of a name planned for a week, including missed ones. */
  private static long plannedCount(CompiledPlan plan, DatedSession like) {
    return plan.schedule().planned().stream()
        .filter(s -> s.week() == like.week() && s.name().equals(like.name()))
        .count();
  }

  private static void assertNotHarder(PlannedExercise one, PlannedExercise than, String place) {
    String what = place + ": " + reported(one) + " against " + reported(than);
    assertTrue(one.scheme().sets() <= than.scheme().sets(), what);
    assertTrue(hold(one) <= hold(than), what);
    assertTrue(one.setup().edge().compareTo(than.setup().edge()) >= 0, what);
    if (one.setup().edge().equals(than.setup().edge())) {
      assertTrue(one.totalLoad().kilograms() <= than.totalLoad().kilograms() + 1e-9, what);
    }
  }

  private static String reported(PlannedExercise exercise) {
    return exercise.scheme().sets()
        + " x "
        + hold(exercise)
        + " s at "
        + exercise.totalLoad()
        + ", "
        + exercise.setup();
  }

  private static double hold(PlannedExercise exercise) {
    return exercise.scheme().holds().get(0).seconds();
  }

  private static boolean complete(CompiledPlan plan) {
    return plan.findings().stream()
        .map(Finding::code)
        .noneMatch(Set.of("plan.no-day", "plan.week-short", "plan.session-not-made-up")::contains);
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.BOUNDED)
  void logNeverMakesTrainingHarder(@ForAll("stories") Story story) {
    CompiledPlan unlogged = story.unlogged();
    Assume.that(complete(unlogged));
    CompiledPlan logged = story.logged(log(story.lines()));
    assertNotHarder(logged, unlogged);
    for (PlanWeek week : logged.weeks()) {
      boolean ahead =
          logged.sessionsOf(week.number()).stream().allMatch(s -> s.happened().isEmpty());
      if (ahead && story.beside().stream().allMatch(b -> b.what() > 1)) {
        assertTrue(
            week.loadIndex() <= unlogged.weeks().get(week.number() - 1).loadIndex() + 1e-6
                || edgesDiffer(logged, unlogged, week.number()),
            "week " + week.number());
      }
    }
    Statistics.label("something missed").collect(!logged.missed().isEmpty());
    Statistics.label("something changed").collect(!logged.changes().isEmpty());
  }

  private static boolean edgesDiffer(CompiledPlan one, CompiledPlan other, int week) {
    return one.sessionsOf(week).stream()
        .flatMap(s -> s.exercises().stream())
        .anyMatch(
            e ->
                other.sessionsOf(week).stream()
                    .flatMap(s -> s.exercises().stream())
                    .anyMatch(o -> !o.setup().edge().equals(e.setup().edge())));
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.BOUNDED)
  void aWorseReportNeverLeadsToAHarderSession(
      @ForAll("stories") Story story, @ForAll Random random) {
    Assume.that(complete(story.unlogged()));
    List<LogEntry> lines = story.lines();
    List<Integer> trained = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i) instanceof LogEntry.Trained) {
        trained.add(i);
      }
    }
    Assume.that(!trained.isEmpty());
    LocalDate reported = lines.get(trained.get(random.nextInt(trained.size()))).date();
    lines =
        lines.stream().filter(l -> !l.date().isAfter(reported)).toList(); // only the next sessions
    int which = -1;
    for (int i = 0; i < lines.size(); i++) {
      which = lines.get(i) instanceof LogEntry.Trained t && t.date().equals(reported) ? i : which;
    }
    List<LogEntry> worse = new ArrayList<>(lines);
    int how = random.nextInt(4);
    LogEntry.Trained line = (LogEntry.Trained) lines.get(which);
    if (how == 3) {
      worse.add(pain(line.date(), 3 + random.nextInt(6)));
    } else {
      worse.set(which, worse(line, how));
    }
    CompiledPlan better = story.logged(log(lines));
    assertNotHarder(story.logged(log(worse)), better);
    Statistics.label("how").collect(how);
  }

  /** After a last session with trouble, the next one is no harder. */
  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.BOUNDED)
  void afterTroubleTheNextSessionIsNotHarderThanTheLast(
      @ForAll("stories") Story story, @ForAll Random random) {
    List<LogEntry> lines = story.lines();
    int last = -1;
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i) instanceof LogEntry.Trained trained
          && (last < 0 || trained.date().isAfter(lines.get(last).date()))) {
        last = i;
      }
    }
    Assume.that(last >= 0);
    LogEntry.Trained line = (LogEntry.Trained) lines.get(last);
    lines.set(last, worse(random.nextBoolean() ? oneSet(line) : line, 1));
    CompiledPlan logged = story.logged(log(lines));
    Optional<DatedSession> done =
        logged.sessions().stream()
            .filter(s -> s.happened().isPresent())
            .reduce((one, other) -> other);
    Optional<DatedSession> planned = done.flatMap(d -> d.happened().orElseThrow().planned());
    Optional<DatedSession> next =
        logged.sessions().stream().filter(s -> s.happened().isEmpty()).findFirst();
    Assume.that(planned.isPresent() && next.isPresent());
    Assume.that(next.orElseThrow().eased() == planned.orElseThrow().eased());
    PlannedExercise exercise = next.orElseThrow().exercises().get(0);
    PlannedExercise before = planned.orElseThrow().exercises().get(0);
    String what = reported(exercise) + " after " + reported(before);
    assertTrue(exercise.scheme().sets() <= before.scheme().sets(), what);
    assertTrue(hold(exercise) <= hold(before), what);
    assertTrue(exercise.setup().edge().compareTo(before.setup().edge()) >= 0, what);
    double lifted = done.orElseThrow().exercises().get(0).totalLoad().kilograms();
    boolean sameEdge =
        done.orElseThrow().exercises().get(0).setup().edge().equals(exercise.setup().edge());
    assertTrue(
        !sameEdge || exercise.totalLoad().kilograms() <= lifted + 1e-9,
        what + ", done at " + lifted);
  }

  private static LogEntry.Trained oneSet(LogEntry.Trained line) {
    return new LogEntry.Trained(
        line.date(),
        line.session(),
        line.done().stream().map(d -> d.toBuilder().sets(OptionalInt.of(1)).build()).toList(),
        line.note());
  }

  private static LogEntry worse(LogEntry.Trained line, int how) {
    List<Done> done =
        line.done().stream()
            .map(
                d ->
                    d.toBuilder()
                        .sets(
                            how == 0
                                ? OptionalInt.of(Math.max(1, d.sets().orElse(2) - 1))
                                : d.sets())
                        .effort(how == 1 ? OptionalDouble.of(10) : d.effort())
                        .pain(
                            how == 2
                                ? OptionalDouble.of(Math.min(10, d.pain().orElse(0) + 3))
                                : d.pain())
                        .build())
            .toList();
    return new LogEntry.Trained(line.date(), line.session(), done, line.note());
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.BOUNDED)
  void theOrderOfLinesChangesNothing(@ForAll("stories") Story story, @ForAll Random random) {
    List<LogEntry> lines = story.lines();
    LocalDate day = story.plan().from().plusDays(random.nextInt(14));
    lines.add(new LogEntry.BodyMass(day, Load.ofKilograms(61)));
    lines.add(new LogEntry.BodyMass(day, Load.ofKilograms(64)));
    lines.add(pain(day, 4));
    lines.add(pain(day, 3));
    List<LogEntry> shuffled = new ArrayList<>(lines);
    Collections.shuffle(shuffled, random);
    assertSame(story.logged(log(lines)), story.logged(log(shuffled)));
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.BOUNDED)
  void removingAndAddingTheLastEntryChangesNothing(@ForAll("stories") Story story) {
    List<LogEntry> lines = new ArrayList<>(Skarvdal.tested().entries());
    lines.addAll(story.lines());
    lines.add(pain(lines.get(lines.size() - 1).date(), 3));
    Log log = new Log("ylva", lines);
    List<LogEntry> entries = log.entries();
    Log without = new Log(log.athlete(), entries.subList(0, entries.size() - 1));
    story.logged(without); // removes every trace of it
    assertSame(story.logged(log), story.logged(without.with(entries.get(entries.size() - 1))));
  }

  private static void assertSame(CompiledPlan one, CompiledPlan other) {
    assertEquals(one.sessions(), other.sessions());
    assertEquals(one.weeks(), other.weeks());
    assertEquals(one.retests(), other.retests());
    assertEquals(one.lastKnownDay(), other.lastKnownDay());
    assertEquals(one.missed(), other.missed());
    assertEquals(one.changes(), other.changes());
    assertEquals(one.findings(), other.findings());
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.BOUNDED)
  void everyPlannedSessionIsDoneMissedOrFuture(@ForAll("stories") Story story) {
    CompiledPlan logged = story.logged(log(story.lines()));
    LocalDate until = logged.lastKnownDay().orElse(story.plan().from().minusDays(1));
    for (DatedSession session : logged.sessions()) {
      assertEquals(!session.date().isAfter(until), session.happened().isPresent());
    }
    assertTrue(logged.missed().stream().noneMatch(m -> m.planned().exercises().isEmpty()));
  }

  /** Gaps depend on the hardness of sessions without the limits of the log. */
  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.BOUNDED)
  void aSessionThatALogMakesLighterKeepsItsGaps(@ForAll("stories") Story story) {
    Map<String, DatedSession> unlogged = planned(story.unlogged());
    CompiledPlan logged = story.logged(log(story.lines()));
    List<DatedSession> ahead = new ArrayList<>();
    boolean lighter = false;
    for (Map.Entry<String, DatedSession> entry : planned(logged).entrySet()) {
      DatedSession session = entry.getValue();
      DatedSession before = unlogged.get(entry.getKey());
      if (session.happened().isEmpty() && before != null && before.hard()) {
        ahead.add(session);
        lighter |= !session.hard();
      }
    }
    ahead.sort(Comparator.comparing(DatedSession::date));
    for (int i = 1; i < ahead.size(); i++) {
      LocalDate rested = ahead.get(i - 1).date().plusDays(2);
      assertTrue(!ahead.get(i).date().isBefore(rested), ahead.get(i).path().toString());
    }
    for (LocalDate climbing : logged.climbing()) {
      for (DatedSession session : ahead) {
        long days = Math.abs(ChronoUnit.DAYS.between(climbing, session.date()));
        assertTrue(days >= 2, session.path() + " and climbing on " + climbing);
      }
    }
    Statistics.label("lighter").collect(lighter);
  }

  /** A load limited by the log returns by at most a tenth a week, without other steps. */
  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.BOUNDED)
  void limitedLoadReturnsSlowlyWithoutOtherSteps(@ForAll("stories") Story story) {
    CompiledPlan logged = story.logged(log(story.lines()));
    boolean back = false;
    PlannedExercise before = null;
    boolean eased = false;
    for (PlanWeek week : logged.weeks()) {
      List<DatedSession> sessions =
          logged.sessionsOf(week.number()).stream().filter(s -> s.happened().isEmpty()).toList();
      if (sessions.size() < logged.sessionsOf(week.number()).size() || sessions.isEmpty()) {
        continue;
      }
      PlannedExercise now = sessions.get(0).exercises().get(0);
      if (before != null && limit(before) > 0) {
        boolean shallower = now.setup().edge().compareTo(before.setup().edge()) <= 0;
        double rise = week.eased() ? 1 : 1.1;
        back |= now.totalLoad().compareTo(before.totalLoad()) > 0;
        if (shallower) {
          double most = Math.max(limit(before), before.totalLoad().kilograms()) * rise;
          assertTrue(now.totalLoad().kilograms() <= most + 1e-9, reported(now) + " > " + most);
        }
        if (!week.eased() && !eased) {
          assertTrue(now.scheme().sets() <= before.scheme().sets(), reported(now));
          assertTrue(hold(now) <= hold(before), reported(now));
          assertTrue(shallower || now.setup().edge().equals(before.setup().edge()), reported(now));
        }
      }
      before = now;
      eased = week.eased();
    }
    Statistics.label("came back").collect(back);
  }

  /** Returns the limit from the log in a chain of derivations, in kg; 0 if there is none. */
  private static double limit(PlannedExercise exercise) {
    return exercise.why().stream()
        .filter(LoadLink.Limited.class::isInstance)
        .mapToDouble(Derivation::value)
        .max()
        .orElse(0);
  }

  /** Findings about an exercise are found under its session, whatever its planned day. */
  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.BOUNDED)
  void exercisePlaceIsInItsSession(@ForAll("stories") Story story) {
    for (DatedSession session : story.logged(log(story.lines())).sessions()) {
      for (PlannedExercise exercise : session.exercises()) {
        assertTrue(session.path().contains(exercise.path()), exercise.path().toString());
      }
    }
  }
}
