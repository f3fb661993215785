package gripwright.protocol;

import gripwright.finding.Message;
import gripwright.quantity.Range;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A protocol with all values: sets, repetitions, holds and rests. Immutable.
 *
 * <p>The sets of a scheme are the repeats of its one outermost step; if it has several outermost
 * steps, the whole is one set.
 */
public final class Scheme {

  /** The largest count of holds and rests, so that no count overflows. */
  public static final long ENDLESS = 1L << 40;

  /** A step of a scheme. */
  public sealed interface Step permits Repeat, Bout {
    /** Returns what the visitor returns for this kind. */
    <R> R accept(Step.Visitor<R> visitor);

    /**
     * One method for each kind of step.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> extends Bout.Visitor<R> {
      /** Visits steps done several times. */
      R repeat(Repeat repeat);
    }
  }

  /** A step without further steps inside. */
  public sealed interface Bout extends Step {
    /** Returns how long it takes. */
    Duration time();

    /** Returns the time in seconds. */
    default double seconds() {
      return time().toNanos() / 1e9;
    }

    /** Returns what the visitor returns for this kind. */
    <R> R accept(Bout.Visitor<R> visitor);

    @Override
    default <R> R accept(Step.Visitor<R> visitor) {
      return accept((Bout.Visitor<R>) visitor);
    }

    /**
     * One method for each kind of step without further steps inside.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> {
      /** Visits a hold. */
      R hold(Hold hold);

      /** Visits a rest. */
      R rest(Rest rest);
    }
  }

  /**
   * Steps done several times.
   *
   * @param times how often, 1 or more
   * @param resting rest between two repeats, never after the last
   * @param steps what is repeated; at least one
   * @param upTo true if the number is the greatest one, so that fewer are not missed
   */
  public record Repeat(int times, Duration resting, List<Step> steps, boolean upTo)
      implements Step {

    /** Creates a repeat of exactly this many times. */
    public Repeat(int times, Duration resting, List<Step> steps) {
      this(times, resting, steps, false);
    }

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

    @Override
    public <R> R accept(Step.Visitor<R> visitor) {
      return visitor.repeat(this);
    }
  }

  /**
   * A hold.
   *
   * @param time how long, above 0 s; the longest time if the extent is a bound
   * @param level how hard
   * @param extent what the time means
   */
  public record Hold(Duration time, Level level, Extent extent) implements Bout {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the time is not above 0 s and up to 3600 s
     */
    public Hold {
      Objects.requireNonNull(time, "time");
      Objects.requireNonNull(level, "level");
      Objects.requireNonNull(extent, "extent");
      Range.HOLD.check(time);
    }

    /** Creates a hold of exactly this time. */
    public Hold(Duration time, Level level) {
      this(time, level, Extent.WHOLE);
    }

    /** Returns this hold with another time. */
    public Hold lasting(Duration other) {
      return new Hold(other, level, extent);
    }

    /** Returns this hold at another level. */
    public Hold at(Level other) {
      return new Hold(time, other, extent);
    }

    /** Returns this hold as one that may be left out. */
    private Hold mayEndEarly() {
      return extent.isBound() ? this : new Hold(time, level, Extent.UP_TO);
    }

    @Override
    public <R> R accept(Bout.Visitor<R> visitor) {
      return visitor.hold(this);
    }
  }

  /**
   * A rest.
   *
   * @param time how long, 0 s or more
   * @param text what to do in it, in words for people; empty if nothing is written
   */
  public record Rest(Duration time, Optional<String> text) implements Bout {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the time is outside 0 s to a day
     */
    public Rest {
      Objects.requireNonNull(time, "time");
      Objects.requireNonNull(text, "text");
      Range.REST.check(time);
    }

    /** Creates a rest without words. */
    public Rest(Duration time) {
      this(time, Optional.empty());
    }

    @Override
    public <R> R accept(Bout.Visitor<R> visitor) {
      return visitor.rest(this);
    }
  }

  private final List<Step> steps;

  // Computed on first use, since plans share schemes; every thread gets the same value.
  private volatile @Nullable List<Hold> written;
  private volatile @Nullable List<Bout> flat;
  private volatile @Nullable List<Hold> holds;
  private volatile @Nullable Duration duration;
  private volatile @Nullable Duration timeUnderLoad;

  /**
   * Creates a scheme.
   *
   * @param steps what is done, in order; at least one
   * @throws IllegalArgumentException if there are none
   */
  public Scheme(List<? extends Step> steps) {
    Objects.requireNonNull(steps, "steps");
    this.steps = List.copyOf(steps);
    if (this.steps.isEmpty()) {
      throw new IllegalArgumentException("a scheme has at least one step");
    }
  }

  /** Returns what is done, in order. */
  public List<Step> steps() {
    return steps;
  }

  /** Returns the only outermost step if it is a repeat. */
  private Optional<Repeat> outer() {
    return steps.size() == 1 && steps.get(0) instanceof Repeat repeat
        ? Optional.of(repeat)
        : Optional.empty();
  }

  /** Returns the only repeat inside a set, if the set has no other steps. */
  private Optional<Repeat> inner() {
    return outer()
        .filter(o -> o.steps().size() == 1)
        .flatMap(o -> o.steps().get(0) instanceof Repeat r ? Optional.of(r) : Optional.empty());
  }

  /** Returns the number of sets, 1 or more. */
  public int sets() {
    return outer().map(Repeat::times).orElse(1);
  }

  /** Returns this scheme with this many sets; an outer repeat is added if there is none. */
  public Scheme withSets(int sets) {
    Repeat repeat = outer().orElseGet(() -> new Repeat(1, Duration.ZERO, steps));
    return new Scheme(List.of(new Repeat(sets, repeat.resting(), repeat.steps(), repeat.upTo())));
  }

  /** Returns this scheme with the number of sets that were done, which is no bound any more. */
  public Scheme withSetsDone(int sets) {
    Scheme done = withSets(sets);
    Repeat repeat = done.outer().orElseThrow();
    return repeat.upTo()
        ? new Scheme(List.of(new Repeat(sets, repeat.resting(), repeat.steps())))
        : done;
  }

  /** Returns whether the number of sets is a bound, so that fewer sets are not missed. */
  public boolean setsUpTo() {
    return outer().filter(Repeat::upTo).isPresent();
  }

  /** Returns whether the time of a hold or the number of sets or holds is a bound. */
  public boolean hasBound() {
    return hasBound(steps);
  }

  private static boolean hasBound(List<Step> steps) {
    return steps.stream().anyMatch(step -> step.accept(BOUND));
  }

  private static final Step.Visitor<Boolean> BOUND =
      new Step.Visitor<>() {
        @Override
        public Boolean repeat(Repeat repeat) {
          return repeat.upTo() || hasBound(repeat.steps());
        }

        @Override
        public Boolean hold(Hold hold) {
          return hold.extent().isBound();
        }

        @Override
        public Boolean rest(Rest rest) {
          return false;
        }
      };

  /** Returns every rest that has a text, in order, each once. */
  public List<Rest> restsWithText() {
    return restsWithText(steps);
  }

  private static List<Rest> restsWithText(List<Step> steps) {
    return steps.stream().flatMap(step -> step.accept(TEXTS).stream()).distinct().toList();
  }

  private static final Step.Visitor<List<Rest>> TEXTS =
      new Step.Visitor<>() {
        @Override
        public List<Rest> repeat(Repeat repeat) {
          return restsWithText(repeat.steps());
        }

        @Override
        public List<Rest> hold(Hold hold) {
          return List.of();
        }

        @Override
        public List<Rest> rest(Rest rest) {
          return rest.text().isPresent() ? List.of(rest) : List.of();
        }
      };

  /** Returns the number of holds of a set. */
  public int repetitionsPerSet() {
    return (int) Math.min(Integer.MAX_VALUE, holds(outer().map(Repeat::steps).orElse(steps)));
  }

  /** Returns how many holds there are when written out, {@link #ENDLESS} at most. */
  private static long holds(List<Step> steps) {
    return StepCount.of(steps, 1, 0, 0);
  }

  /**
   * The position of a hold.
   *
   * @param set number of its set, from 1
   * @param sets number of sets
   * @param repetition number of the hold in its set, from 1
   * @param repetitions number of holds of a set
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
   * Returns the position of a hold.
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

  /** Returns the rest between sets; zero if there is one set or no rest is written. */
  public Duration restBetweenSets() {
    return outer().map(Repeat::resting).orElse(Duration.ZERO);
  }

  /** Returns the rest between the holds of a set; zero if a set is one hold. */
  public Duration restBetweenHolds() {
    return inner().map(Repeat::resting).orElse(Duration.ZERO);
  }

  /** Returns every hold in order, written out: see {@link #size} for how many there are. */
  public List<Hold> holds() {
    List<Hold> known = holds;
    if (known == null) {
      known = flat().stream().filter(Hold.class::isInstance).map(Hold.class::cast).toList();
      holds = known;
    }
    return known;
  }

  /** Returns the levels of all holds as written, in order, each once. */
  public List<Level> levels() {
    return written().stream().map(Hold::level).distinct().toList();
  }

  /** Returns the time of all holds if they are equal. */
  public Optional<Duration> holdTime() {
    List<Duration> times = written().stream().map(Hold::time).distinct().toList();
    return times.size() == 1 ? Optional.of(times.get(0)) : Optional.empty();
  }

  /** Returns every hold as written, in order: a repeated hold appears once. */
  public List<Hold> written() {
    List<Hold> known = written;
    if (known == null) {
      known = written(steps);
      written = known;
    }
    return known;
  }

  private static List<Hold> written(List<Step> steps) {
    return steps.stream().flatMap(step -> step.accept(WRITTEN).stream()).toList();
  }

  private static final Step.Visitor<List<Hold>> WRITTEN =
      new Step.Visitor<>() {
        @Override
        public List<Hold> repeat(Repeat repeat) {
          return written(repeat.steps());
        }

        @Override
        public List<Hold> hold(Hold hold) {
          return List.of(hold);
        }

        @Override
        public List<Hold> rest(Rest rest) {
          return List.of();
        }
      };

  /**
   * Returns holds and rests in the order they happen, written out, rests of zero left out: see
   * {@link #size} for how many there are. Where the number of repeats is a bound, the holds of
   * every repeat but the first are bounds too, since they may be left out.
   */
  public List<Bout> flat() {
    List<Bout> known = flat;
    if (known == null) {
      known = Collections.unmodifiableList(flat(steps));
      flat = known;
    }
    return known;
  }

  private static List<Bout> flat(List<Step> steps) {
    List<Bout> flat = new ArrayList<>();
    steps.forEach(step -> flat.addAll(step.accept(FLAT)));
    return flat;
  }

  private static final Step.Visitor<List<Bout>> FLAT =
      new Step.Visitor<>() {
        @Override
        public List<Bout> repeat(Repeat repeat) {
          List<Bout> flat = new ArrayList<>();
          List<Bout> once = flat(repeat.steps());
          List<Bout> again =
              repeat.upTo() ? flat(mapHolds(repeat.steps(), Hold::mayEndEarly)) : once;
          Rest between = new Rest(repeat.resting());
          for (int i = 0; i < repeat.times(); i++) {
            if (i > 0 && !repeat.resting().isZero()) {
              flat.add(between);
            }
            flat.addAll(i > 0 ? again : once);
          }
          return flat;
        }

        @Override
        public List<Bout> hold(Hold hold) {
          return List.of(hold);
        }

        @Override
        public List<Bout> rest(Rest rest) {
          return rest.time().isZero() ? List.of() : List.of(rest);
        }
      };

  /** Returns this scheme with every hold replaced. */
  public Scheme mapHolds(UnaryOperator<Hold> change) {
    return new Scheme(mapHolds(steps, change));
  }

  private static List<Step> mapHolds(List<Step> steps, UnaryOperator<Hold> change) {
    Step.Visitor<Step> mapping =
        new Step.Visitor<>() {
          @Override
          public Step repeat(Repeat repeat) {
            return new Repeat(
                repeat.times(), repeat.resting(), mapHolds(repeat.steps(), change), repeat.upTo());
          }

          @Override
          public Step hold(Hold hold) {
            return change.apply(hold);
          }

          @Override
          public Step rest(Rest rest) {
            return rest;
          }
        };
    return steps.stream().map(step -> step.accept(mapping)).toList();
  }

  /** Returns the time under tension: the sum of all holds. */
  public Duration timeUnderLoad() {
    Duration known = timeUnderLoad;
    if (known == null) {
      known = time(steps, false);
      timeUnderLoad = known;
    }
    return known;
  }

  /** Returns the sum of holds and rests. */
  public Duration duration() {
    Duration known = duration;
    if (known == null) {
      known = time(steps, true);
      duration = known;
    }
    return known;
  }

  private static Duration time(List<Step> steps, boolean rests) {
    Step.Visitor<Duration> time =
        new Step.Visitor<>() {
          @Override
          public Duration repeat(Repeat repeat) {
            Duration resting = rests ? repeat.resting() : Duration.ZERO;
            return time(repeat.steps(), rests)
                .multipliedBy(repeat.times())
                .plus(resting.multipliedBy(repeat.times() - 1L));
          }

          @Override
          public Duration hold(Hold hold) {
            return hold.time();
          }

          @Override
          public Duration rest(Rest rest) {
            return rests ? rest.time() : Duration.ZERO;
          }
        };
    return steps.stream().map(step -> step.accept(time)).reduce(Duration.ZERO, Duration::plus);
  }

  /**
   * Returns how many holds and rests the scheme has when written out, without writing it out;
   * {@link #ENDLESS} where it is more.
   */
  public long size() {
    return StepCount.of(steps, 1, 1, 1);
  }

  /** Returns whether another scheme has the same steps. */
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other || (other instanceof Scheme that && steps.equals(that.steps));
  }

  @Override
  public int hashCode() {
    return steps.hashCode();
  }

  @Override
  public String toString() {
    return "Scheme[steps=" + steps + "]";
  }
}
