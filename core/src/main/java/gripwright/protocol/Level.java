package gripwright.protocol;

import gripwright.finding.Message;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.quantity.Range;
import java.time.Duration;
import java.util.Map;
import java.util.Objects;

/** The planned intensity of a hold. */
public sealed interface Level extends Message {

  /**
   * Returns a share of the reference maximum.
   *
   * <p>A value of 1 or less is refused: it is nearly always a fraction by mistake, as 0.8 for 80 %,
   * and nothing is trained at 1 % of the maximum. {@link OfMax} takes a fraction.
   *
   * @param percent above 1 and at most 100; 80 is {@code 80 % max}
   * @throws IllegalArgumentException if it is outside that range
   */
  static Level ofMax(double percent) {
    if (percent > 0 && percent <= 1) {
      throw new IllegalArgumentException(
          Numbers.plain(percent, 6)
              + " % of the maximum: write "
              + Numbers.plain(percent * 100, 6)
              + " for "
              + Numbers.plain(percent * 100, 6)
              + " %");
    }
    return new OfMax(percent / 100);
  }

  /**
   * Returns a share of the latest test of exactly the exercise's grip, edge and hands.
   *
   * @param percent above 1 and at most 100; 80 is {@code 80 % of test}
   * @throws IllegalArgumentException if it is outside that range
   */
  static Level ofTest(double percent) {
    if (percent > 0 && percent <= 1) {
      throw new IllegalArgumentException(
          Numbers.plain(percent, 6) + " % of the test: 80 is 80 %, not 0.8");
    }
    return new OfTest(percent / 100);
  }

  /**
   * Returns a total load, body mass included.
   *
   * @param load above 0 kg and up to 1000 kg
   * @throws IllegalArgumentException if it is outside that range
   */
  static Level total(Load load) {
    return new Total(load);
  }

  /** Returns body mass with nothing added and nothing removed. */
  static Level bodyMass() {
    return new BodyMass(Load.ZERO);
  }

  /**
   * Returns body mass with a load added.
   *
   * @param added -1000 to 1000 kg; negative if load is removed
   * @throws IllegalArgumentException if it is outside that range
   */
  static Level bodyMassPlus(Load added) {
    return new BodyMass(added);
  }

  /**
   * Returns the load that could be held this much longer than it is.
   *
   * @param time 0 to 600 s
   * @throws IllegalArgumentException if it is outside that range
   */
  static Level reserve(Duration time) {
    return new Reserve(time);
  }

  /**
   * Returns an effort.
   *
   * @param outOfTen above 0 and at most 10
   * @throws IllegalArgumentException if it is outside that range
   */
  static Level effort(double outOfTen) {
    return new Effort(outOfTen);
  }

  /** Returns whether the load follows from how long it could be held. */
  boolean byTime();

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of level.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits a share of the maximum. */
    R ofMax(OfMax level);

    /** Visits a share of a test. */
    R ofTest(OfTest level);

    /** Visits a total load. */
    R total(Total level);

    /** Visits body mass with a difference. */
    R bodyMass(BodyMass level);

    /** Visits a reserve of time. */
    R reserve(Reserve level);

    /** Visits an effort. */
    R effort(Effort level);
  }

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

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.ofMax(this);
    }

    @Override
    public boolean byTime() {
      return false;
    }
  }

  /**
   * A share of the latest valid test on or before the day, of exactly the exercise's grip, edge and
   * hands, held for 7 s. It is a share of the test itself, not of the maximum's lower bound, and
   * never of a modelled maximum.
   *
   * @param fraction above 0 and at most 1; 0.8 is {@code 80 % of test}
   */
  record OfTest(double fraction) implements Level {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the fraction is not above 0 and at most 1
     */
    public OfTest {
      Range.OF_TEST.check(fraction);
    }

    @Override
    public String toString() {
      return Numbers.plain(fraction * 100, 2) + " % of test";
    }

    @Override
    public String key() {
      return "common.level-of-test";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("percent", Numbers.plain(fraction * 100, 2));
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.ofTest(this);
    }

    @Override
    public boolean byTime() {
      return false;
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

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.total(this);
    }

    @Override
    public boolean byTime() {
      return false;
    }
  }

  /**
   * Body mass with load added or, if negative, removed.
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

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.bodyMass(this);
    }

    @Override
    public boolean byTime() {
      return false;
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

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.reserve(this);
    }

    @Override
    public boolean byTime() {
      return true;
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

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.effort(this);
    }

    @Override
    public boolean byTime() {
      return true;
    }
  }
}
