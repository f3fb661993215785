package gripwright.planning;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.grip.Band;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.Joint;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Term;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** An invented club whose athletes, grips and protocols the tests of planning share. */
public final class Skarvdal {

  public static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);
  public static final Length EDGE = Length.ofMillimetres(20);

  public static final Grip HALF_CRIMP =
      Grip.named("half-crimp")
          .family(GripFamily.FOUR)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(75, 105))
          .build();

  public static final Grip DRAG =
      Grip.named("three-finger-drag")
          .family(GripFamily.OPEN)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING)
          .build();

  public static final Grip FRONT_THREE =
      Grip.named("front-three")
          .family(GripFamily.SPLIT)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING)
          .build();

  public static final Protocol HOLDS =
      Protocol.named("single-holds")
          .given("work", Duration.ofSeconds(10))
          .given("level", Level.ofMax(84))
          .given("sets", 5)
          .given("pause", Duration.ofMinutes(3))
          .step(
              new Protocol.Part.Repeat(
                  Term.given("sets"),
                  Term.given("pause"),
                  List.of(new Protocol.Part.Hold(Term.given("work"), Term.given("level")))))
          .build();

  public static final Protocol SERIES =
      Protocol.named("series")
          .given("level", Level.ofMax(55))
          .given("sets", 3)
          .step(
              new Protocol.Part.Repeat(
                  Term.given("sets"),
                  Term.of(Duration.ofMinutes(2)),
                  List.of(
                      new Protocol.Part.Repeat(
                          Term.of(6),
                          Term.of(Duration.ofSeconds(3)),
                          List.of(
                              new Protocol.Part.Hold(
                                  Term.of(Duration.ofSeconds(7)), Term.given("level")))))))
          .build();

  private Skarvdal() {}

  /** An adult of some years' training who can train on Tuesday, Thursday and Saturday. */
  public static Athlete.Builder ylva() {
    return Athlete.named("ylva")
        .title("Ylva Moen")
        .born(LocalDate.of(1996, 5, 20))
        .bodyMass(Load.ofKilograms(60))
        .trained(40)
        .ability(Ability.of(GradeScale.FRENCH, "7c"))
        .hand(Hand.ofLength(Length.ofMillimetres(180)))
        .available(DayOfWeek.TUESDAY, Duration.ofMinutes(90))
        .available(DayOfWeek.THURSDAY, Duration.ofMinutes(60))
        .available(DayOfWeek.SATURDAY, Duration.ofMinutes(90))
        .edge(EDGE)
        .edge(Length.ofMillimetres(15))
        .added(Load.ofKilograms(1.25), Load.ofKilograms(60))
        .assist(Load.ofKilograms(0.5), Load.ofKilograms(40));
  }

  public static StrengthTest test(Grip grip, LocalDate date, double kilograms) {
    return new StrengthTest(
        date,
        Setup.of(grip, EDGE),
        new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(kilograms)));
  }

  public static Log log(StrengthTest... tests) {
    Log log = Log.empty("ylva");
    for (StrengthTest test : tests) {
      log = log.with(new LogEntry.Tested(test, Optional.empty()));
    }
    return log;
  }

  public static Log tested() {
    return log(test(HALF_CRIMP, MONDAY.minusDays(7), 92.5), test(DRAG, MONDAY.minusDays(7), 78));
  }
}
