package gripwright.export.text;

import gripwright.change.BlockChange;
import gripwright.change.PlanChange;
import gripwright.change.SessionChange;
import gripwright.change.SessionChange.Measure;
import gripwright.grip.Setup;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Changes that a coach sees as one: the same change to one exercise or session on several days.
 *
 * @param changes by date, at least one, all of one kind
 */
record ChangeGroup(List<PlanChange> changes) {

  /** Copies the list. */
  ChangeGroup {
    changes = List.copyOf(changes);
  }

  /** Returns changes in groups, in order of the first change of each. */
  static List<ChangeGroup> of(List<PlanChange> changes) {
    Map<List<Object>, List<PlanChange>> groups = new LinkedHashMap<>();
    for (PlanChange change : changes) {
      groups.computeIfAbsent(key(change), k -> new ArrayList<>()).add(change);
    }
    return groups.values().stream().map(ChangeGroup::new).toList();
  }

  PlanChange first() {
    return changes.get(0);
  }

  PlanChange last() {
    return changes.get(changes.size() - 1);
  }

  LocalDate date() {
    return first().date();
  }

  /** Returns whether an exercise is less work than before. */
  static boolean isLower(SessionChange.ExerciseChanged change) {
    return change.after().loadIndex() <= change.before().loadIndex();
  }

  private static List<Object> key(PlanChange change) {
    return change.accept(new OfPlan());
  }

  private static final class OfPlan implements PlanChange.Visitor<List<Object>> {
    @Override
    public List<Object> planMoved(PlanChange.PlanMoved c) {
      return List.of(c.kind(), c);
    }

    @Override
    public List<Object> goalChanged(PlanChange.GoalChanged c) {
      return List.of(c.kind(), c);
    }

    @Override
    public List<Object> gripStarts(PlanChange.GripStarts c) {
      return List.of(c.kind(), c);
    }

    @Override
    public List<Object> retestChanged(PlanChange.RetestChanged c) {
      boolean moved = !c.before().isEmpty() && !c.after().isEmpty();
      return List.of(
          c.kind(), moved ? c : "", c.before().isEmpty(), tests(c.before()), tests(c.after()));
    }

    @Override
    public List<Object> waiverAdded(PlanChange.WaiverAdded c) {
      return List.of(c.kind(), c);
    }

    @Override
    public List<Object> waiverDropped(PlanChange.WaiverDropped c) {
      return List.of(c.kind(), c);
    }

    @Override
    public List<Object> partChanged(PlanChange.PartChanged c) {
      return List.of(c.kind(), c);
    }

    @Override
    public List<Object> block(BlockChange change) {
      return List.of(change.kind(), change);
    }

    @Override
    public List<Object> session(SessionChange change) {
      return change.accept(new OfSession());
    }
  }

  private static final class OfSession implements SessionChange.Visitor<List<Object>> {
    @Override
    public List<Object> sessionAdded(SessionChange.SessionAdded c) {
      return List.of(c.kind(), c.session().name(), exercises(c.session()));
    }

    @Override
    public List<Object> sessionDropped(SessionChange.SessionDropped c) {
      return List.of(c.kind(), c.session().name(), exercises(c.session()));
    }

    @Override
    public List<Object> sessionMoved(SessionChange.SessionMoved c) {
      return List.of(
          c.kind(),
          c.after().name(),
          c.before().date().getDayOfWeek(),
          c.before().time(),
          c.after().date().getDayOfWeek(),
          c.after().time(),
          c.before().place(),
          c.after().place());
    }

    @Override
    public List<Object> sessionTimed(SessionChange.SessionTimed c) {
      return List.of(c.kind(), c.after().name(), c.before().minutes(), c.after().minutes());
    }

    @Override
    public List<Object> exerciseAdded(SessionChange.ExerciseAdded c) {
      return List.of(c.kind(), c.session().name(), about(c.exercise()));
    }

    @Override
    public List<Object> exerciseDropped(SessionChange.ExerciseDropped c) {
      return List.of(c.kind(), c.session().name(), about(c.exercise()));
    }

    @Override
    public List<Object> exerciseChanged(SessionChange.ExerciseChanged c) {
      return c.measure() == SessionChange.Measure.LOAD
          ? List.of(c.kind(), c.session().name(), about(c.after()), c.measure(), isLower(c))
          : List.of(
              c.kind(),
              c.session().name(),
              about(c.after()),
              c.measure(),
              c.measure() == SessionChange.Measure.LEVEL && c.session().happened().isPresent(),
              measured(c.before(), c.measure()),
              measured(c.after(), c.measure()));
    }
  }

  private static List<Object> about(PlannedExercise exercise) {
    return List.of(
        exercise.protocol(),
        exercise.setup().grip().name(),
        exercise.setup().hands(),
        exercise.setup().lifting());
  }

  /** Returns the value by which two exercises are compared for one measure. */
  private static Object measured(PlannedExercise exercise, Measure measure) {
    Scheme scheme = exercise.scheme();
    Setup setup = exercise.setup();
    return switch (measure) {
      case PROTOCOL -> exercise.protocol();
      case GRIP -> setup.grip().name();
      case EDGE -> setup.edge();
      case HANDS -> List.of(setup.hands(), setup.lifting());
      case SETS -> scheme.sets();
      case REPETITIONS -> scheme.repetitionsPerSet();
      case HOLD -> scheme.holds().get(0).time();
      case REST -> scheme.restBetweenHolds();
      case SET_REST -> scheme.restBetweenSets();
      case LOAD -> exercise.totalLoad();
      case LEVEL -> exercise.percentOfMax().isPresent() ? level(exercise) : scheme.levels();
      case REHABILITATION -> exercise.rehabilitation();
      case ORDER -> exercise.order();
      case HARDNESS -> exercise.hard();
      case BOUND -> List.of(scheme.setsUpTo(), scheme.written());
      case WARM_UP -> exercise.warmUp();
      case COURSE -> "";
    };
  }

  /** Returns the level in thousandths of a per cent: closer levels print the same. */
  private static long level(PlannedExercise exercise) {
    return Math.round(exercise.percentOfMax().orElse(0) * 1000);
  }

  private static List<List<Object>> exercises(DatedSession session) {
    return session.exercises().stream()
        .map(PlannedExercise::setup)
        .map(
            setup ->
                List.<Object>of(setup.grip().name(), setup.edge(), setup.hands(), setup.lifting()))
        .toList();
  }

  private static List<List<Object>> tests(List<DatedRetest> tests) {
    return tests.stream().map(t -> List.<Object>of(t.setups(), t.hold())).toList();
  }

  /** Returns the loads of a group of load changes by date: those before, or those after. */
  List<Load> loads(boolean before) {
    return changes.stream()
        .map(SessionChange.ExerciseChanged.class::cast)
        .map(c -> (before ? c.before() : c.after()).totalLoad())
        .toList();
  }
}
