package gripwright.planning.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.plan.Exercise;
import gripwright.quantity.Length;
import gripwright.quantity.Numbers;
import gripwright.schedule.GripMix;
import gripwright.wording.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The explanation of a mix of grips, link by link. */
class MixLinksTest {

  private static final GripMix MIX =
      new GripMix(
          new Exercise.Weights(0.5, 0.3, 0.2),
          new GripMix.Blend(
              new TreeMap<>(Map.of("drag", 0.4, "half-crimp", 0.6)), 0.9, 1.25, 0.8, 0.75),
          Optional.of(
              new GripMix.Blend(new TreeMap<>(Map.of("half-crimp", 1.0)), 0.6, 1, 0.7, 0.6)),
          List.of(
              limit("front-two", new GripMix.ClosedByRule("split-grip-gate")),
              limit("back-two", new GripMix.NoLoad("plan.no-test")),
              limit("mono", new GripMix.NoLoad("")),
              limit("full-crimp", new GripMix.NotNamed()),
              limit("pinch", new GripMix.OutOfReach(Length.ofMillimetres(20)))),
          1.1,
          Optional.of(
              new GripMix.Unproven(
                  List.of("drag"),
                  Optional.of(
                      new GripMix.Blend(
                          new TreeMap<>(Map.of("half-crimp", 1.0)), 0.6, 1, 0.7, 0.6)))));

  private static GripMix.Limit limit(String grip, GripMix.Reason reason) {
    return new GripMix.Limit(grip, reason, 0.05);
  }

  private static List<String> told(String grip, int sets, Optional<String> toldWith) {
    return MixLinks.why(MIX, grip, sets, 5, toldWith).stream()
        .map(
            l ->
                Words.step(l)
                    + " "
                    + Numbers.plain(l.value(), 2)
                    + Words.unit(l)
                    + ": "
                    + Words.say(l))
        .toList();
  }

  @Test
  void theFirstGripExplainsTheWholeMix() {
    assertEquals(
        List.of(
            "share of work 40%: 2 of 5 sets; weights: match 50 %, margin 30 %, carry-over 20 %",
            "match 90%: of the demand is trained directly by drag 40 %, half-crimp 60 %",
            "margin 1.25: capacity divided by load of the most loaded pulley in the worst slip, both"
                + " in times the own hang; mixes that may reach 1.1 count as equal, since the model"
                + " can't tell them apart",
            "carry-over 80%: of the work counts for the demand; extrapolated from other joints",
            "score 0.75: match, margin and carry-over, weighted; at most 1",
            "score gained 0.15: with drag, neither tested nor in the demand; the best mix without"
                + " has match 60 %, margin 1, carry-over 70 %",
            "next best score 0.6: with half-crimp 100 %",
            "a limit costs 0.05: front-two: the rule split-grip-gate excludes it; without"
                + " this limit the score would be higher by this",
            "a limit costs 0.05: back-two: no load can be given, plan.no-test; without this"
                + " limit the score would be higher by this",
            "a limit costs 0.05: mono: no load can be given; without this limit the score"
                + " would be higher by this",
            "a limit costs 0.05: full-crimp: no demand of the plan names it; without this limit"
                + " the score would be higher by this",
            "a limit costs 0.05: pinch: the hand can't take it on 20 mm; without this"
                + " limit the score would be higher by this"),
        told("drag", 2, Optional.empty()));
  }

  @Test
  void theOthersPointToTheFirst() {
    assertEquals(
        List.of("share of work 60%: 3 of 5 sets; for the reasons see drag"),
        told("half-crimp", 3, Optional.of("drag")));
  }
}
