package gripwright.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Binding of a protocol's parameters. */
class ProtocolTest {

  private static final Duration WORK = Duration.ofSeconds(10);
  private static final Level LEVEL = Level.ofMax(70);

  private static Protocol.Builder holds() {
    return Protocol.named("holds")
        .title("single holds")
        .aim("maximal-strength")
        .given("work", WORK)
        .given("level", LEVEL)
        .given("sets", 5)
        .given("pause", Duration.ofMinutes(3));
  }

  private static Protocol.Part.Repeat repeat(Protocol.Part... inside) {
    return new Protocol.Part.Repeat(Term.given("sets"), Term.given("pause"), List.of(inside));
  }

  private static Protocol.Part hold() {
    return new Protocol.Part.Hold(Term.given("work"), Term.given("level"));
  }

  @Test
  void missingArgumentsUseTheProtocolsDefaults() {
    Protocol protocol = holds().step(repeat(hold())).build();
    assertEquals(Optional.of("single holds"), protocol.title());
    assertEquals(Optional.of("maximal-strength"), protocol.aim());
    Scheme scheme = protocol.bind(Map.of("sets", Argument.of(2)));
    assertEquals(
        new Scheme(
            List.of(
                new Scheme.Repeat(
                    2, Duration.ofMinutes(3), List.of(new Scheme.Hold(WORK, LEVEL))))),
        scheme);
    assertEquals(5, protocol.bind(Map.of()).sets());
  }

  @Test
  void fixedValuesStay() {
    Scheme scheme =
        Protocol.named("fixed")
            .step(
                new Protocol.Part.Repeat(
                    Term.of(3),
                    Term.of(Duration.ofSeconds(5)),
                    List.of(new Protocol.Part.Hold(Term.of(WORK), Term.of(LEVEL)))))
            .step(new Protocol.Part.Rest(Term.of(Duration.ofSeconds(30))))
            .build()
            .bind(Map.of());
    assertEquals(Duration.ofSeconds(30 + 2 * 5 + 30), scheme.duration());
    assertEquals(List.of(WORK, WORK, WORK), scheme.holds().stream().map(h -> h.time()).toList());
  }

  @Test
  void anUnknownParameterIsRefused() {
    Protocol protocol = holds().step(repeat(hold())).build();
    String reported =
        assertThrows(
                IllegalArgumentException.class,
                () -> protocol.bind(Map.of("rounds", Argument.of(2))))
            .getMessage();
    assertTrue(reported.contains("rounds"), reported);
    assertThrows(
        IllegalArgumentException.class, () -> protocol.bind(Map.of("sets", Argument.of(WORK))));
    assertThrows(
        IllegalArgumentException.class, () -> protocol.bind(Map.of("work", Argument.of(LEVEL))));
    assertThrows(
        IllegalArgumentException.class, () -> protocol.bind(Map.of("level", Argument.of(1))));
  }

  @Test
  void aProtocolThatCanNotBeBoundIsRefusedAtOnce() {
    assertThrows(IllegalArgumentException.class, () -> Protocol.named("empty").build());
    assertThrows(IllegalArgumentException.class, () -> Protocol.named("bare").step(hold()).build());
  }

  @Test
  void argumentsHaveTheirRanges() {
    assertThrows(IllegalArgumentException.class, () -> Argument.of(0));
    assertThrows(IllegalArgumentException.class, () -> Argument.of(Duration.ofMillis(-1)));
    assertEquals(Duration.ZERO, new Argument.Time(Duration.ZERO).time());
    assertEquals(1, new Argument.Count(1).times());
  }
}
