package gripwright.review;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.Topic;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.hand.Side;
import gripwright.history.CompletedHolds;
import gripwright.log.GrowthPain;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.protocol.Protocol;
import gripwright.season.CompiledPlan;
import gripwright.season.Doubts;
import gripwright.season.OddTests;
import gripwright.strength.CompletedHold;
import gripwright.strength.OutlierTests;
import gripwright.strength.Posture;
import gripwright.strength.StrengthCourse;
import gripwright.strength.StrengthTest;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A review of an athlete's log on a day, compared with its plans. Immutable; the same input gives
 * the same review, whatever the order of lines within a day.
 *
 * <p>Loads on fingers and pulleys are estimates. No number here predicts an injury or is a
 * diagnosis.
 */
public final class Review {

  /** Most next steps. */
  public static final int MOST_STEPS = 5;

  private static final double SECONDS_PER_MINUTE = 60;

  /** The components; lists are copied. */
  private record Parts(
      Athlete athlete,
      Log log,
      Optional<LocalDate> day,
      List<ReviewedSession> sessions,
      List<LogEntry.Climbed> climbing,
      TrainingLoad load,
      Exposure exposure,
      List<Progress> progress,
      List<SideDifference> sides,
      List<PainCourse> pain,
      List<Finding> next,
      List<Finding> findings) {
    Parts {
      sessions = List.copyOf(sessions);
      climbing = List.copyOf(climbing);
      progress = List.copyOf(progress);
      sides = List.copyOf(sides);
      pain = List.copyOf(pain);
      next = List.copyOf(next);
      findings = List.copyOf(findings);
    }
  }

  private final Parts parts;

  private Review(Parts parts) {
    this.parts = parts;
  }

  /** Returns the athlete whose log is reviewed. */
  public Athlete athlete() {
    return parts.athlete;
  }

  /** Returns the lines up to the day. */
  public Log log() {
    return parts.log;
  }

  /** Returns the day; empty if nothing is logged and no day was given. */
  public Optional<LocalDate> day() {
    return parts.day;
  }

  /** Returns the planned and logged sessions, by date. */
  public List<ReviewedSession> sessions() {
    return parts.sessions;
  }

  /** Returns the logged climbing, by date. */
  public List<LogEntry.Climbed> climbing() {
    return parts.climbing;
  }

  /** Returns the session load by day and week. */
  public TrainingLoad load() {
    return parts.load;
  }

  /** Returns the time under tension and impulse by grip, finger and pulley. */
  public Exposure exposure() {
    return parts.exposure;
  }

  /** Returns the change between tests. */
  public List<Progress> progress() {
    return parts.progress;
  }

  /** Returns the differences between the hands. */
  public List<SideDifference> sides() {
    return parts.sides;
  }

  /** Returns the pain by place, the worst first. */
  public List<PainCourse> pain() {
    return parts.pain;
  }

  /**
   * Returns the next steps for a coach, the most important first, at most {@value #MOST_STEPS}, as
   * findings.
   */
  public List<Finding> next() {
    return parts.next;
  }

  /** Returns the findings about the log, such as a test that doesn't fit the others. */
  public List<Finding> findings() {
    return parts.findings;
  }

  /**
   * Reviews a log.
   *
   * @param athlete whose log
   * @param log the log
   * @param plans compiled plans of this athlete; may be empty
   * @param protocols protocols by name, for sessions that were not planned
   * @param day the day; later lines are ignored
   * @throws IllegalArgumentException if the log or a plan is not the athlete's
   */
  public static Review of(
      Athlete athlete,
      Log log,
      List<CompiledPlan> plans,
      Map<String, Protocol> protocols,
      LocalDate day) {
    log.requireOf(athlete);
    plans.forEach(plan -> requireOf(athlete, plan));
    Log known =
        new Log(
            log.athlete(),
            log.entries().stream()
                .filter(entry -> !entry.date().isAfter(day))
                .sorted(Comparator.comparing(LogEntry::date).thenComparing(Object::toString))
                .toList());
    List<ReviewedSession> sessions = new SessionReviewer(protocols).review(plans, known, day);
    List<LogEntry.Climbed> climbing = known.of(LogEntry.Climbed.class);
    DayOfWeek weekStart = weekStart(plans);
    TrainingLoad load =
        known.entries().isEmpty()
            ? new TrainingLoad(List.of(), List.of())
            : TrainingLoad.of(
                daily(sessions, climbing), known.entries().get(0).date(), day, weekStart);
    List<StrengthTest> tests = known.tests();
    List<OutlierTests.Odd> odd = OddTests.among(athlete, tests);
    List<Progress> progress =
        Progress.of(tests, odd, course(athlete, tests, odd, completed(sessions, protocols), day));
    List<SideDifference> sides = SideDifference.of(progress);
    List<PainCourse> pain = PainCourse.of(known, athlete.injuries(), day);
    return new Review(
        new Parts(
            athlete,
            known,
            Optional.of(day),
            sessions,
            climbing,
            load,
            Exposure.of(
                athlete,
                sessions,
                known.bodyMassOn(day).orElse(athlete.bodyMass()),
                day,
                weekStart),
            progress,
            sides,
            pain,
            new NextSteps(
                    athlete,
                    known,
                    day,
                    new NextSteps.Seen(sessions, load, progress, sides, pain, odd))
                .steps(),
            Stream.concat(
                    Doubts.of(
                        athlete,
                        known,
                        plans,
                        odd.stream().map(each -> OddTests.finding(each, log)).toList())
                        .stream(),
                    plans.stream()
                        .flatMap(plan -> plan.findings().stream())
                        .filter(f -> f.isAbout(Topic.TEST_NOT_LOGGED)))
                .toList()));
  }

