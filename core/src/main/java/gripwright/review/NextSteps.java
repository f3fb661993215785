package gripwright.review;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.log.GrowthPain;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.review.ReviewedSession.Outcome;
import gripwright.strength.KnownLight;
import gripwright.strength.OutlierTests;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The next steps for a coach, the most important first: pain, then tests that do not fit, then too
 * much work, then load and habits, then earned steps, then tests to do.
 *
 * <p>The cut-offs are the library's own choice where no other source is named.
 */
final class NextSteps {

  /** Days that count as recent. */
  private static final int LATELY = 28;

  /** Monotony above this went with more illness: Foster 1998 (from memory). */
  private static final double MONOTONOUS = 2;

  /**
   * A week whose load exceeds the mean of up to three complete weeks before it by this factor is a
   * sharp rise.
   */
  private static final double LEAP = 1.3;

  private static final int WEEKS_BEFORE = 3;
  private static final int LEAST_PLANNED = 3;
  private static final int RETEST_DAYS = 56;
  private static final double ENOUGH = 2.0 / 3;

  private final Athlete athlete;
  private final GrowthPain growthPain;
  private final ModelPath place;
  private final Log log;
  private final LocalDate day;
  private final List<ReviewedSession> sessions;
  private final TrainingLoad load;
  private final List<Progress> progress;
  private final List<SideDifference> sides;
  private final List<PainCourse> pain;
  private final List<OutlierTests.Odd> odd;
  private final PainStops stops;
  private final List<Finding> steps = new ArrayList<>();

  /** The data of a log used here. */
  record Seen(
      List<ReviewedSession> sessions,
      TrainingLoad load,
      List<Progress> progress,
      List<SideDifference> sides,
      List<PainCourse> pain,
      List<OutlierTests.Odd> odd) {}

  NextSteps(Athlete athlete, Log log, LocalDate day, Seen seen) {
    this.athlete = athlete;
    this.growthPain = GrowthPain.of(athlete, log);
    this.place = ModelPath.of("athlete", athlete.name());
    this.log = log;
    this.day = day;
    this.sessions = seen.sessions();
    this.load = seen.load();
    this.progress = seen.progress();
    this.sides = seen.sides();
    this.pain = seen.pain();
    this.odd = seen.odd();
    this.stops = PainStops.of(pain, growthPain, day);
  }

  List<Finding> steps() {
    if (log.entries().isEmpty()) {
      return List.of(step("review.begin"));
    }
    steps.addAll(new PainSteps(place, pain, growthPain.stopped(day)).steps());
    oddTests();
    ExerciseSteps exercises = new ExerciseSteps(place, trainedLately());
    steps.addAll(exercises.tooMuch(setup -> stops.of(setup).isPresent()));
    steps.addAll(exercises.heavier(setup -> stops.of(setup).isPresent()));
    weaker();
    loads();
    habits();
    steps.addAll(exercises.earned(this::forbidden));
    tests();
    if (steps.isEmpty()) {
      steps.add(step("review.go-on"));
    }
    return steps.subList(0, Math.min(steps.size(), Review.MOST_STEPS));
  }

  /** Returns the next step if nothing is logged. */
  static Finding begin(Athlete athlete) {
    return Finding.advice("review.begin", ModelPath.of("athlete", athlete.name()));
  }

  private Finding step(String code) {
    return Finding.advice(code, place);
  }

  /** Starts a step that advises a test, or says that none is advised, now or for this athlete. */
  private Finding step(String code, Setup setup) {
    if (KnownLight.forbidsTests(athlete, setup, day)) {
      return step(code).with("untestable", setup);
    }
    if (stops.of(setup).isPresent()) {
      return step(code).with("stopped", setup);
    }
    return held(setup) ? step(code).with("held", setup) : step(code);
  }

  /** Starts a step that advises a test of any grip, which waits for the end of all pain. */
  private Finding testStep(String code) {
    if (!stops.isEmpty()) {
      return step(code).with("stopped", "");
    }
    boolean held = pain.stream().anyMatch(course -> course.rule() == PainCourse.Rule.HOLD);
    return held ? step(code).with("held", "") : step(code);
  }

  /**
   * Returns whether pain keeps a setup the same or lighter: a test is a maximal load, so it waits.
   */
  private boolean held(Setup setup) {
    return pain.stream()
        .anyMatch(
            course ->
                course.rule() == PainCourse.Rule.HOLD
                    && course.place().isUsedBy(setup.grip().fingers(), setup.hands()));
  }

  /** Returns whether a test may be advised for any grip. */
  private boolean testable() {
    return athlete.ageInMonths(day) >= KnownLight.YOUNG_MONTHS
        && athlete.injuries().stream().noneMatch(injury -> injury.openOn(day));
  }

  /** Returns a load with at most one decimal, for a sentence. */
  static String rounded(Load load) {
    return Numbers.plain(load.kilograms(), 1) + " kg";
  }

  private static String whole(double value) {
    return Numbers.plain(value, 0);
  }

  /** Returns whether pain or a lower test rules out more of an exercise. */
  private boolean forbidden(LogEntry.Done done) {
    return progress.stream().anyMatch(p -> p.setup().equals(done.setup()) && fall(p).isPresent())
        || stops.of(done.setup()).isPresent()
        || pain.stream()
            .anyMatch(
                course -> course.rule() != PainCourse.Rule.GO_ON && course.place().isUsedBy(done));
  }

