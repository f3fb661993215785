package gripwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Equipment;
import gripwright.finding.ModelPath;
import gripwright.hand.Hands;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Happened;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.ProgressLink;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/**
 * What holds of the loads of every compiled plan: either its sessions keep it, or a finding names
 * the place. Everything is calculated again from dates, loads and seconds.
 */
class LoadInvariantProperties {

  /** What one smallest step of one exercise may add to a week. */
  private static final double LARGEST_STEP = 1.35;

  /**
   * Invariant 1: within a block, over the highest of the last three weeks of the athlete that were
   * whole; more than a smallest step of one exercise is named, and of light ones of each.
   */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void aWeeksLoadRisesNoMoreThanThePlanAllowsOrTheWeekIsNamed(@ForAll GeneratedSeason season) {
    SecondLook look = new SecondLook(season);
    double factor = 1 + season.plan().weeklyRise().orElse(0.1);
    boolean compared = false;
    boolean above = false;
    List<PlanWeek> recent = new ArrayList<>();
    for (PlanWeek week : look.plan.weeks()) {
      if (!look.trained(week)) {
        continue;
      }
      List<PlanWeek> last = recent.subList(Math.max(0, recent.size() - 3), recent.size());
      if (last.stream().anyMatch(w -> w.block().equals(week.block()))) {
        double load = SecondLook.loadIndex(look.plan.sessionsOf(week.number()));
        double most = last.stream().mapToDouble(w -> fullLoad(look, w)).max().orElseThrow();
        compared = true;
        double heavy = load - lightRise(look, last, week);
        boolean tested = testedBetween(season, last.get(0), week);
        // after a test, levels are compared: loads may follow it by a step on top of another
        if (heavy > most * LARGEST_STEP * (tested ? LARGEST_STEP : 1) + SecondLook.SLACK
            || (!tested
                && load > most * factor + SecondLook.SLACK
                && harderLines(look, last, week) > 1)) {
          above = true;
          assertTrue(look.says("rule.week-load-rise", week.path()), load + " after " + most);
        }
      }
      if (isWhole(season, look, week)) {
        recent.add(week);
      }
    }
    Statistics.label("above the rise").collect(above);
    Reached.reached(compared, 40);
  }

  private static boolean testedBetween(GeneratedSeason season, PlanWeek first, PlanWeek last) {
    return season.log().of(LogEntry.Tested.class).stream()
        .anyMatch(t -> !t.date().isBefore(first.from()) && !t.date().isAfter(last.to()));
  }

  /**
   * Returns a week's load as if nothing returned from time off, and as if everything that was done
   * had been done at least as planned.
   */
  private static double fullLoad(SecondLook look, PlanWeek week) {
    return look.plan.sessionsOf(week.number()).stream()
        .mapToDouble(LoadInvariantProperties::fullLoad)
        .sum();
  }

  private static double fullLoad(DatedSession session) {
    List<PlannedExercise> left =
        new ArrayList<>(
            session.happened().flatMap(Happened::planned).stream()
                .flatMap(planned -> planned.exercises().stream())
                .toList());
    double sum = 0;
    for (PlannedExercise done : session.exercises()) {
      double load = fullLoad(done);
      for (PlannedExercise planned : List.copyOf(left)) {
        if (planned.protocol().equals(done.protocol())
            && planned.setup().grip().equals(done.setup().grip())) {
          load = Math.max(load, fullLoad(planned));
          left.remove(planned);
        }
      }
      sum += load;
    }
    return sum + left.stream().mapToDouble(LoadInvariantProperties::fullLoad).sum();
  }

  private static double fullLoad(PlannedExercise exercise) {
    return exercise.loadIndex()
        / exercise.why().stream()
            .filter(ProgressLink.Returns.class::isInstance)
            .mapToDouble(link -> ((ProgressLink.Returns) link).share())
            .findFirst()
            .orElse(1);
  }

  /** Tells whether an exercise is below 40 % of the maximum, or light where none is known. */
  private static boolean isLight(PlannedExercise exercise) {
    double share =
        exercise
            .maximum()
            .map(max -> exercise.totalLoad().kilograms() / max.used().kilograms())
            .orElse(0.0);
    return !exercise.hard() && Math.max(share, exercise.percentOfMax().orElse(0) / 100) < 0.4;
  }

  private static String line(PlannedExercise e) {
    return e.protocol() + " " + e.setup().grip().name() + " " + e.setup().lifting();
  }

