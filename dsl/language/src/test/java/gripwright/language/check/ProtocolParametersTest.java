package gripwright.language.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.ReportedFinding;
import gripwright.language.Gripwright;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is suggested instead of an unknown parameter, and instead of an amount of a wrong kind. */
final class ProtocolParametersTest {

  private static final String TENS =
      """
      language 1
      protocol tens {
        given level 60 %% max, pause 2 min
        repeat %s resting pause {
          hold %s at level
        }
      }
      """;

  private static List<String> hints(String repeats, String hold) {
    return Gripwright.read("tens.grip", TENS.formatted(repeats, hold)).findings().stream()
        .map(ReportedFinding::hint)
        .toList();
  }

  @Test
  void aLevelIsNoNumberOfRepeats() {
    assertEquals(
        List.of(
            "write a value here, such as `3`, or declare the name in the protocol: `given sets 3`"),
        hints("sets", "10 s"));
  }

  @Test
  void aParameterOfTheRightKindIsNamed() {
    assertEquals(List.of("known here: pause"), hints("3", "work"));
  }

  @Test
  void anAmountOfAWrongKindHasAnExample() {
    assertEquals(List.of("write a time, such as `10 s`"), hints("3", "10 kg"));
  }
}
