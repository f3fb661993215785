package gripwright.planning;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.hand.Sex;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A drawn athlete with what a careful coach would know of them.
 *
 * @param athlete who
 * @param strength share of body mass that the half crimp held for 7 s in a test
 * @param grips grips that a careful coach would let them train
 * @param perWeek sessions a week that find a day
 */
record Trainee(Athlete athlete, double strength, List<Grip> grips, int perWeek) {

  /** What tempts a trainee without care: few seasons drawn at random come near these limits. */
  private enum Haste {
    NONE,
    /** Strong enough for grips that ask for more time in training than they have. */
    GRIP_TOO_EARLY,
    /** Back since a few weeks, after an injury of one finger. */
    BACK_TOO_SOON
  }

  private static final List<List<DayOfWeek>> THREE_DAYS =
      List.of(
          List.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY),
          List.of(DayOfWeek.TUESDAY, DayOfWeek.THURSDAY, DayOfWeek.SATURDAY),
          List.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY, DayOfWeek.SUNDAY));

  static final Length EDGE = Length.ofMillimetres(20);

  static Trainee draw(Draw draw, LocalDate from, boolean careful) {
    Athlete.Builder athlete = Athlete.named("ylva").title("Ylva Moen");
    Haste haste = careful ? Haste.NONE : draw.of(Haste.values());
    boolean early = haste == Haste.GRIP_TOO_EARLY;
    int age = early ? 0 : draw.of(0, 0, 0, 0, 0, 0, 0, 1, 2, 2);
    int years = age == 0 ? draw.between(18, 50) : age == 1 ? 16 : draw.between(12, 15);
    LocalDate born = from.minusYears(years).minusDays(draw.between(1, age == 1 ? 700 : 364));
    int kilograms = age == 2 ? draw.between(32, 60) : draw.between(45, 95);
    int months =
        early
            ? draw.of(13, 16, 19, 22, 50)
            : years < 18 ? draw.between(6, 48) : draw.of(3, 10, 20, 30, 62, 90, 140);
    int grade = early ? draw.between(18, 26) : Math.min(28, 8 + months / 5 + draw.between(0, 12));
    athlete
        .born(born)
        .bodyMass(Load.ofKilograms(kilograms + draw.of(0.0, 0.5)))
        .trained(experience(draw, from, months))
        .ability(Ability.of(GradeScale.IRCRA, Integer.toString(grade)));
    if (draw.chance(60)) {
      athlete.sex(draw.of(Sex.values()));
    }
    hands(draw, athlete);
    boolean familiar = draw.chance(70);
    if (familiar) {
      athlete.familiar(
          new Athlete.Familiarity(
              "half-crimp", experience(draw, from, Math.max(1, Math.min(months, 30)))));
    }
    if (draw.chance(30)) {
      athlete.familiar(
          new Athlete.Familiarity("back-three", experience(draw, from, draw.between(1, 20))));
    }
    int perWeek = days(draw, athlete, from, careful);
    equipment(draw, athlete, careful || haste != Haste.NONE);
    if (haste == Haste.BACK_TOO_SOON) {
      athlete.injury(healed(draw, from));
    } else if (draw.chance(30)) {
      injuries(draw, athlete, from, careful);
    }
    Athlete built = athlete.build();
    List<Grip> grips = grips(built, from, careful);
    if (early) {
      GripFamily family = months < 24 ? GripFamily.SPLIT : GripFamily.SINGLE;
      grips.removeIf(grip -> grip.family() != family);
    }
    return new Trainee(built, draw.between(1.0, 1.8, 0.05), grips, perWeek);
  }

  private static Athlete.Experience experience(Draw draw, LocalDate from, int months) {
    return draw.chance(30)
        ? new Athlete.Experience(months, Optional.of(from.minusDays(draw.between(0, 300))))
        : new Athlete.Experience(months, Optional.empty());
  }

  private static void hands(Draw draw, Athlete.Builder athlete) {
    Hand hand = Hand.ofLength(Length.ofMillimetres(draw.between(165, 205)));
    if (draw.chance(25)) {
      double scale = hand.length().millimetres() / 180;
      hand = hand.withBreadth(Length.ofMillimetres(Math.round(80 * scale)));
      hand = hand.withKnuckle(Finger.LITTLE, Length.ofMillimetres(draw.between(14, 20)));
      hand =
          hand.withBone(
              Finger.RING, Segment.PROXIMAL, Length.ofMillimetres(Math.round(43 * scale)));
      hand =
          hand.withBone(Finger.RING, Segment.MIDDLE, Length.ofMillimetres(Math.round(28 * scale)));
    }
    if (draw.chance(10)) {
      hand =
          hand.withLimit(
              Finger.LITTLE, Joint.PIP, FlexionRange.degrees(0, draw.of(60.0, 80.0, 95.0)));
    }
    athlete.hand(hand);
    if (draw.chance(20)) {
      athlete.hand(
          Side.RIGHT,
          hand.withBone(
              Finger.INDEX,
              Segment.PROXIMAL,
              Length.ofMillimetres(Math.round(hand.length().millimetres() * 0.24) - 1)));
    }
  }

  /** Sets time, climbing and absences; returns how many hard sessions a week find a day. */
  private static int days(Draw draw, Athlete.Builder athlete, LocalDate from, boolean careful) {
    boolean everyDay = draw.chance(35);
    List<DayOfWeek> days = everyDay ? List.of(DayOfWeek.values()) : draw.of(THREE_DAYS);
    for (DayOfWeek day : days) {
      int minutes = careful ? draw.of(100, 120, 150) : draw.of(20, 45, 60, 75, 90, 240);
      athlete.available(day, Duration.ofMinutes(minutes));
    }
    int perWeek = everyDay ? 3 : 2;
    if (draw.chance(30)) {
      DayOfWeek day = draw.of(DayOfWeek.values());
      athlete.climbing(new Athlete.ClimbingDay(day, true, "hard", Duration.ofMinutes(120)));
      perWeek = everyDay ? 2 : 1;
    }
    if (draw.chance(30)) {
      DayOfWeek day = draw.of(DayOfWeek.values());
      athlete.climbing(new Athlete.ClimbingDay(day, false, "easy", Duration.ofMinutes(60)));
    }
    int absences = draw.chance(35) ? draw.between(1, 2) : 0;
    for (int i = 0; i < absences; i++) {
      LocalDate first = from.plusDays(draw.between(0, 45));
      athlete.away(
          new Athlete.Absence(
              first, first.plusDays(draw.of(0, 2, 5, 7, 9, 13, 15, 20)), Optional.empty()));
    }
    return careful ? perWeek : draw.between(1, 4);
  }

  private static void equipment(Draw draw, Athlete.Builder athlete, boolean enough) {
    athlete.edge(EDGE).edge(Length.ofMillimetres(18));
    if (draw.chance(50)) {
      athlete.edge(Length.ofMillimetres(16)).edge(Length.ofMillimetres(25));
    }
    double step = draw.of(0.5, 1.0, 1.25, 2.5, 5.0);
    switch (draw.between(0, 3)) {
      case 0 -> {} // nothing to add
      case 1 -> athlete.added(Load.ofKilograms(step), Load.ofKilograms(10)); // few plates
      default -> athlete.added(Load.ofKilograms(step), Load.ofKilograms(70));
    }
    if (enough || draw.chance(75)) {
      double off = draw.of(0.5, 1.0, 1.25, 2.5);
      athlete.assist(Load.ofKilograms(off), Load.ofKilograms(enough ? 100 : draw.of(20, 60)));
    }
  }

  private static void injuries(
      Draw draw, Athlete.Builder athlete, LocalDate from, boolean careful) {
    int count = draw.of(1, 1, 2);
    for (int i = 0; i < count; i++) {
      LocalDate day = from.minusDays(draw.between(10, 300));
      Optional<LocalDate> cleared =
          draw.chance(60)
              ? Optional.of(day.plusDays(draw.between(5, careful ? 120 : 320)))
              : Optional.empty();
      if (careful && cleared.isEmpty() && draw.chance(60)) {
        continue;
      }
      athlete.injury(
          Injury.builder(
                  draw.of(Finger.values()),
                  draw.of(Structure.A2, Structure.A4, Structure.FDP, Structure.PIP),
                  careful ? day : day.plusDays(draw.of(0, 0, 320)))
              .side(draw.chance(60) ? Optional.of(draw.of(Side.values())) : Optional.empty())
              .cleared(careful ? cleared : cleared.map(c -> c.plusDays(320)))
              .build());
    }
  }

  private static Injury healed(Draw draw, LocalDate from) {
    LocalDate cleared = from.minusDays(draw.between(0, 50));
    return Injury.builder(
            draw.of(Finger.INDEX, Finger.MIDDLE, Finger.RING),
            draw.of(Structure.A2, Structure.A4, Structure.FDP, Structure.PIP),
            cleared.minusDays(draw.between(5, 120)))
        .side(draw.chance(60) ? Optional.of(draw.of(Side.values())) : Optional.empty())
        .cleared(cleared)
        .build();
  }

  /** Whether some injury is not, or not for long, cleared while the plan is trained. */
  boolean recovering(LocalDate from) {
    return athlete.injuries().stream()
        .anyMatch(i -> i.cleared().map(c -> c.plusWeeks(12).isAfter(from)).orElse(true));
  }

  /** Whether an injury was cleared in the weeks before the plan. */
  boolean back(LocalDate from) {
    return athlete.injuries().stream()
        .flatMap(i -> i.cleared().stream())
        .anyMatch(c -> !c.isAfter(from) && c.plusWeeks(12).isAfter(from));
  }

  /** Whether a grip uses a finger that is not cleared on the first day or later. */
  boolean hurt(Grip grip, LocalDate from) {
    return athlete.injuries().stream()
        .anyMatch(
            i ->
                grip.fingers().has(i.finger())
                    && i.cleared().map(c -> c.isAfter(from)).orElse(true));
  }

  boolean youth(LocalDate from) {
    return born().plusYears(16).isAfter(from);
  }

  private LocalDate born() {
    return athlete.born();
  }

  private static List<Grip> grips(Athlete athlete, LocalDate from, boolean careful) {
    List<Grip> grips =
        new ArrayList<>(
            List.of(
                StandardGrips.HALF_CRIMP,
                StandardGrips.HALF_CRIMP,
                StandardGrips.THREE_FINGER_DRAG,
                StandardGrips.OPEN_FOUR));
    boolean adult = !athlete.born().plusYears(16).isAfter(from);
    double months = athlete.trained().monthsOn(from, from);
    for (Grip grip : StandardGrips.all()) {
      boolean ready =
          adult
              && months >= grip.needs().trainedMonths()
              && grip.needs().familiar().isEmpty()
              && switch (grip.family()) {
                case SPLIT -> months >= 24 && athlete.ability().ircra() >= 18;
                case SINGLE -> months >= 60 && athlete.ability().ircra() >= 24;
                default -> false;
              };
      if (ready || !careful) {
        grips.add(grip);
      }
    }
    return grips;
  }

  /** Returns what a grip held for 7 s in a test on 20 mm, both hands together, in kg. */
  double tested(Grip grip) {
    double share =
        grip.family() == GripFamily.FOUR
            ? 1
            : grip.family() == GripFamily.OPEN ? 0.85 : grip.fingers().count() / 4.0;
    return Math.round(strength * share * athlete.bodyMass().kilograms() * 2) / 2.0;
  }
}
