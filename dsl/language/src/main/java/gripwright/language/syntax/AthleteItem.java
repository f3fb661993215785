package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A statement about an athlete. */
public sealed interface AthleteItem extends Syntax
    permits Note,
        AthleteItem.Born,
        AthleteItem.BodyMass,
        AthleteItem.Trained,
        AthleteItem.AbilityItem,
        AthleteItem.SexItem,
        AthleteItem.HandItem,
        AthleteItem.Familiar,
        AthleteItem.InjuryItem,
        AthleteItem.Available,
        AthleteItem.ClimbingItem,
        AthleteItem.Away,
        AthleteItem.EquipmentItem {

  /** {@code born DATE}. */
  record Born(int id, DateText date) implements AthleteItem {}

  /** {@code body-mass 61.5 kg}. */
  record BodyMass(int id, Amount mass) implements AthleteItem {}

  /** {@code trained 34 months}: structured finger training so far, on a day if one is written. */
  record Trained(int id, Amount time, @Nullable DateText asOf) implements AthleteItem {}

  /** {@code ability french 7c}: the hardest grade climbed. */
  record AbilityItem(int id, Expr.GradeLiteral grade) implements AthleteItem {}

  /** {@code sex female}, which narrows the norms used. */
  record SexItem(int id, Word sex) implements AthleteItem {}

  /** {@code hand { ... }}: measures of the hand. */
  record HandItem(int id, List<HandPart> parts, boolean damaged) implements AthleteItem {
    /** Copies the lists. */
    public HandItem {
      parts = List.copyOf(parts);
    }
  }

  /**
   * {@code familiar half-crimp 30 months}: grips that have been trained, on a day if one is
   * written.
   */
  record Familiar(int id, List<FamiliarGrip> grips, @Nullable DateText asOf)
      implements AthleteItem {
    /** Copies the lists. */
    public Familiar {
      grips = List.copyOf(grips);
    }
  }

  /** A grip and for how long it has been trained. */
  record FamiliarGrip(int id, Word grip, Amount time) implements Syntax {}

  /** {@code injury ring a2 left from DATE cleared DATE}: what was hurt, and until when. */
  record InjuryItem(
      int id,
      Word finger,
      Word structure,
      @Nullable Word side,
      DateText from,
      @Nullable DateText cleared,
      @Nullable Text note)
      implements AthleteItem {}

  /** {@code available tue 75 min, ...}: the days that can be trained on. */
  record Available(int id, List<DayTime> days) implements AthleteItem {
    /** Copies the lists. */
    public Available {
      days = List.copyOf(days);
    }
  }

  /** A weekday and the time there is. */
  record DayTime(int id, Word day, Amount time) implements Syntax {}

  /** {@code climbing wed easy 60 min, ...}: regular climbing besides the plan. */
  record ClimbingItem(int id, List<ClimbingDayTime> days) implements AthleteItem {
    /** Copies the lists. */
    public ClimbingItem {
      days = List.copyOf(days);
    }
  }

  /** A weekday, how hard and how long the climbing is. */
  record ClimbingDayTime(int id, Word day, Word how, Amount time) implements Syntax {}

  /** {@code away DATE to DATE}: days without training. */
  record Away(int id, DateText from, DateText to, @Nullable Text note) implements AthleteItem {}

  /** {@code equipment { ... }}: edges and weights at hand. */
  record EquipmentItem(int id, List<EquipmentPart> parts, boolean damaged) implements AthleteItem {
    /** Copies the lists. */
    public EquipmentItem {
      parts = List.copyOf(parts);
    }
  }
}
