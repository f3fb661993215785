package gripwright.grip;

import gripwright.hand.Finger;
import gripwright.hand.Joint;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a grip is by the fingers that hold and by the bands of their joints, whatever it is called
 * and however it is grouped. Built-in rules go by this. A posture that was solved for a hand never
 * changes it; only what was declared does.
 */
public enum GripStructure {
  /** All four fingers, crimped or open. */
  FOUR,
  /** Three fingers, the outer two of them nearly straight. */
  OPEN,
  /** Two fingers, or three that are not {@link #OPEN}. */
  SPLIT,
  /** One finger. */
  SINGLE;

  /** Three fingers are open up to this flexion of the outer two middle joints; our own, in deg. */
  private static final double OPEN_PIP = 45;

  /** From this flexion of the middle joint a bent-back end joint is a full crimp; our own, deg. */
  private static final double CRIMPED_PIP = 75;

  /** Middle joints bent further are a full crimp, whatever the end joints do; our own, in deg. */
  private static final double CLOSED_PIP = 100;

  /** So many fingers make a full crimp. */
  private static final int CRIMPED_FINGERS = 2;

  private final String word = name().toLowerCase(Locale.ROOT);

  /** Returns what these fingers with these bands are. */
  static GripStructure of(FingerSet fingers, Map<Grip.At, Band> bands) {
    return switch (fingers.count()) {
      case 1 -> SINGLE;
      case 2 -> SPLIT;
      case 3 -> outerTwoAreStraight(fingers.fingers(), bands) ? OPEN : SPLIT;
      default -> FOUR;
    };
  }

  private static boolean outerTwoAreStraight(List<Finger> fingers, Map<Grip.At, Band> bands) {
    return isStraight(bands.get(new Grip.At(fingers.get(0), Joint.PIP)))
        && isStraight(bands.get(new Grip.At(fingers.get(fingers.size() - 1), Joint.PIP)));
  }

  private static boolean isStraight(@Nullable Band pip) {
    return pip != null && pip.high().degrees() <= OPEN_PIP;
  }

  /**
   * Returns whether bands are those of a full crimp: on two fingers the end joint is bent back and
   * the middle joint bent to 75 deg or more, or on two fingers the middle joint is bent beyond 100
   * deg.
   */
  static boolean isFullCrimp(FingerSet fingers, Map<Grip.At, Band> bands) {
    int bentBack = 0;
    int closed = 0;
    for (Finger finger : fingers.fingers()) {
      Band pip = bands.get(new Grip.At(finger, Joint.PIP));
      Band dip = bands.get(new Grip.At(finger, Joint.DIP));
      boolean crimped = pip != null && pip.low().degrees() >= CRIMPED_PIP;
      bentBack += crimped && dip != null && dip.high().degrees() < 0 ? 1 : 0;
      closed += pip != null && pip.low().degrees() > CLOSED_PIP ? 1 : 0;
    }
    return bentBack >= CRIMPED_FINGERS || closed >= CRIMPED_FINGERS;
  }

  /** Returns the one that asks for more of an athlete; this one where both ask for the same. */
  GripStructure stricter(GripStructure other) {
    return other.demand() > demand() ? other : this;
  }

  private int demand() {
    return switch (this) {
      case FOUR, OPEN -> 0;
      case SPLIT -> 1;
      case SINGLE -> 2;
    };
  }

  /** Returns whether a family says the same; four fingers may be called open. */
  public boolean agreesWith(GripFamily family) {
    return switch (this) {
      case FOUR -> family == GripFamily.FOUR || family == GripFamily.OPEN;
      case OPEN -> family == GripFamily.OPEN;
      case SPLIT -> family == GripFamily.SPLIT;
      case SINGLE -> family == GripFamily.SINGLE;
    };
  }

  /** Returns the word that a rule compares with. */
  public String word() {
    return word;
  }

  /** Returns the word. */
  @Override
  public String toString() {
    return word();
  }
}
