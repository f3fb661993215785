package gripwright.log;

import gripwright.grip.FingerSet;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Pain that calls for stopping, wherever it is written: on a line of its own, sharp, sudden or
 * above 5 of 10; above 5 on the line of an exercise, then of all its fingers, or of climbing, then
 * of all four. Immutable.
 *
 * @param date the day
 * @param fingers the fingers that may hurt
 * @param hands the hands that may hurt
 * @param inTraining true if it was felt in a logged session of that day
 */
public record StrongPain(LocalDate date, FingerSet fingers, Hands hands, boolean inTraining) {

  /** Returns all such pain of a log, oldest first. */
  public static List<StrongPain> of(Log log) {
    List<StrongPain> all = new ArrayList<>();
    for (LogEntry entry : log.entries()) {
      if (entry instanceof LogEntry.Pain pain && pain.stops()) {
        Hands hands =
            pain.side().map(s -> s == Side.LEFT ? Hands.LEFT : Hands.RIGHT).orElse(Hands.BOTH);
        all.add(new StrongPain(pain.date(), FingerSet.of(pain.finger()), hands, false));
      } else if (entry instanceof LogEntry.Climbed climbed
          && climbed.pain().orElse(0) > LogEntry.Pain.LIMIT) {
        all.add(new StrongPain(climbed.date(), FingerSet.FOUR, Hands.BOTH, false));
      } else if (entry instanceof LogEntry.Trained trained) {
        trained.done().stream()
            .filter(done -> done.pain().orElse(0) > LogEntry.Pain.LIMIT)
            .map(LogEntry.Done::setup)
            .map(s -> new StrongPain(trained.date(), s.grip().fingers(), s.hands(), true))
            .forEach(all::add);
      }
    }
    return List.copyOf(all);
  }

  /** Tells whether fingers of some hands are among those that may hurt; two hands hang together. */
  public boolean touches(FingerSet used, Hands by) {
    return fingers.overlaps(used) && !Collections.disjoint(hands.sides(), by.sides());
  }
}
