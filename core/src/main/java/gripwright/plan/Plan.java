package gripwright.plan;

import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a coach wrote: blocks of weeks for one or more athletes from a first day on. Immutable.
 *
 * @param name kebab-case, unique in a project
 * @param title for people
 * @param athletes names of the athletes, at least one
 * @param from the first day; every seventh day from it begins a plan week
 * @param towards what the plan works towards
 * @param taper less work in the weeks before that day, if the plan says
 * @param demand share of the climbing ahead by grip; adds to 1, or empty
 * @param ruleSets names of the rule sets that apply beside the built-in rules
 * @param blocks in order, at least one
 * @param retests regular tests
 * @param waivers findings the coach accepts
 * @param warmUp how long the warm-up is, where no session says
 * @param restBetween rest between two exercises, where no session says
 * @param weeklyRise greatest rise of the week's load, where the plan says; 0.1 is 10 %
 * @param weights what counts how much when grips are chosen, where no session says
 */
public record Plan(
    String name,
    Optional<String> title,
    List<String> athletes,
    LocalDate from,
    Optional<Goal> towards,
    Optional<Taper> taper,
    Map<Grip, Double> demand,
    List<String> ruleSets,
    List<Block> blocks,
    List<Retest> retests,
    List<Waiver> waivers,
    Duration warmUp,
    Duration restBetween,
    OptionalDouble weeklyRise,
    Exercise.Weights weights) {

  /** The warm-up where none is written. */
  public static final Duration STANDARD_WARM_UP = Duration.ofMinutes(12);

  /** The rest between two exercises where none is written. */
  public static final Duration STANDARD_REST_BETWEEN = Duration.ofMinutes(3);

  /** How much a week's load may rise where nothing is written; common practice. */
  public static final double STANDARD_WEEKLY_RISE = 0.1;

  /**
   * What a plan works towards.
   *
   * @param date the day
   * @param title what it is
   */
  public record Goal(LocalDate date, Optional<String> title) {}

  /**
   * Less work before the day a plan works towards: fewer sets, the load of each hold kept.
   *
   * @param weeks how many weeks before that day it begins, 1 or more
   * @param setsFraction share of the sets that is kept, above 0 and below 1
   */
  public record Taper(int weeks, double setsFraction) {}

  /**
   * Regular tests.
   *
   * @param setups what is tested, in order
   * @param hold how long each is held
   * @param everyWeeks in every so manieth week of the plan, 1 or more
   */
  public record Retest(List<Setup> setups, Duration hold, int everyWeeks) {
    /** Copies the setups. */
    public Retest {
      setups = List.copyOf(setups);
    }
  }

  /**
   * A finding the coach accepts, for a written reason.
   *
   * @param rule name of the rule
   * @param block name of the block; empty means the whole plan
   * @param week week of the block, from 1; empty means all
   * @param session name of the session; empty means all
   * @param exercise position in the session, from 1; empty means all
   * @param because the reason
   */
  public record Waiver(
      String rule,
      Optional<String> block,
      OptionalInt week,
      Optional<String> session,
      OptionalInt exercise,
      String because) {

    /** Tells whether a place in a compiled plan is covered. */
    public boolean covers(ModelPath place) {
      return matches(place, "block", block)
          && matches(place, "week", week)
          && matches(place, "session", session)
          && matches(place, "exercise", exercise);
    }

    private static boolean matches(ModelPath place, String kind, OptionalInt wanted) {
      return matches(
          place,
          kind,
          wanted.isPresent() ? Optional.of(Integer.toString(wanted.getAsInt())) : Optional.empty());
    }

    private static boolean matches(ModelPath place, String kind, Optional<String> wanted) {
      return wanted.isEmpty()
          || place.steps().stream()
              .anyMatch(s -> s.kind().equals(kind) && s.name().equals(wanted.get()));
    }
  }

  /**
   * Copies and checks the parts.
   *
   * @throws IllegalArgumentException if there is no athlete or no block, the demand does not add to
   *     100 %, or there is a taper and no day that it leads to
   */
  public Plan {
    athletes = List.copyOf(athletes);
    demand = Collections.unmodifiableMap(new LinkedHashMap<>(demand));
    ruleSets = List.copyOf(ruleSets);
    blocks = List.copyOf(blocks);
    retests = List.copyOf(retests);
    waivers = List.copyOf(waivers);
    if (athletes.isEmpty() || blocks.isEmpty()) {
      throw new IllegalArgumentException(
          "plan " + name + " has no " + (athletes.isEmpty() ? "athlete" : "block"));
    }
    double sum = demand.values().stream().mapToDouble(Double::doubleValue).sum();
    if (!demand.isEmpty() && Math.abs(sum - 1) > 1e-9) {
      throw new IllegalArgumentException("plan " + name + ": demand adds to " + sum * 100 + " %");
    }
    if (taper.isPresent() && towards.isEmpty()) {
      throw new IllegalArgumentException("plan " + name + ": a taper towards no day");
    }
  }

  /** Returns the path of this plan. */
  public ModelPath path() {
    return ModelPath.of("plan", name);
  }

  /** Returns how many weeks all blocks have together; of too many to count, the largest number. */
  public int weeks() {
    return (int) Math.min(Integer.MAX_VALUE, blocks.stream().mapToLong(Block::weeks).sum());
  }

  /** Returns the last day: the end of the last week. */
  public LocalDate to() {
    return from.plusDays(7L * weeks() - 1);
  }

  /**
   * Returns the taper if it eases a week: one that begins within the taper's weeks before the day
   * the plan works towards.
   *
   * @param first first day of the week
   */
  public Optional<Taper> taperIn(LocalDate first) {
    return taper.filter(
        t ->
            towards
                .map(Goal::date)
                .filter(day -> first.isBefore(day) && !first.isBefore(day.minusWeeks(t.weeks())))
                .isPresent());
  }

  /** Starts a plan. */
  public static Builder named(String name) {
    return new Builder(name);
  }

  /** Collects the parts of a plan. Not thread-safe. */
  public static final class Builder {
    private final String name;
    private Optional<String> title = Optional.empty();
    private final List<String> athletes = new ArrayList<>();
    private Optional<LocalDate> from = Optional.empty();
    private Optional<Goal> towards = Optional.empty();
    private Optional<Taper> taper = Optional.empty();
    private final Map<Grip, Double> demand = new LinkedHashMap<>();
    private final List<String> ruleSets = new ArrayList<>();
    private final List<Block> blocks = new ArrayList<>();
    private final List<Retest> retests = new ArrayList<>();
    private final List<Waiver> waivers = new ArrayList<>();
    private Duration warmUp = STANDARD_WARM_UP;
    private Duration restBetween = STANDARD_REST_BETWEEN;
    private OptionalDouble weeklyRise = OptionalDouble.empty();
    private Exercise.Weights weights = Exercise.Weights.STANDARD;

    private Builder(String name) {
      this.name = name;
    }

    /** Sets the title for people. */
    public Builder title(String text) {
      title = Optional.of(text);
      return this;
    }

    /** Adds an athlete by name. */
    public Builder athlete(String athlete) {
      athletes.add(athlete);
      return this;
    }

    /** Sets the first day. */
    public Builder from(LocalDate day) {
      from = Optional.of(day);
      return this;
    }

    /** Sets what the plan works towards. */
    public Builder towards(LocalDate day, String what) {
      return towards(new Goal(day, Optional.of(what)));
    }

    /** Sets what the plan works towards. */
    public Builder towards(Goal goal) {
      towards = Optional.of(goal);
      return this;
    }

    /**
     * Sets less work in the weeks before the day the plan works towards; 0.5 keeps half the sets.
     */
    public Builder taper(int weeks, double setsFraction) {
      taper = Optional.of(new Taper(weeks, setsFraction));
      return this;
    }

    /** Sets the share of the climbing ahead that uses a grip; 0.45 is 45 %. */
    public Builder demand(Grip grip, double share) {
      demand.put(grip, share);
      return this;
    }

    /** Adds a rule set by name. */
    public Builder rules(String ruleSet) {
      ruleSets.add(ruleSet);
      return this;
    }

    /** Adds a block after those already there. */
    public Builder block(Block block) {
      blocks.add(block);
      return this;
    }

    /** Adds regular tests. */
    public Builder retest(Retest retest) {
      retests.add(retest);
      return this;
    }

    /** Adds a waiver. */
    public Builder waive(Waiver waiver) {
      waivers.add(waiver);
      return this;
    }

    /** Sets the warm-up. */
    public Builder warmUp(Duration time) {
      warmUp = time;
      return this;
    }

    /** Sets the rest between two exercises. */
    public Builder restBetween(Duration time) {
      restBetween = time;
      return this;
    }

    /** Sets the greatest rise of the week's load; 0.1 is 10 %. */
    public Builder weeklyRise(double fraction) {
      weeklyRise = OptionalDouble.of(fraction);
      return this;
    }

    /** Sets what counts how much when grips are chosen. */
    public Builder weights(Exercise.Weights value) {
      weights = value;
      return this;
    }

    /**
     * Returns the plan.
     *
     * @throws IllegalStateException if the first day is missing
     * @throws IllegalArgumentException if there is no athlete or block, the demand does not add to
     *     100 %, or there is a taper and no day that it leads to
     */
    public Plan build() {
      return new Plan(
          name,
          title,
          athletes,
          from.orElseThrow(() -> new IllegalStateException("plan " + name + " has no first day")),
          towards,
          taper,
          demand,
          ruleSets,
          blocks,
          retests,
          waivers,
          warmUp,
          restBetween,
          weeklyRise,
          weights);
    }
  }
}
