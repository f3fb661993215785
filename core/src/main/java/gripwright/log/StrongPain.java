package gripwright.log;

import gripwright.grip.FingerSet;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Pain that calls for stopping, wherever it is written: on a line of its own, sharp, sudden or
 * above 5 of 10; above 5 on the line of an exercise, then of all its fingers, or of climbing, then
 * of all four. Pain that {@linkplain RisingPain rises} from week to week in its place calls for it
 * likewise, from the score on with which it does. Immutable.
 *
 * @param date the day
 * @param fingers the fingers that may hurt
 * @param hands the hands that may hurt
 * @param inTraining true if it was felt in a logged session of that day
 */
public record StrongPain(LocalDate date, FingerSet fingers, Hands hands, boolean inTraining) {
  /** Refuses null. */
  public StrongPain {
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(fingers, "fingers");
    Objects.requireNonNull(hands, "hands");
  }

  /**
   * A score and where it was felt.
   *
   * @param place scores of one place rise or don't
   * @param stops true if the score alone calls for stopping
   */
  private record Felt(List<Object> place, double score, boolean stops, StrongPain pain) {}

  /** Returns all such pain of a log, oldest first. */
  public static List<StrongPain> of(Log log) {
    List<Felt> all = new ArrayList<>();
    Reader reader = new Reader(all);
    log.entries().forEach(entry -> entry.pain(reader));
    Map<List<Object>, SortedMap<LocalDate, Double>> worst = new HashMap<>();
    all.forEach(
        felt ->
            worst
                .computeIfAbsent(felt.place(), place -> new TreeMap<>())
                .merge(felt.pain().date(), felt.score(), Math::max));
    return all.stream()
        .filter(
            felt ->
                felt.stops()
                    || RisingPain.on(
                        felt.pain().date(),
                        worst.getOrDefault(felt.place(), Collections.emptySortedMap())))
        .map(Felt::pain)
        .toList();
  }

  private record Reader(List<Felt> all) implements LogEntry.PainReader {
    @Override
    public void ofFinger(LogEntry.Pain pain) {
      Hands hands =
          pain.side().map(s -> s == Side.LEFT ? Hands.LEFT : Hands.RIGHT).orElse(Hands.BOTH);
      all.add(
          new Felt(
              List.of(pain.finger(), pain.structure(), pain.side()),
              pain.score(),
              pain.stops(),
              new StrongPain(pain.date(), FingerSet.of(pain.finger()), hands, false)));
    }

    @Override
    public void whileClimbing(LogEntry.Climbed climbed, double score) {
      all.add(
          new Felt(
              List.of("climbing"),
              score,
              score > LogEntry.Pain.LIMIT,
              new StrongPain(climbed.date(), FingerSet.FOUR, Hands.BOTH, false)));
    }

    @Override
    public void inTraining(LogEntry.Trained trained, LogEntry.Done done, double score) {
      all.add(
          new Felt(
              List.of("grip", done.setup().grip().name()),
              score,
              score > LogEntry.Pain.LIMIT,
              new StrongPain(
                  trained.date(), done.setup().grip().fingers(), done.setup().hands(), true)));
    }
  }

  /** Tells whether fingers of some hands are among those that may hurt; two hands hang together. */
  public boolean touches(FingerSet used, Hands by) {
    return fingers.overlaps(used) && !Collections.disjoint(hands.sides(), by.sides());
  }
}
