package gripwright.planning.progression;

import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.planning.load.Dose;
import gripwright.planning.load.Prescription;
import gripwright.planning.load.Rise;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.schedule.Cause;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Derivation;
import gripwright.schedule.ProgressLink;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Calculates the dose of an exercise in a week of its block: advanced, ramped, eased.
 *
 * <p>A step is taken only after a week in which something was trained, never in an eased (deload)
 * week, and only by an exercise that is not still being introduced. A rehabilitation line takes
 * none, since the practitioner's plan decides.
 */
public final class Progression {

  private final Block.Content block;
  private final Prescription prescription;
  private final IdentityHashMap<Week, IdentityHashMap<Exercise, Map<String, Dose>>> known =
      new IdentityHashMap<>();

  /**
   * Prepares the progress of a block.
   *
   * @param prescription knows when a load still follows a test
   */
  public Progression(Block.Content block, Prescription prescription) {
    this.block = block;
    this.prescription = prescription;
  }

  /**
   * A step that may be taken.
   *
   * @param since first day of the weeks that may have earned it
   * @param before first day of the week that takes it
   * @param grips names of the grips that were trained in those weeks
   */
  public record StepOpportunity(LocalDate since, LocalDate before, Set<String> grips) {
    /** Copies the names. */
    public StepOpportunity {
      grips = Set.copyOf(grips);
    }
  }

  /**
   * The state of a week.
   *
   * @param first first day of the week
   * @param opportunities opportunities for a step in the block so far
   * @param lost weeks of the block that were not trained, as logged
   * @param easedTo share of the sets that an eased week keeps
   * @param ramp what the load returns to after a time without training
   * @param rise in which weeks loads may follow a higher test
   * @param blockers what the log prevents
   * @param withoutLogLimits the same week as if the log had limited nothing; empty if this is it or
   *     if no line of the log is about the plan's days
   */
  public record Week(
      LocalDate first,
      List<StepOpportunity> opportunities,
      List<Cause> lost,
      Optional<Double> easedTo,
      Returning ramp,
      Rise rise,
      ProgressionBlockers blockers,
      Optional<Week> withoutLogLimits) {

    /** Copies the lists. */
    public Week {
      opportunities = List.copyOf(opportunities);
      lost = List.copyOf(lost);
    }

    /** Returns this week after sessions in it. */
    public Week after(List<DatedSession> sessions) {
      return new Week(
          first,
          opportunities,
          lost,
          easedTo,
          ramp,
          rise,
          blockers.after(sessions),
          withoutLogLimits);
    }

    /**
     * Returns this week with the opportunities of one grip alone: those after weeks that trained
     * it.
     */
    private Week of(Grip grip) {
      return new Week(
          first,
          opportunities.stream().filter(c -> c.grips().contains(grip.name())).toList(),
          lost,
          easedTo,
          ramp,
          rise,
          blockers,
          withoutLogLimits);
    }
  }

  /**
   * The load of a week after a time without training.
   *
   * @param share share of the load; 1 if there was no such time
   * @param from the cause, if there was one
   */
  public record Returning(double share, Optional<Cause> from) {

    /** No return. */
    public static final Returning NOTHING = new Returning(1, Optional.empty());
  }

  /** Returns an exercise's dose in a week, for any day; calculated once a week. */
  public Dose dose(Exercise exercise, Grip grip, Week week) {
    return dose(exercise, grip, week, OptionalInt.empty());
  }

  private Dose dose(Exercise exercise, Grip grip, Week week, OptionalInt ofLine) {
    return known
        .computeIfAbsent(week, w -> new IdentityHashMap<>())
        .computeIfAbsent(exercise, e -> new HashMap<>())
        .computeIfAbsent(
            grip.name() + ofLine, key -> eased(full(exercise, grip, week), week, ofLine));
  }

  /** Returns how many sets an exercise has in a week before it is eased. */
  public int fullSets(Exercise exercise, Grip grip, Week week) {
    return full(exercise, grip, week).scheme().sets();
  }

