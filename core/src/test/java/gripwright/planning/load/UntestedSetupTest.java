package gripwright.planning.load;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import gripwright.strength.UsableTests;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class UntestedSetupTest {

  private static final Setup BOTH = Setup.of(HALF_CRIMP, EDGE);
  private static final Setup LIFT = new Setup(HALF_CRIMP, EDGE, Hands.BOTH, true);
  private static final Length SHALLOW = Length.ofMillimetres(4);

  private static StrengthTest test(Setup setup) {
    return new StrengthTest(
        MONDAY.minusDays(7),
        setup,
        new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(40)));
  }

  /** What the finding names beside the setup. */
  private static Set<String> named(Setup setup, Setup... tested) {
    StrengthTest[] tests = new StrengthTest[tested.length];
    for (int i = 0; i < tested.length; i++) {
      tests[i] = test(tested[i]);
    }
    Finding finding = finding(setup, tests);
    assertEquals("plan.no-test", finding.code());
    Set<String> names = new TreeSet<>(finding.arguments().keySet());
    names.remove("setup");
    return names;
  }

  @Test
  void whatDiffersIsNamed() {
    assertEquals(Set.of(), named(BOTH));
    assertEquals(Set.of("shallow"), named(BOTH.withEdge(SHALLOW), BOTH));
    assertEquals(Set.of("tested"), named(Setup.of(DRAG, EDGE), BOTH.withEdge(SHALLOW)));
    assertEquals(Set.of("hands"), named(BOTH.withHands(Hands.LEFT), BOTH));
    assertEquals(Set.of("hands"), named(BOTH, BOTH.withHands(Hands.LEFT)));
    assertEquals(Set.of("lift"), named(LIFT, BOTH));
    assertEquals(Set.of("hang"), named(BOTH, LIFT));
  }

  private static Finding finding(Setup setup, StrengthTest... tests) {
    UsableTests usable =
        new UsableTests(
            List.of(tests), s -> fail("" + s), day -> Load.ofKilograms(60), day -> false);
    return UntestedSetup.of(
        setup,
        usable.on(MONDAY),
        UntestedSetup.firstAfter(MONDAY, setup, List.of(tests)),
        Optional.empty(),
        ModelPath.of("plan", "base"));
  }

  @Test
  void theFirstLaterTestOfTheSameHandsIsNamed() {
    Finding finding =
        finding(
            BOTH,
            held(LIFT, MONDAY, 7),
            held(BOTH.withHands(Hands.LEFT), MONDAY.plusDays(1), 7),
            held(BOTH, MONDAY.plusDays(2), 1),
            held(BOTH, MONDAY.plusDays(3), 7),
            held(BOTH, MONDAY.plusDays(4), 7));
    assertEquals(MONDAY.plusDays(3), finding.arguments().get("later"));
    assertEquals(Set.of("setup", "later"), finding.arguments().keySet());
  }

  @Test
  void aSmallShareIsNamedWhereNothingWasTested() {
    UsableTests none =
        new UsableTests(List.of(), s -> fail("" + s), day -> Load.ofKilograms(60), day -> false);
    Finding finding =
        UntestedSetup.of(
            BOTH,
            none.on(MONDAY),
            Optional.empty(),
            Optional.of(Load.ofKilograms(36)),
            ModelPath.of("plan", "base"));
    assertEquals(Load.ofKilograms(36), finding.arguments().get("small"));
  }

  private static StrengthTest held(Setup setup, LocalDate day, int seconds) {
    return new StrengthTest(
        day, setup, new StrengthTest.Held(Duration.ofSeconds(seconds), Load.ofKilograms(40)));
  }

  @Test
  void testsThatAreTooOldOrTooShortOrOfALiftDoNotCount() {
    StrengthTest old = held(LIFT, MONDAY.minusMonths(24).minusDays(1), 7);
    Finding none = finding(BOTH, held(LIFT, MONDAY.plusDays(1), 7), held(LIFT, MONDAY, 1), old);
    assertEquals(Set.of("setup"), none.arguments().keySet());
    StrengthTest notYetOld = held(LIFT, MONDAY.minusMonths(24), 7);
    assertEquals(Hands.BOTH, finding(BOTH, notYetOld).arguments().get("hang"));
    assertEquals(Hands.BOTH, finding(BOTH, held(LIFT, MONDAY, 7)).arguments().get("hang"));
  }

  @Test
  void theEdgeTestedLastIsNamed() {
    Length shallower = Length.ofMillimetres(3);
    assertEquals(
        shallower,
        finding(
                BOTH,
                held(BOTH.withEdge(SHALLOW), MONDAY.minusDays(9), 7),
                held(BOTH.withEdge(shallower), MONDAY.minusDays(2), 7))
            .arguments()
            .get("tested"));
    Length limit = Length.ofMillimetres(4.3);
    assertEquals(
        limit, finding(BOTH.withEdge(limit), held(BOTH, MONDAY, 7)).arguments().get("shallow"));
  }
}
