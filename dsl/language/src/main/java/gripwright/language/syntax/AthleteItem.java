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

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement about an athlete. */
  interface Visitor {
    /** Visits a note. */
    void note(Note item);

    /** Visits the date of birth. */
    void born(Born item);

    /** Visits the body mass. */
    void bodyMass(BodyMass item);

    /** Visits the time of finger training. */
    void trained(Trained item);

    /** Visits the hardest grade climbed. */
    void abilityItem(AbilityItem item);

    /** Visits the sex. */
    void sexItem(SexItem item);

    /** Visits measures of the hand. */
    void handItem(HandItem item);

    /** Visits grips that have been trained. */
    void familiar(Familiar item);

    /** Visits an injury. */
    void injuryItem(InjuryItem item);

    /** Visits days that can be trained on. */
    void available(Available item);

    /** Visits regular climbing. */
    void climbingItem(ClimbingItem item);

    /** Visits days without training. */
    void away(Away item);

    /** Visits the equipment. */
    void equipmentItem(EquipmentItem item);
  }

  /** {@code born DATE}. */
  record Born(int id, DateText date) implements AthleteItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.born(this);
    }
  }

  /** {@code body-mass 61.5 kg}. */
  record BodyMass(int id, Amount mass) implements AthleteItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.bodyMass(this);
    }
  }

  /** {@code trained 34 months}: structured finger training so far, on a day if one is written. */
  record Trained(int id, Amount time, @Nullable DateText asOf) implements AthleteItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.trained(this);
    }
  }

  /** {@code ability french 7c}: the hardest grade climbed. */
  record AbilityItem(int id, Expr.GradeLiteral grade) implements AthleteItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.abilityItem(this);
    }
  }

  /** {@code sex female}, which narrows the norms used. */
  record SexItem(int id, Word sex) implements AthleteItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.sexItem(this);
    }
  }

  /** {@code hand { ... }}: measures of the hand. */
  record HandItem(int id, List<HandPart> parts, boolean damaged) implements AthleteItem {
    /** Copies the lists. */
    public HandItem {
      parts = List.copyOf(parts);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.handItem(this);
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

    @Override
    public void accept(Visitor visitor) {
      visitor.familiar(this);
    }
  }

  /** A grip and for how long it has been trained. */
  record FamiliarGrip(int id, Word grip, Amount time) implements Syntax {}

  /**
   * {@code injury ring a2 left from DATE cleared DATE by "..."}: what was hurt, and when it was
   * cleared.
   */
  record InjuryItem(
      int id,
      Word finger,
      Word structure,
      @Nullable Word side,
      DateText from,
      @Nullable DateText cleared,
      @Nullable Text clearedBy,
      @Nullable Text note)
      implements AthleteItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.injuryItem(this);
    }
  }

  /** {@code available from DATE tue 18:00 75 min, ...}: the times that can be trained at. */
  record Available(int id, @Nullable CalendarSpan span, List<DaySlot> slots)
      implements AthleteItem {
    /** Copies the lists. */
    public Available {
      slots = List.copyOf(slots);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.available(this);
    }
  }

  /** A weekday or a date, when the time begins, how long it is and where. */
  record DaySlot(
      int id, CalendarDay day, @Nullable ClockTime clock, Amount time, @Nullable Word place)
      implements Syntax {}

  /** {@code climbing wed easy 60 min, ...}: regular climbing besides the plan. */
  record ClimbingItem(int id, List<ClimbingDayTime> days) implements AthleteItem {
    /** Copies the lists. */
    public ClimbingItem {
      days = List.copyOf(days);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.climbingItem(this);
    }
  }

  /** A weekday, how hard and how long the climbing is. */
  record ClimbingDayTime(int id, Word day, Word how, Amount time) implements Syntax {}

  /** {@code away DATE to DATE}: days without training, or one day. */
  record Away(int id, DateText from, @Nullable DateText to, @Nullable Text note)
      implements AthleteItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.away(this);
    }
  }

  /** {@code equipment at home { ... }}: edges and weights at hand, at a place if one is named. */
  record EquipmentItem(int id, @Nullable Word place, List<EquipmentPart> parts, boolean damaged)
      implements AthleteItem {
    /** Copies the lists. */
    public EquipmentItem {
      parts = List.copyOf(parts);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.equipmentItem(this);
    }
  }
}
