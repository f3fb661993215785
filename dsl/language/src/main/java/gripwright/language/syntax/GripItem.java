package gripwright.language.syntax;

import java.util.List;

/** A statement about a grip. */
public sealed interface GripItem extends Syntax
    permits Note,
        GripItem.Fingers,
        GripItem.Family,
        GripItem.FingerBands,
        GripItem.Caution,
        GripItem.Needs {

  /** {@code fingers index, middle}: the fingers that hold. */
  record Fingers(int id, List<Word> fingers) implements GripItem {
    /** Copies the lists. */
    public Fingers {
      fingers = List.copyOf(fingers);
    }
  }

  /** {@code family open}: the kind of grip it is. */
  record Family(int id, Word family) implements GripItem {}

  /** {@code ring pip 75 deg to 105 deg}: how one finger is bent. */
  record FingerBands(int id, Word finger, List<JointBand> bands) implements GripItem {
    /** Copies the lists. */
    public FingerBands {
      bands = List.copyOf(bands);
    }
  }

  /** A joint and the angles it may have. */
  record JointBand(int id, Word joint, AngleRange range) implements Syntax {}

  /** {@code caution "..."}: what to be careful of. */
  record Caution(int id, Text text) implements GripItem {}

  /** {@code needs ...}: what an athlete must bring for this grip. */
  record Needs(int id, List<Need> needs) implements GripItem {
    /** Copies the lists. */
    public Needs {
      needs = List.copyOf(needs);
    }
  }
}
