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

  /** {@code for tove}. */
  record CompareFor(int id, Word athlete) implements CompareItem {}

  /** {@code on half-crimp edge 20 mm}. */
  record CompareOn(int id, Word grip, Setup setup) implements CompareItem {}

  /** {@code between near-max, seven-three}. */
  record CompareBetween(int id, List<Word> protocols) implements CompareItem {
    /** Copies the lists. */
    public CompareBetween {
      protocols = List.copyOf(protocols);
    }
  }

  /** {@code match impulse by sets}: what is made equal, and by changing what. */
  record CompareMatch(int id, Word quantity, Word by) implements CompareItem {}

  /** {@code each 2 per week}. */
  record CompareEach(int id, Amount perWeek) implements CompareItem {}

  /** {@code over 8 weeks}. */
  record CompareOver(int id, Amount time) implements CompareItem {}

  /** {@code measure impulse, end-reserve}: what the comparison shows. */
  record CompareMeasure(int id, List<Word> quantities) implements CompareItem {
    /** Copies the lists. */
    public CompareMeasure {
      quantities = List.copyOf(quantities);
    }
  }
}
