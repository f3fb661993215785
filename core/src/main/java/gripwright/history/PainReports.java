package gripwright.history;

import gripwright.athlete.PainReport;
import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Pain;
import gripwright.log.RisingPain;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a log has of pain, for one grip. */
public final class PainReports {

  private PainReports() {}

  /** Scores of one place, and what to say of them. */
  private record Felt(String place, LocalDate date, double score, boolean stops, Message where) {}

  /**
   * Returns what was logged of pain that an exercise has to do with, oldest first: of its fingers,
   * in training of its grip, and while climbing, which uses all fingers.
   *
   * @param from the first day that counts
   * @param before the first day that counts no more
   */
  public static List<PainReport> of(
      Log log, LocalDate from, LocalDate before, Grip grip, Hands hands) {
    List<Felt> felt = new ArrayList<>();
    Reader reader = new Reader(grip, hands, felt);
    for (LogEntry entry : log.entries()) {
      if (entry.date().isBefore(before)) {
        entry.pain(reader);
      }
    }
    Map<String, TreeMap<LocalDate, Double>> worst = new HashMap<>();
    felt.forEach(
        f ->
            worst
                .computeIfAbsent(f.place(), place -> new TreeMap<>())
                .merge(f.date(), f.score(), Math::max));
    return felt.stream()
        .filter(f -> !f.date().isBefore(from))
        .map(f -> report(f, worst.getOrDefault(f.place(), new TreeMap<>())))
        .toList();
  }

  private static PainReport report(Felt felt, SortedMap<LocalDate, Double> worst) {
    boolean rising = RisingPain.on(felt.date(), worst);
    return new PainReport(felt.date(), felt.score(), felt.stops() || rising, rising, felt.where());
  }

  private record Reader(Grip grip, Hands hands, List<Felt> felt) implements LogEntry.PainReader {
    @Override
    public void ofFinger(Pain pain) {
      if (uses(grip, hands, pain)) {
        String place =
            pain.finger().word()
                + pain.structure().map(s -> " " + s.word()).orElse("")
                + pain.side().map(s -> " " + s).orElse("");
        felt.add(new Felt(place, pain.date(), pain.score(), pain.stops(), words(pain)));
      }
    }

    @Override
    public void whileClimbing(LogEntry.Climbed climbed, double score) {
      felt.add(score("climbing", climbed.date(), score, "cause.pain-climbing"));
    }

    @Override
    public void inTraining(LogEntry.Trained trained, LogEntry.Done done, double score) {
      if (concerns(done.setup(), score, grip, hands)) {
        felt.add(
            score(
                "in " + done.setup().grip().name(), trained.date(), score, "cause.pain-training"));
      }
    }
  }

  /** Strong pain in training may be in any finger of its grip, milder pain is of the grip. */
  private static boolean concerns(Setup trained, double score, Grip grip, Hands hands) {
    return trained.grip().name().equals(grip.name())
        || (score > Pain.LIMIT
            && trained.grip().fingers().overlaps(grip.fingers())
            && !Collections.disjoint(trained.hands().sides(), hands.sides()));
  }

  private static Felt score(String place, LocalDate date, double score, String key) {
    return new Felt(
        place, date, score, score > Pain.LIMIT, Clause.of(key, "score", Numbers.plain(score, 1)));
  }

  private static boolean uses(Grip grip, Hands hands, Pain pain) {
    return grip.fingers().has(pain.finger())
        && (pain.side().isEmpty() || hands.sides().contains(pain.side().get()));
  }

  private static Message words(Pain pain) {
    String place = pain.finger().word() + pain.structure().map(s -> " " + s.word()).orElse("");
    return new Clause(
        switch (pain.kind()) {
          case DULL -> "cause.pain-of";
          case SHARP -> "cause.pain-of-sharp";
          case SUDDEN -> "cause.pain-of-sudden";
        },
        Map.of("place", place, "score", Numbers.plain(pain.score(), 1)));
  }
}
