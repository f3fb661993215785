package gripwright.rule.view;

import gripwright.athlete.Injury;
import gripwright.grip.FingerSet;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.history.LogTimeline;
import gripwright.log.GrowthPain;
import gripwright.log.LogEntry;
import gripwright.protocol.Hardness;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Injuries and pain of the fingers, and their work since they returned to training. */
final class FingerHistory {

  /** How many months of the log before a plan are read. */
  private static final int MONTHS_BACK = 6;

  private final LogTimeline timeline;
  private final List<Injury> injuries;

  private final List<FingerReturn> cleared = new ArrayList<>();
  private final PainHistory pain;
  private final GrowthPain growthPain;

  FingerHistory(LogTimeline timeline) {
    this.timeline = timeline;
    injuries = timeline.athlete().injuries();
    growthPain = GrowthPain.of(timeline.athlete(), timeline.log());
    List<Injury> notOfSkin =
        injuries.stream().filter(injury -> injury.structure() != Structure.SKIN).toList();
    for (Injury injury : notOfSkin) {
      FingerSet finger = FingerSet.of(injury.finger());
      injury.cleared().ifPresent(on -> cleared.add(new FingerReturn(finger, hands(injury), on)));
    }
    pain = new PainHistory(timeline.pains(), notOfSkin);
  }

  private static Hands hands(Injury injury) {
    return injury.side().map(s -> s == Side.LEFT ? Hands.LEFT : Hands.RIGHT).orElse(Hands.BOTH);
  }

  /** Records an exercise; the methods below need all exercises to be recorded. */
  void record(ExerciseView exercise) {
    if (!Double.isNaN(exercise.level)) {
      note(exercise, exercise.session.date, exercise.level);
    }
  }

  /**
   * Records the loads logged before the plan for the setup of an exercise, as shares of the maximum
   * that the exercise is planned with.
   */
  void recordLogged(ExerciseView exercise) {
    LocalDate from = timeline.plan().from();
    double maximum = exercise.maximum();
    if ((cleared.isEmpty() && !pain.hasReturns()) || maximum <= 0) {
      return;
    }
    for (LogEntry.Trained line : timeline.log().of(LogEntry.Trained.class)) {
      exercise.plan().evaluation.take(1);
      if (line.date().isBefore(from) && !line.date().isBefore(from.minusMonths(MONTHS_BACK))) {
        line.done().stream()
            .filter(done -> done.setup().equals(exercise.setup))
            .flatMap(done -> done.load().stream())
            .forEach(load -> note(exercise, line.date(), load.kilograms() / maximum));
      }
    }
  }

  private void note(ExerciseView exercise, LocalDate day, double level) {
    exercise.plan().evaluation.take(cleared.size());
    cleared.stream()
        .filter(back -> back.isOf(exercise))
        .forEach(back -> back.note(day, week(day), level));
    pain.note(exercise, day, week(day), level);
  }

  private long week(LocalDate day) {
    return Math.floorDiv(ChronoUnit.DAYS.between(timeline.plan().from(), day), 7L);
  }

  boolean usesOpenInjury(ExerciseView exercise) {
    exercise.plan().evaluation.take(injuries.size());
    for (Injury injury : injuries) {
      if (injury.openOn(exercise.session.date) && uses(exercise, injury)) {
        return true;
      }
    }
    return false;
  }

  boolean usesPainfulFinger(ExerciseView exercise) {
    return pain.stops(exercise);
  }

  /** Returns whether pain in a finger in use rules out rehabilitation on the day. */
  boolean hurtsTooMuch(ExerciseView exercise) {
    return pain.isTooMuch(exercise);
  }

  /** Returns whether a growing joint in use was painful and its stop has not ended. */
  boolean usesGrowingJointInPain(ExerciseView exercise) {
    exercise.plan().evaluation.take(growthPain.size());
    return growthPain.stops(exercise.fingers(), exercise.handsAtWork(), exercise.session.date);
  }

