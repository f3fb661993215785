package gripwright.fatigue.published;

import gripwright.fatigue.FatigueSet;
import gripwright.fatigue.Fingers;
import gripwright.fatigue.Muscle;
import gripwright.fatigue.Pools;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A published measure of repeated or all-out holds beside the models'.
 *
 * @param id short name of the row
 * @param what was measured
 * @param source where it is published
 * @param fitted whether it is one of the ten rows by which the two pools were judged
 * @param value as published
 * @param spread standard deviation of its logarithm
 * @param model the same by a set
 */
record Repeated(
    String id,
    String what,
    String source,
    boolean fitted,
    double value,
    double spread,
    ToDoubleFunction<FatigueSet> model) {

  private static final double INSTANT = 0.1;

  /** Persons: 19.33 (SD 4.84) and 12.88 (SD 4.96) repetitions, Quaine 2003. */
  private static final double CLIMBERS = 0.25;

  private static final double OTHERS = 0.37;

  /**
   * Force at the end of an all-out series, from day to day: McClean ZJ et al. 2023, Int J Exerc Sci
   * 16(4):912-923; impulse above it: 13.2 %.
   */
  private static final double END_FORCE = 0.21;

  private static final double IMPULSE = 0.132;
  private static final double CRITICAL = 0.41;
  private static final double SECONDS_OF_MVC = 29.7;

  private static final String GILES = "Giles 2019\u2020";
  private static final String QUAINE = "Quaine 2003";
  private static final String VIGOUROUX = "Vigouroux 2006";
  private static final String NOLAN = "Nolan 2020";

  /**
   * Sources:
   *
   * <ul>
   *   <li>Quaine F, Vigouroux L, Martin L 2003, Int J Sports Med 24(6):424-427; Vigouroux L, Quaine
   *       F 2006, J Sports Sci 24(2):181-186, without a standard deviation, so with that of 2003.
   *   <li>Giles D et al. 2019, Int J Sports Physiol Perform 14(7):972-979 (from memory): critical
   *       force 41.0 % of MVC and 29.7 s of MVC above it, so 4.25 / (f - 0.41) repetitions. Three
   *       rows rest on this one source. The spread is that of both numbers from day to day.
   *   <li>Balas J et al. 2024, Eur J Appl Physiol 124(9):2787-2798: 440 s (SD 140) at critical
   *       force, 7:3 s; its share of MVC is taken from Giles 2019.
   *   <li>Handgrip and quadriceps muscle endurance testing in young adults 2013, SpringerPlus
   *       2:451; 25.2 by 33.6 kg; SD not read, 5.6 % taken, that of peak force from day to day.
   *   <li>Nolan J, McLennan PL, Peoples GE 2020, J Sports Med Phys Fitness 60(8):1057-1064; SD not
   *       read, that of persons in 2003 taken.
   * </ul>
   */
  static List<Repeated> all() {
    return List.of(
        new Repeated(
            "quaine03.climbers",
            "repetitions 5:5 s at 80 %, elite climbers",
            QUAINE,
            true,
            19.33,
            CLIMBERS,
            set -> repetitions(set, 0.8, 5, 5, 0.7)),
        new Repeated(
            "quaine03.others",
            "repetitions 5:5 s at 80 %, others",
            QUAINE,
            false,
            12.88,
            OTHERS,
            set -> repetitions(set, 0.8, 5, 5, 0.7)),
        new Repeated(
            "vigouroux06.climbers",
            "repetitions 5:5 s at 80 %, climbers",
            VIGOUROUX,
            true,
            18,
            CLIMBERS,
            set -> repetitions(set, 0.8, 5, 5, 0.7)),
        new Repeated(
            "vigouroux06.others",
            "repetitions 5:5 s at 80 %, others",
            VIGOUROUX,
            false,
            9,
            OTHERS,
            set -> repetitions(set, 0.8, 5, 5, 0.7)),
        new Repeated(
            "vigouroux06.level.climbers",
            "force at which 5:5 s at 80 % levels off, climbers",
            VIGOUROUX,
            true,
            0.63,
            END_FORCE,
            set -> meanForces(set, 36, 5, 5, 0.8)[35]),
        new Repeated(
            "vigouroux06.level.others",
            "force at which 5:5 s at 80 % levels off, others",
            VIGOUROUX,
            true,
            0.5,
            END_FORCE,
            set -> meanForces(set, 36, 5, 5, 0.8)[35]),
        giles("giles19.80", 0.8),
        giles("giles19.70", 0.7),
        giles("giles19.60", 0.6),
        new Repeated(
            "cf.share",
            "force at the end of 24 x 7:3 s, all-out",
            GILES,
            true,
            CRITICAL,
            END_FORCE,
            set -> meanForces(set, 24, 7, 3, 1)[23]),
        new Repeated(
            "cf.balas24.ttf",
            "s of 7:3 s at critical force",
            "Balas 2024",
            false,
            440,
            0.318,
            set -> 10 * repetitions(set, CRITICAL, 7, 3, CRITICAL)),
        new Repeated(
            "int.grip.fatigueindex",
            "maximal grips 3:5 s, the last three by the first three",
            "SpringerPlus 2013",
            true,
            25.2 / 33.6,
            0.056,
            Repeated::twelveGrips),
        new Repeated(
            "nolan20.climbers",
            "s of a maximal grip until half is left, climbers",
            NOLAN,
            true,
            54,
            CLIMBERS,
            Repeated::toHalf),
        new Repeated(
            "nolan20.lifters",
            "s of a maximal grip until half is left, power lifters",
            NOLAN,
            false,
            46,
            CLIMBERS,
            Repeated::toHalf),
        new Repeated(
            "nolan20.aerobic",
            "s of a maximal grip until half is left, aerobic",
            NOLAN,
            false,
            35,
            CLIMBERS,
            Repeated::toHalf));
  }

  /** Repetitions of 7:3 s by critical force and the impulse above it. */
  private static Repeated giles(String id, double load) {
    double repetitions = SECONDS_OF_MVC / 7 / (load - CRITICAL);
    double ofForce = END_FORCE * CRITICAL / (load - CRITICAL);
    return new Repeated(
        id,
        String.format(java.util.Locale.ROOT, "repetitions 7:3 s at %.0f %%, climbers", 100 * load),
        GILES,
        true,
        repetitions,
        Math.hypot(ofForce, IMPULSE),
        set -> repetitions(set, load, 7, 3, load));
  }

  double low() {
    return value * Math.exp(-Endurance.TO_95_PERCENT * spread);
  }

  double high() {
    return value * Math.exp(Endurance.TO_95_PERCENT * spread);
  }

  boolean inside(FatigueSet set) {
    double modelled = model.applyAsDouble(set);
    return modelled >= low() && modelled <= high();
  }

  /** The logarithm of model by published. */
  double error(FatigueSet set) {
    return Math.log(model.applyAsDouble(set) / value);
  }

  private static double capacity(Fingers fingers) {
    return fingers instanceof Muscle muscle ? muscle.capacity() : ((Pools) fingers).capacity();
  }

  /**
   * Repetitions until capacity at the end of one falls below a bound, with the part of the last.
   */
  private static double repetitions(
      FatigueSet set, double load, double work, double rest, double bound) {
    Fingers fingers = set.fresh();
    double before = 1;
    for (int done = 0; done < 1000; done++) {
      fingers.hold(load, work);
      double after = capacity(fingers);
      if (after < bound) {
        return done + (before - bound) / (before - after);
      }
      before = after;
      fingers.rest(rest);
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Mean force from half a second into each hold, as the mean of three holds up to it. */
  private static double[] meanForces(
      FatigueSet set, int times, double work, double rest, double load) {
    Fingers fingers = set.fresh();
    double[] forces = new double[times];
    for (int i = 0; i < times; i++) {
      force(fingers, load, 0.5);
      forces[i] = force(fingers, load, work - 0.5);
      fingers.rest(rest);
    }
    for (int i = times - 1; i >= 2; i--) {
      forces[i] = (forces[i] + forces[i - 1] + forces[i - 2]) / 3;
    }
    return forces;
  }

  /** Holds with what is left once the load can't be carried, and returns the mean force. */
  private static double force(Fingers fingers, double load, double seconds) {
    double sum = 0;
    int steps = (int) Math.round(seconds / INSTANT);
    for (int i = 0; i < steps; i++) {
      if (fingers instanceof Muscle muscle) {
        muscle.hold(load, INSTANT);
        sum += muscle.active();
      } else if (fingers instanceof Pools pools) {
        if (pools.capacity() > load) {
          pools.hold(load, INSTANT);
          sum += load;
        } else {
          sum += pools.give(INSTANT);
        }
      }
    }
    return sum / steps;
  }

  private static double twelveGrips(FatigueSet set) {
    double[] forces = meanForces(set, 12, 3, 5, 1);
    return forces[11] / forces[2];
  }

  private static double toHalf(FatigueSet set) {
    Fingers fingers = set.fresh();
    double seconds = 0;
    while (capacity(fingers) > 0.5 && seconds < 1000) {
      force(fingers, 1, INSTANT);
      seconds += INSTANT;
    }
    return seconds;
  }
}
