package gripwright.planning.mix;

import gripwright.finding.Finding;
import gripwright.grip.Grip;
import gripwright.grip.GripStructure;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.history.LogTimeline;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.quantity.Load;
import gripwright.rule.Gates;
import gripwright.rule.WaiverIndex;
import gripwright.schedule.DatedSession;
import gripwright.schedule.GripMix;
import gripwright.schedule.GripMix.Blend;
import gripwright.schedule.GripMix.Limit;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.strength.StrengthMap;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Divides the work of a line among the grips that it allows.
 *
 * <p>A grip takes part if the hand takes it, a load can be given, no built-in rule prevents it and,
 * for a full crimp or a single finger, the plan's demand names it. Grips that are tested or in the
 * demand come before others that the model can't tell apart from them. The shares are those that
 * score highest on match, margin and carry-over by the line's weights, see {@link MixSolver}. The
 * value of each grip is calculated once for each line and edge, the mix once for each set of grips
 * that take part. Not thread-safe.
 */
public final class Choice {

  /** A limit that costs less is not reported. */
  private static final double LEAST_COST = 1e-6;

  /** Fractions of a set that count as zero. */
  private static final double TOLERANCE = 1e-6;

  private final Plan plan;
  private final LogTimeline timeline;
  private final HandFits fits;
  private final StrengthMap strength;
  private final WaiverIndex waivers;
  private final Load bodyMass;
  private final Map<List<Setup>, MixQuestion> questions = new HashMap<>();
  private final Map<MixInput, Optional<GripMix>> answers = new HashMap<>();

  private record MixInput(List<Setup> setups, Exercise.Weights weights, List<Exclusion> out) {}

  /**
   * A grip that does not take part.
   *
   * @param grip its name
   * @param reason the reason
   */
  public record Exclusion(String grip, GripMix.Reason reason) {
    /**
     * Returns the exclusion of a grip without a possible load, with the findings that prevent it.
     */
    public static Exclusion withoutLoad(Setup setup, List<Finding> findings) {
      return new Exclusion(
          setup.grip().name(),
          new GripMix.NoLoad(
              findings.stream().filter(Finding::blocks).map(Finding::code).findFirst().orElse("")));
    }
  }

  /**
   * Prepares to choose.
   *
   * @param timeline the plan, the athlete and what is known of the athlete
   * @param fits of the athlete's hands
   * @param strength the athlete's strength as known when the plan begins
   * @param bodyMass body mass on that day
   */
  public Choice(LogTimeline timeline, HandFits fits, StrengthMap strength, Load bodyMass) {
    this.plan = timeline.plan();
    this.waivers = WaiverIndex.of(plan);
    this.timeline = timeline;
    this.fits = fits;
    this.strength = strength;
    this.bodyMass = bodyMass;
  }

  /** Returns why a hand or the demand excludes a grip from a line, if one does. */
  public Optional<Exclusion> excludedByHand(Setup setup) {
    Grip grip = setup.grip();
    if (!fits.takes(setup)) {
      return Optional.of(new Exclusion(grip.name(), new GripMix.OutOfReach(setup.edge())));
    }
    boolean named =
        plan.demand().entrySet().stream()
            .anyMatch(e -> e.getKey().name().equals(grip.name()) && e.getValue() > 0);
    return onlyIfNamed(grip) && !named
        ? Optional.of(new Exclusion(grip.name(), new GripMix.NotNamed()))
        : Optional.empty();
  }

  /** Returns whether a grip is never chosen unless the demand names it. */
  static boolean onlyIfNamed(Grip grip) {
    return grip.structure() == GripStructure.SINGLE || grip.fullCrimp();
  }

  /**
   * Returns the built-in rule that prevents a grip, if one does.
   *
   * @param candidate the exercise as it would be trained on the day
   * @param session the session it would be part of, its other exercises left out
   */
  public Optional<Exclusion> excludedByRule(
      PlannedExercise candidate, DatedSession session, PlanWeek week) {
    return Gates.stopping(candidate, session, week, waivers, timeline)
        .map(
            rule -> new Exclusion(candidate.setup().grip().name(), new GripMix.ClosedByRule(rule)));
  }

