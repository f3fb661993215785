package gripwright.schedule;

import gripwright.protocol.Level;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** The steps from a level to a load that can be built, as links of a derivation. */
public sealed interface LoadLink extends Derivation {

  /**
   * A level that is written as a total load.
   *
   * @param load the load
   */
  record WrittenTotal(Load load) implements LoadLink {
    @Override
    public String key() {
      return "derivation.level-total";
    }

    @Override
    public double value() {
      return load.kilograms();
    }

    @Override
    public String unit() {
      return "kg";
    }
  }

  /**
   * A level that is written against body mass.
   *
   * @param added added load; below 0 removed load
   */
  record WrittenAgainstBodyMass(Load added) implements LoadLink {
    @Override
    public String key() {
      return "derivation.level-body-mass";
    }

    @Override
    public double value() {
      return added.kilograms();
    }

    @Override
    public String unit() {
      return "kg";
    }
  }

  /**
   * A level that is written as a share of the maximum.
   *
   * @param fraction the share
   */
  record WrittenShare(double fraction) implements LoadLink {
    @Override
    public String key() {
      return "derivation.level-share";
    }

    @Override
    public double value() {
      return fraction * 100;
    }

    @Override
    public String unit() {
      return "% max";
    }
  }

  /**
   * The written level, as a share of a test.
   *
   * @param fraction above 0 and at most 1
   * @param test load of the test
   * @param date day of the test
   * @param inForce true if a sensor showed a force in N, which is the weight of the load
   */
  record WrittenShareOfTest(double fraction, Load test, LocalDate date, boolean inForce)
      implements LoadLink {
    @Override
    public String key() {
      return inForce ? "derivation.level-share-of-force" : "derivation.level-share-of-test";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("test", test, "date", date, "newtons", Numbers.plain(test.newtons(), 1));
    }

    @Override
    public double value() {
      return fraction * 100;
    }

    @Override
    public String unit() {
      return "% of test";
    }
  }

  /**
   * A load known to be light counts as 40 % of an untested maximum.
   *
   * @param most the greatest total load
   */
  record KnownLight(Load most) implements LoadLink {
    @Override
    public String key() {
      return "derivation.known-light";
    }

    @Override
    public double value() {
      return most.kilograms();
    }

    @Override
    public String unit() {
      return "kg";
    }
  }

  /**
   * A level that is written by the time left after the hold.
   *
   * @param level as written
   * @param seconds how long the load could be held
   */
  record WrittenByTime(Level level, double seconds) implements LoadLink {
    @Override
    public String key() {
      return "derivation.level-time";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("level", level);
    }

    @Override
    public double value() {
      return seconds;
    }

    @Override
    public String unit() {
      return "s";
    }
  }

  /**
   * A grip that is introduced starts below the written level.
   *
   * @param fraction the level now, as a share of the maximum
   * @param from the first level, as a share of the maximum
   */
  record Introduced(double fraction, double from) implements LoadLink {
    @Override
    public String key() {
      return "derivation.introduce";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("percent", Numbers.plain(from * 100, 1));
    }

    @Override
    public double value() {
      return fraction * 100;
    }

    @Override
    public String unit() {
      return "% max";
    }
  }

  /**
   * The log limits the load.
   *
   * @param most the greatest total load
   * @param cause the cause
   */
  record Limited(Load most, Cause cause) implements LoadLink {
    @Override
    public List<Cause> causes() {
      return List.of(cause);
    }

    @Override
    public String key() {
      return "derivation.load-held";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("cause", cause);
    }

    @Override
    public double value() {
      return most.kilograms();
    }

    @Override
    public String unit() {
      return "kg";
    }
  }

  /**
   * The load from level and progression.
   *
   * @param kilograms the load
   */
  record Wanted(double kilograms) implements LoadLink {
    @Override
    public String key() {
      return "derivation.load-wanted";
    }

    @Override
    public double value() {
      return kilograms;
    }

    @Override
    public String unit() {
      return "kg";
    }
  }

  /**
   * The load on the edge without added load.
   *
   * @param mass body mass
   */
  record BodyMass(Load mass) implements LoadLink {
    @Override
    public String key() {
      return "derivation.body-mass";
    }

    @Override
    public double value() {
      return mass.kilograms();
    }

    @Override
    public String unit() {
      return "kg";
    }
  }

  /**
   * Load that the equipment adds to body mass or removes from it.
   *
   * @param kilograms above 0 added, below 0 removed
   */
  record Built(double kilograms) implements LoadLink {
    @Override
    public String key() {
      return kilograms < 0 ? "derivation.taken-off" : "derivation.added";
    }

    @Override
    public double value() {
      return Math.abs(kilograms);
    }

    @Override
    public String unit() {
      return "kg";
    }
  }

  /**
   * The load on the edge.
   *
   * @param load total load
   */
  record Total(Load load) implements LoadLink {
    @Override
    public String key() {
      return "derivation.total-load";
    }

    @Override
    public double value() {
      return load.kilograms();
    }

    @Override
    public String unit() {
      return "kg";
    }
  }
}
