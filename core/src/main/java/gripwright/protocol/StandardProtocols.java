// Generated from protocols.grip by CatalogueTest of the language module, which proves the two
// equal.
// Run that test with -Dgripwright.bless=true, then the formatter, to write this file anew;
// do not edit it.
package gripwright.protocol;

import gripwright.protocol.Protocol.Part;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The protocols of the catalogue. */
public final class StandardProtocols {

  /** Long light holds for tissue. */
  public static final Protocol CALM_HOLDS =
      Protocol.named("calm-holds")
          .title("long light holds for tissue")
          .aim("tissue-tolerance")
          .given("work", Duration.ofMillis(30000))
          .given("level", Level.ofMax(35))
          .given("sets", 4)
          .given("pause", Duration.ofMinutes(2))
          .step(
              new Part.Repeat(
                  Term.given("sets"),
                  Term.given("pause"),
                  List.of(new Part.Hold(Term.given("work"), Term.given("level")))))
          .build();

  /** Light holds for beginners. */
  public static final Protocol FIRST_TENS =
      Protocol.named("first-tens")
          .title("light holds for beginners")
          .aim("foundation")
          .note("feet may stay on the ground: the load counts, not the hang")
          .given("level", Level.ofMax(45))
          .given("sets", 6)
          .given("pause", Duration.ofMinutes(2))
          .step(
              new Part.Repeat(
                  Term.given("sets"),
                  Term.given("pause"),
                  List.of(new Part.Hold(Term.of(Duration.ofMillis(10000)), Term.given("level")))))
          .build();

  /** Many light holds with short rests. */
  public static final Protocol LONG_REPEATERS =
      Protocol.named("long-repeaters")
          .title("many light holds with short rests")
          .aim("local-endurance")
          .given("level", Level.ofMax(40))
          .given("sets", 3)
          .given("repetitions", 12)
          .given("pause", Duration.ofMinutes(4))
          .step(
              new Part.Repeat(
                  Term.given("sets"),
                  Term.given("pause"),
                  List.of(
                      new Part.Repeat(
                          Term.given("repetitions"),
                          Term.of(Duration.ofMillis(5000)),
                          List.of(
                              new Part.Hold(
                                  Term.of(Duration.ofMillis(10000)), Term.given("level")))))))
          .build();

  /** Single strong holds with long rests. */
  public static final Protocol MAX_HOLDS =
      Protocol.named("max-holds")
          .title("single strong holds with long rests")
          .aim("maximal-strength")
          .note("stop the session when a hold fails: further holds train fatigue, not strength")
          .given("work", Duration.ofMillis(10000))
          .given("level", Level.ofMax(85))
          .given("sets", 5)
          .given("pause", Duration.ofMinutes(3))
          .step(
              new Part.Repeat(
                  Term.given("sets"),
                  Term.given("pause"),
                  List.of(new Part.Hold(Term.given("work"), Term.given("level")))))
          .build();

  /** 7 s on and 3 s off, in sets. */
  public static final Protocol REPEATERS =
      Protocol.named("repeaters")
          .title("7 s on and 3 s off, in sets")
          .aim("strength-endurance")
          .given("level", Level.ofMax(60))
          .given("sets", 4)
          .given("repetitions", 6)
          .given("pause", Duration.ofMinutes(3))
          .step(
              new Part.Repeat(
                  Term.given("sets"),
                  Term.given("pause"),
                  List.of(
                      new Part.Repeat(
                          Term.given("repetitions"),
                          Term.of(Duration.ofMillis(3000)),
                          List.of(
                              new Part.Hold(
                                  Term.of(Duration.ofMillis(7000)), Term.given("level")))))))
          .build();

  /** Three rungs of light holds on the way back. */
  public static final Protocol RETURN_LADDER =
      Protocol.named("return-ladder")
          .title("three rungs of light holds on the way back")
          .aim("rehabilitation")
          .note(
              "only as agreed with a licensed practitioner: stop on any sharp pain, and stay on a rung for as long as needed")
          .given("first", Level.ofMax(20))
          .given("second", Level.ofMax(30))
          .given("third", Level.ofMax(40))
          .given("pause", Duration.ofMinutes(2))
          .step(
              new Part.Repeat(
                  Term.of(3),
                  Term.given("pause"),
                  List.of(new Part.Hold(Term.of(Duration.ofMillis(10000)), Term.given("first")))))
          .step(new Part.Rest(Term.given("pause")))
          .step(
              new Part.Repeat(
                  Term.of(3),
                  Term.given("pause"),
                  List.of(new Part.Hold(Term.of(Duration.ofMillis(10000)), Term.given("second")))))
          .step(new Part.Rest(Term.given("pause")))
          .step(
              new Part.Repeat(
                  Term.of(3),
                  Term.given("pause"),
                  List.of(new Part.Hold(Term.of(Duration.ofMillis(10000)), Term.given("third")))))
          .build();

  /** Short holds with a little in reserve. */
  public static final Protocol SHORT_HOLDS =
      Protocol.named("short-holds")
          .title("short holds with a little in reserve")
          .aim("maximal-strength")
          .note("for athletes with years of finger training")
          .given("work", Duration.ofMillis(5000))
          .given("level", Level.reserve(Duration.ofMillis(4000)))
          .given("sets", 6)
          .given("pause", Duration.ofMinutes(3))
          .step(
              new Part.Repeat(
                  Term.given("sets"),
                  Term.given("pause"),
                  List.of(new Part.Hold(Term.given("work"), Term.given("level")))))
          .build();

  private static final List<Protocol> ALL =
      List.of(
          CALM_HOLDS, FIRST_TENS, LONG_REPEATERS, MAX_HOLDS, REPEATERS, RETURN_LADDER, SHORT_HOLDS);

  private StandardProtocols() {}

  /** Returns every protocol of the catalogue, in the order of the names. */
  public static List<Protocol> all() {
    return ALL;
  }

  /** Returns every protocol of the catalogue by name. */
  public static SortedMap<String, Protocol> byName() {
    TreeMap<String, Protocol> byName = new TreeMap<>();
    ALL.forEach(protocol -> byName.put(protocol.name(), protocol));
    return Collections.unmodifiableSortedMap(byName);
  }
}
