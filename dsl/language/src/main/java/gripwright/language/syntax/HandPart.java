package gripwright.language.syntax;

import java.util.List;

/** A statement about a hand. */
public sealed interface HandPart extends Syntax {

  /** {@code length 178 mm}: wrist crease to the tip of the middle finger. */
  record HandLength(int id, Amount length) implements HandPart {}

  /** {@code breadth 79 mm}: across the knuckles. */
  record HandBreadth(int id, Amount breadth) implements HandPart {}

  /** {@code ring proximal 43.0 mm, pip 5 deg to 95 deg, ...}: what was measured of one finger. */
  record FingerMeasures(int id, Word finger, List<FingerMeasure> measures) implements HandPart {
    /** Copies the lists. */
    public FingerMeasures {
      measures = List.copyOf(measures);
    }
  }

  /**
   * A bone and its length between joint centres, which is a range of one amount, or a joint and how
   * far it bends. The word tells which.
   */
  record FingerMeasure(int id, Word part, AngleRange range) implements Syntax {}

  /** {@code knuckles index 3 mm, ...}: how far the knuckles stand back. */
  record Knuckles(int id, List<KnuckleOffset> offsets) implements HandPart {
    /** Copies the lists. */
    public Knuckles {
      offsets = List.copyOf(offsets);
    }
  }

  /** A finger and how far its knuckle lies towards the wrist from the middle finger's. */
  record KnuckleOffset(int id, Word finger, Amount distance) implements Syntax {}

  /** {@code left { ... }}: measures of one hand only. */
  record HandSide(int id, Word side, List<HandPart> parts, boolean damaged) implements HandPart {
    /** Copies the lists. */
    public HandSide {
      parts = List.copyOf(parts);
    }
  }
}
