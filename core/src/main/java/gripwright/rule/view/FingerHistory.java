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

/** What fingers have been through: injuries, pain, and what they did since they came back. */
final class FingerHistory {

  /** How long before a plan what was logged still matters. */
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

  /** Notes an exercise; to be called for every exercise before the questions below are asked. */
  void record(ExerciseView exercise) {
    if (!Double.isNaN(exercise.level)) {
      note(exercise, exercise.session.date, exercise.level);
    }
  }

  /**
   * Notes what was logged before the plan of the setup of an exercise: its load, as a share of the
   * maximum that the exercise is planned with.
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

  /** Tells whether a finger in use hurts too much for rehabilitation on the day. */
  boolean hurtsTooMuch(ExerciseView exercise) {
    return pain.isTooMuch(exercise);
  }

  /** Tells whether a joint in use that still grows hurt, and nothing has ended the stop since. */
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
   * Returns the greatest level of the nearest earlier week in which the finger that was cleared
   * last was used since; NaN in the first such week.
   */
  double levelBefore(ExerciseView exercise) {
    return levelBefore(lastClearance(exercise), exercise);
  }

  /** Returns the same of the finger whose stop for pain ended last. */
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
   * Returns how often a finger was worked hard while its injury was not cleared, as logged: tests
   * from half a year before the plan to its end; before the plan, exercises with an effort of 8 or
   * more and hard climbing too. In the plan these are what its own days say. What was done on the
   * day of the injury is how it happened.
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

  /** Tells whether a line of a log has hard work of an injured finger. */
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

  /** Two hands hang together; one hand alone spares the other. */
  private static boolean uses(ExerciseView exercise, Injury injury) {
    return uses(exercise.setup, injury);
  }

  private static boolean uses(Setup setup, Injury injury) {
    return setup.grip().fingers().has(injury.finger())
        && injury.side().map(setup.hands().sides()::contains).orElse(true);
  }
}
