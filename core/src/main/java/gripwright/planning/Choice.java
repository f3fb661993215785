package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.log.Log;
import gripwright.plan.DatedSession;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlanWeek;
import gripwright.plan.PlannedExercise;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Shares the work of a line among the grips it leaves a choice of.
 *
 * <p>A grip takes part if no built-in rule stands against it and, for a full crimp or a single
 * finger, if the plan's demand names it. Work is shared in proportion to the demand; equally where
 * the demand names none of them.
 */
final class Choice {

  private static final String FULL_CRIMP = "full-crimp";

  private final Plan plan;
  private final Athlete athlete;
  private final Log log;

  Choice(Plan plan, Athlete athlete, Log log) {
    this.plan = plan;
    this.athlete = athlete;
    this.log = log;
  }

  /**
   * A grip's part of the work.
   *
   * @param grip the grip
   * @param fraction above 0 and at most 1; all parts add to 1
   */
  record Part(Grip grip, double fraction) {}

  /**
   * Returns the parts, by grip name; empty if no grip takes part.
   *
   * @param candidates planned exercises, one a grip, as they would be trained on the day
   * @param session the session they would be part of, its other exercises left out
   */
  List<Part> parts(List<PlannedExercise> candidates, DatedSession session, PlanWeek week) {
    List<Grip> grips =
        candidates.stream()
            .filter(c -> named(c.setup().grip()) && passes(c, session, week))
            .map(c -> c.setup().grip())
            .sorted(Comparator.comparing(Grip::name))
            .toList();
    double demanded = grips.stream().mapToDouble(this::demand).sum();
    List<Part> parts = new ArrayList<>();
    for (Grip grip : grips) {
      double fraction = demanded > 0 ? demand(grip) / demanded : 1.0 / grips.size();
      if (fraction > 0) {
        parts.add(new Part(grip, fraction));
      }
    }
    return parts;
  }

  private double demand(Grip grip) {
    return plan.demand().entrySet().stream()
        .filter(e -> e.getKey().name().equals(grip.name()))
        .mapToDouble(e -> e.getValue())
        .sum();
  }

  private boolean named(Grip grip) {
    boolean onlyIfNamed = grip.family() == GripFamily.SINGLE || grip.name().equals(FULL_CRIMP);
    return !onlyIfNamed || demand(grip) > 0;
  }

  private boolean passes(PlannedExercise candidate, DatedSession session, PlanWeek week) {
    return LoneExercise.breaches(candidate, session, week, plan, athlete, log).stream()
        .noneMatch(Finding::blocks);
  }

  /**
   * Splits whole sets by fraction: the largest remainders get what is left over.
   *
   * @return sets by part, in the same order; the sum is {@code sets}
   */
  static int[] apportion(int sets, List<Part> parts) {
    int[] whole = new int[parts.size()];
    List<Integer> byRemainder = new ArrayList<>();
    int given = 0;
    for (int i = 0; i < parts.size(); i++) {
      whole[i] = (int) Math.floor(sets * parts.get(i).fraction() + 1e-9);
      given += whole[i];
      byRemainder.add(i);
    }
    byRemainder.sort(
        Comparator.comparingDouble((Integer i) -> whole[i] - sets * parts.get(i).fraction()));
    for (int i = 0; given < sets; i++, given++) {
      whole[byRemainder.get(i)]++;
    }
    return whole;
  }

  /** Returns the grips a line trains or may choose from, in the order written. */
  static List<Grip> grips(Exercise exercise) {
    return exercise.target() instanceof Exercise.BestOf best
        ? best.grips()
        : List.of(((Exercise.On) exercise.target()).grip());
  }
}
