package gripwright.review;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** An athlete of Skarvdal and logs of all kinds, for the tests of reviews. */
final class Logs {

  static final LocalDate MONDAY = LocalDate.of(2027, 2, 1);

  private Logs() {}

  static Athlete athlete() {
    return Athlete.named("signe")
        .title("Signe Haug")
        .born(LocalDate.of(1998, 8, 21))
        .bodyMass(Load.ofKilograms(60))
        .trained(50)
        .ability(Ability.of(GradeScale.FRENCH, "7b+"))
        .hand(Hand.ofLength(Length.ofMillimetres(178)))
        .available(DayOfWeek.TUESDAY, Duration.ofMinutes(75))
        .edge(Length.ofMillimetres(20))
        .added(Load.ofKilograms(0.5), Load.ofKilograms(60))
        .assist(Load.ofKilograms(0.5), Load.ofKilograms(40))
        .build();
  }

  static Setup setup(String grip) {
    return Setup.of(
        java.util.Objects.requireNonNull(StandardGrips.byName().get(grip)),
        Length.ofMillimetres(20));
  }

  static String protocol() {
    return StandardProtocols.byName().firstKey();
  }

  static Review review(LocalDate day, LogEntry... entries) {
    return review(day, List.of(entries));
  }

  static Review review(LocalDate day, List<LogEntry> entries) {
    return Review.of(
        athlete(), new Log("signe", entries), List.of(), StandardProtocols.byName(), day);
  }

  static LogEntry.Pain pain(int day, double score, LogEntry.Pain.Kind kind) {
    return LogEntry.Pain.builder(MONDAY.plusDays(day), Finger.RING, score)
        .structure(Structure.A2)
        .side(Side.LEFT)
        .kind(kind)
        .build();
  }

  static LogEntry.Tested test(int day, Setup setup, double kilograms) {
    return new LogEntry.Tested(
        new StrengthTest(
            MONDAY.plusDays(day),
            setup,
            new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(kilograms))),
        Optional.empty());
  }

  static LogEntry.Trained trained(int day, String grip, double effort, double pain) {
    return new LogEntry.Trained(
        MONDAY.plusDays(day),
        "fingers",
        List.of(
            LogEntry.Done.builder(protocol(), setup(grip))
                .sets(4)
                .setsPlanned(4)
                .load(Load.ofKilograms(60))
                .effort(effort)
                .pain(pain)
                .build()),
        Optional.empty());
  }

  /** Lines of 40 days. */
  static Arbitrary<LogEntry> entries() {
    Arbitrary<Integer> days = Arbitraries.integers().between(0, 40);
    Arbitrary<Double> scores = Arbitraries.integers().between(0, 20).map(i -> i / 2.0);
    Arbitrary<String> grips = Arbitraries.of("half-crimp", "three-finger-drag", "front-three");
    Arbitrary<LogEntry> sessions =
        Combinators.combine(days, grips, scores, scores).as(Logs::trained);
    Arbitrary<LogEntry> climbing =
        Combinators.combine(days, scores, Arbitraries.integers().between(1, 300))
            .as(
                (day, effort, minutes) ->
                    LogEntry.Climbed.builder(
                            MONDAY.plusDays(day), effort > 7, "hard", Duration.ofMinutes(minutes))
                        .effort(effort > 9 ? OptionalDouble.empty() : OptionalDouble.of(effort))
                        .build());
    Arbitrary<LogEntry> tests =
        Combinators.combine(
                days, grips, Arbitraries.of(Hands.class), Arbitraries.doubles().between(20, 150))
            .as((day, grip, hands, load) -> test(day, setup(grip).withHands(hands), load));
    Arbitrary<LogEntry> pains =
        Combinators.combine(days, scores, Arbitraries.of(LogEntry.Pain.Kind.class)).as(Logs::pain);
    Arbitrary<LogEntry> skipped =
        days.map(day -> new LogEntry.Skipped(MONDAY.plusDays(day), "fingers", Optional.empty()));
    Arbitrary<LogEntry> masses =
        Combinators.combine(days, Arbitraries.doubles().between(50, 70))
            .as((day, mass) -> new LogEntry.BodyMass(MONDAY.plusDays(day), Load.ofKilograms(mass)));
    return Arbitraries.oneOf(sessions, climbing, tests, pains, skipped, masses);
  }
}
