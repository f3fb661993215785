package gripwright.review;

import gripwright.athlete.Athlete;
import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.history.ExerciseMatch;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.review.ReviewedSession.Outcome;
import gripwright.strength.OutlierTests;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a coach would do next, the most important first: pain, then tests that do not fit, then work
 * that was too much, then load and habits, then what was earned, then what to test.
 *
 * <p>The cut-offs are the library's own choice where no other source is named.
 */
final class NextSteps {

  /** Days that count as lately. */
  private static final int LATELY = 28;

  /** Monotony above this went with more illness: Foster 1998 (from memory). */
  private static final double MONOTONOUS = 2;

  /** A week this much above the mean of up to three whole weeks before it is a leap. */
  private static final double LEAP = 1.3;

  private static final int WEEKS_BEFORE = 3;
  private static final double TOO_HARD = 9;
  private static final double EARNED_EFFORT = 8;
  private static final int TWICE = 2;
  private static final int LEAST_PLANNED = 3;
  private static final int RETEST_DAYS = 56;
  private static final double ENOUGH = 2.0 / 3;

  private final ModelPath place;
  private final Log log;
  private final LocalDate day;
  private final List<ReviewedSession> sessions;
  private final TrainingLoad load;
  private final List<Progress> progress;
  private final List<SideDifference> sides;
  private final List<PainCourse> pain;
  private final List<OutlierTests.Odd> odd;
  private final List<Finding> steps = new ArrayList<>();

  /** What was seen in a log. */
  record Seen(
      List<ReviewedSession> sessions,
      TrainingLoad load,
      List<Progress> progress,
      List<SideDifference> sides,
      List<PainCourse> pain,
      List<OutlierTests.Odd> odd) {}

  NextSteps(Athlete athlete, Log log, LocalDate day, Seen seen) {
    this.place = ModelPath.of("athlete", athlete.name());
    this.log = log;
    this.day = day;
    this.sessions = seen.sessions();
    this.load = seen.load();
    this.progress = seen.progress();
    this.sides = seen.sides();
    this.pain = seen.pain();
    this.odd = seen.odd();
  }

  List<Finding> steps() {
    if (log.entries().isEmpty()) {
      return List.of(step("review.begin"));
    }
    pain();
    oddTests();
    Map<Message, List<Done>> exercises = exercises();
    tooMuch(exercises);
    weaker();
    loads();
    habits();
    earned(exercises);
    tests();
    if (steps.isEmpty()) {
      steps.add(step("review.go-on"));
    }
    return steps.subList(0, Math.min(steps.size(), Review.MOST_STEPS));
  }

  /** Returns what comes next where nothing is logged. */
  static Finding begin(Athlete athlete) {
    return Finding.advice("review.begin", ModelPath.of("athlete", athlete.name()));
  }

  private Finding step(String code) {
    return Finding.advice(code, place);
  }

  /** Returns a load with a decimal at most, as a sentence says it. */
  static String rounded(Load load) {
    return Numbers.plain(load.kilograms(), 1) + " kg";
  }

  private static String whole(double value) {
    return Numbers.plain(value, 0);
  }

  private void pain() {
    for (PainCourse course : pain) {
      if (toldElsewhere(course)) {
        continue;
      }
      PainCourse.Score score = course.gravest(day);
      Finding step =
          step(course.rule() == PainCourse.Rule.STOP ? "review.stop" : "review.hold")
              .with("place", course.place())
              .with("score", Numbers.plain(score.value(), 1))
              .with("date", score.date());
      switch (course.because()) {
        case ABOVE_LIMIT -> steps.add(on(course, step.with("above", "")));
        case SHARP -> steps.add(on(course, step.with("sharp", "")));
        case RISING -> steps.add(on(course, step.with("rising", "")));
        case MODERATE -> steps.add(on(course, step));
        case MILD -> {
          // Training goes on.
        }
      }
    }
  }

  /** Tells whether a line about a finger says of a grip's pain where it is, and as much. */
  private boolean toldElsewhere(PainCourse course) {
    return course.place() instanceof PainCourse.InGrip grip
        && pain.stream()
            .anyMatch(
                other ->
                    other.place() instanceof PainCourse.InFinger finger
                        && grip.fingers().has(finger.finger())
                        && other.rule().compareTo(course.rule()) >= 0);
  }

  /** Says what is to be stopped or held. */
  private static Finding on(PainCourse course, Finding step) {
    return step.with("what", course.place().accept(TO_STOP));
  }

  private static final PainCourse.Place.Visitor<Clause> TO_STOP =
      new PainCourse.Place.Visitor<>() {
        @Override
        public Clause inFinger(PainCourse.InFinger place) {
          return Clause.of("review.grips-of-finger", "finger", place.finger());
        }

        @Override
        public Clause inGrip(PainCourse.InGrip place) {
          return Clause.of("review.grips-alike", "grip", place.grip());
        }

        @Override
        public Clause whileClimbing(PainCourse.WhileClimbing place) {
          return Clause.of("review.climbing");
        }
      };

