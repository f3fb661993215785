package gripwright.language.check;

import gripwright.ability.Ability;
import gripwright.athlete.Athlete;
import gripwright.athlete.Athlete.Absence;
import gripwright.athlete.Athlete.ClimbingDay;
import gripwright.athlete.Athlete.Experience;
import gripwright.athlete.Athlete.Familiarity;
import gripwright.athlete.Injury;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.hand.Finger;
import gripwright.hand.Sex;
import gripwright.hand.Structure;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Declared;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.AthleteItem;
import gripwright.language.syntax.DateText;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.Text;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Checks an athlete. */
final class AthleteCheck {

  private static final String[] REQUIRED = {
    "born", "body-mass", "trained", "ability", "hand", "available", "equipment"
  };

  private final Declaration.Athlete declaration;
  private final Known<Grip> grips;
  private final Ledger ledger;
  private final Amounts amounts;
  private final Words words;
  private final Once once;
  private final Athlete.Builder builder;
  private Optional<DateText> born = Optional.empty();

  private AthleteCheck(
      Declared<Declaration.Athlete> declared, Known<Grip> grips, List<LocatedFinding> findings) {
    this.declaration = declared.declaration();
    this.grips = grips;
    String name = declaration.name().text();
    this.ledger = new Ledger(declared, ModelPath.of("athlete", name), findings);
    this.amounts = new Amounts(ledger);
    this.words = new Words(ledger);
    this.once = new Once(ledger);
    this.builder = Athlete.named(name);
  }

  /** Returns the athlete, or nothing and findings. */
  static Optional<Athlete> check(
      Declared<Declaration.Athlete> declared, Known<Grip> grips, List<LocatedFinding> findings) {
    return new AthleteCheck(declared, grips, findings).check();
  }

  private Optional<Athlete> check() {
    Text title = declaration.title();
    if (title != null) {
      builder.title(title.value());
    }
    declaration.items().forEach(this::bornItem);
    declaration.items().forEach(this::item);
    ledger.spoilIf(declaration.damaged());
    once.require(declaration.name(), "athlete", declaration.damaged(), REQUIRED);
    return ledger.sound() ? Optional.of(builder.build()) : Optional.empty();
  }

  private void bornItem(AthleteItem item) {
    if (item instanceof AthleteItem.Born birth && once.first(birth, "born")) {
      born = Optional.of(birth.date());
      amounts.date(birth.date()).ifPresent(builder::born);
    }
  }

  private void item(AthleteItem item) {
    if (item instanceof AthleteItem.BodyMass mass) {
      once.first(mass, "body-mass");
      amounts.load(mass.mass(), Slot.BODY_MASS).ifPresent(builder::bodyMass);
    } else if (item instanceof AthleteItem.Trained trained) {
      once.first(trained, "trained");
      experience(trained.time(), trained.asOf(), Slot.TRAINED).ifPresent(builder::trained);
    } else if (item instanceof AthleteItem.AbilityItem level) {
      once.first(level, "ability");
      Optional<Ability> ability = words.ability(level.grade());
      ability.ifPresent(builder::ability);
    } else if (item instanceof AthleteItem.SexItem sex) {
      once.first(sex, "sex");
      ledger.word(sex.sex(), "sex", Sex::parse, Ledger.words(Sex.values())).ifPresent(builder::sex);
    } else if (item instanceof AthleteItem.HandItem hand) {
      once.first(hand, "hand");
      new HandCheck(ledger).check(hand).ifPresent(hands -> hands.forEach(builder::hand));
    } else {
      history(item);
    }
  }

  private void history(AthleteItem item) {
    if (item instanceof AthleteItem.Familiar familiar) {
      familiar(familiar);
    } else if (item instanceof AthleteItem.InjuryItem injury) {
      injury(injury);
    } else if (item instanceof AthleteItem.Available available) {
      available(available);
    } else if (item instanceof AthleteItem.ClimbingItem climbing) {
      climbing.days().forEach(this::climbing);
    } else if (item instanceof AthleteItem.Away away) {
      away(away);
    } else if (item instanceof AthleteItem.EquipmentItem equipment) {
      once.first(equipment, "equipment");
      new EquipmentCheck(ledger, builder).check(equipment);
    }
  }

