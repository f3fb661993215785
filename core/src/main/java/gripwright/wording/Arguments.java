package gripwright.wording;

import gripwright.finding.Message;
import gripwright.quantity.Numbers;
import java.time.Duration;
import java.util.Collection;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes the arguments of findings in sentences, in one form for each type. */
final class Arguments {

  /** Decimals of a bare number; enough for a percentage or a load. */
  private static final int DECIMALS = 2;

  private final Wording wording;

  Arguments(Wording wording) {
    this.wording = wording;
  }

  /** Returns an argument as text; loads, lengths, angles and dates include their units. */
  String of(Object value) {
    if (value instanceof Message message) {
      return wording.say(message);
    }
    if (value instanceof Double || value instanceof Float) {
      return number(((Number) value).doubleValue());
    }
    if (value instanceof Duration time) {
      return time(time);
    }
    if (value instanceof Collection<?> many) {
      return many.stream().map(this::of).collect(Collectors.joining(", "));
    }
    if (value instanceof Optional<?> maybe) {
      return maybe.map(this::of).orElseGet(() -> wording.say("common.none"));
    }
    return String.valueOf(value);
  }

  private String number(double value) {
    return Double.isFinite(value)
        ? Numbers.plain(value, DECIMALS)
        : wording.say("common.no-number");
  }

  /** Returns a time in the unit a coach would use: 90 s, 3 min, 48 h. */
  private static String time(Duration time) {
    long seconds = time.getSeconds();
    boolean whole = time.getNano() == 0;
    if (whole && Math.abs(seconds) >= 86_400 && seconds % 3600 == 0) {
      return seconds / 3600 + " h";
    }
    if (whole && Math.abs(seconds) >= 120 && seconds % 60 == 0) {
      return seconds / 60 + " min";
    }
    return Numbers.plain(seconds + time.getNano() / 1e9, 3) + " s";
  }
}
