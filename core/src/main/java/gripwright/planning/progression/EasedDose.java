package gripwright.planning.progression;

import gripwright.planning.load.Dose;
import gripwright.protocol.Scheme;
import gripwright.schedule.Derivation;
import gripwright.schedule.ProgressLink;
import java.time.Duration;
import java.util.List;

/** What an eased week leaves of a dose. */
final class EasedDose {

  private EasedDose() {}

  /**
   * Keeps a share of the sets, rounded to the nearest number and from the middle down: at least
   * one, and at least one fewer than there were. Of a single set it keeps a share of each hold.
   */
  static Dose of(Dose dose, double keep, List<Derivation> why) {
    int sets = dose.scheme().sets();
    if (sets > 1) {
      int kept = Math.max(1, Math.min(sets - 1, (int) Math.ceil(sets * keep - 0.5 - 1e-9)));
      why.add(new ProgressLink.EasedSets(kept, keep, sets));
      return dose.with(dose.scheme().withSets(kept));
    }
    Scheme shorter = dose.scheme().mapHolds(h -> h.lasting(shorter(h.time(), keep)));
    why.add(new ProgressLink.EasedHold(shorter.written().get(0).seconds(), keep));
    return dose.shortened(shorter);
  }

  private static Duration shorter(Duration time, double keep) {
    long millis = (long) Math.floor(time.toMillis() * keep);
    long whole = millis >= 1000 ? millis / 1000 * 1000 : millis;
    return Duration.ofMillis(Math.max(1, whole));
  }
}
