package gripwright.review;

import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.Listing;
import gripwright.finding.ModelPath;
import gripwright.hand.Finger;
import gripwright.quantity.Numbers;
import gripwright.review.PainCourse.InFinger;
import gripwright.review.PainCourse.InGrip;
import gripwright.review.PainCourse.Place;
import gripwright.review.PainCourse.Rule;
import gripwright.review.PainCourse.WhileClimbing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Derives the next steps because of pain: what to stop or hold, and when a stop ends. */
final class PainSteps {

  private final ModelPath place;
  private final List<PainCourse> pain;
  private final List<Finger> growing;

  /**
   * Prepares the steps.
   *
   * @param place place of the findings in the model
   * @param growing fingers that are stopped because of pain under 18
   */
  PainSteps(ModelPath place, List<PainCourse> pain, List<Finger> growing) {
    this.place = place;
    this.pain = pain;
    this.growing = growing;
  }

  List<Finding> steps() {
    List<Finding> steps = new ArrayList<>();
    for (PainCourse course : pain) {
      if (course.rule() != Rule.GO_ON && !isJoined(course)) {
        steps.add(step(course));
      }
    }
    for (Finger finger : growing) {
      steps.add(
          Finding.advice("review.growing-joint", place)
              .with("what", Clause.of("review.grips-of-finger", "finger", finger)));
    }
    return steps;
  }

  private Finding step(PainCourse course) {
    PainCourse.Score score = course.worst();
    Finding step =
        Finding.advice(course.rule() == Rule.STOP ? "review.stop" : "review.hold", place)
            .with("place", course.place())
            .with("score", Numbers.plain(score.value(), 1))
            .with("date", score.date())
            .with("what", what(course));
    return switch (course.because()) {
      case ABOVE_LIMIT -> step.with("above", "").with("end", course.place().accept(END));
      case SHARP -> step.with("sharp", "").with("end", course.place().accept(END));
      case RISING -> step.with("rising", "").with("end", course.place().accept(END));
      case MODERATE, MILD -> step;
    };
  }

  /** Returns whether a grip's pain is part of the step about one of its fingers. */
  private boolean isJoined(PainCourse course) {
    return course.place() instanceof InGrip grip
        && pain.stream()
            .anyMatch(
                other ->
                    other.place() instanceof InFinger finger
                        && grip.fingers().has(finger.finger())
                        && other.rule().compareTo(course.rule()) >= 0);
  }

  /**
   * Returns what to stop or hold: with a finger also the grips whose own pain has the same
   * consequence, as another of their fingers may be the one that hurts.
   */
  private Clause what(PainCourse course) {
    Clause work = course.place().accept(WORK);
    if (!(course.place() instanceof InFinger finger)) {
      return work;
    }
    List<Place> grips =
        pain.stream()
            .filter(other -> other.rule() == course.rule())
            .map(PainCourse::place)
            .filter(other -> other instanceof InGrip grip && grip.fingers().has(finger.finger()))
            .toList();
    return grips.isEmpty()
        ? work
        : new Clause(
            course.rule() == Rule.STOP ? "review.grips-too" : "review.grips-too-held",
            Map.of("what", work, "grips", Listing.of(Listing.Style.OR, grips)));
  }

  private static Clause ofFinger(String key, InFinger place) {
    return place
        .side()
        .map(side -> new Clause(key + "-side", Map.of("side", side, "finger", place.finger())))
        .orElseGet(() -> Clause.of(key, "finger", place.finger()));
  }

  /** The work to stop or hold. */
  private static final Place.Visitor<Clause> WORK =
      new Place.Visitor<>() {
        @Override
        public Clause inFinger(InFinger place) {
          return ofFinger("review.grips-of-finger", place);
        }

        @Override
        public Clause inGrip(InGrip place) {
          return Clause.of("review.grips-sharing", "grip", place.grip());
        }

        @Override
        public Clause whileClimbing(WhileClimbing place) {
          return Clause.of("review.climbing");
        }
      };

  /** The scores that end a stop. */
  private static final Place.Visitor<Clause> END =
      new Place.Visitor<>() {
        @Override
        public Clause inFinger(InFinger place) {
          return ofFinger("review.end-finger", place);
        }

        @Override
        public Clause inGrip(InGrip place) {
          return Clause.of("review.end-grip", "grip", place.grip());
        }

        @Override
        public Clause whileClimbing(WhileClimbing place) {
          return Clause.of("review.end-climbing");
        }
      };
}
