package gripwright.grip;

import gripwright.hand.Finger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The fingers that hold, one to four of them, in the order of the hand. Immutable, value-based.
 *
 * @param bits one bit a finger, that of the index finger lowest; 1 to 15
 */
public record FingerSet(int bits) {

  /** All four fingers. */
  public static final FingerSet FOUR = new FingerSet(0b1111);

  private static final List<List<Finger>> BY_BITS = byBits();

  /**
   * Checks the bits.
   *
   * @throws IllegalArgumentException if no finger or an unknown one is set
   */
  public FingerSet {
    if (bits < 1 || bits > 0b1111) {
      throw new IllegalArgumentException("not a set of fingers: " + bits);
    }
  }

  /** Returns the set of these fingers. */
  public static FingerSet of(Finger first, Finger... others) {
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(others, "others");
    int bits = 1 << first.ordinal();
    for (Finger finger : others) {
      bits |= 1 << finger.ordinal();
    }
    return new FingerSet(bits);
  }

  /**
   * Returns the set of these fingers.
   *
   * @throws IllegalArgumentException if there are none
   */
  public static FingerSet of(Collection<Finger> fingers) {
    Objects.requireNonNull(fingers, "fingers");
    int bits = 0;
    for (Finger finger : fingers) {
      bits |= 1 << finger.ordinal();
    }
    return new FingerSet(bits);
  }

  /** Returns whether a finger holds. */
  public boolean has(Finger finger) {
    return (bits & 1 << finger.ordinal()) != 0;
  }

  /** Returns whether the two sets share a finger. */
  public boolean overlaps(FingerSet other) {
    return (bits & other.bits) != 0;
  }

  /** Returns how many fingers hold, 1 to 4. */
  public int count() {
    return Integer.bitCount(bits);
  }

  /** Returns the fingers in the order of the hand. */
  public List<Finger> fingers() {
    return BY_BITS.get(bits);
  }

  private static List<List<Finger>> byBits() {
    List<List<Finger>> all = new ArrayList<>();
    for (int bits = 0; bits <= 0b1111; bits++) {
      List<Finger> fingers = new ArrayList<>(4);
      for (Finger finger : Finger.values()) {
        if ((bits & 1 << finger.ordinal()) != 0) {
          fingers.add(finger);
        }
      }
      all.add(List.copyOf(fingers));
    }
    return List.copyOf(all);
  }

  /** Returns the fingers' names with commas. */
  @Override
  public String toString() {
    return fingers().stream().map(Finger::word).collect(Collectors.joining(", "));
  }
}
