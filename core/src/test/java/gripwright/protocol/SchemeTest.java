package gripwright.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SchemeTest {

  private static final Level LIGHT = Level.ofMax(60);

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
  void severalOutermostStepsAreOneSet() {
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
  void stepsAreCountedWithoutWritingThemOut() {
    List<Scheme.Step> steps = List.of(new Scheme.Hold(Duration.ofSeconds(1), LIGHT));
    List<Long> sizes = new ArrayList<>();
    for (int depth = 1; depth <= 8; depth++) {
      steps = List.of(new Scheme.Repeat(1_000, Duration.ZERO, steps));
      sizes.add(new Scheme(steps).size());
    }
    assertEquals(List.of(2_000L, 2_001_000L, 2_001_001_000L), sizes.subList(0, 3));
    assertEquals(1L << 40, sizes.get(7), "no sum overflows");
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
    assertEquals(3, protocol.bind(Map.of("sets", Argument.of(3))).sets());
    assertThrows(
        IllegalArgumentException.class, () -> protocol.bind(Map.of("reps", Argument.of(3))));
    assertThrows(
        IllegalArgumentException.class, () -> protocol.bind(Map.of("sets", Argument.of(LIGHT))));
  }

  @Test
  void aReferenceToAnUnknownParameterIsRefusedAtOnce() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            Protocol.named("holds")
                .step(new Protocol.Part.Hold(Term.of(Duration.ofSeconds(10)), Term.given("level")))
                .build());
  }

  @Test
  void impossibleLevelsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> Level.ofMax(140));
    assertThrows(IllegalArgumentException.class, () -> Level.effort(11));
    assertThrows(IllegalArgumentException.class, () -> Level.reserve(Duration.ofSeconds(-1)));
    assertThrows(IllegalArgumentException.class, () -> Argument.of(0));
  }

  @Test
  void placesOfHoldsAreCountedThroughTheSets() {
    Scheme scheme = sevenAndThree(4);
    assertEquals(new Scheme.HoldPlace(1, 4, 1, 6), scheme.place(0));
    assertEquals(new Scheme.HoldPlace(2, 4, 1, 6), scheme.place(6));
    assertEquals(new Scheme.HoldPlace(4, 4, 6, 6), scheme.place(23));
    assertThrows(IllegalArgumentException.class, () -> scheme.place(24));
    assertThrows(IllegalArgumentException.class, () -> scheme.place(-1));
  }

  @Test
  void allHoldsAreChanged() {
    Scheme scheme =
        new Scheme(
            List.of(
                sevenAndThree(2).steps().get(0),
                new Scheme.Rest(Duration.ofSeconds(30)),
                new Scheme.Hold(Duration.ofSeconds(9), LIGHT)));
    Scheme longer = scheme.mapHolds(h -> new Scheme.Hold(h.time().plusSeconds(1), h.level()));
    assertEquals(scheme.holds().size(), longer.holds().size());
    assertEquals(scheme.timeUnderLoad().plusSeconds(scheme.holds().size()), longer.timeUnderLoad());
    assertEquals(scheme.duration().plusSeconds(13), longer.duration(), "rests stay");
    assertEquals(7.5, new Scheme.Hold(Duration.ofMillis(7500), LIGHT).seconds());
  }

  @Test
  void aRestOfZeroIsNoStep() {
    Scheme scheme =
        new Scheme(
            List.of(
                new Scheme.Rest(Duration.ZERO),
                new Scheme.Repeat(
                    3, Duration.ZERO, List.of(new Scheme.Hold(Duration.ofSeconds(5), LIGHT)))));
    assertEquals(3, scheme.flat().size());
    assertEquals(Duration.ZERO, scheme.restBetweenHolds());
  }

  @Test
  void invalidRepeatsAndHoldsAreRefused() {
    Scheme.Hold hold = new Scheme.Hold(Duration.ofSeconds(5), LIGHT);
    assertThrows(
        IllegalArgumentException.class, () -> new Scheme.Repeat(0, Duration.ZERO, List.of(hold)));
    assertThrows(
        IllegalArgumentException.class, () -> new Scheme.Repeat(1, Duration.ZERO, List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Scheme.Repeat(1, Duration.ofSeconds(-1), List.of(hold)));
    assertThrows(IllegalArgumentException.class, () -> new Scheme.Hold(Duration.ZERO, LIGHT));
    assertThrows(
        IllegalArgumentException.class, () -> new Scheme.Hold(Duration.ofSeconds(-1), LIGHT));
    assertThrows(IllegalArgumentException.class, () -> new Scheme(List.of()));
  }

  @Test
  void setsOfSeveralPartsHaveNoOneRestBetweenHolds() {
    Scheme.Repeat three =
        new Scheme.Repeat(
            3, Duration.ofSeconds(3), List.of(new Scheme.Hold(Duration.ofSeconds(7), LIGHT)));
    Scheme mixed =
        new Scheme(
            List.of(
                new Scheme.Repeat(
                    2,
                    Duration.ofMinutes(2),
                    List.of(three, new Scheme.Hold(Duration.ofSeconds(20), LIGHT)))));
    assertEquals(Duration.ZERO, mixed.restBetweenHolds());
    assertEquals(4, mixed.repetitionsPerSet());
  }

  private static Scheme upTo(int sets, Extent extent) {
    return new Scheme(
        List.of(
            new Scheme.Repeat(
                sets,
                Duration.ofMinutes(2),
                List.of(new Scheme.Hold(Duration.ofSeconds(20), LIGHT, extent)),
                true)));
  }

  @Test
  void boundsCountInSumsAndStayWhenHoldsOrSetsChange() {
    Scheme scheme = upTo(5, Extent.UP_TO);
    assertEquals(Duration.ofSeconds(100), scheme.timeUnderLoad());
    assertEquals(Duration.ofSeconds(100 + 4 * 120), scheme.duration());
    Scheme changed =
        scheme.withSets(3).mapHolds(h -> h.lasting(Duration.ofSeconds(25)).at(Level.ofMax(30)));
    assertTrue(changed.setsUpTo());
    assertEquals(
        List.of(new Scheme.Hold(Duration.ofSeconds(25), Level.ofMax(30), Extent.UP_TO)),
        changed.written());
    assertFalse(scheme.withSetsDone(3).setsUpTo());
    assertEquals(3, scheme.withSetsDone(3).sets());
  }

  @Test
  void everyRepeatButTheFirstMayBeLeftOutUnderABound() {
    assertEquals(
        List.of(Extent.WHOLE, Extent.UP_TO, Extent.UP_TO),
        upTo(3, Extent.WHOLE).holds().stream().map(Scheme.Hold::extent).toList());
    assertEquals(
        List.of(Extent.TO_FAILURE, Extent.TO_FAILURE),
        upTo(2, Extent.TO_FAILURE).holds().stream().map(Scheme.Hold::extent).toList());
    assertTrue(upTo(2, Extent.WHOLE).hasBound());
    assertFalse(sevenAndThree(2).hasBound());
  }

  @Test
  void restsWithATextAreKnown() {
    Scheme.Rest walk = new Scheme.Rest(Duration.ofMinutes(5), Optional.of("walk"));
    Scheme scheme =
        new Scheme(
            List.of(
                new Scheme.Repeat(
                    2,
                    Duration.ZERO,
                    List.of(
                        new Scheme.Hold(Duration.ofSeconds(5), LIGHT),
                        walk,
                        new Scheme.Rest(Duration.ofSeconds(3))))));
    assertEquals(List.of(walk), scheme.restsWithText());
  }
}
