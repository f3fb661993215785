package gripwright.language.syntax;

import org.jspecify.annotations.Nullable;

/** A statement of a cohort. */
public sealed interface CohortItem extends Syntax
    permits Note,
        CohortItem.Size,
        CohortItem.SexShare,
        CohortItem.HandBySex,
        CohortItem.Mass,
        CohortItem.Maximum,
        CohortItem.CriticalForce,
        CohortItem.Correlate,
        CohortItem.Source {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement of a cohort. */
  interface Visitor {
    /** Visits a note. */
    void note(Note item);

    /** Visits the number of persons. */
    void size(Size item);

    /** Visits the share of a sex. */
    void sexShare(SexShare item);

    /** Visits the source of hand sizes. */
    void handBySex(HandBySex item);

    /** Visits body mass. */
    void mass(Mass item);

    /** Visits the maximum. */
    void maximum(Maximum item);

    /** Visits critical force. */
    void criticalForce(CriticalForce item);

    /** Visits a correlation. */
    void correlate(Correlate item);

    /** Visits the source of the whole. */
    void source(Source item);
  }

  /** {@code size 10000}: how many persons are drawn. */
  record Size(int id, Amount size) implements CohortItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.size(this);
    }
  }

  /** {@code sex female 50 %}. */
  record SexShare(int id, Word sex, Amount share, @Nullable Text source) implements CohortItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.sexShare(this);
    }
  }

  /** {@code hand by sex}: hands are drawn from the published measures of the person's sex. */
  record HandBySex(int id, @Nullable Text source) implements CohortItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.handBySex(this);
    }
  }

  /** {@code body-mass 66 kg spread 14 %}. */
  record Mass(int id, Amount median, Amount spread, @Nullable Text source) implements CohortItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.mass(this);
    }
  }

  /** {@code maximum 100 kg spread 15 % on half-crimp edge 20 mm}. */
  record Maximum(
      int id, Amount median, Amount spread, Word grip, Setup setup, @Nullable Text source)
      implements CohortItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.maximum(this);
    }
  }

  /** {@code critical-force 41 % max spread 28 %}. */
  record CriticalForce(int id, Amount median, Amount spread, @Nullable Text source)
      implements CohortItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.criticalForce(this);
    }
  }

  /** {@code correlate maximum, critical-force 0.6}. */
  record Correlate(int id, Word one, Word other, Amount value, @Nullable Text source)
      implements CohortItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.correlate(this);
    }
  }

  /** {@code source "..."}: where the numbers of the cohort come from. */
  record Source(int id, Text text) implements CohortItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.source(this);
    }
  }
}