  private void oddTests() {
    for (OutlierTests.Odd each : odd) {
      if (ChronoUnit.DAYS.between(each.test().date(), day) <= RETEST_DAYS) {
        Finding step = step("review.odd-test", each.test().setup());
        // A low test invites another one, so a reason against a test goes first.
        boolean waits = !step.arguments().isEmpty();
        steps.add(
            (each.deviations() < 0 && !waits ? step.with("low", "") : step)
                .with("setup", each.test().setup())
                .with("date", each.test().date())
                .with("load", rounded(each.test().effort().orElseThrow().load()))
                .with("expected", rounded(each.expected().best())));
      }
    }
  }

  private List<ReviewedSession> trainedLately() {
    return sessions.stream().filter(s -> s.trained() && lately(s.date())).toList();
  }

  private boolean lately(LocalDate date) {
    return ChronoUnit.DAYS.between(date, day) < LATELY;
  }

  private void weaker() {
    for (Progress each : progress) {
      fall(each)
          .ifPresent(
              change ->
                  steps.add(
                      step("review.weaker", each.setup())
                          .with("setup", each.setup())
                          .with("from", rounded(change.from().load()))
                          .with("to", rounded(change.to().load()))
                          .with("date", change.to().date())
                          .with("detectable", Numbers.plain(change.detectable(), 1) + " kg")));
    }
  }

  /** Returns the recent fall of a setup in its last test, if there was one. */
  private Optional<Progress.Change> fall(Progress setup) {
    return setup
        .sinceLast()
        .filter(change -> change.verdict() == Progress.Verdict.LOWER)
        .filter(change -> ChronoUnit.DAYS.between(change.to().date(), day) < LATELY);
  }

  private void loads() {
    List<TrainingLoad.Week> whole = load.weeks().stream().filter(TrainingLoad.Week::whole).toList();
    if (whole.isEmpty()) {
      return;
    }
    TrainingLoad.Week last = whole.get(whole.size() - 1);
    List<TrainingLoad.Week> before =
        whole.subList(Math.max(0, whole.size() - 1 - WEEKS_BEFORE), whole.size() - 1);
    double mean = before.stream().mapToDouble(TrainingLoad.Week::load).average().orElse(0);
    if (mean > 0 && last.load() > LEAP * mean) {
      steps.add(
          step("review.leap")
              .with("week", last.from())
              .with("load", whole(last.load()))
              .with("mean", whole(mean))
              .with("percent", whole(100 * (last.load() / mean - 1))));
    }
    if (last.monotony().orElse(0) > MONOTONOUS) {
      steps.add(
          step("review.vary")
              .with("week", last.from())
              .with("monotony", Numbers.plain(last.monotony().orElse(0), 1)));
    }
  }

  private void habits() {
    List<ReviewedSession> planned =
        sessions.stream().filter(s -> s.planned().isPresent() && lately(s.date())).toList();
    long trained = planned.stream().filter(ReviewedSession::trained).count();
    long skipped = planned.stream().filter(s -> s.outcome() == Outcome.SKIPPED).count();
    long unlogged = planned.stream().filter(s -> s.outcome() == Outcome.UNLOGGED).count();
    if (unlogged > 0) {
      steps.add(
          step(unlogged == 1 ? "review.unlogged-one" : "review.unlogged")
              .with("count", unlogged)
              .with(
                  "first",
                  planned.stream()
                      .filter(s -> s.outcome() == Outcome.UNLOGGED)
                      .findFirst()
                      .orElseThrow()
                      .date()));
    }
    if (planned.size() >= LEAST_PLANNED && unlogged == 0 && trained < ENOUGH * planned.size()) {
      steps.add(
          step("review.fewer")
              .with("trained", trained)
              .with("planned", planned.size())
              .with("skipped", skipped));
    }
    long silent = trainedLately().stream().filter(s -> s.effort().isEmpty()).count();
    if (silent > 0) {
      steps.add(step(silent == 1 ? "review.effort-one" : "review.effort").with("count", silent));
    }
  }

  private void tests() {
    sides.stream()
        .filter(SideDifference::beyondNoise)
        .forEach(
            difference ->
                steps.add(
                    step("review.sides")
                        .with(
                            "setup",
                            difference.setup().grip().name() + " edge " + difference.setup().edge())
                        .with("left", rounded(difference.left().load()))
                        .with("right", rounded(difference.right().load()))
                        .with("percent", whole(Math.abs(difference.percent())))
                        .with("detectable", whole(difference.detectablePercent()))));
    List<LocalDate> dates = log.tests().stream().map(test -> test.date()).toList();
    if (!testable()) {
      return;
    }
    if (dates.isEmpty()) {
      steps.add(testStep("review.first-test"));
    } else {
      LocalDate last = dates.get(dates.size() - 1);
      long age = ChronoUnit.DAYS.between(last, day);
      if (age > RETEST_DAYS) {
        steps.add(testStep("review.retest").with("date", last).with("weeks", age / 7));
      }
    }
  }
}
