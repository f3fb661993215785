package gripwright.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Injury;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.LogEntry.Pain;
import gripwright.log.LogEntry.Pain.Kind;
import gripwright.quantity.Length;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** When pain stops training, and until when. */
class FeltPainTest {

  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);
  private static final Grip CRIMP = grip("crimp", FingerSet.FOUR);
  private static final Grip PAIR = grip("pair", FingerSet.of(Finger.MIDDLE, Finger.RING));

  private static Grip grip(String name, FingerSet fingers) {
    Finger[] others = fingers.fingers().stream().skip(1).toArray(Finger[]::new);
    return Grip.named(name)
        .family(others.length == 1 ? GripFamily.SPLIT : GripFamily.FOUR)
        .fingers(fingers.fingers().get(0), others)
        .build();
  }

  private static Pain pain(int day, Structure structure, Side side, double score, Kind kind) {
    return Pain.builder(DAY.plusDays(day), Finger.RING, score)
        .structure(Optional.ofNullable(structure))
        .side(Optional.ofNullable(side))
        .kind(kind)
        .build();
  }

  private static Pain ring(int day, double score) {
    return pain(day, null, Side.LEFT, score, Kind.DULL);
  }

  private static Pain index(int day, double score) {
    return Pain.builder(DAY.plusDays(day), Finger.INDEX, score)
        .side(Side.LEFT)
        .kind(Kind.DULL)
        .build();
  }

  private static LogEntry trained(int day, Grip grip, Hands hands, double score) {
    return new LogEntry.Trained(
        DAY.plusDays(day),
        "strength",
        List.of(
            LogEntry.Done.builder("tens", new Setup(grip, Length.ofMillimetres(20), hands, false))
                .pain(score)
                .build()),
        Optional.empty());
  }

  private static LogEntry climbed(int day, double score) {
    return LogEntry.Climbed.builder(DAY.plusDays(day), false, "easy", Duration.ofHours(1))
        .pain(score)
        .build();
  }

  private static List<FeltPain> felt(List<Injury> injuries, LogEntry... entries) {
    return FeltPain.of(new Log("ylva", List.of(entries)), injuries);
  }

  /** Returns the day on which the first pain ends, counted from its own; -1 if it has no end. */
  private static long end(LogEntry... entries) {
    FeltPain first = felt(List.of(), entries).get(0);
    assertTrue(first.stops(), first.toString());
    return first.until().map(day -> day.toEpochDay() - first.date().toEpochDay()).orElse(-1L);
  }

  private static List<Boolean> stops(LogEntry... entries) {
    return felt(List.of(), entries).stream().map(FeltPain::stops).toList();
  }

  @Test
  void aboveFiveSharpAndSuddenStop() {
    assertEquals(
        List.of(false, true, true, true),
        stops(
            ring(0, 5),
            ring(1, 5.1),
            pain(2, null, null, 1, Kind.SHARP),
            pain(3, null, null, 4, Kind.SUDDEN)));
  }

  @Test
  void skinNeverStops() {
    assertEquals(
        List.of(false, false),
        stops(
            pain(0, Structure.SKIN, Side.LEFT, 9, Kind.SHARP),
            pain(8, Structure.SKIN, Side.LEFT, 10, Kind.DULL)));
    assertEquals(
        List.of(false, false, false),
        stops(
            pain(0, Structure.SKIN, null, 0, Kind.DULL),
            pain(7, Structure.SKIN, null, 3, Kind.DULL),
            pain(14, Structure.SKIN, null, 5, Kind.DULL)));
  }

  @Test
  void onlyASecondRiseInARowToAboveTwoStops() {
    assertEquals(List.of(false, false, false), stops(ring(0, 0), ring(7, 0), ring(14, 3)));
    assertEquals(
        List.of(false, false, false, false),
        stops(ring(0, 0), ring(7, 1), ring(14, 1), ring(21, 2)));
    assertEquals(List.of(false, false, false), stops(ring(0, 0), ring(7, 1), ring(14, 2)));
    assertEquals(List.of(false, false, true), stops(ring(0, 0), ring(7, 2), ring(14, 2.5)));
    assertEquals(List.of(false, false, true), stops(ring(0, 0), ring(7, 3), ring(14, 4)));
    assertEquals(List.of(false, false, false), stops(ring(0, 0), ring(7, 4), ring(14, 4)));
    assertEquals(
        List.of(false, false, false, false),
        stops(ring(0, 0), ring(8, 2), ring(13, 4), ring(14, 5)),
        "a rise is from week to week, not from day to day");
    assertEquals(
        List.of(false, false, false), stops(ring(0, 0), ring(7, 2), ring(21, 4)), "a week off");
  }

  @Test
  void aLowScoreAfterARiseStopsNothingItself() {
    assertEquals(
        List.of(false, false, true, false),
        stops(ring(0, 0), ring(7, 1), ring(14, 4), ring(15, 1)));
  }

  @Test
  void scoresOfAnExerciseCountForTheFingersOfItsGrip() {
    assertEquals(
        List.of(false, false, true),
        stops(
            trained(0, CRIMP, Hands.BOTH, 0),
            trained(7, CRIMP, Hands.BOTH, 2),
            trained(14, PAIR, Hands.LEFT, 3)),
        "another grip with the same fingers");
    assertEquals(
        List.of(false, false, true),
        stops(ring(0, 0), trained(7, CRIMP, Hands.BOTH, 2), ring(14, 3)));
    assertEquals(
        List.of(false, false, false),
        stops(index(0, 0), trained(7, PAIR, Hands.BOTH, 2), index(14, 3)),
        "no finger in common");
    assertEquals(
        List.of(false, false, false),
        stops(ring(0, 0), trained(7, PAIR, Hands.RIGHT, 2), ring(14, 3)),
        "the other hand");
  }

  @Test
  void aStopEndsWithTwoLowScoresAtLeastTwoDaysApart() {
    assertEquals(-1, end(ring(0, 6)));
    assertEquals(-1, end(ring(0, 6), ring(100, 2)));
    assertEquals(-1, end(ring(0, 6), ring(3, 2), ring(4, 0)), "a day apart");
    assertEquals(5, end(ring(0, 6), ring(3, 2), ring(5, 0)));
    assertEquals(5, end(ring(0, 6), ring(3, 2), ring(4, 0), ring(5, 2)));
    assertEquals(-1, end(ring(0, 6), ring(3, 2), ring(5, 2.1)));
    assertEquals(9, end(ring(0, 6), ring(3, 2), ring(4, 3), ring(5, 2), ring(9, 2)), "anew");
    assertEquals(-1, end(ring(0, 6), ring(0, 6), ring(1, 0)), "not the day itself");
    assertEquals(-1, end(ring(0, 6), ring(3, 1), pain(5, null, Side.LEFT, 1, Kind.SHARP)), "sharp");
  }

  @Test
  void scoresOfAnotherPlaceDoNotEndAStop() {
    assertEquals(-1, end(ring(0, 6), index(3, 0), index(5, 0)), "another finger");
    assertEquals(
        -1,
        end(
            ring(0, 6),
            pain(3, null, Side.RIGHT, 0, Kind.DULL),
            pain(5, null, Side.RIGHT, 0, Kind.DULL)),
        "the other hand");
    assertEquals(-1, end(ring(0, 6), climbed(3, 0), climbed(5, 0)), "it may have been spared");
    Pain pulley = pain(0, Structure.A2, Side.LEFT, 7, Kind.DULL);
    assertEquals(
        -1,
        end(
            pulley,
            pain(3, Structure.DIP, Side.LEFT, 0, Kind.DULL),
            pain(5, Structure.DIP, Side.LEFT, 0, Kind.DULL)));
    assertEquals(
        -1,
        end(
            pulley,
            pain(3, Structure.SKIN, Side.LEFT, 0, Kind.DULL),
            pain(5, Structure.SKIN, Side.LEFT, 0, Kind.DULL)));
    assertEquals(5, end(pulley, ring(3, 0), ring(5, 0)), "the whole finger");
    assertEquals(
        5, end(pulley, trained(3, CRIMP, Hands.BOTH, 0), trained(5, CRIMP, Hands.LEFT, 2)));
  }

  @Test
  void fingerWithoutAHandIsFreeOnceBothHandsAre() {
    Pain either = pain(0, null, null, 7, Kind.DULL);
    assertEquals(-1, end(either, ring(3, 0), ring(5, 0)));
    assertEquals(
        5, end(either, pain(3, null, null, 0, Kind.DULL), pain(5, null, null, 1, Kind.DULL)));
  }

  @Test
  void aScoreOfTheFingerCountsForAnExerciseOfItsGrip() {
    LogEntry hurt = trained(0, CRIMP, Hands.BOTH, 7);
    assertEquals(5, end(hurt, ring(3, 1), ring(5, 1)));
    assertEquals(-1, end(hurt, ring(3, 1), ring(5, 1.5), index(4, 3)), "but another is not well");
    assertEquals(5, end(hurt, trained(3, CRIMP, Hands.BOTH, 2), trained(5, CRIMP, Hands.BOTH, 1)));
    assertEquals(
        -1,
        end(hurt, trained(3, PAIR, Hands.BOTH, 0), trained(5, PAIR, Hands.BOTH, 0)),
        "two of its four fingers");
    assertEquals(5, end(climbed(0, 7), climbed(3, 2), climbed(5, 0)));
    assertEquals(5, end(climbed(0, 7), ring(3, 2), ring(5, 0)));
    assertEquals(-1, end(climbed(0, 7), climbed(3, 2), climbed(5, 3)));
  }

  private static Injury injury(Structure structure, Integer cleared) {
    return Injury.builder(Finger.RING, structure, DAY.plusDays(2))
        .side(Side.LEFT)
        .cleared(Optional.ofNullable(cleared).map(DAY::plusDays))
        .build();
  }

  private static List<Boolean> stopsOn(Injury injury, int... days) {
    FeltPain pain = felt(List.of(injury), ring(0, 8)).get(0);
    List<Boolean> all = new ArrayList<>();
    for (int day : days) {
      all.add(pain.stopsOn(DAY.plusDays(day), List.of(injury)));
    }
    return all;
  }

  @Test
  void clearedInjuryEndsTheStopAndOpenInjuryReplacesIt() {
    assertEquals(List.of(true, true, false, false), stopsOn(injury(Structure.A2, 30), 0, 1, 2, 30));
    assertEquals(List.of(true, false, false), stopsOn(injury(Structure.A2, null), 1, 2, 300));
    assertEquals(List.of(true, true), stopsOn(injury(Structure.SKIN, 30), 2, 30), "skin is not it");
  }

  @Test
  void anInjuryExplainsThePainOfItsHandAndFinger() {
    Injury left = injury(Structure.A2, 30);
    FeltPain climbing = felt(List.of(left), climbed(0, 8)).get(0);
    assertTrue(climbing.explains(left, Side.LEFT));
    assertTrue(climbing.stopsOn(DAY.plusDays(10), List.of(left)), "the right hand");
    assertEquals(Optional.of(DAY.plusDays(30)), climbing.until(Hands.LEFT), "cleared");
    assertEquals(Optional.empty(), climbing.until(Hands.RIGHT));
    assertEquals(Optional.empty(), climbing.until());
    FeltPain right = felt(List.of(left), trained(0, PAIR, Hands.RIGHT, 8)).get(0);
    assertTrue(right.stopsOn(DAY.plusDays(10), List.of(left)));
    FeltPain both = felt(List.of(left), trained(0, PAIR, Hands.BOTH, 8)).get(0);
    assertTrue(both.stopsOn(DAY.plusDays(10), List.of(left)));
    FeltPain other = felt(List.of(left), index(0, 8)).get(0);
    assertTrue(other.stopsOn(DAY.plusDays(10), List.of(left)), "another finger");
    FeltPain unsided = felt(List.of(left), pain(0, null, null, 8, Kind.DULL)).get(0);
    assertEquals(false, unsided.stopsOn(DAY.plusDays(10), List.of(left)), "that finger");
  }

  /** A worse last score, dull or sharp, never removes a stop or ends it earlier. */
  @Property(tries = 500)
  void aWorseLastScoreNeverStopsLess(
      @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 0, max = 6) Integer> gaps,
      @ForAll @Size(8) List<@IntRange(min = 0, max = 10) Integer> scores,
      @ForAll @IntRange(min = 0, max = 10) int more,
      @ForAll @IntRange(min = 0, max = 30) int later) {
    List<LogEntry> entries = new ArrayList<>();
    int day = 0;
    for (int i = 0; i < gaps.size() - 1; i++) {
      day += gaps.get(i);
      entries.add(ring(day, scores.get(i)));
    }
    day += 1 + gaps.get(gaps.size() - 1);
    int last = scores.get(gaps.size() - 1);
    boolean before = stopped(entries, ring(day, last), day + later);
    boolean after = stopped(entries, ring(day, Math.min(10, last + more)), day + later);
    assertTrue(after || !before, entries + " then " + last + " more " + more);
    assertTrue(stopped(entries, pain(day, null, Side.LEFT, last, Kind.SHARP), day + later));
  }

  private static boolean stopped(List<LogEntry> entries, LogEntry last, int day) {
    List<LogEntry> all = new ArrayList<>(entries);
    all.add(last);
    return felt(List.of(), all.toArray(LogEntry[]::new)).stream()
        .anyMatch(pain -> pain.stopsOn(DAY.plusDays(day), List.of()));
  }
}
