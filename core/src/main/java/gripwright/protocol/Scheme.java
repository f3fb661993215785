package gripwright.protocol;

import gripwright.finding.Message;
import gripwright.quantity.Range;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A protocol with every place filled: sets, repetitions, holds and rests. Immutable.
 *
 * <p>The sets of a scheme are the repeats of its one outermost step; where it has several steps
 * side by side, the whole is one set.
 *
 * @param steps what is done, in order; at least one
 */
public record Scheme(List<Step> steps) {

  /** A number of holds and rests that no count goes beyond, so that none overflows. */
  public static final long ENDLESS = 1L << 40;

  /** What is done next. */
  public sealed interface Step {}

  /**
   * Steps done several times.
   *
   * @param times how often, 1 or more
   * @param resting rest between two repeats, never after the last
   * @param steps what is repeated; at least one
   */
  public record Repeat(int times, Duration resting, List<Step> steps) implements Step {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if there is nothing to repeat, it is not repeated 1 to 1000
     *     times, or the rest is outside 0 s to a day
     */
    public Repeat {
      Objects.requireNonNull(resting, "resting");
      Objects.requireNonNull(steps, "steps");
      steps = List.copyOf(steps);
      Range.REPEATS.check(times);
      Range.REST.check(resting);
      if (steps.isEmpty()) {
        throw new IllegalArgumentException("a repeat has at least one step");
      }
    }
  }

  /**
   * A hold.
   *
   * @param time how long, above 0 s
   * @param level how hard
   */
  public record Hold(Duration time, Level level) implements Step {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the time is not above 0 s and up to 3600 s
     */
    public Hold {
      Objects.requireNonNull(time, "time");
      Objects.requireNonNull(level, "level");
      Range.HOLD.check(time);
    }

    /** Returns the time in seconds. */
    public double seconds() {
      return time.toNanos() / 1e9;
    }
  }

  /**
   * A rest.
   *
   * @param time how long, 0 s or more
   */
  public record Rest(Duration time) implements Step {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the time is outside 0 s to a day
     */
    public Rest {
      Objects.requireNonNull(time, "time");
      Range.REST.check(time);
    }
  }