  /**
   * Returns the mix of a line; empty if no grip takes part.
   *
   * @param exercise a line with a choice of grips
   * @param line the setup of each of its grips after progression
   * @param out grips that do not take part
   */
  public Optional<GripMix> mix(Exercise exercise, List<Setup> line, List<Exclusion> out) {
    List<Setup> setups =
        line.stream().sorted(Comparator.comparing(setup -> setup.grip().name())).toList();
    Exercise.Weights weights = exercise.target().weights().orElse(plan.weights());
    return answers.computeIfAbsent(new MixInput(setups, weights, List.copyOf(out)), this::solve);
  }

  private Optional<GripMix> solve(MixInput input) {
    MixSolver solver =
        questions
            .computeIfAbsent(
                input.setups(),
                setups -> new MixQuestion(setups, plan.demand(), fits, strength, bodyMass))
            .solver(input.weights());
    List<Double> caps = caps(input, Optional.empty());
    return solver
        .best(caps)
        .map(
            best ->
                new GripMix(
                    input.weights(),
                    best,
                    solver.nextBest(caps, best.shares().keySet()),
                    limits(input, solver, best),
                    solver.enough(caps),
                    unproven(input, solver, best, caps)));
  }

  private static Optional<GripMix.Unproven> unproven(
      MixInput input, MixSolver solver, Blend best, List<Double> caps) {
    List<String> grips = solver.unproven(best.shares().keySet());
    if (grips.isEmpty()) {
      return Optional.empty();
    }
    List<String> names = input.setups().stream().map(setup -> setup.grip().name()).toList();
    List<String> all = solver.unproven(names);
    List<Double> without = new ArrayList<>(caps);
    for (int i = 0; i < names.size(); i++) {
      if (all.contains(names.get(i))) {
        without.set(i, 0.0);
      }
    }
    return Optional.of(new GripMix.Unproven(grips, solver.best(without)));
  }

  private static List<Double> caps(MixInput input, Optional<Exclusion> lifted) {
    return input.setups().stream()
        .map(
            setup ->
                input.out().stream()
                        .filter(out -> lifted.isEmpty() || !out.equals(lifted.get()))
                        .anyMatch(out -> out.grip().equals(setup.grip().name()))
                    ? 0.0
                    : 1.0)
        .toList();
  }

  private static List<Limit> limits(MixInput input, MixSolver solver, Blend best) {
    List<Limit> limits = new ArrayList<>();
    for (Exclusion out : input.out()) {
      double without =
          solver.best(caps(input, Optional.of(out))).map(Blend::score).orElse(best.score());
      double cost = without - best.score();
      if (cost > LEAST_COST) {
        limits.add(new Limit(out.grip(), out.reason(), cost));
      }
    }
    limits.sort(Comparator.comparingDouble((Limit limit) -> -limit.cost()));
    return limits;
  }

  /**
   * Splits whole sets by share: the largest remainders get what is left over, of equal ones the
   * grip earlier in the alphabet. They are rounded to a millionth of a set, since shares are not
   * more precise.
   *
   * @return sets by grip name, some of them 0; the sum is {@code sets}
   */
  public static SortedMap<String, Integer> apportion(int sets, SortedMap<String, Double> shares) {
    SortedMap<String, Integer> whole = new TreeMap<>();
    List<String> byRemainder = new ArrayList<>(shares.keySet());
    int given = 0;
    for (Map.Entry<String, Double> share : shares.entrySet()) {
      int least = (int) Math.floor(sets * share.getValue() + TOLERANCE);
      whole.put(share.getKey(), least);
      given += least;
    }
    byRemainder.sort(
        Comparator.comparingDouble(
            grip ->
                Math.rint(
                    (whole.getOrDefault(grip, 0) - sets * shares.getOrDefault(grip, 0.0))
                        / TOLERANCE)));
    for (int i = 0; given < sets; i++, given++) {
      whole.merge(byRemainder.get(i), 1, Integer::sum);
    }
    return whole;
  }

  /** Returns the grips a line trains or may choose from, in the order written. */
  public static List<Grip> grips(Exercise exercise) {
    return exercise.target().grips();
  }
}
