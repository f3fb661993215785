package gripwright.export.csv;

import gripwright.compare.ComparisonResult;
import gripwright.compare.ComparisonResult.ArmResult;
import gripwright.compare.ComparisonResult.Difference;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.compare.Measure;
import gripwright.quantity.Numbers;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A comparison as CSV by RFC 4180: the differences of every pair of arms, or the values of the
 * arms. Fields that can't be given are empty, with the reason in the column {@code missing}.
 * Stateless.
 */
public final class ComparisonCsv {

  private static final int DECIMALS = 6;

  private ComparisonCsv() {}

  /** Returns the differences: a line for each pair of arms and measure. */
  public static String differences(List<ComparisonResult> results) {
    CsvText text = new CsvText();
    text.line(
        List.of(
            "comparison",
            "subject",
            "a",
            "b",
            "measure",
            "kind",
            "best",
            "median",
            "low50",
            "high50",
            "low90",
            "high90",
            "pGreater",
            "standardError",
            "shareOfAthletes",
            "verdict",
            "missing"));
    for (ComparisonResult result : results) {
      for (Subject subject : result.subjects()) {
        subject.differences().forEach(each -> text.line(row(result, subject, each)));
      }
    }
    return text.toString();
  }

  private static List<String> row(ComparisonResult result, Subject subject, Difference difference) {
    return List.of(
        result.comparison().name(),
        subject.name(),
        difference.a(),
        difference.b(),
        difference.measure().word(),
        kind(difference.measure()),
        number(difference.best()),
        number(difference.median()),
        number(difference.low50()),
        number(difference.high50()),
        number(difference.low90()),
        number(difference.high90()),
        number(difference.greater()),
        number(difference.standardError()),
        number(difference.ofAthletes()),
        difference.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        difference.missing().map(why -> why.word()).orElse(""));
  }

  private static String kind(Measure measure) {
    return switch (measure.difference()) {
      case RATIO -> "log-ratio";
      case PLAIN -> "difference";
      case CENSORED -> "order";
    };
  }

  /** Returns the arms: a line for each arm and measure. */
  public static String arms(List<ComparisonResult> results) {
    CsvText text = new CsvText();
    text.line(
        List.of(
            "comparison",
            "subject",
            "arm",
            "sessions",
            "holds",
            "heaviestKg",
            "heaviestShareOfTest",
            "measure",
            "value",
            "low90",
            "high90",
            "missing"));
    for (ComparisonResult result : results) {
      for (Subject subject : result.subjects()) {
        for (ArmResult arm : subject.arms()) {
          arm.values()
              .forEach(
                  (measure, value) ->
                      text.line(
                          List.of(
                              result.comparison().name(),
                              subject.name(),
                              arm.arm().name(),
                              Integer.toString(arm.sessions()),
                              Integer.toString(arm.holds()),
                              number(arm.heaviest()),
                              number(arm.heaviestOfTest()),
                              measure.word(),
                              number(value.best()),
                              number(value.low()),
                              number(value.high()),
                              value.missing().map(why -> why.word()).orElse(""))));
        }
      }
    }
    return text.toString();
  }

  private static String number(OptionalDouble value) {
    return value.isPresent() ? number(value.getAsDouble()) : "";
  }

  private static String number(double value) {
    return Double.isFinite(value) ? Numbers.plain(value, DECIMALS) : "";
  }
}
