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
 * Calculates the dose of an exercise in a week of its block after progression, introduction and
 * easing.
 *
 * <p>A step is taken only after a week in which something was trained, never in an eased (deload)
 * week, and only by an exercise that is not still being introduced. A rehabilitation line takes
 * none, because the practitioner's plan decides, and neither does a warm-up.
 */
public final class Progression {

  private final Block.Content block;
  private final Prescription prescription;
  private final IdentityHashMap<Week, IdentityHashMap<Exercise, Map<OfGrip, Dose>>> known =
      new IdentityHashMap<>();

  /**
   * Creates the progression of a block.
   *
   * @param prescription decides when a load still follows a test
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
   * @param ramp the return of the load after a time without training
   * @param rise the weeks in which loads may rise to a higher test
   * @param blockers the reasons in the log that prevent steps
   * @param withoutLogLimits the same week without the limits of the log; empty if this is that week
   *     or if no log entry concerns the plan's days
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

    /** Returns this week as if it were not eased, for exercises that are not. */
    public Week notEased() {
      return new Week(
          first,
          opportunities,
          lost,
          Optional.empty(),
          ramp,
          rise,
          blockers,
          withoutLogLimits.map(Week::notEased));
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
     * Returns this week with only the opportunities of one grip, which follow weeks that trained
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

  /** A grip of an exercise, and the sets of the whole line if it has several grips. */
  private record OfGrip(String grip, OptionalInt ofLine) {}

  /** Returns the dose of an exercise in a week, for any day; computed once a week. */
  public Dose dose(Exercise exercise, Grip grip, Week week) {
    return dose(exercise, grip, week, OptionalInt.empty());
  }

  private Dose dose(Exercise exercise, Grip grip, Week week, OptionalInt ofLine) {
    return known
        .computeIfAbsent(week, w -> new IdentityHashMap<>())
        .computeIfAbsent(exercise, e -> new HashMap<>())
        .computeIfAbsent(
            new OfGrip(grip.name(), ofLine),
            key -> eased(full(exercise, grip, week), week, ofLine));
  }

  /** Returns the number of sets of an exercise in a week before easing. */
  public int fullSets(Exercise exercise, Grip grip, Week week) {
    return full(exercise, grip, week).scheme().sets();
  }

  /**
   * Reduces a dose in an eased week; if the line has several grips, the sets are those of the whole
   * line.
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
        ramp.isPresent() || !mayAdvance(exercise) ? Optional.empty() : advance(grip);
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

  private static boolean mayAdvance(Exercise exercise) {
    return exercise.rehabilitation().isEmpty() && !exercise.warmUp();
  }

  /** Counts the steps that nothing in the log prevented, and records the others. */
  private int chances(
      Exercise exercise, Grip grip, Week week, boolean introduced, List<Derivation> why) {
    Optional<Advance.Pace> pace = advance(grip).map(a -> a.first().when());
    boolean steps =
        introduced
            || (mayAdvance(exercise)
                && pace.filter(Advance.EveryWeeks.class::isInstance).isPresent());
    if (!steps) {
      return week.opportunities().size();
    }
    ProgressionBlockers.Candidate candidate =
        new ProgressionBlockers.Candidate(exercise, grip, pace);
    List<Cause> causes = new ArrayList<>(week.lost());
    int held = 0;
    for (StepOpportunity chance : week.opportunities()) {
      List<Cause> against =
          new ArrayList<>(week.blockers().reasons(candidate, chance.since(), chance.before()));
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

  /** Returns whether the load already rises to a higher test in the week that could take a step. */
  private boolean follows(Exercise exercise, Grip grip, Week week, StepOpportunity chance) {
    return byStrength(exercise)
        && prescription.follows(
            exercise.setup(grip),
            chance.before().minusDays(1),
            exercise.rehabilitation().isPresent(),
            week.rise());
  }

  private static boolean byStrength(Exercise exercise) {
    for (Scheme.Hold hold : exercise.scheme().written()) {
      if (hold.level().byTime()
          || hold.level() instanceof Level.OfMax
          || hold.level() instanceof Level.OfTest) {
        return true;
      }
    }
    return false;
  }

  /**
   * Returns the dose of an exercise on a day, limited by the log.
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
    ProgressionBlockers.Candidate candidate =
        new ProgressionBlockers.Candidate(exercise, grip, pace);
    Optional<Dose.Ceiling> back =
        week.blockers().comingBack(candidate, place, dose.edge(), day, week.easedTo().isPresent());
    return dose.under(
        Stream.concat(week.blockers().ceiling(candidate, dose.edge(), day).stream(), back.stream())
            .min(Comparator.comparing(Dose.Ceiling::most)));
  }

  public Optional<Block.Introduction> introduction(Grip grip) {
    for (Block.Introduction each : block.introductions()) {
      if (each.grip().name().equals(grip.name())) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  private Optional<Advance> advance(Grip grip) {
    Optional<Advance> ofAll = Optional.empty();
    for (Advance each : block.advances()) {
      if (each.on().isEmpty()) {
        ofAll = ofAll.isEmpty() ? Optional.of(each) : ofAll;
      } else if (each.on().get().equals(grip.name())) {
        return Optional.of(each);
      }
    }
    return ofAll;
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
                new ProgressionBlockers.Candidate(
                    chances.exercise(), chances.grip(), Optional.of(pace)),
                logged,
                week.opportunities().subList(all - Math.min(all, count), all));
          }
        });
  }

  /**
   * Counts the steps earned in the log, at most one for each opportunity and none before the first.
   */
  private int taken(
      Chances asking,
      ProgressionBlockers.Candidate candidate,
      Advance.WhenLogged pace,
      List<StepOpportunity> chances) {
    Week week = asking.week();
    ProgressionBlockers blockers = week.blockers();
    int before = chances.isEmpty() ? 0 : blockers.earned(candidate, pace, chances.get(0).since());
    int steps = 0;
    for (StepOpportunity chance : chances) {
      boolean waits =
          blockers.held(candidate, Optional.empty(), chance.before()).isPresent()
              || follows(asking.exercise(), asking.grip(), week, chance);
      boolean earned = blockers.earned(candidate, pace, chance.before()) - before > steps;
      steps += earned && !waits ? 1 : 0;
    }
    return steps;
  }
}
