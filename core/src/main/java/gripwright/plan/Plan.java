package gripwright.plan;

import gripwright.finding.ModelPath;
import gripwright.finding.WrittenReason;
import gripwright.grip.Grip;
import gripwright.protocol.Report;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A plan as written by a coach: blocks of weeks for one or more athletes from a first day on.
 * Immutable.
 */
public final class Plan {

  /** The default warm-up. */
  public static final Duration STANDARD_WARM_UP = Duration.ofMinutes(12);

  /** The default rest between two exercises. */
  public static final Duration STANDARD_REST_BETWEEN = Duration.ofMinutes(3);

  /** The default greatest rise of a week's load; common practice. */
  public static final double STANDARD_WEEKLY_RISE = 0.1;

  /**
   * The goal of a plan.
   *
   * @param date the day
   * @param title description
   */
  public record Goal(LocalDate date, Optional<String> title) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the year is outside 1900 to 2199
     */
    public Goal {
      Objects.requireNonNull(date, "date");
      Objects.requireNonNull(title, "title");
      Range.YEAR.check(date);
    }
  }

  /**
   * Less work before the goal of a plan: fewer sets with the same load.
   *
   * @param weeks number of weeks before the goal at which it begins, 1 to 8
   * @param setsFraction share of the sets that is kept, above 0 and up to 0.99
   */
  public record Taper(int weeks, double setsFraction) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the weeks are outside 1 to 8, or the share not above 0
     *     and up to 0.99
     */
    public Taper {
      Range.TAPER.checkIn(Unit.WEEK, weeks);
      Range.EASE.check(setsFraction);
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
    /**
     * Checks the place and the reason.
     *
     * @throws IllegalArgumentException if the reason has no letter and no digit, a number is
     *     outside its {@link Range}, or there is a week without a block
     */
    public Waiver {
      Objects.requireNonNull(rule, "rule");
      Objects.requireNonNull(block, "block");
      Objects.requireNonNull(week, "week");
      Objects.requireNonNull(session, "session");
      Objects.requireNonNull(exercise, "exercise");
      Objects.requireNonNull(because, "because");
      week.ifPresent(Range.WEEK::check);
      exercise.ifPresent(Range.EXERCISE::check);
      WrittenReason.check(because, "why " + rule + " is waived");
      if (week.isPresent() && block.isEmpty()) {
        throw new IllegalArgumentException(
            "a waiver of " + rule + " in week " + week.getAsInt() + " of no block");
      }
    }

    /** Returns whether a place in a compiled plan is covered. */
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

  /** The components, checked. */
  private record Parts(
      String name,
      Optional<String> title,
      List<String> athletes,
      LocalDate from,
      Optional<Goal> towards,
      Optional<Taper> taper,
      Map<Grip, Double> demand,
      List<String> ruleSets,
      List<Block> blocks,
      List<PlannedTest> retests,
      List<Waiver> waivers,
      Duration warmUp,
      Optional<String> warmUpText,
      Duration restBetween,
      OptionalDouble weeklyRise,
      Exercise.Weights weights,
      Optional<String> supervisedBy,
      List<Report> reports,
      List<String> notes) {
    Parts {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(athletes, "athletes");
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(towards, "towards");
      Objects.requireNonNull(taper, "taper");
      Objects.requireNonNull(demand, "demand");
      Objects.requireNonNull(ruleSets, "ruleSets");
      Objects.requireNonNull(blocks, "blocks");
      Objects.requireNonNull(retests, "retests");
      Objects.requireNonNull(waivers, "waivers");
      Objects.requireNonNull(warmUp, "warmUp");
      Objects.requireNonNull(warmUpText, "warmUpText");
      Objects.requireNonNull(restBetween, "restBetween");
      Objects.requireNonNull(weeklyRise, "weeklyRise");
      Objects.requireNonNull(weights, "weights");
      Objects.requireNonNull(supervisedBy, "supervisedBy");
      supervisedBy.ifPresent(who -> WrittenReason.check(who, "who supervises plan " + name));
      athletes = List.copyOf(athletes);
      reports = List.copyOf(reports);
      notes = List.copyOf(notes);
      demand = Collections.unmodifiableMap(new LinkedHashMap<>(demand));
      ruleSets = List.copyOf(ruleSets);
      blocks = List.copyOf(blocks);
      retests = List.copyOf(retests);
      waivers = List.copyOf(waivers);
      if (athletes.isEmpty() || blocks.isEmpty()) {
        throw new IllegalArgumentException(
            "plan " + name + " has no " + (athletes.isEmpty() ? "athlete" : "block"));
      }
      Range.YEAR.check(from);
      Range.ATHLETES.check(athletes.size());
      Range.PLAN_WEEKS.check(blocks.stream().mapToLong(Block::weeks).sum());
      Range.WARM_UP.check(warmUp);
      Range.REST_BETWEEN.check(restBetween);
      Range.WEEKLY_RISE.check(weeklyRise);
      demand.values().forEach(Range.SHARE::check);
      double sum = demand.values().stream().mapToDouble(Double::doubleValue).sum();
      if (!demand.isEmpty() && Math.abs(sum - 1) > 1e-9) {
        throw new IllegalArgumentException("plan " + name + ": demand adds to " + sum * 100 + " %");
      }
      if (taper.isPresent() && towards.isEmpty()) {
        throw new IllegalArgumentException("plan " + name + ": a taper towards no day");
      }
      if (towards.isPresent() && towards.get().date().isBefore(from)) {
        throw new IllegalArgumentException(
            "plan " + name + ": towards " + towards.get().date() + " before its first day " + from);
      }
      distinct(name, "athlete", athletes);
      distinct(name, "block", blocks.stream().map(Block::name).toList());
      distinct(name, "rule set", ruleSets);
      new PlanPlaces(name, athletes, blocks).check(waivers);
      int weeks = blocks.stream().mapToInt(Block::weeks).sum();
      for (PlannedTest test : retests) {
        for (TestTime time : test.times()) {
          if (time instanceof TestTime.InWeek in && in.week() > weeks) {
            throw new IllegalArgumentException(
                "plan " + name + ": a test in week " + in.week() + " of " + weeks);
          }
        }
      }
    }
  }

  private final Parts parts;

  private Plan(Parts parts) {
    this.parts = parts;
  }

  /** Returns the name: kebab-case, unique in a project. */
  public String name() {
    return parts.name;
  }

  /** Returns the title for people. */
  public Optional<String> title() {
    return parts.title;
  }

  /** Returns the names of the athletes, at least one. */
  public List<String> athletes() {
    return parts.athletes;
  }

  /** Returns the first day; every seventh day from it begins a plan week. */
  public LocalDate from() {
    return parts.from;
  }

  /** Returns the goal. */
  public Optional<Goal> towards() {
    return parts.towards;
  }

  /** Returns the taper before the goal, if written. */
  public Optional<Taper> taper() {
    return parts.taper;
  }

  /** Returns the share of the climbing ahead by grip; adds up to 1, or empty. */
  public Map<Grip, Double> demand() {
    return parts.demand;
  }

  /** Returns the names of the rule sets that apply in addition to the built-in rules. */
  public List<String> ruleSets() {
    return parts.ruleSets;
  }

  /** Returns the blocks in order, at least one. */
  public List<Block> blocks() {
    return parts.blocks;
  }

  /** Returns the planned tests. */
  public List<PlannedTest> retests() {
    return parts.retests;
  }

  /** Returns the findings the coach accepts. */
  public List<Waiver> waivers() {
    return parts.waivers;
  }

  /** Returns what to do in the warm-up, in words for people, unless a session has its own. */
  public Optional<String> warmUpText() {
    return parts.warmUpText;
  }

  /** Returns the duration of the warm-up, unless a session has its own. */
  public Duration warmUp() {
    return parts.warmUp;
  }

  /** Returns the rest between two exercises, unless a session has its own. */
  public Duration restBetween() {
    return parts.restBetween;
  }

  /** Returns the greatest rise of the week's load, if written, 0 to 0.3; 0.1 is 10 %. */
  public OptionalDouble weeklyRise() {
    return parts.weeklyRise;
  }

  /** Returns the weights for choosing grips, unless a session has its own. */
  public Exercise.Weights weights() {
    return parts.weights;
  }

  /** Returns facts about the delivery of the training that can't be derived. */
  public List<Report> reports() {
    return parts.reports;
  }

  /** Returns what the coach wrote about it for people, in order. */
  public List<String> notes() {
    return parts.notes;
  }

  /** Returns who supervises the sessions, unless a session names somebody. */
  public Optional<String> supervisedBy() {
    return parts.supervisedBy;
  }

  private static void distinct(String plan, String what, List<String> names) {
    Set<String> seen = new HashSet<>();
    for (String each : names) {
      if (!seen.add(each)) {
        throw new IllegalArgumentException("plan " + plan + ": " + what + " " + each + " twice");
      }
    }
  }

  /** Returns the path of this plan. */
  public ModelPath path() {
    return ModelPath.of("plan", parts.name);
  }

  /** Returns the number of weeks of all blocks. */
  public int weeks() {
    return parts.blocks.stream().mapToInt(Block::weeks).sum();
  }

  /**
   * Returns the first day of a week.
   *
   * @param number 1 for the first week of the plan, 0 for the seven days before it
   */
  public LocalDate firstDayOf(int number) {
    return parts.from.plusWeeks(number - 1L);
  }

  /** Returns the number of the week of a day; 0 or less before the plan. */
  public int weekOf(LocalDate day) {
    return (int) Math.floorDiv(ChronoUnit.DAYS.between(parts.from, day), 7L) + 1;
  }

  /** Returns the weeks outside the plan in which a test is due, by number, in order. */
  public SortedSet<Integer> testWeeksOutside() {
    SortedSet<Integer> outside = new TreeSet<>();
    parts.retests.forEach(test -> outside.addAll(test.weeksOutside(weeks())));
    return outside;
  }

  /** Returns the last day: the end of the last week. */
  public LocalDate to() {
    return parts.from.plusDays(7L * weeks() - 1);
  }

  /**
   * Returns who supervises a session: the person it names itself, or else the one the plan names.
   *
   * @param block name of the block
   * @param session name of the session
   * @param athlete whose session it is
   */
  public Optional<String> supervisorOf(String block, String session, String athlete) {
    return parts.blocks.stream()
        .filter(b -> b.name().equals(block))
        .flatMap(b -> b.contentFor(athlete).sessions().stream())
        .filter(s -> s.name().equals(session))
        .flatMap(s -> s.supervisedBy().stream())
        .findFirst()
        .or(this::supervisedBy);
  }

  /**
   * Returns the taper if it eases a week: one that begins within the taper's weeks before the goal.
   *
   * @param first first day of the week
   */
  public Optional<Taper> taperIn(LocalDate first) {
    return parts.taper.filter(
        t ->
            parts
                .towards
                .map(Goal::date)
                .filter(day -> first.isBefore(day) && !first.isBefore(day.minusWeeks(t.weeks())))
                .isPresent());
  }

  /** Returns a builder with all parts of this plan; parts added later follow them. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /**
   * Returns a builder for a plan.
   *
   * @param name kebab-case, unique in a project
   */
  public static Builder named(String name) {
    Objects.requireNonNull(name, "name");
    return new Builder(name);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Plan that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "Plan" + parts.toString().substring("Parts".length());
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
    private final List<PlannedTest> retests = new ArrayList<>();
    private final List<Waiver> waivers = new ArrayList<>();
    private Duration warmUp = STANDARD_WARM_UP;
    private Optional<String> warmUpText = Optional.empty();
    private Duration restBetween = STANDARD_REST_BETWEEN;
    private OptionalDouble weeklyRise = OptionalDouble.empty();
    private Exercise.Weights weights = Exercise.Weights.STANDARD;
    private Optional<String> supervisedBy = Optional.empty();
    private final List<Report> reports = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private Builder(String name) {
      this.name = name;
    }

    private Builder(Parts copied) {
      this(copied.name);
      title = copied.title;
      athletes.addAll(copied.athletes);
      from = Optional.of(copied.from);
      towards = copied.towards;
      taper = copied.taper;
      demand.putAll(copied.demand);
      ruleSets.addAll(copied.ruleSets);
      blocks.addAll(copied.blocks);
      retests.addAll(copied.retests);
      waivers.addAll(copied.waivers);
      warmUp = copied.warmUp;
      warmUpText = copied.warmUpText;
      restBetween = copied.restBetween;
      weeklyRise = copied.weeklyRise;
      weights = copied.weights;
      supervisedBy = copied.supervisedBy;
      reports.addAll(copied.reports);
      notes.addAll(copied.notes);
    }

    /** Sets the title for people. */
    public Builder title(String text) {
      Objects.requireNonNull(text, "text");
      return title(Optional.of(text));
    }

    /** Sets the title for people, or none. */
    public Builder title(Optional<String> text) {
      Objects.requireNonNull(text, "text");
      title = text;
      return this;
    }

    /** Adds an athlete by name. */
    public Builder athlete(String athlete) {
      Objects.requireNonNull(athlete, "athlete");
      athletes.add(athlete);
      return this;
    }

    /** Sets the first day. */
    public Builder from(LocalDate day) {
      Objects.requireNonNull(day, "day");
      from = Optional.of(day);
      return this;
    }

    /** Sets what the plan works towards. */
    public Builder towards(LocalDate day, String what) {
      Objects.requireNonNull(day, "day");
      Objects.requireNonNull(what, "what");
      return towards(new Goal(day, Optional.of(what)));
    }

    /** Sets what the plan works towards. */
    public Builder towards(Goal goal) {
      Objects.requireNonNull(goal, "goal");
      return towards(Optional.of(goal));
    }

    /** Sets what the plan works towards, or nothing. */
    public Builder towards(Optional<Goal> goal) {
      Objects.requireNonNull(goal, "goal");
      towards = goal;
      return this;
    }

    /**
     * Sets less work in the weeks before the goal.
     *
     * @param weeks number of weeks, 1 to 8
     * @param setsFraction share of the sets that is kept, above 0 and up to 0.99; 0.5 keeps half
     */
    public Builder taper(int weeks, double setsFraction) {
      return taper(Optional.of(new Taper(weeks, setsFraction)));
    }

    /** Sets the taper before the goal, or none. */
    public Builder taper(Optional<Taper> value) {
      Objects.requireNonNull(value, "value");
      taper = value;
      return this;
    }

    /** Sets the share of the climbing ahead that uses a grip; 0.45 is 45 %. */
    public Builder demand(Grip grip, double share) {
      Objects.requireNonNull(grip, "grip");
      demand.put(grip, share);
      return this;
    }

    /**
     * Sets the share of the climbing ahead by grip, in place of those already there; 0.45 is 45 %,
     * and all add up to 1.
     */
    public Builder demand(Map<Grip, Double> all) {
      Objects.requireNonNull(all, "all");
      Map<Grip, Double> copy = new LinkedHashMap<>(all);
      demand.clear();
      demand.putAll(copy);
      return this;
    }

    /** Adds a rule set by name. */
    public Builder rules(String ruleSet) {
      Objects.requireNonNull(ruleSet, "ruleSet");
      ruleSets.add(ruleSet);
      return this;
    }

    /** Adds a block after those already there. */
    public Builder block(Block block) {
      Objects.requireNonNull(block, "block");
      blocks.add(block);
      return this;
    }

    /** Sets all athletes by name, in place of those already there. */
    public Builder athletes(List<String> all) {
      Objects.requireNonNull(all, "all");
      athletes.clear();
      athletes.addAll(all);
      return this;
    }

    /** Sets all rule sets by name, in place of those already there. */
    public Builder ruleSets(List<String> all) {
      Objects.requireNonNull(all, "all");
      ruleSets.clear();
      ruleSets.addAll(all);
      return this;
    }

    /** Sets all blocks, in place of those already there. */
    public Builder blocks(List<Block> all) {
      Objects.requireNonNull(all, "all");
      blocks.clear();
      blocks.addAll(all);
      return this;
    }

    /** Sets all planned tests, in place of those already there. */
    public Builder retests(List<PlannedTest> all) {
      Objects.requireNonNull(all, "all");
      retests.clear();
      retests.addAll(all);
      return this;
    }

    /** Sets all waivers, in place of those already there. */
    public Builder waivers(List<Waiver> all) {
      Objects.requireNonNull(all, "all");
      waivers.clear();
      waivers.addAll(all);
      return this;
    }

    /** Adds a planned test. */
    public Builder retest(PlannedTest retest) {
      Objects.requireNonNull(retest, "retest");
      retests.add(retest);
      return this;
    }

    /** Adds a waiver. */
    public Builder waive(Waiver waiver) {
      Objects.requireNonNull(waiver, "waiver");
      waivers.add(waiver);
      return this;
    }

    /** Sets what to do in the warm-up, in words for people. */
    public Builder warmUpText(String text) {
      Objects.requireNonNull(text, "text");
      return warmUpText(Optional.of(text));
    }

    /** Sets what to do in the warm-up, in words for people, or nothing. */
    public Builder warmUpText(Optional<String> text) {
      Objects.requireNonNull(text, "text");
      warmUpText = text;
      return this;
    }

    /** Sets the warm-up. */
    public Builder warmUp(Duration time) {
      Objects.requireNonNull(time, "time");
      warmUp = time;
      return this;
    }

    /** Sets the rest between two exercises. */
    public Builder restBetween(Duration time) {
      Objects.requireNonNull(time, "time");
      restBetween = time;
      return this;
    }

    /** Sets the greatest rise of the week's load, 0 to 0.3; 0.1 is 10 %. */
    public Builder weeklyRise(double fraction) {
      return weeklyRise(OptionalDouble.of(fraction));
    }

    /** Sets the greatest rise of the week's load, 0 to 0.3; empty means the default of 10 %. */
    public Builder weeklyRise(OptionalDouble fraction) {
      Objects.requireNonNull(fraction, "fraction");
      weeklyRise = fraction;
      return this;
    }

    /** Sets the weights for choosing grips. */
    public Builder weights(Exercise.Weights value) {
      Objects.requireNonNull(value, "value");
      weights = value;
      return this;
    }

    /** Adds a fact about the delivery of the training. */
    public Builder report(Report fact) {
      reports.add(Objects.requireNonNull(fact, "fact"));
      return this;
    }

    /** Adds a note for people; it changes no load and no rule. */
    public Builder note(String text) {
      notes.add(Objects.requireNonNull(text, "text"));
      return this;
    }

    /** Sets who supervises the sessions, in words; it changes no rule and no load. */
    public Builder supervisedBy(String who) {
      Objects.requireNonNull(who, "who");
      return supervisedBy(Optional.of(who));
    }

    /** Sets who supervises the sessions, in words, or nobody; it changes no rule and no load. */
    public Builder supervisedBy(Optional<String> who) {
      Objects.requireNonNull(who, "who");
      supervisedBy = who;
      return this;
    }

    /**
     * Returns the plan.
     *
     * @throws IllegalStateException if the first day is missing
     * @throws IllegalArgumentException if there is no athlete or no block, there are more than 1000
     *     athletes or 520 weeks, one of them or a block appears twice, the demand does not add up
     *     to 100 %, there is a taper without a goal, the goal is before the first day, content is
     *     for another athlete, the place of a waiver is not in the plan, the supervisor's name has
     *     no letter and no digit, or a value is outside its {@link Range}
     */
    public Plan build() {
      return new Plan(
          new Parts(
              name,
              title,
              athletes,
              from.orElseThrow(
                  () -> new IllegalStateException("plan " + name + " has no first day")),
              towards,
              taper,
              demand,
              ruleSets,
              blocks,
              retests,
              waivers,
              warmUp,
              warmUpText,
              restBetween,
              weeklyRise,
              weights,
              supervisedBy,
              reports,
              notes));
    }
  }
}
