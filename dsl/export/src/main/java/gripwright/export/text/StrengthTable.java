package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.strength.LoadEstimate;
import gripwright.survey.StrengthSurvey;
import gripwright.survey.StrengthSurvey.Row;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes one line a grip: low, best and high estimate, how often it was tested, and a bar on one
 * scale for the whole survey. A long name has a line of its own.
 */
final class StrengthTable {

  private static final int LONGEST_NAME = 20;
  private static final int LOAD = 7;
  private static final int TESTS = 7;
  private static final int BAR = 26;

  private final Words words;
  private final int width;
  private final List<String> headings;
  private final double most;

  StrengthTable(StrengthSurvey survey, Words words) {
    this.words = words;
    List<Row> rows = survey.sections().stream().flatMap(s -> s.rows().stream()).toList();
    this.width =
        rows.stream()
            .mapToInt(row -> row.setup().grip().name().length())
            .filter(length -> length <= LONGEST_NAME)
            .max()
            .orElse(0);
    this.most =
        rows.stream()
            .filter(StrengthTable::isReachableOrTested)
            .mapToDouble(row -> row.estimate().load().high().kilograms())
            .max()
            .orElse(1);
    headings =
        Stream.of("strength.low", "strength.best", "strength.high", "strength.tests")
            .map(key -> words.say(key))
            .toList();
  }

  void add(Page page, List<Row> rows) {
    page.line(line("", headings.get(0), headings.get(1), headings.get(2), headings.get(3), ""));
    for (Row row : rows) {
      String name = row.setup().grip().name();
      if (name.length() > width) {
        page.line(name);
        name = "";
      }
      page.line(isReachableOrTested(row) ? taken(name, row) : notTaken(name));
    }
  }

  /**
   * Returns whether the hand can take the grip by the model, or was tested in it, which counts for
   * more than the model.
   */
  private static boolean isReachableOrTested(Row row) {
    return row.reachable() || row.tests() > 0;
  }

  private String taken(String name, Row row) {
    LoadEstimate load = row.estimate().load();
    return line(
        name,
        StrengthText.kilograms(load.low().kilograms()),
        StrengthText.kilograms(load.best().kilograms()),
        StrengthText.kilograms(load.high().kilograms()),
        row.tests() == 0 ? "-" : "" + row.tests(),
        bar(load));
  }

  private String notTaken(String name) {
    return Page.padRight(name, width) + "  " + words.say("strength.not-taken");
  }

  /** Returns a bar on a scale from 0 kg to the highest upper bound. */
  private String bar(LoadEstimate load) {
    int low = column(load.low().kilograms());
    int best = column(load.best().kilograms());
    int high = column(load.high().kilograms());
    StringBuilder bar = new StringBuilder();
    for (int column = 0; column <= high; column++) {
      bar.append(column == best ? 'o' : column >= low ? '-' : ' ');
    }
    return bar.toString();
  }

  private int column(double kilograms) {
    return (int) Math.min(BAR - 1, Math.floor(kilograms / most * BAR));
  }

  private String line(String name, String low, String best, String high, String tests, String bar) {
    return Page.padRight(name, width)
        + Page.padLeft(low, Math.max(LOAD, headings.get(0).length() + 2))
        + Page.padLeft(best, Math.max(LOAD, headings.get(1).length() + 2))
        + Page.padLeft(high, Math.max(LOAD, headings.get(2).length() + 2))
        + Page.padLeft(tests, Math.max(TESTS, headings.get(3).length() + 2))
        + "  "
        + bar;
  }
}
