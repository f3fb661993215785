package gripwright.language.syntax;

import java.util.List;

/** A statement of a comparison. */
public sealed interface CompareItem extends Syntax
    permits Note,
        CompareItem.CompareFor,
        CompareItem.CompareOn,
        CompareItem.CompareBetween,
        CompareItem.CompareMatch,
        CompareItem.CompareEach,
        CompareItem.CompareOver,
        CompareItem.CompareMeasure {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement of a comparison. */
  interface Visitor {
    /** Visits a note. */
    void note(Note item);

    /** Visits the athlete. */
    void compareFor(CompareFor item);

    /** Visits the grip and the edge. */
    void compareOn(CompareOn item);

    /** Visits the protocols. */
    void compareBetween(CompareBetween item);

    /** Visits the quantity to make equal. */
    void compareMatch(CompareMatch item);

    /** Visits the sessions a week. */
    void compareEach(CompareEach item);

    /** Visits the length. */
    void compareOver(CompareOver item);

    /** Visits the measures to show. */
    void compareMeasure(CompareMeasure item);
  }

  /** {@code for tove}. */
  record CompareFor(int id, Word athlete) implements CompareItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.compareFor(this);
    }
  }

  /** {@code on half-crimp edge 20 mm}. */
  record CompareOn(int id, Word grip, Setup setup) implements CompareItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.compareOn(this);
    }
  }

  /** {@code between near-max, seven-three}. */
  record CompareBetween(int id, List<Word> protocols) implements CompareItem {
    /** Copies the lists. */
    public CompareBetween {
      protocols = List.copyOf(protocols);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.compareBetween(this);
    }
  }

  /** {@code match impulse by sets}: the quantity to make equal, and what is changed for it. */
  record CompareMatch(int id, Word quantity, Word by) implements CompareItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.compareMatch(this);
    }
  }

  /** {@code each 2 per week}. */
  record CompareEach(int id, Amount perWeek) implements CompareItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.compareEach(this);
    }
  }

  /** {@code over 8 weeks}. */
  record CompareOver(int id, Amount time) implements CompareItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.compareOver(this);
    }
  }

  /** {@code measure impulse, end-reserve}: what the comparison shows. */
  record CompareMeasure(int id, List<Word> quantities) implements CompareItem {
    /** Copies the lists. */
    public CompareMeasure {
      quantities = List.copyOf(quantities);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.compareMeasure(this);
    }
  }
}
