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
import gripwright.language.syntax.Note;
import gripwright.language.syntax.Text;
import gripwright.language.syntax.Word;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Checks an athlete. */
final class AthleteCheck {

  private static final String[] REQUIRED = {
    "born", "body-mass", "trained", "ability", "hand", "available"
  };

  private final Declaration.Athlete declaration;
  private final Known<Grip> grips;
  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Words words;
  private final CalendarCheck calendar;
  private final Set<String> places = new TreeSet<>();
  private final Once once;
  private final Athlete.Builder builder;
  private Optional<DateText> born = Optional.empty();

  private AthleteCheck(
      Declared<Declaration.Athlete> declared, Known<Grip> grips, List<LocatedFinding> findings) {
    this.declaration = declared.declaration();
    this.grips = grips;
    String name = declaration.name().text();
    this.diagnostics = new Diagnostics(declared, ModelPath.of("athlete", name), findings);
    this.amounts = new Amounts(diagnostics);
    this.words = new Words(diagnostics);
    this.calendar = new CalendarCheck(diagnostics);
    this.once = new Once(diagnostics);
    this.builder = Athlete.named(name);
  }

  /** Returns the athlete; empty if it has a mistake, which is reported. */
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
    Items items = new Items();
    declaration.items().forEach(item -> item.accept(items));
    diagnostics.markInvalidIf(declaration.damaged());
    calendar.requirePlaces(places, declaration.damaged());
    once.require(declaration.name(), "athlete", declaration.damaged(), REQUIRED);
    if (calendar.isSomewhereUnnamed()) {
      once.require(declaration.name(), "athlete", declaration.damaged(), "equipment");
    }
    return diagnostics.sound() ? Optional.of(builder.build()) : Optional.empty();
  }

  private void bornItem(AthleteItem item) {
    if (item instanceof AthleteItem.Born birth && once.first(birth, "born")) {
      born = Optional.of(birth.date());
      amounts.birth(birth.date()).ifPresent(builder::born);
    }
  }

  /** Checks each statement once the date of birth is known. */
  private final class Items implements AthleteItem.Visitor {
    @Override
    public void note(Note note) {
      // changes nothing
    }

    @Override
    public void born(AthleteItem.Born birth) {
      // read first, since the others are compared with it
    }

    @Override
    public void bodyMass(AthleteItem.BodyMass mass) {
      once.first(mass, "body-mass");
      amounts.load(mass.mass(), Slot.BODY_MASS).ifPresent(builder::bodyMass);
    }

    @Override
    public void trained(AthleteItem.Trained trained) {
      once.first(trained, "trained");
      experience(trained.time(), trained.asOf(), Slot.TRAINED).ifPresent(builder::trained);
    }

    @Override
    public void abilityItem(AthleteItem.AbilityItem level) {
      once.first(level, "ability");
      Optional<Ability> ability = words.ability(level.grade());
      ability.ifPresent(builder::ability);
    }

    @Override
    public void sexItem(AthleteItem.SexItem sex) {
      once.first(sex, "sex");
      diagnostics
          .word(sex.sex(), "sex", Sex::parse, Diagnostics.words(Sex.values()))
          .ifPresent(builder::sex);
    }

    @Override
    public void handItem(AthleteItem.HandItem hand) {
      once.first(hand, "hand");
      new HandCheck(diagnostics).check(hand).ifPresent(hands -> hands.forEach(builder::hand));
    }

    @Override
    public void familiar(AthleteItem.Familiar familiar) {
      for (AthleteItem.FamiliarGrip grip : familiar.grips()) {
        boolean known = grips.declares(diagnostics, grip.grip());
        boolean first = once.first(grip.grip(), "familiar-grip", grip.grip().text());
        Optional<Experience> experience = experience(grip.time(), familiar.asOf(), Slot.FAMILIAR);
        if (known && first && experience.isPresent()) {
          builder.familiar(new Familiarity(grip.grip().text(), experience.get()));
        }
      }
    }

    @Override
    public void injuryItem(AthleteItem.InjuryItem injury) {
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
      Optional<String> clearedBy = new Reasons(diagnostics).words(injury.clearedBy(), "cleared");
      var side = words.side(injury.side());
      if (diagnostics.sound() && finger.isPresent() && structure.isPresent() && from.isPresent()) {
        builder.injury(
            Injury.builder(finger.get(), structure.get(), from.get())
                .side(side)
                .cleared(cleared)
                .clearedBy(clearedBy)
                .note(AthleteCheck.note(injury.note()))
                .build());
      }
    }

    @Override
    public void available(AthleteItem.Available available) {
      once.seen(available, "available");
      calendar.slots(available).forEach(builder::available);
    }

    @Override
    public void climbingItem(AthleteItem.ClimbingItem climbing) {
      climbing.days().forEach(AthleteCheck.this::climbing);
    }

    @Override
    public void away(AthleteItem.Away away) {
      Optional<LocalDate> from = afterBirth(away.from(), Terms.of("date-time-away"));
      DateText last = away.to();
      Optional<LocalDate> to = last == null ? from : amounts.date(last);
      if (last != null) {
        amounts.inOrder(
            away.from(), Terms.of("date-first-day-away"), last, Terms.of("date-last-day-away"));
      }
      if (diagnostics.sound() && from.isPresent() && to.isPresent()) {
        builder.away(new Absence(from.get(), to.get(), AthleteCheck.note(away.note())));
      }
    }

    @Override
    public void equipmentItem(AthleteItem.EquipmentItem equipment) {
      Word place = equipment.place();
      if (place == null) {
        once.first(equipment, "equipment");
      } else if (once.first(place, "equipment-at", place.text())) {
        places.add(place.text());
      }
      new EquipmentCheck(diagnostics, builder).check(equipment);
    }
  }

  private Optional<Experience> experience(Amount time, @Nullable DateText asOf, Slot slot) {
    Optional<LocalDate> day = afterBirth(asOf, Terms.of("date-that-day"));
    return amounts
        .months(time, slot)
        .filter(months -> asOf == null || day.isPresent())
        .map(months -> new Experience(months, day));
  }

  /** Returns a date that must not be before the date of birth. */
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

  private void climbing(AthleteItem.ClimbingDayTime day) {
    Optional<DayOfWeek> weekday = words.weekday(day.day());
    Optional<Words.Climbing> how = words.climbing(day.how());
    Optional<Duration> time = amounts.time(day.time(), Slot.CLIMBING);
    if (weekday.isPresent() && how.isPresent() && time.isPresent()) {
      builder.climbing(
          new ClimbingDay(weekday.get(), how.get().hard(), day.how().text(), time.get()));
    }
  }

  /** Returns the text of a note, if there is one. */
  static Optional<String> note(@Nullable Text note) {
    return note == null ? Optional.empty() : Optional.of(note.value());
  }
}
