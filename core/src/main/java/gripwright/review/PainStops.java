package gripwright.review;

import gripwright.grip.FingerSet;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.log.GrowthPain;
import gripwright.review.PainCourse.InFinger;
import gripwright.review.PainCourse.InGrip;
import gripwright.review.PainCourse.Place;
import gripwright.review.PainCourse.WhileClimbing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The places whose pain stops training on a day. A stop covers every grip that loads its place, so
 * a grip with low scores of its own may be stopped. Immutable.
 */
public final class PainStops {

  private final List<Place> places;

  private PainStops(List<Place> places) {
    this.places = List.copyOf(places);
  }

  static PainStops of(List<PainCourse> pain, GrowthPain growth, LocalDate day) {
    List<Place> fingers = new ArrayList<>();
    List<Place> others = new ArrayList<>();
    for (PainCourse course : pain) {
      if (course.rule() == PainCourse.Rule.STOP) {
        (course.place() instanceof InFinger ? fingers : others).add(course.place());
      }
    }
    for (Finger finger : growth.stopped(day)) {
      fingers.add(new InFinger(finger, Optional.empty(), Optional.empty()));
    }
    fingers.addAll(others);
    return new PainStops(fingers);
  }

  /** Returns whether nothing is stopped. */
  public boolean isEmpty() {
    return places.isEmpty();
  }

  /** Returns the place that stops a setup, a named finger before a grip; empty if none does. */
  public Optional<Place> of(Setup setup) {
    return of(setup.grip().fingers(), setup.hands());
  }

  private Optional<Place> of(FingerSet fingers, Hands hands) {
    return places.stream().filter(place -> place.isUsedBy(fingers, hands)).findFirst();
  }

  /** Returns the place that stops another place, whatever the scores of that one. */
  public Optional<Place> of(Place place) {
    return place.accept(
        new Place.Visitor<>() {
          @Override
          public Optional<Place> inFinger(InFinger finger) {
            return PainStops.this.of(
                FingerSet.of(finger.finger()),
                finger.side().map(PainStops::hand).orElse(Hands.BOTH));
          }

          @Override
          public Optional<Place> inGrip(InGrip grip) {
            return PainStops.this.of(grip.fingers(), Hands.BOTH);
          }

          @Override
          public Optional<Place> whileClimbing(WhileClimbing climbing) {
            return places.stream().findFirst();
          }
        });
  }

  private static Hands hand(Side side) {
    return side == Side.LEFT ? Hands.LEFT : Hands.RIGHT;
  }
}