  private Optional<Experience> experience(Amount time, @Nullable DateText asOf, Slot slot) {
    Optional<LocalDate> day = afterBirth(asOf, Terms.of("date-that-day"));
    return amounts
        .months(time, slot)
        .filter(months -> asOf == null || day.isPresent())
        .map(months -> new Experience(months, day));
  }

  /** Returns a date that must not lie before the date of birth. */
  private Optional<LocalDate> afterBirth(@Nullable DateText date, Message words) {
    if (date == null) {
      return Optional.empty();
    }
    Optional<LocalDate> day = amounts.date(date);
    if (day.isPresent()) {
      born.ifPresent(b -> amounts.inOrder(b, Terms.of("date-date-of-birth"), date, words));
    }
    return day;
  }

  private void familiar(AthleteItem.Familiar familiar) {
    for (AthleteItem.FamiliarGrip grip : familiar.grips()) {
      boolean known = grips.declares(ledger, grip.grip());
      boolean first = once.first(grip.grip(), "familiar-grip", grip.grip().text());
      Optional<Experience> experience = experience(grip.time(), familiar.asOf(), Slot.FAMILIAR);
      if (known && first && experience.isPresent()) {
        builder.familiar(new Familiarity(grip.grip().text(), experience.get()));
      }
    }
  }

  private void injury(AthleteItem.InjuryItem injury) {
    Optional<Finger> finger = words.finger(injury.finger());
    Optional<Structure> structure = words.structure(injury.structure());
    Optional<LocalDate> from = afterBirth(injury.from(), Terms.of("date-injury"));
    DateText clearedText = injury.cleared();
    Optional<LocalDate> cleared = Optional.empty();
    if (clearedText != null) {
      cleared = amounts.date(clearedText);
      amounts.inOrder(
          injury.from(), Terms.of("date-injury"), clearedText, Terms.of("date-clearance"));
    }
    var side = words.side(injury.side());
    if (ledger.sound() && finger.isPresent() && structure.isPresent() && from.isPresent()) {
      builder.injury(
          new Injury(
              finger.get(), structure.get(), side, from.get(), cleared, note(injury.note())));
    }
  }

  private void available(AthleteItem.Available available) {
    once.seen(available, "available");
    for (AthleteItem.DayTime day : available.days()) {
      Optional<DayOfWeek> weekday = words.weekday(day.day());
      Optional<Duration> time = amounts.time(day.time(), Slot.AVAILABLE);
      if (weekday.isPresent()
          && once.first(day.day(), "available-weekday", day.day().text())
          && time.isPresent()) {
        builder.available(weekday.get(), time.get());
      }
    }
  }

  private void climbing(AthleteItem.ClimbingDayTime day) {
    Optional<DayOfWeek> weekday = words.weekday(day.day());
    Optional<Words.Climbing> how = words.climbing(day.how());
    Optional<Duration> time = amounts.time(day.time(), Slot.CLIMBING);
    if (weekday.isPresent() && how.isPresent() && time.isPresent()) {
      builder.climbing(
          new ClimbingDay(weekday.get(), how.get().hard(), day.how().text(), time.get()));
    }
  }

  private void away(AthleteItem.Away away) {
    Optional<LocalDate> from = afterBirth(away.from(), Terms.of("date-time-away"));
    Optional<LocalDate> to = amounts.date(away.to());
    amounts.inOrder(
        away.from(), Terms.of("date-first-day-away"), away.to(), Terms.of("date-last-day-away"));
    if (ledger.sound() && from.isPresent() && to.isPresent()) {
      builder.away(new Absence(from.get(), to.get(), note(away.note())));
    }
  }

  /** Returns the text of a note, if there is one. */
  static Optional<String> note(@Nullable Text note) {
    return note == null ? Optional.empty() : Optional.of(note.value());
  }
}
