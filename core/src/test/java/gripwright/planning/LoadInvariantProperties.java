package gripwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Equipment;
import gripwright.finding.ModelPath;
import gripwright.plan.Block;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/**
 * What holds of the loads of every compiled plan: either its sessions keep it, or a finding names
 * the place. Everything is calculated again from dates, loads and seconds.
 */
class LoadInvariantProperties {

  /** Invariant 1. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void aWeeksLoadRisesNoMoreThanThePlanAllowsOrTheWeekIsNamed(@ForAll Season season) {
    SecondLook look = new SecondLook(season);
    double factor = 1 + season.plan().weeklyRise().orElse(0.1);
    boolean compared = false;
    boolean above = false;
    for (Block block : season.plan().blocks()) {
      List<Double> recent = new ArrayList<>();
      for (PlanWeek week : look.weeksOf(block)) {
        List<DatedSession> sessions = look.plan.sessionsOf(week.number());
        if (sessions.isEmpty()) {
          continue;
        }
        double load = SecondLook.loadIndex(sessions);
        List<Double> last = recent.subList(Math.max(0, recent.size() - 3), recent.size());
        double limit =
            last.stream().mapToDouble(l -> l).max().orElse(Double.POSITIVE_INFINITY) * factor;
        compared |= !last.isEmpty();
        if (load > limit + SecondLook.SLACK) {
          above = true;
          assertTrue(look.says("rule.week-load-rise", week.path()), load + " after " + last);
        }
        if (!week.eased()) {
          recent.add(load);
        }
      }
    }
    Statistics.label("above the rise").collect(above);
    Reached.reached(compared, 50);
  }

  /**
   * Invariant 2; an eased week is left out on both sides, since it is given back, and a mix whose
   * grips have steps of their own, since one may get a load while another brings the line a set.
   */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void oneVariableAtMostGetsHarderFromOneTrainedWeekToTheNext(@ForAll Season season) {
    SecondLook look = new SecondLook(season);
    boolean harder = false;
    for (Block block : season.plan().blocks()) {
      List<PlanWeek> weeks =
          look.weeksOf(block).stream()
              .filter(w -> look.trained(w) && !w.eased() && !look.past(w))
              .toList();
      for (int i = 1; i < weeks.size(); i++) {
        Map<ModelPath, DatedSession> before = firstByLine(look, weeks.get(i - 1));
        for (var entry : firstByLine(look, weeks.get(i)).entrySet()) {
          DatedSession earlier = before.get(entry.getKey());
          boolean apart =
              block.content().advances().size() > 1
                  && SecondLook.on(entry.getKey(), entry.getValue()).get(0).mix().isPresent();
          if (earlier != null && !apart) {
            Set<String> changes = harder(look, entry.getKey(), earlier, entry.getValue());
            harder |= !changes.isEmpty();
            assertTrue(changes.size() <= 1, entry.getValue().path() + ": " + changes);
          }
        }
      }
    }
    Reached.reached(harder, 20);
  }

  private static Map<ModelPath, DatedSession> firstByLine(SecondLook look, PlanWeek week) {
    Map<ModelPath, DatedSession> first = new HashMap<>();
    for (DatedSession session : look.plan.sessionsOf(week.number())) {
      session.exercises().forEach(e -> first.putIfAbsent(SecondLook.line(e), session));
    }
    return first;
  }

  /** Returns what gets harder for one grip of a line; sets are those of the line together. */
  private static Set<String> harder(
      SecondLook look, ModelPath line, DatedSession earlier, DatedSession later) {
    List<PlannedExercise> before = SecondLook.on(line, earlier);
    List<PlannedExercise> after = SecondLook.on(line, later);
    boolean news = look.news(earlier.date(), later.date());
    Set<String> most = new TreeSet<>();
    for (PlannedExercise exercise : after) {
      for (PlannedExercise other : before) {
        if (other.setup().grip().equals(exercise.setup().grip())) {
          Set<String> harder = harder(other, exercise, news);
          if (sets(after) > sets(before)) {
            harder.add("sets");
          }
          most = harder.size() > most.size() ? harder : most;
        }
      }
    }
    return most;
  }

  /** A step in kg is another share of a new maximum, by less than this, in per cent. */
  private static final double OF_ONE_STEP = 0.2;

  private static Set<String> harder(PlannedExercise earlier, PlannedExercise later, boolean news) {
    Set<String> harder = new TreeSet<>();
    if (firstHold(later) > firstHold(earlier)) {
      harder.add("hold");
    }
    if (later.setup().edge().millimetres() < earlier.setup().edge().millimetres() - 1e-9) {
      harder.add("edge");
    }
    boolean load =
        news
            ? later.percentOfMax().orElse(0) > earlier.percentOfMax().orElse(100) + OF_ONE_STEP
            : later.totalLoad().kilograms() > earlier.totalLoad().kilograms() + 1e-9;
    if (load) {
      harder.add("load");
    }
    return harder;
  }

