package gripwright.history;

import gripwright.athlete.PainReport;
import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.grip.Grip;
import gripwright.hand.Hands;
import gripwright.log.FeltPain;
import gripwright.log.LogEntry.Pain;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** Finds the pain reports of a log that concern an exercise. */
public final class PainReports {

  private PainReports() {}

  /**
   * Returns the pain that concerns an exercise, oldest first: in its fingers, during their
   * training, and while climbing, which uses all fingers. A stop that ends after the last day that
   * counts has no end yet.
   *
   * @param pains all pain of the log
   * @param from the first day that counts
   * @param before the first day that no longer counts
   */
  public static List<PainReport> of(
      List<FeltPain> pains, LocalDate from, LocalDate before, Grip grip, Hands hands) {
    return pains.stream()
        .filter(pain -> !pain.date().isBefore(from) && pain.date().isBefore(before))
        .filter(pain -> pain.touches(grip.fingers(), hands))
        .map(
            pain ->
                new PainReport(
                    pain.date(),
                    pain.score(),
                    pain.stops(),
                    pain.rising(),
                    pain.until(hands).filter(end -> end.isBefore(before)),
                    words(pain)))
        .toList();
  }

  private static Message words(FeltPain felt) {
    String score = Numbers.plain(felt.score(), 1);
    if (felt.line() instanceof Pain pain) {
      String place = pain.finger().word() + pain.structure().map(s -> " " + s.word()).orElse("");
      return new Clause(
          switch (pain.kind()) {
            case DULL -> "cause.pain-of";
            case SHARP -> "cause.pain-of-sharp";
            case SUDDEN -> "cause.pain-of-sudden";
          },
          Map.of("place", place, "score", score));
    }
    return Clause.of(
        felt.whileClimbing() ? "cause.pain-climbing" : "cause.pain-training", "score", score);
  }
}
