package gripwright.protocol;

import gripwright.finding.Message;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.quantity.Range;
import java.time.Duration;
import java.util.Map;
import java.util.Objects;

/** How hard a hold is meant to be. */
public sealed interface Level extends Message {

  /**
   * A share of the reference maximum at the exercise's own grip, edge and hands.
   *
   * @param fraction above 0 and at most 1; 0.84 is {@code 84 % max}
   */
  record OfMax(double fraction) implements Level {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the fraction is not above 0 and at most 1
     */
    public OfMax {
      Range.OF_MAX.check(fraction);
    }

    @Override
    public String toString() {
      return Numbers.plain(fraction * 100, 2) + " % max";
    }

    @Override
    public String key() {
      return "common.level-of-max";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("percent", Numbers.plain(fraction * 100, 2));
    }
  }

  /**
   * A total load, body mass included.
   *
   * @param load above 0 kg
   */
  record Total(Load load) implements Level {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the load is not above 0 kg and up to 1000 kg
     */
    public Total {
      Objects.requireNonNull(load, "load");
      Range.LOAD.check(load);
    }

    @Override
    public String toString() {
      return load.toString();
    }

    @Override
    public String key() {
      return "common.level-total";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("load", load);
    }
  }

  /**
   * Body mass with something added or, if negative, taken off.
   *
   * @param added the difference to body mass
   */
  record BodyMass(Load added) implements Level {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the difference is outside -1000 to 1000 kg
     */
    public BodyMass {
      Objects.requireNonNull(added, "added");
      Range.ADDED.check(added);
    }

    @Override
    public String toString() {
      double kilograms = added.kilograms();
      return "body-mass"
          + (kilograms == 0 ? "" : kilograms > 0 ? " + " : " - ")
          + (kilograms == 0 ? "" : Load.ofKilograms(Math.abs(kilograms)).toString());
    }

    @Override
    public String key() {
      return added.kilograms() == 0
          ? "common.level-body-mass"
          : added.kilograms() > 0 ? "common.level-body-mass-more" : "common.level-body-mass-less";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("load", Load.ofKilograms(Math.abs(added.kilograms())));
    }
  }

  /**
   * The load that could be held this much longer than it is.
   *
   * @param time predicted time to failure less the hold, 0 s or more
   */
  record Reserve(Duration time) implements Level {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the time is outside 0 to 600 s
     */
    public Reserve {
      Objects.requireNonNull(time, "time");
      Range.RESERVE.check(time);
    }

    @Override
    public String toString() {
      return "reserve " + Numbers.plain(time.toMillis() / 1000.0, 3) + " s";
    }

    @Override
    public String key() {
      return "common.level-reserve";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("time", Numbers.plain(time.toMillis() / 1000.0, 3) + " s");
    }
  }

  /**
   * An effort on a scale of 0 to 10: the hold takes that many tenths of the predicted time to
   * failure. The translation is the library's own.
   *
   * @param outOfTen above 0 and at most 10
   */
  record Effort(double outOfTen) implements Level {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the effort is not above 0 and at most 10
     */
    public Effort {
      Range.LEVEL_EFFORT.check(outOfTen);
    }

    @Override
    public String toString() {
      return "effort " + Numbers.plain(outOfTen, 1);
    }

    @Override
    public String key() {
      return "common.level-effort";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("effort", Numbers.plain(outOfTen, 1));
    }
  }
}
