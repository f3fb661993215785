package gripwright.language.syntax;

import java.util.List;

/** A statement about a hand. */
public sealed interface HandPart extends Syntax {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement about a hand. */
  interface Visitor {
    /** Visits the length. */
    void handLength(HandLength part);

    /** Visits the breadth. */
    void handBreadth(HandBreadth part);

    /** Visits the measures of one finger. */
    void fingerMeasures(FingerMeasures part);

    /** Visits the setback of the knuckles. */
    void knuckles(Knuckles part);

    /** Visits measures of one hand only. */
    void handSide(HandSide part);
  }

  /** {@code length 178 mm}: wrist crease to the tip of the middle finger. */
  record HandLength(int id, Amount length) implements HandPart {
    @Override
    public void accept(Visitor visitor) {
      visitor.handLength(this);
    }
  }

  /** {@code breadth 79 mm}: across the knuckles. */
  record HandBreadth(int id, Amount breadth) implements HandPart {
    @Override
    public void accept(Visitor visitor) {
      visitor.handBreadth(this);
    }
  }

  /** {@code ring proximal 43.0 mm, pip 5 deg to 95 deg, ...}: the measures of one finger. */
  record FingerMeasures(int id, Word finger, List<FingerMeasure> measures) implements HandPart {
    /** Copies the lists. */
    public FingerMeasures {
      measures = List.copyOf(measures);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.fingerMeasures(this);
    }
  }

  /**
   * A bone and its length between joint centres, as a range of a single amount, or a joint and its
   * range of flexion. The word decides which.
   */
  record FingerMeasure(int id, Word part, AngleRange range) implements Syntax {}

  /** {@code knuckles index 3 mm, ...}: how far the knuckles are set back. */
  record Knuckles(int id, List<KnuckleOffset> offsets) implements HandPart {
    /** Copies the lists. */
    public Knuckles {
      offsets = List.copyOf(offsets);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.knuckles(this);
    }
  }

  /** A finger and the distance of its knuckle from the middle finger's towards the wrist. */
  record KnuckleOffset(int id, Word finger, Amount distance) implements Syntax {}

  /** {@code left { ... }}: measures of one hand only. */
  record HandSide(int id, Word side, List<HandPart> parts, boolean damaged) implements HandPart {
    /** Copies the lists. */
    public HandSide {
      parts = List.copyOf(parts);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.handSide(this);
    }
  }
}
