package gripwright.rule;

import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.MONDAY;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Injury;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Severity;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Pain.Kind;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** More pain at the last score never gives milder findings. */
class RaisedPainProperties {

  /** Training after the scores: as usual, lightly, or in a rehabilitation. */
  private enum Work {
    USUAL,
    LIGHT,
    REHABILITATION
  }

  @Property(tries = 400)
  void raisingTheLastPainNeverLowersTheHighestSeverityAtAPlace(
      @ForAll @Size(min = 1, max = 5) List<@IntRange(min = 1, max = 8) Integer> gaps,
      @ForAll @Size(5) List<@IntRange(min = 0, max = 10) Integer> scores,
      @ForAll @IntRange(min = 0, max = 10) int raised,
      @ForAll Kind kind,
      @ForAll Work work,
      @ForAll @IntRange(min = 0, max = 2) int injury) {
    Winter mild = winter(gaps, scores, work, injury);
    Winter worse = winter(gaps, scores, work, injury);
    int last = scores.get(gaps.size() - 1);
    mild.log(pain(MONDAY.toEpochDay() - 1, last, Kind.DULL));
    worse.log(pain(MONDAY.toEpochDay() - 1, Math.max(last, raised), kind));
    Map<ModelPath, Severity> after = severest(worse);
    severest(mild)
        .forEach(
            (place, severity) ->
                assertTrue(
                    after.containsKey(place) && after.get(place).compareTo(severity) * sign() >= 0,
                    place + " was " + severity + ", is " + after.get(place)));
  }

  /** Severities are ordered with the most severe first or last; an error is the most severe. */
  private static int sign() {
    return Severity.ERROR.compareTo(Severity.ADVICE) > 0 ? 1 : -1;
  }

  private static Winter winter(List<Integer> gaps, List<Integer> scores, Work work, int injury) {
    Winter winter = new Winter();
    if (injury > 0) {
      Injury hurt =
          Injury.builder(
                  Finger.RING, injury == 1 ? Structure.A2 : Structure.SKIN, MONDAY.minusDays(30))
              .side(Side.LEFT)
              .build();
      winter.athlete(a -> a.injury(hurt));
    }
    long day = MONDAY.toEpochDay() - 1;
    for (int i = gaps.size() - 2; i >= 0; i--) {
      day -= gaps.get(i);
      winter.log(pain(day, scores.get(i), Kind.DULL));
    }
    for (int at : new int[] {0, 14, 28}) {
      winter.session(
          at,
          work == Work.REHABILITATION
              ? line(HALF_CRIMP, 40).rehabilitation("plan of the clinic")
              : line(HALF_CRIMP, work == Work.LIGHT ? 40 : 75));
    }
    return winter;
  }

  private static LogEntry pain(long day, double score, Kind kind) {
    return LogEntry.Pain.builder(LocalDate.ofEpochDay(day), Finger.RING, score)
        .side(Side.LEFT)
        .kind(kind)
        .build();
  }

  private static Map<ModelPath, Severity> severest(Winter winter) {
    Map<ModelPath, Severity> all = new HashMap<>();
    for (Finding finding : winter.check()) {
      List<ModelPath> places =
          finding.places().isEmpty() ? List.of(finding.place()) : finding.places();
      places.forEach(
          place ->
              all.merge(
                  place,
                  finding.severity(),
                  (one, other) -> one.compareTo(other) * sign() >= 0 ? one : other));
    }
    return all;
  }
}