  private static int sets(List<PlannedExercise> line) {
    return line.stream().mapToInt(e -> e.scheme().sets()).sum();
  }

  private static double firstHold(PlannedExercise exercise) {
    return exercise.scheme().holds().get(0).seconds();
  }

  /** Invariant 5, of the lower bound. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void noLoadIsAboveTheLowerBoundTimesTheLevel(@ForAll Season season) {
    SecondLook look = new SecondLook(season);
    boolean any = false;
    for (DatedSession session : look.planned()) {
      assertEquals(look.bodyMass(session.date()), session.bodyMass());
      for (PlannedExercise exercise : session.exercises()) {
        List<Scheme.Hold> holds = exercise.scheme().holds();
        for (int i = 0; i < holds.size(); i++) {
          double written = look.written(holds.get(i), exercise, session).orElseThrow();
          double most = look.advanced(written, exercise, session);
          double load = SecondLook.hold(exercise, i);
          assertTrue(load <= most + SecondLook.SLACK, exercise.path() + ": " + load + " > " + most);
        }
        Optional<Double> low =
            look.strength(session.date())
                .maximum(exercise.setup())
                .map(m -> m.load().low().kilograms());
        boolean mayExceed =
            holds.get(0).level() instanceof Level.Reserve
                || holds.get(0).level() instanceof Level.Effort;
        if (low.isPresent() && !mayExceed) {
          any = true;
          assertTrue(exercise.totalLoad().kilograms() <= low.get() + SecondLook.SLACK);
        }
      }
    }
    Reached.reached(any, 60);
  }

  /** Invariant 5, of the equipment. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void everyLoadCanBeBuiltFromTheEquipment(@ForAll Season season) {
    SecondLook look = new SecondLook(season);
    boolean lessThanBody = false;
    for (DatedSession session : look.planned()) {
      for (PlannedExercise exercise : session.exercises()) {
        assertTrue(
            season.athlete().equipment().edges().contains(exercise.setup().edge()),
            exercise.setup().toString());
        for (int i = 0; i < exercise.scheme().holds().size(); i++) {
          double added = SecondLook.hold(exercise, i) - session.bodyMass().kilograms();
          Equipment equipment = season.athlete().equipment();
          lessThanBody |= added < -SecondLook.SLACK;
          assertTrue(
              Math.abs(added) < SecondLook.SLACK
                  || (added > 0 ? equipment.added() : equipment.assist())
                      .map(s -> built(s, Math.abs(added)))
                      .orElse(false),
              added + " kg with " + equipment);
        }
      }
    }
    Reached.reached(lessThanBody, 40);
  }

  private static boolean built(Equipment.Steps steps, double kilograms) {
    double count = kilograms / steps.step().kilograms();
    return Math.abs(count - Math.rint(count)) < SecondLook.SLACK
        && kilograms <= steps.limit().kilograms() + SecondLook.SLACK;
  }

  /** Invariant 6. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void anEasedWeekIsLowerInTimeLoadAndSets(@ForAll Season season) {
    SecondLook look = new SecondLook(season);
    boolean any = false;
    for (DatedSession eased : look.planned().stream().filter(DatedSession::eased).toList()) {
      Optional<DatedSession> full =
          look.planned().stream()
              .filter(s -> s.block().equals(eased.block()) && s.name().equals(eased.name()))
              .filter(s -> s.week() == look.lastFullWeekBefore(eased))
              .reduce((one, later) -> later);
      for (PlannedExercise exercise : eased.exercises()) {
        ModelPath line = SecondLook.line(exercise);
        List<PlannedExercise> before = full.map(f -> SecondLook.on(line, f)).orElseGet(List::of);
        if (before.isEmpty()) {
          continue;
        }
        any = true;
        List<PlannedExercise> now = SecondLook.on(line, eased);
        assertTrue(SecondLook.seconds(now) < SecondLook.seconds(before), line.toString());
        assertTrue(sets(now) < sets(before) || (sets(now) == 1 && sets(before) == 1));
        if (!look.news(full.orElseThrow().date(), eased.date())) {
          double most = before.stream().mapToDouble(e -> e.totalLoad().kilograms()).max().orElse(0);
          assertTrue(exercise.totalLoad().kilograms() <= most + SecondLook.SLACK, line.toString());
          assertTrue(
              now.stream().mapToDouble(PlannedExercise::loadIndex).sum()
                  < before.stream().mapToDouble(PlannedExercise::loadIndex).sum(),
              line.toString());
        }
      }
    }
    Reached.reached(any, 20);
  }
}