  /**
   * Eases a dose in an eased week; the sets are those of the whole line if it has several grips.
   */
  private static Dose eased(Dose full, Week week, OptionalInt ofLine) {
    Dose dose = ofLine.isPresent() ? full.with(full.scheme().withSets(ofLine.getAsInt())) : full;
    if (week.easedTo().isEmpty()) {
      return dose;
    }
    List<Derivation> why = new ArrayList<>(dose.why());
    Dose eased = EasedDose.of(dose, week.easedTo().get(), why);
    return eased.because(why);
  }

  private Dose full(Exercise exercise, Grip grip, Week anyGrip) {
    List<Derivation> why = new ArrayList<>();
    Optional<Block.Introduction> introduction = introduction(grip);
    Week week = introduction.isPresent() ? anyGrip.of(grip) : anyGrip;
    int chances = chances(exercise, grip, week, introduction.isPresent(), why);
    int ramped = introduction.map(i -> Math.min(chances, i.weeks() - 1)).orElse(0);
    Optional<Dose.Ramp> ramp =
        introduction
            .filter(i -> chances < i.weeks() - 1)
            .map(i -> new Dose.Ramp(i.fromFraction(), (double) chances / (i.weeks() - 1)));
    Dose dose = Dose.written(exercise.scheme(), exercise.edge()).onRamp(ramp);
    Optional<Advance> advance =
        ramp.isPresent() || exercise.rehabilitation().isPresent()
            ? Optional.empty()
            : advance(grip);
    if (advance.isPresent()) {
      dose =
          advanced(dose, advance.get(), new Chances(exercise, grip, week, chances - ramped), why);
    }
    if (week.ramp().share() < 1) {
      why.add(new ProgressLink.Returns(week.ramp().share(), week.ramp().from().orElseThrow()));
      dose = dose.scaled(week.ramp().share());
    }
    return dose.because(why);
  }

  /** Counts the steps that nothing in the log prevented, and records the others. */
  private int chances(
      Exercise exercise, Grip grip, Week week, boolean introduced, List<Derivation> why) {
    Optional<Advance.Pace> pace = advance(grip).map(a -> a.first().when());
    boolean steps =
        introduced
            || (exercise.rehabilitation().isEmpty()
                && pace.filter(Advance.EveryWeeks.class::isInstance).isPresent());
    if (!steps) {
      return week.opportunities().size();
    }
    ProgressionBlockers.Asked asked = new ProgressionBlockers.Asked(exercise, grip, pace);
    List<Cause> causes = new ArrayList<>(week.lost());
    int held = 0;
    for (StepOpportunity chance : week.opportunities()) {
      List<Cause> against =
          new ArrayList<>(week.blockers().reasons(asked, chance.since(), chance.before()));
      if (follows(exercise, grip, week, chance)) {
        against.add(new Cause.FollowsTestFirst(chance.before()));
      }
      held += against.isEmpty() ? 0 : 1;
      causes.addAll(against);
    }
    int all = held + week.lost().size();
    if (all > 0) {
      why.add(new ProgressLink.StepsHeld(all, causes));
    }
    return week.opportunities().size() - held;
  }

  /**
   * Tells whether the load rises to a higher test in the week that could take a step, from what it
   * was at the end of the week before.
   */
  private boolean follows(Exercise exercise, Grip grip, Week week, StepOpportunity chance) {
    boolean byStrength =
        exercise.scheme().written().stream()
            .map(Scheme.Hold::level)
            .anyMatch(level -> level.byTime() || level instanceof Level.OfMax);
    return byStrength
        && prescription.follows(
            exercise.setup(grip),
            chance.before().minusDays(1),
            exercise.rehabilitation().isPresent(),
            week.rise());
  }

  /**
   * Returns an exercise's dose under what may be loaded on a day after what the log tells.
   *
   * @param place the exercise's place in the model
   */
  public Dose dose(Exercise exercise, Grip grip, Week week, LocalDate day, ModelPath place) {
    return dose(exercise, grip, week, OptionalInt.empty(), day, place);
  }

