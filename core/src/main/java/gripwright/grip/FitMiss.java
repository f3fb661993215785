package gripwright.grip;

import gripwright.finding.Message;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Joint;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import java.util.Map;
import java.util.Objects;

/** Why a hand does not take a grip on an edge: what one finger misses in the nearest pose. */
public sealed interface FitMiss extends Message {

  /** Returns the finger that misses. */
  Finger finger();

  /** Answers with what a visitor has for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One answer for each kind of reason.
   *
   * @param <R> what is answered
   */
  interface Visitor<R> {
    /** Answers for a finger that is too short. */
    R tooShort(TooShort miss);

    /** Answers for a joint that lies outside of its band. */
    R outOfBand(OutOfBand miss);

    /** Answers for a joint that does not move so far. */
    R beyondLimit(BeyondLimit miss);
  }

  /**
   * The finger is too short to lie on the edge with the others.
   *
   * @param finger which
   * @param by what a straight finger lacks that holds with as little of its pad as it may
   */
  record TooShort(Finger finger, Length by) implements FitMiss {
    /** Refuses null. */
    public TooShort {
      Objects.requireNonNull(finger, "finger");
      Objects.requireNonNull(by, "by");
    }

    @Override
    public String key() {
      return "fit.too-short";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("finger", finger, "by", by);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.tooShort(this);
    }
  }

  /**
   * A joint can't be bent as the grip asks while the other fingers lie as they do.
   *
   * @param finger which
   * @param joint which, the middle joint
   * @param required what the grip asks, narrowed to what the athlete's own joint allows
   * @param nearest the flexion of the nearest pose
   * @param degrees what is missing: above 0 if the joint is bent too far, below 0 if too little
   */
  record OutOfBand(Finger finger, Joint joint, Band required, Angle nearest, double degrees)
      implements FitMiss {
    /** Refuses null. */
    public OutOfBand {
      Objects.requireNonNull(finger, "finger");
      Objects.requireNonNull(joint, "joint");
      Objects.requireNonNull(required, "required");
      Objects.requireNonNull(nearest, "nearest");
    }

    @Override
    public String key() {
      return "fit.out-of-band";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("finger", finger, "nearest", nearest, "asked", required);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.outOfBand(this);
    }
  }

  /**
   * The grip asks more of a joint than the athlete's own moves.
   *
   * @param finger which
   * @param joint which, the middle joint
   * @param required the grip's band, if the joint doesn't reach it wherever the palm is; else the
   *     flexion, in whole degrees, with which the hand would take the grip if its joints had no
   *     limits
   * @param limit how far the athlete's joint moves
   * @param degrees what is missing between the two, above 0
   */
  record BeyondLimit(Finger finger, Joint joint, Band required, FlexionRange limit, double degrees)
      implements FitMiss {
    /** Refuses null. */
    public BeyondLimit {
      Objects.requireNonNull(finger, "finger");
      Objects.requireNonNull(joint, "joint");
      Objects.requireNonNull(required, "required");
      Objects.requireNonNull(limit, "limit");
    }

    @Override
    public String key() {
      return "fit.beyond-limit";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of(
          "finger",
          finger,
          "joint",
          new Joint.Name(joint),
          "least",
          limit.low(),
          "greatest",
          limit.high(),
          "asked",
          required);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.beyondLimit(this);
    }
  }
}
