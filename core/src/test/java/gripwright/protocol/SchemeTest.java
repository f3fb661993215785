package gripwright.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SchemeTest {

  private static final Level LIGHT = new Level.OfMax(0.6);

  private static Scheme sevenAndThree(int sets) {
    return new Scheme(
        List.of(
            new Scheme.Repeat(
                sets,
                Duration.ofMinutes(3),
                List.of(
                    new Scheme.Repeat(
                        6,
                        Duration.ofSeconds(3),
                        List.of(new Scheme.Hold(Duration.ofSeconds(7), LIGHT)))))));
  }

  @Test
  void restsAreBetweenRepeatsAndNeverAfterTheLast() {
    Scheme scheme = sevenAndThree(4);
    // 4 sets of 6 x 7 s + 5 x 3 s, and 3 rests of 3 min
    assertEquals(Duration.ofSeconds(4 * (42 + 15) + 3 * 180), scheme.duration());
    assertEquals(Duration.ofSeconds(168), scheme.timeUnderLoad());
    assertEquals(Scheme.Hold.class, scheme.flat().get(scheme.flat().size() - 1).getClass());
    assertEquals(24 + 20 + 3, scheme.flat().size());
  }

  @Test
  void setsAndRepetitionsAreReadFromTheTree() {
    Scheme scheme = sevenAndThree(4);
    assertEquals(4, scheme.sets());
    assertEquals(6, scheme.repetitionsPerSet());
    assertEquals(Duration.ofMinutes(3), scheme.restBetweenSets());
    assertEquals(Duration.ofSeconds(3), scheme.restBetweenHolds());
    assertEquals(Optional.of(Duration.ofSeconds(7)), scheme.holdTime());
    assertEquals(2, scheme.withSets(2).sets());
  }

  @Test
  void stepsSideBySideAreOneSet() {
    Scheme pyramid =
        new Scheme(
            List.of(
                new Scheme.Hold(Duration.ofSeconds(5), LIGHT),
                new Scheme.Rest(Duration.ofSeconds(60)),
                new Scheme.Hold(Duration.ofSeconds(9), LIGHT)));
    assertEquals(1, pyramid.sets());
    assertEquals(2, pyramid.repetitionsPerSet());
    assertEquals(Optional.empty(), pyramid.holdTime());
    assertEquals(Duration.ofSeconds(148), pyramid.withSets(2).duration(), "no rest is invented");
  }

  @Test
  void writingOutIsCountedWithoutDoingIt() {
    Scheme huge =
        new Scheme(
            List.of(
                new Scheme.Repeat(
                    1_000_000,
                    Duration.ZERO,
                    List.of(
                        new Scheme.Repeat(
                            1_000_000,
                            Duration.ZERO,
                            List.of(new Scheme.Hold(Duration.ofSeconds(1), LIGHT)))))));
    assertEquals(2_000_001_000_000L, huge.size());
  }

  @Test
  void aProtocolIsBoundByName() {
    Protocol protocol =
        Protocol.named("holds")
            .given("sets", 5)
            .given("level", LIGHT)
            .step(
                new Protocol.Part.Repeat(
                    Term.given("sets"),
                    Term.of(Duration.ofMinutes(2)),
                    List.of(
                        new Protocol.Part.Hold(
                            Term.of(Duration.ofSeconds(10)), Term.given("level")))))
            .build();
    assertEquals(5, protocol.bind(Map.of()).sets());
    assertEquals(3, protocol.bind(Map.of("sets", new Argument.Count(3))).sets());
    assertThrows(
        IllegalArgumentException.class, () -> protocol.bind(Map.of("reps", new Argument.Count(3))));
    assertThrows(
        IllegalArgumentException.class,
        () -> protocol.bind(Map.of("sets", new Argument.AtLevel(LIGHT))));
  }

  @Test
  void aPlaceThatNamesNoParameterIsRefusedAtOnce() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            Protocol.named("holds")
                .step(new Protocol.Part.Hold(Term.of(Duration.ofSeconds(10)), Term.given("level")))
                .build());
  }

  @Test
  void levelsThatCannotBeAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Level.OfMax(1.4));
    assertThrows(IllegalArgumentException.class, () -> new Level.Effort(11));
    assertThrows(IllegalArgumentException.class, () -> new Level.Reserve(Duration.ofSeconds(-1)));
    assertThrows(IllegalArgumentException.class, () -> new Argument.Count(0));
  }
}
