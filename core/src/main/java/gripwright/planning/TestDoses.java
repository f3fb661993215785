package gripwright.planning;

import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.TestKind;
import gripwright.protocol.Level;
import gripwright.strength.EnduranceLaw;
import gripwright.strength.ForceTime;
import java.time.Duration;
import java.util.OptionalDouble;

/** Reports tests that ask for more than is usual. */
final class TestDoses {

  /** Attempts above this are reported; the library's own number. */
  private static final int MOST_ATTEMPTS = 5;

  /** A rest between attempts below this is reported; common practice. */
  private static final Duration LEAST_REST = Duration.ofMinutes(2);

  /** Holds of an all-out series above this are reported; the library's own number. */
  private static final int MOST_HOLDS = 40;

  /** A warm-up before a test below this is reported; as `warm-up-before-hard` for sessions. */
  private static final Duration LEAST_WARM_UP = Duration.ofMinutes(5);

  /** A level from which work is no warm-up for holds at the maximum, as for sessions. */
  private static final double TOO_HARD_TO_WARM = 0.6;

  private final Plan plan;
  private final ModelPath root;
  private final FindingList found = new FindingList();

  TestDoses(Plan plan, ModelPath root) {
    this.plan = plan;
    this.root = root;
  }

  FindingList findings() {
    for (int n = 1; n <= plan.retests().size(); n++) {
      PlannedTest test = plan.retests().get(n - 1);
      ModelPath place = root.then("retest", n);
      noteAttempts(test, place);
      if (!test.isPlain()) {
        noteTime(test, place);
        noteWarmUp(test, place);
      }
    }
    return found;
  }

  private void noteAttempts(PlannedTest test, ModelPath place) {
    if (test.attempts() > MOST_ATTEMPTS) {
      found.add(
          Finding.warning("plan.test-attempts", place)
              .with("attempts", test.attempts())
              .with("most", MOST_ATTEMPTS));
    }
    if (test.attempts() > 1 && test.resting().compareTo(LEAST_REST) < 0) {
      found.add(
          Finding.warning("plan.test-resting", place)
              .with("time", test.resting())
              .with("least", LEAST_REST));
    }
    if (test.kind() instanceof TestKind.Series series && series.holds() > MOST_HOLDS) {
      found.add(
          Finding.warning("plan.test-series", place)
              .with("holds", series.holds())
              .with("most", MOST_HOLDS));
    }
  }

  /** Reports holds that are longer than any from which strength is estimated. */
  private void noteTime(PlannedTest test, ModelPath place) {
    Duration longest = Duration.ofSeconds((long) ForceTime.LONGEST_SECONDS);
    if (test.kind().holdTime().compareTo(longest) > 0) {
      found.add(
          Finding.warning("plan.test-long", place)
              .with("time", test.kind().holdTime())
              .with("most", longest));
    }
    if (test.kind() instanceof TestKind.ToFailure failure && outlasts(failure.level())) {
      found.add(
          Finding.warning("plan.test-long", place)
              .with("level", failure.level())
              .with("most", longest));
    }
  }

  /** Returns whether a share of the maximum can be held for longer than strength is known. */
  private static boolean outlasts(Level level) {
    OptionalDouble share =
        level instanceof Level.OfMax of
            ? OptionalDouble.of(of.fraction())
            : level instanceof Level.OfTest of
                ? OptionalDouble.of(of.fraction())
                : OptionalDouble.empty();
    return share.isPresent()
        && Double.isInfinite(
            EnduranceLaw.ROHMERT.seconds(
                share.getAsDouble() * EnduranceLaw.ROHMERT.share(ForceTime.REFERENCE_SECONDS)));
  }

  /** Reports a short warm-up, in which exercises count that are light by what is written. */
  private void noteWarmUp(PlannedTest test, ModelPath place) {
    Duration time = test.warmUp().orElse(plan.warmUp());
    for (Exercise exercise : test.exercises()) {
      boolean light =
          exercise.scheme().levels().stream()
              .noneMatch(
                  level -> level instanceof Level.OfMax of && of.fraction() >= TOO_HARD_TO_WARM);
      time = light ? time.plus(exercise.scheme().duration()) : time;
    }
    if (time.compareTo(LEAST_WARM_UP) < 0) {
      found.add(
          Finding.warning("plan.test-warm-up", place)
              .with("time", time)
              .with("least", LEAST_WARM_UP));
    }
  }
}
