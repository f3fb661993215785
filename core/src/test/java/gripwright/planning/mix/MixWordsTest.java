package gripwright.planning.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.plan.Exercise;
import gripwright.quantity.Numbers;
import gripwright.schedule.GripMix;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** How a mix of grips is reported, link by link. */
class MixWordsTest {

  private static final GripMix MIX =
      new GripMix(
          new Exercise.Weights(0.5, 0.3, 0.2),
          new GripMix.Blend(
              new TreeMap<>(Map.of("drag", 0.4, "half-crimp", 0.6)), 0.9, 1.25, 0.8, 0.75),
          Optional.of(
              new GripMix.Blend(new TreeMap<>(Map.of("half-crimp", 1.0)), 0.6, 1, 0.7, 0.6)),
          List.of(
              limit("front-two", GripMix.Kind.GATE, "split-grip-gate"),
              limit("back-two", GripMix.Kind.LOAD, "plan.no-test"),
              limit("mono", GripMix.Kind.LOAD, ""),
              limit("full-crimp", GripMix.Kind.NOT_NAMED, "no demand of the plan names it"),
              limit("pinch", GripMix.Kind.HAND, "the hand does not take it on 20 mm")));

  private static GripMix.Limit limit(String grip, GripMix.Kind kind, String reason) {
    return new GripMix.Limit(grip, kind, reason, 0.05);
  }

  private static List<String> reported(String grip, int sets, Optional<String> reportedWith) {
    return MixWords.why(MIX, grip, sets, 5, reportedWith).stream()
        .map(l -> l.step() + " " + Numbers.plain(l.value(), 2) + l.unit() + ": " + l.from())
        .toList();
  }

  @Test
  void theFirstGripReportsTheWholeMix() {
    assertEquals(
        List.of(
            "share of work 40%: 2 of 5 sets; match counts 50 %, margin 30 %, carry-over 20 %",
            "match 90%: of the demand is trained directly by drag 40 %, half-crimp 60 %",
            "margin 1.25: capacity by load of the most loaded pulley in the worst slip: a rough"
                + " estimate, to compare mixes by",
            "carry-over 80%: of the work counts for the demand; extrapolated from other joints",
            "score 0.75: match, margin and carry-over, weighted; at most 1",
            "next best score 0.6: with half-crimp 100 %",
            "a limit costs 0.05: front-two: the rule split-grip-gate stands against it, or the"
                + " score would be so much higher",
            "a limit costs 0.05: back-two: no load can be given, plan.no-test, or the score would"
                + " be so much higher",
            "a limit costs 0.05: mono: no load can be given, or the score would be so much higher",
            "a limit costs 0.05: full-crimp: no demand of the plan names it, or the score would be"
                + " so much higher",
            "a limit costs 0.05: pinch: the hand does not take it on 20 mm, or the score would be"
                + " so much higher"),
        reported("drag", 2, Optional.empty()));
  }

  @Test
  void theOthersPointToTheFirst() {
    assertEquals(
        List.of("share of work 60%: 3 of 5 sets; why, see drag"),
        reported("half-crimp", 3, Optional.of("drag")));
  }
}
