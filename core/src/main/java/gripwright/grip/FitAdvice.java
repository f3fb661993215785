package gripwright.grip;

import gripwright.finding.Message;
import gripwright.hand.Finger;
import gripwright.hand.Joint;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * A finger that should not be forced into the grip at high intensity.
 *
 * @param finger which
 * @param joint the joint that it is about
 * @param reason why
 * @param degrees how far the joint, or the roll, is from what comes by itself; 0 or more
 */
public record FitAdvice(Finger finger, Joint joint, Reason reason, double degrees)
    implements Message {
  /** Refuses null. */
  public FitAdvice {
    Objects.requireNonNull(finger, "finger");
    Objects.requireNonNull(joint, "joint");
    Objects.requireNonNull(reason, "reason");
  }

  /** Why a finger should not be forced. */
  public enum Reason {
    /** It gets into its band only with the palm rolled beyond neutral. */
    WRIST_ROLL,
    /**
     * The pose that suits the hand leaves it at the end of its band, and not because of a measured
     * limit; degrees from the middle.
     */
    AWAY_FROM_NATURAL,
    /** The joint is bent beyond what the athlete's own moves. */
    BEYOND_OWN_LIMIT,
    /**
     * The middle joint lies at the end of what the athlete's own moves; degrees of room that are
     * left, or that it lies beyond, at most 3.
     */
    AT_OWN_LIMIT,
    /** The knuckle or end joint lies outside its band, which the model knows only roughly. */
    WISH_NOT_MET
  }

  @Override
  public String key() {
    return "fit." + reason.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Map<String, Object> arguments() {
    return Map.of("finger", finger, "joint", new Joint.Name(joint), "degrees", degrees);
  }
}
