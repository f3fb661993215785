package gripwright.export;

import gripwright.athlete.Athlete;
import gripwright.grip.Band;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.Joint;
import gripwright.hand.Side;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import gripwright.survey.GripSurvey;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Grips on hands, for the tests of their documents. */
public final class Hands {

  private static final LocalDate DAY = LocalDate.of(2027, 1, 11);

  private Hands() {}

  private static GripSurvey survey(Athlete athlete, List<Grip> grips) {
    return survey(athlete, Log.empty(athlete.name()), grips);
  }

  private static GripSurvey survey(Athlete athlete, Log log, List<Grip> grips) {
    return GripSurvey.of(
        athlete, log, grips, Length.ofMillimetres(20), Load.ofKilograms(68.5), DAY);
  }

  /** Four straight fingers: no hand can take this grip. */
  private static final Grip STRAIGHT_FOUR =
      Grip.named("straight-four")
          .family(GripFamily.OPEN)
          .fingers(FingerSet.FOUR)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(0, 20))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(0, 20))
          .band(Finger.RING, Joint.PIP, Band.degrees(0, 20))
          .band(Finger.LITTLE, Joint.PIP, Band.degrees(0, 20))
          .build();

  /** Most of the catalogue, and a grip out of reach, on two equal hands. */
  public static GripSurvey alike() {
    List<Grip> grips = new ArrayList<>(StandardGrips.all());
    grips.set(grips.indexOf(StandardGrips.RING_SINGLE), STRAIGHT_FOUR);
    return survey(Season.SUNNIVA, grips);
  }

  /** The catalogue on the hands of an athlete with one test of a half crimp. */
  public static GripSurvey tested() {
    Athlete athlete = athlete(Hand.ofLength(Length.ofMillimetres(182))).build();
    StrengthTest test =
        new StrengthTest(
            DAY.minusDays(7),
            Setup.of(StandardGrips.HALF_CRIMP, Length.ofMillimetres(20)),
            new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(72)));
    Log log = Log.empty(athlete.name()).with(new LogEntry.Tested(test, Optional.empty()));
    return survey(athlete, log, StandardGrips.all());
  }

  /** A left index finger that bends no further than 40 deg, and 18 months of training. */
  public static GripSurvey different() {
    Hand hand = Hand.ofLength(Length.ofMillimetres(182));
    return survey(
        athlete(hand)
            .hand(Side.LEFT, hand.withLimit(Finger.INDEX, Joint.PIP, FlexionRange.degrees(0, 40)))
            .build(),
        List.of(
            StandardGrips.HALF_CRIMP,
            StandardGrips.THREE_FINGER_DRAG,
            StandardGrips.FRONT_THREE,
            Grip.named("a-name-far-too-long-for-a-column")
                .family(StandardGrips.FRONT_THREE.family())
                .fingers(Finger.RING, Finger.LITTLE)
                .build()));
  }

  /** Two hands whose breadth differs by a hundredth of a millimetre. */
  public static GripSurvey nearlyAlike() {
    Hand hand = Hand.ofLength(Length.ofMillimetres(182)).withBreadth(Length.ofMillimetres(84));
    return survey(
        athlete(hand).hand(Side.LEFT, hand.withBreadth(Length.ofMillimetres(84.01))).build(),
        StandardGrips.all());
  }

  /** The catalogue on a hand of someone of this many years. */
  public static GripSurvey ofAge(int years) {
    return survey(
        athlete(Hand.ofLength(Length.ofMillimetres(170))).born(DAY.minusYears(years)).build(),
        StandardGrips.all());
  }

  private static Athlete.Builder athlete(Hand hand) {
    return Athlete.named("sunniva")
        .title("Sunniva of Skarvdal")
        .born(LocalDate.of(2010, 5, 4))
        .bodyMass(Load.ofKilograms(68.5))
        .trained(18)
        .ability(Season.SUNNIVA.ability())
        .hand(hand)
        .available(DayOfWeek.TUESDAY, Duration.ofMinutes(90))
        .edge(Length.ofMillimetres(20));
  }
}
