package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.hand.Finger;
import gripwright.quantity.Numbers;
import gripwright.survey.GripSurvey;
import gripwright.tissue.Slip;
import java.util.Comparator;
import java.util.Optional;

/** Describes what happens when a finger slips off. */
final class SlipWords {

  private final Words words;

  SlipWords(Words words) {
    this.words = words;
  }

  /** Returns all slips of a grip by one view of the arm. */
  String all(GripSurvey.Row row, Slip.View view) {
    return words.semicolons(
        row.slips().stream()
            .map(slip -> view == Slip.View.MOMENT_KEPT ? slip.momentKept() : slip.armSwings())
            .map(
                slip ->
                    slip.tilts() ? words.say("grips.slip-tilts", "slip", words(slip)) : words(slip))
            .toList());
  }

  /**
   * Returns the slip with the highest load on one finger by the worse of the two views, as in
   * {@code little off: ring x1.7}.
   */
  Optional<String> worst(GripSurvey.Row row) {
    return worstSlip(row).map(this::words);
  }

  /** Returns the range of that slip's ratio, as in {@code x1.5-2}. */
  Optional<String> worstRange(GripSurvey.Row row) {
    return worstSlip(row)
        .flatMap(slip -> Optional.ofNullable(row.load().ratios(slip).get(most(slip))))
        .map(
            ratio ->
                words.say(
                    "grips.slip-range",
                    "low",
                    Numbers.plain(ratio.low(), 1),
                    "high",
                    Numbers.plain(ratio.high(), 1)));
  }

  private static Optional<Slip> worstSlip(GripSurvey.Row row) {
    return row.slips().stream()
        .flatMap(slip -> slip.both().stream())
        .max(Comparator.comparingDouble(slip -> slip.ratio(most(slip))));
  }

  private String words(Slip slip) {
    Finger most = most(slip);
    return words.say(
        "grips.slip",
        "leaving",
        slip.leaving(),
        "most",
        most,
        "ratio",
        Numbers.plain(slip.ratio(most), 1));
  }

  private static Finger most(Slip slip) {
    return slip.after().keySet().stream()
        .max(Comparator.comparingDouble(slip::ratio))
        .orElseThrow();
  }

  static boolean tilts(GripSurvey.Row row) {
    return row.slips().stream().anyMatch(slip -> slip.momentKept().tilts());
  }
}