  /** Returns by how much the light exercises of a week are above those of the weeks before. */
  private static double lightRise(SecondLook look, List<PlanWeek> before, PlanWeek week) {
    Map<String, List<PlannedExercise>> lines =
        exercises(look, week).collect(Collectors.groupingBy(LoadInvariantProperties::line));
    double rise = 0;
    for (Map.Entry<String, List<PlannedExercise>> line : lines.entrySet()) {
      if (line.getValue().stream().allMatch(LoadInvariantProperties::isLight)) {
        double now = line.getValue().stream().mapToDouble(e -> fullLoad(e)).sum();
        double most =
            before.stream()
                .mapToDouble(
                    w ->
                        exercises(look, w)
                            .filter(e -> line(e).equals(line.getKey()))
                            .mapToDouble(e -> fullLoad(e))
                            .sum())
                .max()
                .orElse(0);
        rise += Math.max(0, now - most);
      }
    }
    return rise;
  }

  /**
   * Counts the kinds of exercise of a week that are harder than all on their grip before, light
   * ones left out.
   */
  private static long harderLines(SecondLook look, List<PlanWeek> before, PlanWeek week) {
    List<PlannedExercise> earlier = before.stream().flatMap(w -> exercises(look, w)).toList();
    return exercises(look, week)
        .filter(e -> !isLight(e))
        .filter(
            e -> {
              List<PlannedExercise> onGrip =
                  earlier.stream()
                      .filter(b -> b.setup().grip().equals(e.setup().grip()))
                      .filter(b -> b.setup().lifting() == e.setup().lifting())
                      .toList();
              return onGrip.stream().allMatch(b -> e.scheme().sets() > b.scheme().sets())
                  || onGrip.stream().allMatch(b -> firstHold(e) > firstHold(b))
                  || onGrip.stream()
                      .allMatch(
                          b -> e.totalLoad().kilograms() > b.totalLoad().kilograms() / 0.8 + 1e-6);
            })
        .map(LoadInvariantProperties::line)
        .distinct()
        .count();
  }

  private static Stream<PlannedExercise> exercises(SecondLook look, PlanWeek week) {
    return look.plan.sessionsOf(week.number()).stream().flatMap(s -> s.exercises().stream());
  }

  /** Not eased, nothing missed, and not cut short by time away. */
  private static boolean isWhole(GeneratedSeason season, SecondLook look, PlanWeek week) {
    int planned =
        season.plan().blocks().stream()
            .filter(b -> b.name().equals(week.block()))
            .flatMap(b -> b.contentFor(season.athlete().name()).sessions().stream())
            .mapToInt(SessionPlan::perWeek)
            .sum();
    boolean away = week.from().datesUntil(week.to().plusDays(1)).anyMatch(season.athlete()::isAway);
    return !week.eased()
        && look.plan.schedule().missed().stream()
            .noneMatch(m -> m.planned().week() == week.number())
        && look.plan.schedule().notMadeUp().stream().noneMatch(n -> n.week() == week.number())
        && !(away && look.plan.sessionsOf(week.number()).size() < planned);
  }

  /**
   * Invariant 2; an eased week is left out on both sides, since it is given back, and a mix whose
   * grips have steps of their own, since one may get a load while another brings the line a set.
   */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void oneVariableAtMostGetsHarderFromOneTrainedWeekToTheNext(@ForAll GeneratedSeason season) {
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
  void noLoadIsAboveTheLowerBoundTimesTheLevel(@ForAll GeneratedSeason season) {
    SecondLook look = new SecondLook(season);
    boolean any = false;
    for (DatedSession session : look.planned()) {
      assertEquals(look.bodyMass(session.date()), session.bodyMass());
      for (PlannedExercise exercise : session.exercises()) {
        List<Scheme.Hold> holds = exercise.scheme().holds();
        for (int i = 0; i < holds.size(); i++) {
          Optional<Double> known = look.written(holds.get(i), exercise, session);
          // without a test nothing but what is known to be light is planned
          double written = known.orElseGet(() -> mostKnownLight(exercise, session));
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

  /** The greatest shares of the body mass that are known to be light; our own numbers. */
  private static double mostKnownLight(PlannedExercise exercise, DatedSession session) {
    boolean twoHands = exercise.setup().hands() == Hands.BOTH && !exercise.setup().lifting();
    return (twoHands ? 0.8 : 0.25) * session.bodyMass().kilograms();
  }

  /** Invariant 5, of the equipment. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void everyLoadCanBeBuiltFromTheEquipment(@ForAll GeneratedSeason season) {
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

  /** Invariant 6; a warm-up stays as it is. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void anEasedWeekIsLowerInTimeLoadAndSets(@ForAll GeneratedSeason season) {
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
        if (exercise.warmUp()) {
          assertEquals(exercise.scheme(), before.get(0).scheme(), line.toString());
          continue;
        }
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