  /** Returns the time since a finger in use was last cleared, in seconds; NaN if none was. */
  double sinceClearance(ExerciseView exercise) {
    return since(lastClearance(exercise), exercise);
  }

  /** Returns the time since the last stop for pain of a finger in use ended, in seconds, or NaN. */
  double sincePain(ExerciseView exercise) {
    return since(pain.lastReturn(exercise), exercise);
  }

  private static double since(Optional<FingerReturn> back, ExerciseView exercise) {
    return back.map(each -> ChronoUnit.DAYS.between(each.on, exercise.session.date))
        .map(days -> Unit.DAY.toBase((double) days))
        .orElse(Double.NaN);
  }

  /**
   * Returns the highest level of the most recent earlier week, since its clearance, in which the
   * last cleared finger was used; NaN in the first such week.
   */
  double levelBefore(ExerciseView exercise) {
    return levelBefore(lastClearance(exercise), exercise);
  }

  /** Returns the same for the finger whose stop for pain ended last. */
  double levelSincePain(ExerciseView exercise) {
    return levelBefore(pain.lastReturn(exercise), exercise);
  }

  private double levelBefore(Optional<FingerReturn> back, ExerciseView exercise) {
    return back.map(each -> each.before(week(exercise.session.date))).orElse(Double.NaN);
  }

  private Optional<FingerReturn> lastClearance(ExerciseView exercise) {
    exercise.plan().evaluation.take(cleared.size());
    return cleared.stream()
        .filter(back -> !exercise.session.date.isBefore(back.on) && back.isOf(exercise))
        .max(Comparator.comparing(back -> back.on));
  }

  /**
   * Returns how often hard work of a finger was logged while its injury was not cleared. Tests
   * count from half a year before the plan to its end. Exercises with an effort of 8 or more and
   * hard climbing count only before the plan, because its own days are checked as such. The day of
   * the injury does not count, because that work may have caused it.
   */
  double loggedOnInjury() {
    LocalDate from = timeline.plan().from();
    LocalDate first = from.minusMonths(MONTHS_BACK);
    return timeline.log().entries().stream()
        .filter(e -> !e.date().isBefore(first) && !e.date().isAfter(timeline.plan().to()))
        .filter(
            entry ->
                injuries.stream()
                    .filter(i -> i.openOn(entry.date()) && entry.date().isAfter(i.from()))
                    .anyMatch(
                        injury -> entry.accept(new HardOn(injury, entry.date().isBefore(from)))))
        .count();
  }

  /** Decides whether a log entry is hard work of an injured finger. */
  private record HardOn(Injury injury, boolean beforePlan) implements LogEntry.Visitor<Boolean> {
    @Override
    public Boolean tested(LogEntry.Tested entry) {
      return uses(entry.test().setup(), injury);
    }

    @Override
    public Boolean trained(LogEntry.Trained entry) {
      return beforePlan
          && entry.done().stream()
              .filter(done -> done.effort().orElse(0) >= Hardness.EFFORT)
              .anyMatch(done -> uses(done.setup(), injury));
    }

    @Override
    public Boolean climbed(LogEntry.Climbed entry) {
      return beforePlan && (entry.hard() || entry.effort().orElse(0) >= Hardness.EFFORT);
    }

    @Override
    public Boolean skipped(LogEntry.Skipped entry) {
      return false;
    }

    @Override
    public Boolean bodyMass(LogEntry.BodyMass entry) {
      return false;
    }

    @Override
    public Boolean pain(LogEntry.Pain entry) {
      return false;
    }
  }

  /** Work with both hands uses either; work with one hand spares the other. */
  private static boolean uses(ExerciseView exercise, Injury injury) {
    return uses(exercise.setup, injury);
  }

  private static boolean uses(Setup setup, Injury injury) {
    return setup.grip().fingers().has(injury.finger())
        && injury.side().map(setup.hands().sides()::contains).orElse(true);
  }
}
