package gripwright.export.text;

import gripwright.compare.ComparisonResult.Driver;
import gripwright.compare.ComparisonResult.Interval;
import gripwright.export.words.Words;
import gripwright.quantity.Numbers;

/** Says how much of a difference goes with a parameter, with intervals where there are any. */
final class DriverWords {

  private static final int PERCENT = 100;

  private final Words words;

  DriverWords(Words words) {
    this.words = words;
  }

  String of(Driver driver) {
    if (driver.shareInterval().isEmpty() || driver.firstInterval().isEmpty()) {
      return words.say(
          "compared.driver", "input", driver.input(), "percent", percent(driver.share()));
    }
    return words.say(
        "compared.driver-sobol",
        "input",
        driver.input(),
        "total",
        percent(driver.share()),
        "totals",
        range(driver.shareInterval().get()),
        "first",
        percent(driver.first().orElse(0)),
        "firsts",
        range(driver.firstInterval().get()));
  }

  private String range(Interval interval) {
    return words.say(
        "compared.range", "low", percent(interval.low()), "high", percent(interval.high()));
  }

  private static String percent(double share) {
    return Numbers.plain(share * PERCENT, 0);
  }
}