  private void oddTests() {
    for (OutlierTests.Odd each : odd) {
      if (ChronoUnit.DAYS.between(each.test().date(), day) <= RETEST_DAYS) {
        steps.add(
            step("review.odd-test")
                .with("setup", each.test().setup())
                .with("date", each.test().date())
                .with("load", rounded(each.test().effort().orElseThrow().load()))
                .with("expected", rounded(each.expected().best())));
      }
    }
  }

  /** An exercise as it was done on a day. */
  private record Done(LocalDate date, ExerciseMatch match) {

    LogEntry.Done line() {
      return match.done().orElseThrow();
    }
  }

  /** Returns what was done lately of each exercise, oldest first. */
  private Map<Message, List<Done>> exercises() {
    Map<Message, List<Done>> exercises = new LinkedHashMap<>();
    for (ReviewedSession session : sessions) {
      if (session.trained() && lately(session.date())) {
        for (ReviewedSession.Work work : session.work()) {
          work.match()
              .done()
              .ifPresent(
                  done ->
                      exercises
                          .computeIfAbsent(exercise(done), name -> new ArrayList<>())
                          .add(new Done(session.date(), work.match())));
        }
      }
    }
    return exercises;
  }

  private static Message exercise(LogEntry.Done done) {
    return new Clause(
        "review.exercise", Map.of("protocol", done.protocol(), "setup", done.setup()));
  }

  private boolean lately(LocalDate date) {
    return ChronoUnit.DAYS.between(date, day) < LATELY;
  }

  private void tooMuch(Map<Message, List<Done>> exercises) {
    exercises.forEach(
        (name, all) -> {
          if (all.size() >= TWICE) {
            Done one = all.get(all.size() - 2);
            Done other = all.get(all.size() - 1);
            Finding about =
                step("review.lighter")
                    .with("exercise", name)
                    .with("first", one.date())
                    .with("second", other.date());
            if (missed(one) && missed(other)) {
              steps.add(
                  about.with(
                      "missed", Listing.of(Listing.Style.AND, List.of(sets(one), sets(other)))));
            } else if (one.line().effort().orElse(0) >= TOO_HARD
                && other.line().effort().orElse(0) >= TOO_HARD) {
              steps.add(
                  about.with(
                      "effort",
                      Listing.of(
                          Listing.Style.AND,
                          List.of(
                              Numbers.plain(one.line().effort().orElse(0), 1),
                              Numbers.plain(other.line().effort().orElse(0), 1)))));
            }
          }
        });
  }

  private static boolean missed(Done done) {
    return done.match().setsDone().orElse(0) < done.match().setsAsked().orElse(0);
  }

  private static Message sets(Done done) {
    Map<String, Object> facts = new TreeMap<>();
    facts.put("sets", done.match().setsDone().orElse(0));
    done.match().setsAsked().ifPresent(asked -> facts.put("asked", asked));
    done.line().load().ifPresent(load -> facts.put("load", rounded(load)));
    return new Clause(
        "review.sets"
            + (facts.containsKey("asked") ? "-of" : "")
            + (facts.containsKey("load") ? "-at" : ""),
        facts);
  }

  private void weaker() {
    for (Progress each : progress) {
      each.sinceLast()
          .filter(change -> change.verdict() == Progress.Verdict.LOWER)
          .filter(change -> ChronoUnit.DAYS.between(change.to().date(), day) < LATELY)
          .ifPresent(
              change ->
                  steps.add(
                      step("review.weaker")
                          .with("setup", each.setup())
                          .with("from", rounded(change.from().load()))
                          .with("to", rounded(change.to().load()))
                          .with("date", change.to().date())
                          .with("detectable", Numbers.plain(change.detectable(), 1) + " kg")));
    }
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
    long silent =
        sessions.stream()
            .filter(s -> s.trained() && lately(s.date()) && s.effort().isEmpty())
            .count();
    if (silent > 0) {
      steps.add(step(silent == 1 ? "review.effort-one" : "review.effort").with("count", silent));
    }
  }

  private void earned(Map<Message, List<Done>> exercises) {
    exercises.forEach(
        (name, all) -> {
          if (all.size() >= TWICE) {
            Done one = all.get(all.size() - 2);
            Done other = all.get(all.size() - 1);
            if (easy(one) && easy(other) && pain.stream().noneMatch(p -> forbids(p, other))) {
              steps.add(
                  step("review.earned")
                      .with("exercise", name)
                      .with("first", one.date())
                      .with("second", other.date())
                      .with(
                          "effort",
                          Numbers.plain(
                              Math.max(
                                  one.line().effort().orElse(0), other.line().effort().orElse(0)),
                              1)));
            }
          }
        });
  }

  private static boolean easy(Done done) {
    return done.match().inFull()
        && done.line().effort().isPresent()
        && done.line().effort().getAsDouble() <= EARNED_EFFORT
        && done.line().pain().orElse(0) <= PainCourse.MILD;
  }

  private static boolean forbids(PainCourse course, Done done) {
    return course.rule() != PainCourse.Rule.GO_ON && course.place().isUsedBy(done.line());
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
    if (dates.isEmpty()) {
      steps.add(step("review.first-test"));
    } else {
      LocalDate last = dates.get(dates.size() - 1);
      long age = ChronoUnit.DAYS.between(last, day);
      if (age > RETEST_DAYS) {
        steps.add(step("review.retest").with("date", last).with("weeks", age / 7));
      }
    }
  }
}
