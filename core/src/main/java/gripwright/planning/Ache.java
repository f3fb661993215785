package gripwright.planning;

import gripwright.grip.Grip;
import gripwright.hand.Hands;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Pain;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Pain on a day, as logged.
 *
 * @param date the day
 * @param score 0 to 10
 * @param stops true if it calls for stopping
 * @param words where
 */
record Ache(LocalDate date, double score, boolean stops, String words) {
  String told() {
    return words + " on " + date;
  }

  /**
   * Returns what was logged of pain that an exercise has to do with, oldest first: of its fingers,
   * in training of its grip, and while climbing, which uses all fingers.
   *
   * @param from the first day that counts
   * @param before the first day that counts no more
   */
  static List<Ache> of(Log log, LocalDate from, LocalDate before, Grip grip, Hands hands) {
    List<Ache> aches = new ArrayList<>();
    for (LogEntry entry : log.entries()) {
      if (entry.date().isBefore(from) || !entry.date().isBefore(before)) {
        continue;
      }
      if (entry instanceof Pain pain && uses(grip, hands, pain)) {
        aches.add(new Ache(pain.date(), pain.score(), pain.stops(), words(pain)));
      } else if (entry instanceof LogEntry.Climbed climbed && climbed.pain().isPresent()) {
        double score = climbed.pain().getAsDouble();
        aches.add(
            new Ache(
                climbed.date(),
                score,
                score > Pain.LIMIT,
                "pain " + Numbers.plain(score, 1) + " while climbing"));
      } else if (entry instanceof LogEntry.Trained trained) {
        trained.done().stream()
            .filter(d -> d.setup().grip().name().equals(grip.name()))
            .filter(d -> d.pain().isPresent())
            .forEach(
                d ->
                    aches.add(
                        new Ache(
                            trained.date(),
                            d.pain().getAsDouble(),
                            d.pain().getAsDouble() > Pain.LIMIT,
                            "pain " + Numbers.plain(d.pain().getAsDouble(), 1) + " in training")));
      }
    }
    return aches;
  }

  private static boolean uses(Grip grip, Hands hands, Pain pain) {
    return grip.fingers().has(pain.finger())
        && (pain.side().isEmpty() || hands.sides().contains(pain.side().get()));
  }

  private static String words(Pain pain) {
    return "pain "
        + pain.finger().word()
        + pain.structure().map(s -> " " + s.word()).orElse("")
        + " "
        + Numbers.plain(pain.score(), 1)
        + switch (pain.kind()) {
          case DULL -> "";
          case SHARP -> ", sharp,";
          case SUDDEN -> ", sudden,";
        };
  }
}
