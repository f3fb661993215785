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

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement about a grip. */
  interface Visitor {
    /** Visits a note. */
    void note(Note item);

    /** Visits the fingers that hold. */
    void fingers(Fingers item);

    /** Visits the kind of grip. */
    void family(Family item);

    /** Visits the joint bands of one finger. */
    void fingerBands(FingerBands item);

    /** Visits a caution. */
    void caution(Caution item);

    /** Visits prerequisites. */
    void needs(Needs item);
  }

  /** {@code fingers index, middle}: the fingers that hold. */
  record Fingers(int id, List<Word> fingers) implements GripItem {
    /** Copies the lists. */
    public Fingers {
      fingers = List.copyOf(fingers);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.fingers(this);
    }
  }

  /** {@code family open}: the kind of grip it is. */
  record Family(int id, Word family) implements GripItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.family(this);
    }
  }

  /** {@code ring pip 75 deg to 105 deg}: how one finger is bent. */
  record FingerBands(int id, Word finger, List<JointBand> bands) implements GripItem {
    /** Copies the lists. */
    public FingerBands {
      bands = List.copyOf(bands);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.fingerBands(this);
    }
  }

  /** A joint and the angles it may have. */
  record JointBand(int id, Word joint, AngleRange range) implements Syntax {}

  /** {@code caution "..."}: what to be careful of. */
  record Caution(int id, Text text) implements GripItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.caution(this);
    }
  }

  /** {@code needs ...}: the prerequisites of this grip. */
  record Needs(int id, List<Need> needs) implements GripItem {
    /** Copies the lists. */
    public Needs {
      needs = List.copyOf(needs);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.needs(this);
    }
  }
}
