package gripwright.language.finding;

import gripwright.grip.FitAdvice;
import gripwright.grip.FitMiss;
import gripwright.hand.Hands;
import gripwright.hand.Joint;
import gripwright.protocol.Scheme;
import gripwright.quantity.Numbers;
import java.time.Duration;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** How the facts of a finding are written in a sentence: by their type, the same everywhere. */
final class Arguments {

  /** Decimals of a bare number; enough for a percentage or a load, few enough to read. */
  private static final int DECIMALS = 2;

  private Arguments() {}

  /** Writes a fact; loads, lengths, angles and dates write themselves, with their units. */
  static String print(Object value) {
    if (value instanceof Double || value instanceof Float) {
      return print(((Number) value).doubleValue());
    }
    if (value instanceof Duration time) {
      return print(time);
    }
    if (value instanceof Collection<?> many) {
      return many.stream().map(Arguments::print).collect(Collectors.joining(", "));
    }
    if (value instanceof Optional<?> maybe) {
      return maybe.map(Arguments::print).orElse("none");
    }
    if (value instanceof FitMiss miss) {
      return print(miss);
    }
    if (value instanceof FitAdvice advice) {
      return print(advice);
    }
    if (value instanceof Scheme.HoldPlace place) {
      return print(place);
    }
    if (value instanceof Hands hands) {
      return hands == Hands.BOTH ? "either hand" : "the " + hands.word() + " hand";
    }
    return String.valueOf(value);
  }

  private static String print(Scheme.HoldPlace place) {
    boolean oneSet = place.sets() == 1;
    String key =
        place.repetitions() == 1
            ? (oneSet ? "hold.only" : "hold.set")
            : (oneSet ? "hold.repetition" : "hold.repetition-of-set");
    return Wording.part(key, Map.of("set", place.set(), "repetition", place.repetition()));
  }

  private static String print(FitMiss miss) {
    if (miss instanceof FitMiss.TooShort tooShort) {
      return Wording.part(
          "fit.too-short", Map.of("finger", tooShort.finger(), "by", tooShort.by()));
    }
    if (miss instanceof FitMiss.BeyondLimit stiff) {
      return Wording.part(
          "fit.beyond-limit",
          Map.of(
              "finger",
              stiff.finger(),
              "joint",
              joint(stiff.joint()),
              "least",
              stiff.limit().low(),
              "greatest",
              stiff.limit().high(),
              "asked",
              stiff.asked()));
    }
    FitMiss.OutOfBand off = (FitMiss.OutOfBand) miss;
    return Wording.part(
        "fit.out-of-band",
        Map.of("finger", off.finger(), "nearest", off.nearest(), "asked", off.asked()));
  }

  private static String print(FitAdvice advice) {
    String reason = advice.reason().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return Wording.part(
        "fit." + reason,
        Map.of(
            "finger",
            advice.finger(),
            "joint",
            joint(advice.joint()),
            "degrees",
            advice.degrees()));
  }

  /** Names a joint as coaches do. */
  private static String joint(Joint joint) {
    return switch (joint) {
      case MCP -> "knuckle";
      case PIP -> "middle";
      case DIP -> "end";
    };
  }

  private static String print(double value) {
    return Double.isFinite(value) ? Numbers.plain(value, DECIMALS) : "no number";
  }

  /** Writes a time in the unit a coach would use: 90 s, 3 min, 48 h. */
  private static String print(Duration time) {
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