  /**
   * Returns the dose of one grip of several on a line.
   *
   * @param sets sets of the line before it is eased, shared by all its grips
   * @param place the exercise's place in the model
   */
  public Dose doseOfMix(
      Exercise exercise, Grip grip, Week week, int sets, LocalDate day, ModelPath place) {
    return dose(exercise, grip, week, OptionalInt.of(sets), day, place);
  }

  private Dose dose(
      Exercise exercise, Grip grip, Week week, OptionalInt ofLine, LocalDate day, ModelPath place) {
    Dose dose = dose(exercise, grip, week, ofLine);
    Optional<Advance.Pace> pace = advance(grip).map(a -> a.first().when());
    ProgressionBlockers.Asked asked = new ProgressionBlockers.Asked(exercise, grip, pace);
    Optional<Dose.Ceiling> back =
        week.blockers().comingBack(asked, place, dose.edge(), day, week.easedTo().isPresent());
    return dose.under(
        Stream.concat(week.blockers().ceiling(asked, dose.edge(), day).stream(), back.stream())
            .min(Comparator.comparing(Dose.Ceiling::most)));
  }

  public Optional<Block.Introduction> introduction(Grip grip) {
    return block.introductions().stream()
        .filter(i -> i.grip().name().equals(grip.name()))
        .findFirst();
  }

  private Optional<Advance> advance(Grip grip) {
    return block.advances().stream()
        .filter(a -> a.on().isPresent() && a.on().get().equals(grip.name()))
        .findFirst()
        .or(() -> block.advances().stream().filter(a -> a.on().isEmpty()).findFirst());
  }

  /** The key for the number of step opportunities of an exercise on a grip up to a week. */
  private record Chances(Exercise exercise, Grip grip, Week week, int count) {}

  private Dose advanced(Dose dose, Advance advance, Chances chances, List<Derivation> why) {
    int steps = steps(advance.first().when(), chances);
    if (advance.then().isEmpty()) {
      return DoseSteps.changed(dose, advance.first().change(), steps, why);
    }
    int toLimit = DoseSteps.toLimit(advance.first().change(), dose);
    int firstSteps = toLimit == Integer.MAX_VALUE ? steps : steps % (toLimit + 1);
    int thenSteps = toLimit == Integer.MAX_VALUE ? 0 : steps / (toLimit + 1);
    Dose second = DoseSteps.changed(dose, advance.then().get().change(), thenSteps, why);
    return DoseSteps.changed(second, advance.first().change(), firstSteps, why);
  }

  private int steps(Advance.Pace pace, Chances chances) {
    int count = Math.max(0, chances.count());
    return pace.accept(
        new Advance.Pace.Visitor<Integer>() {
          @Override
          public Integer everyWeeks(Advance.EveryWeeks every) {
            return count / every.weeks();
          }

          @Override
          public Integer whenLogged(Advance.WhenLogged logged) {
            Week week = chances.week();
            int all = week.opportunities().size();
            return taken(
                chances,
                new ProgressionBlockers.Asked(
                    chances.exercise(), chances.grip(), Optional.of(pace)),
                logged,
                week.opportunities().subList(all - Math.min(all, count), all));
          }
        });
  }

  /** Counts the steps that the log has earned: one a chance at most, and none before the first. */
  private int taken(
      Chances asking,
      ProgressionBlockers.Asked asked,
      Advance.WhenLogged pace,
      List<StepOpportunity> chances) {
    Week week = asking.week();
    ProgressionBlockers blockers = week.blockers();
    int before = chances.isEmpty() ? 0 : blockers.earned(asked, pace, chances.get(0).since());
    int steps = 0;
    for (StepOpportunity chance : chances) {
      boolean waits =
          blockers.held(asked, Optional.empty(), chance.before()).isPresent()
              || follows(asking.exercise(), asking.grip(), week, chance);
      boolean earned = blockers.earned(asked, pace, chance.before()) - before > steps;
      steps += earned && !waits ? 1 : 0;
    }
    return steps;
  }
}