  /**
   * Copies the steps.
   *
   * @throws IllegalArgumentException if there are none
   */
  public Scheme {
    Objects.requireNonNull(steps, "steps");
    steps = List.copyOf(steps);
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("a scheme has at least one step");
    }
  }

  /** Returns the one outermost repeat, if there is one. */
  private Optional<Repeat> outer() {
    return steps.size() == 1 && steps.get(0) instanceof Repeat repeat
        ? Optional.of(repeat)
        : Optional.empty();
  }

  /** Returns the one repeat inside a set, if a set is nothing but that. */
  private Optional<Repeat> inner() {
    return outer()
        .filter(o -> o.steps().size() == 1)
        .flatMap(o -> o.steps().get(0) instanceof Repeat r ? Optional.of(r) : Optional.empty());
  }

  /** Returns how many sets there are, 1 or more. */
  public int sets() {
    return outer().map(Repeat::times).orElse(1);
  }

  /** Returns this scheme with so many sets; a scheme without an outer repeat gets one. */
  public Scheme withSets(int sets) {
    Repeat repeat = outer().orElseGet(() -> new Repeat(1, Duration.ZERO, steps));
    return new Scheme(List.of(new Repeat(sets, repeat.resting(), repeat.steps())));
  }

  /** Returns how many holds a set has. */
  public int repetitionsPerSet() {
    return (int) Math.min(Integer.MAX_VALUE, holds(outer().map(Repeat::steps).orElse(steps)));
  }

  /** Returns how many holds there are when written out, {@link #ENDLESS} at most. */
  private static long holds(List<Step> steps) {
    long holds = 0;
    for (Step step : steps) {
      if (step instanceof Repeat repeat) {
        holds += times(repeat, holds(repeat.steps()));
      } else {
        holds += step instanceof Hold ? 1 : 0;
      }
      holds = Math.min(ENDLESS, holds);
    }
    return holds;
  }

  /**
   * Where a hold stands.
   *
   * @param set which set, from 1
   * @param sets how many there are
   * @param repetition which hold of its set, from 1
   * @param repetitions how many holds a set has
   */
  public record HoldPlace(int set, int sets, int repetition, int repetitions) implements Message {

    @Override
    public String key() {
      if (repetitions == 1) {
        return sets == 1 ? "hold.only" : "hold.set";
      }
      return sets == 1 ? "hold.repetition" : "hold.repetition-of-set";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("set", set, "repetition", repetition);
    }
  }

  /**
   * Tells where a hold stands.
   *
   * @param hold position among all holds in order, from 0
   * @throws IllegalArgumentException if there is no such hold
   */
  public HoldPlace place(int hold) {
    int sets = sets();
    int repetitions = repetitionsPerSet();
    long all = (long) sets * repetitions;
    if (hold < 0 || hold >= all) {
      throw new IllegalArgumentException("no hold " + hold + " of " + all);
    }
    return new HoldPlace(hold / repetitions + 1, sets, hold % repetitions + 1, repetitions);
  }

  /** Returns the rest between sets; zero where there is one set or none is written. */
  public Duration restBetweenSets() {
    return outer().map(Repeat::resting).orElse(Duration.ZERO);
  }

  /** Returns the rest between the holds of a set; zero where a set is one hold. */
  public Duration restBetweenHolds() {
    return inner().map(Repeat::resting).orElse(Duration.ZERO);
  }

  /** Returns every hold in order, written out: see {@link #size} for how many there are. */
  public List<Hold> holds() {
    return flat(steps).stream().filter(Hold.class::isInstance).map(Hold.class::cast).toList();
  }

  /** Returns the levels of all holds as written, in order, each once. */
  public List<Level> levels() {
    return written().stream().map(Hold::level).distinct().toList();
  }

  /** Returns the first hold's time where all holds last the same, in whole seconds or not. */
  public Optional<Duration> holdTime() {
    List<Duration> times = written().stream().map(Hold::time).distinct().toList();
    return times.size() == 1 ? Optional.of(times.get(0)) : Optional.empty();
  }

  /** Returns every hold as it is written, in order: what is repeated stands once. */
  public List<Hold> written() {
    List<Hold> written = new ArrayList<>();
    write(steps, written);
    return written;
  }

  private static void write(List<Step> steps, List<Hold> into) {
    for (Step step : steps) {
      if (step instanceof Repeat repeat) {
        write(repeat.steps(), into);
      } else if (step instanceof Hold hold) {
        into.add(hold);
      }
    }
  }

  /**
   * Returns holds and rests in the order they happen, written out, rests of zero left out: see
   * {@link #size} for how many there are.
   */
  public List<Step> flat() {
    return flat(steps);
  }

  private static List<Step> flat(List<Step> steps) {
    List<Step> flat = new ArrayList<>();
    for (Step step : steps) {
      if (step instanceof Repeat repeat) {
        List<Step> once = flat(repeat.steps());
        for (int i = 0; i < repeat.times(); i++) {
          if (i > 0 && !repeat.resting().isZero()) {
            flat.add(new Rest(repeat.resting()));
          }
          flat.addAll(once);
        }
      } else if (!(step instanceof Rest rest && rest.time().isZero())) {
        flat.add(step);
      }
    }
    return flat;
  }

  /** Returns this scheme with every hold replaced. */
  public Scheme mapHolds(UnaryOperator<Hold> change) {
    return new Scheme(mapHolds(steps, change));
  }

  private static List<Step> mapHolds(List<Step> steps, UnaryOperator<Hold> change) {
    List<Step> mapped = new ArrayList<>();
    for (Step step : steps) {
      if (step instanceof Repeat repeat) {
        mapped.add(new Repeat(repeat.times(), repeat.resting(), mapHolds(repeat.steps(), change)));
      } else if (step instanceof Hold hold) {
        mapped.add(change.apply(hold));
      } else {
        mapped.add(step);
      }
    }
    return mapped;
  }

  /** Returns the time under load: all holds together. */
  public Duration timeUnderLoad() {
    return time(steps, false);
  }

  /** Returns holds and rests together. */
  public Duration duration() {
    return time(steps, true);
  }

  private static Duration time(List<Step> steps, boolean rests) {
    Duration sum = Duration.ZERO;
    for (Step step : steps) {
      if (step instanceof Repeat repeat) {
        Duration resting = rests ? repeat.resting() : Duration.ZERO;
        sum =
            sum.plus(time(repeat.steps(), rests).multipliedBy(repeat.times()))
                .plus(resting.multipliedBy(repeat.times() - 1L));
      } else if (step instanceof Hold hold) {
        sum = sum.plus(hold.time());
      } else if (rests && step instanceof Rest rest) {
        sum = sum.plus(rest.time());
      }
    }
    return sum;
  }

  /**
   * Returns how many holds and rests the scheme has when written out, without writing it out;
   * {@link #ENDLESS} where it is more.
   */
  public long size() {
    return size(steps);
  }

  private static long times(Repeat repeat, long once) {
    return once > ENDLESS / repeat.times() ? ENDLESS : once * repeat.times();
  }

  private static long size(List<Step> steps) {
    long size = 0;
    for (Step step : steps) {
      size += step instanceof Repeat repeat ? times(repeat, size(repeat.steps()) + 1) : 1;
      size = Math.min(ENDLESS, size);
    }
    return size;
  }
}