  /** Returns the places whose pain stops training on the day. */
  public PainStops stops() {
    return PainStops.of(
        parts.pain, GrowthPain.of(parts.athlete, parts.log), parts.day.orElse(LocalDate.MIN));
  }

  /** Returns the names of the planned or logged grips that are stopped, in alphabetical order. */
  public List<String> stoppedGrips() {
    PainStops stops = stops();
    return parts.sessions.stream()
        .flatMap(ReviewedSession::setups)
        .filter(setup -> stops.of(setup).isPresent())
        .map(setup -> setup.grip().name())
        .distinct()
        .sorted()
        .toList();
  }

  private static List<CompletedHold> completed(
      List<ReviewedSession> sessions, Map<String, Protocol> protocols) {
    return sessions.stream()
        .filter(ReviewedSession::trained)
        .flatMap(
            session ->
                session.work().stream()
                    .flatMap(work -> CompletedHolds.of(session.date(), work.match(), protocols)))
        .toList();
  }

  private static StrengthCourse course(
      Athlete athlete,
      List<StrengthTest> tests,
      List<OutlierTests.Odd> odd,
      List<CompletedHold> holds,
      LocalDate day) {
    List<StrengthTest> fitting = new ArrayList<>(tests);
    odd.forEach(each -> fitting.remove(each.test()));
    HandFits fits = new HandFits(athlete.shape(Side.LEFT), athlete.shape(Side.RIGHT));
    Map<Setup, Posture> postures = new HashMap<>();
    return StrengthCourse.of(
        fitting,
        holds,
        setup -> postures.computeIfAbsent(setup, s -> Posture.of(fits.of(s).values())),
        day);
  }

  private static void requireOf(Athlete athlete, CompiledPlan plan) {
    if (!plan.athlete().name().equals(athlete.name())) {
      throw new IllegalArgumentException(
          "plan "
              + plan.plan().name()
              + " was compiled for "
              + plan.athlete().name()
              + ", not for "
              + athlete.name());
    }
  }

  /** Returns the review of an empty log, without a day. */
  public static Review unlogged(Athlete athlete) {
    return new Review(
        new Parts(
            athlete,
            Log.empty(athlete.name()),
            Optional.empty(),
            List.of(),
            List.of(),
            new TrainingLoad(List.of(), List.of()),
            new Exposure(List.of()),
            List.of(),
            List.of(),
            List.of(),
            List.of(NextSteps.begin(athlete)),
            List.of()));
  }

  /** Returns the day on which weeks begin: that of the first plan, else Monday. */
  private static DayOfWeek weekStart(List<CompiledPlan> plans) {
    return plans.stream()
        .map(plan -> plan.plan().from())
        .min(Comparator.naturalOrder())
        .map(LocalDate::getDayOfWeek)
        .orElse(DayOfWeek.MONDAY);
  }

  private static SortedMap<LocalDate, Double> daily(
      List<ReviewedSession> sessions, List<LogEntry.Climbed> climbing) {
    SortedMap<LocalDate, List<Double>> loads = new TreeMap<>();
    for (ReviewedSession session : sessions) {
      if (session.trained()) {
        loads
            .computeIfAbsent(session.date(), date -> new ArrayList<>())
            .add(session.load().orElse(0));
      }
    }
    for (LogEntry.Climbed climbed : climbing) {
      loads.computeIfAbsent(climbed.date(), date -> new ArrayList<>()).add(load(climbed));
    }
    SortedMap<LocalDate, Double> daily = new TreeMap<>();
    loads.forEach(
        (date, ofDay) ->
            daily.put(date, ofDay.stream().sorted().mapToDouble(Double::doubleValue).sum()));
    return daily;
  }

  /** Returns effort times minutes of climbing; 0 if no effort is logged. */
  public static double load(LogEntry.Climbed climbed) {
    return climbed.effort().orElse(0) * climbed.time().toSeconds() / SECONDS_PER_MINUTE;
  }

  /** Returns how many sessions and days of climbing have no effort and so count as 0. */
  public long withoutEffort() {
    return parts.sessions.stream().filter(s -> s.trained() && s.effort().isEmpty()).count()
        + parts.climbing.stream().filter(climbed -> climbed.effort().isEmpty()).count();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Review that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "Review" + parts.toString().substring("Parts".length());
  }
}
