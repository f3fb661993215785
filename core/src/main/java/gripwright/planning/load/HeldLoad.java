package gripwright.planning.load;

import gripwright.finding.ModelPath;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.Cause;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Derivation;
import gripwright.schedule.Happened;
import gripwright.schedule.LoadLink;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * The load of an exercise when it was last trained, and whether a log limited it.
 *
 * @param date the day
 * @param week its week of the plan, from 1
 * @param edge the edge used
 * @param load load used
 * @param most greatest load that was allowed, in kg, at least the load: the equipment may build
 *     less
 * @param byLog true if the plan had a limit from the log in that week
 */
public record HeldLoad(
    LocalDate date, int week, Length edge, Load load, double most, boolean byLog) {

  /** A load this much below the planned one is lighter, whatever the limit was; in kg. */
  private static final double TOLERANCE = 1e-9;

  /**
   * Returns the last load of an exercise.
   *
   * @param soFar sessions, week after week
   * @param before the first day that is left out
   * @param same selects the exercises
   * @param line the line of the plan that applies in weeks that have it
   */
  public static Optional<HeldLoad> last(
      List<DatedSession> soFar,
      LocalDate before,
      Predicate<PlannedExercise> same,
      Optional<ModelPath> line) {
    Optional<HeldLoad> found = Optional.empty();
    boolean byLog = false;
    boolean onLine = false;
    for (int i = soFar.size() - 1; i >= 0; i--) {
      DatedSession session = soFar.get(i);
      if (found.isPresent() && session.week() != found.get().week()) {
        break;
      }
      if (!session.date().isBefore(before)) {
        continue;
      }
      DatedSession planned = session.happened().flatMap(Happened::planned).orElse(session);
      byLog |= planned.exercises().stream().filter(same).anyMatch(e -> limit(e).isPresent());
      for (PlannedExercise exercise : session.exercises()) {
        if (!same.test(exercise)) {
          continue;
        }
        boolean isOnLine = line.filter(line(exercise)::equals).isPresent();
        HeldLoad held = of(session, planned, exercise);
        boolean later = found.isEmpty() || held.date().isAfter(found.get().date());
        boolean greater =
            found.isPresent()
                && held.date().equals(found.get().date())
                && held.most() > found.get().most();
        if ((isOnLine && !onLine) || (isOnLine == onLine && (later || greater))) {
          found = Optional.of(held);
          onLine = isOnLine;
        }
      }
    }
    boolean limited = byLog;
    return found.map(h -> new HeldLoad(h.date(), h.week(), h.edge(), h.load(), h.most(), limited));
  }

  private static HeldLoad of(DatedSession session, DatedSession planned, PlannedExercise trained) {
    double load = trained.totalLoad().kilograms();
    double most =
        planned.exercises().stream()
            .filter(e -> line(e).equals(line(trained)))
            .filter(e -> !e.alternating() || e.setup().hands() == trained.setup().hands())
            .filter(e -> load >= e.totalLoad().kilograms() - TOLERANCE)
            .map(HeldLoad::limit)
            .flatMapToDouble(OptionalDouble::stream)
            .max()
            .orElse(load);
    return new HeldLoad(
        session.date(),
        session.week(),
        trained.setup().edge(),
        trained.totalLoad(),
        Math.max(load, most),
        false);
  }

  /** Returns the line of the plan that an exercise belongs to, in any week. */
  static ModelPath line(PlannedExercise exercise) {
    return line(exercise.path());
  }

  /** Returns a place without its week and day. */
  public static ModelPath line(ModelPath place) {
    return place.without("week").without("date");
  }

  /** Returns the limit from the log in a derivation, in kg. */
  private static OptionalDouble limit(PlannedExercise exercise) {
    return exercise.why().stream()
        .filter(LoadLink.Limited.class::isInstance)
        .mapToDouble(Derivation::value)
        .max();
  }

  /** Returns the first day of its week of a plan. */
  public LocalDate monday(LocalDate planFrom) {
    return planFrom.plusDays(7L * (week - 1));
  }

  /**
   * Returns the greatest load on a later day.
   *
   * @param rise greatest rise in a week, as a share
   * @param sameWeek true if the day is in the same week
   * @param eased true if that week is eased
   */
  public Dose.Ceiling next(double rise, boolean sameWeek, boolean eased) {
    if (sameWeek || eased) {
      return new Dose.Ceiling(Load.ofKilograms(most), new Cause.NoMoreThan(load, date, eased));
    }
    return new Dose.Ceiling(
        Load.ofKilograms(most * (1 + rise)), new Cause.LoadReturns(rise, load, date));
  }
}
