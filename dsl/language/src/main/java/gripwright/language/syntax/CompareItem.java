package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A statement of a comparison. */
public sealed interface CompareItem extends Syntax
    permits Note,
        Report,
        CompareItem.CompareFor,
        CompareItem.Arm,
        CompareItem.CompareOn,
        CompareItem.CompareBetween,
        CompareItem.CompareMatch,
        CompareItem.MatchEach,
        CompareItem.CompareEach,
        CompareItem.CompareOver,
        CompareItem.Draws,
        CompareItem.CompareMeasure,
        CompareItem.Objectives {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement of a comparison. */
  interface Visitor {
    /** Visits a note. */
    void note(Note item);

    /** Visits a fact about the delivery. */
    void report(Report item);

    /** Visits the athletes or the cohort. */
    void compareFor(CompareFor item);

    /** Visits an arm. */
    void arm(Arm item);

    /** Visits the grip and the edge of the older form. */
    void compareOn(CompareOn item);

    /** Visits the protocols of the older form. */
    void compareBetween(CompareBetween item);

    /** Visits the quantity to make equal. */
    void compareMatch(CompareMatch item);

    /** Visits that matches are solved for each athlete. */
    void matchEach(MatchEach item);

    /** Visits the sessions a week. */
    void compareEach(CompareEach item);

    /** Visits the length. */
    void compareOver(CompareOver item);

    /** Visits the draws. */
    void draws(Draws item);

    /** Visits the measures to show. */
    void compareMeasure(CompareMeasure item);

    /** Visits what is preferred. */
    void objectives(Objectives item);
  }

  /** {@code for tove, brit}: athletes, or a cohort. */
  record CompareFor(int id, List<Word> names) implements CompareItem {
    /** Copies the lists. */
    public CompareFor {
      names = List.copyOf(names);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.compareFor(this);
    }
  }

  /**
   * {@code arm NAME do ...}, {@code arm NAME plan PLAN} or {@code arm NAME no training}.
   *
   * @param exercise what is done in every session; null unless written
   * @param plan the plan that is followed; null unless written
   */
  record Arm(int id, Word name, SessionPart.@Nullable DoItem exercise, @Nullable Word plan)
      implements CompareItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.arm(this);
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

  /**
   * {@code match impulse of long to dense by sets within 5 %}: the quantity to make equal, and what
   * is changed for it.
   *
   * @param arm the arm that is changed; null unless written
   * @param to the arm whose quantity is to be reached; null unless written
   * @param within greatest residual; null unless written
   */
  record CompareMatch(
      int id,
      Word quantity,
      @Nullable Word arm,
      @Nullable Word to,
      Word by,
      @Nullable Amount within)
      implements CompareItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.compareMatch(this);
    }
  }

  /** {@code match each athlete}: matches are solved for each athlete. */
  record MatchEach(int id) implements CompareItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.matchEach(this);
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

  /** {@code draws 10000 stream 2027}: the random numbers. */
  record Draws(int id, Amount draws, Amount stream) implements CompareItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.draws(this);
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

  /** {@code prefer less a2-exposure, more impulse}. */
  record Objectives(int id, List<Preferred> preferred) implements CompareItem {
    /** Copies the lists. */
    public Objectives {
      preferred = List.copyOf(preferred);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.objectives(this);
    }
  }

  /**
   * One measure of which more or less is preferred.
   *
   * @param more true for more, false for less
   * @param measure the measure
   */
  record Preferred(boolean more, Word measure) {}
}
