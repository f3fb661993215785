package gripwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.GripFamily;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;

/**
 * What holds of gaps, grips and fingers in every compiled plan: either its sessions keep it, or a
 * finding names the place.
 */
class GuardInvariantProperties {

  /** What loads fingers hard on a day. */
  private record HardDay(LocalDate date, int fingers, ModelPath path, boolean planned) {}

  /** Invariant 3. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void hardWorkOnSharedFingersKeepsItsGapOrThePlaceIsNamed(@ForAll GeneratedSeason season) {
    SecondLook look = new SecondLook(season);
    List<HardDay> hard = hardDays(look);
    for (int i = 0; i < hard.size(); i++) {
      for (int j = i + 1; j < hard.size(); j++) {
        HardDay one = hard.get(i);
        HardDay other = hard.get(j);
        boolean near = Math.abs(ChronoUnit.DAYS.between(one.date(), other.date())) < 2;
        if (near && (one.fingers() & other.fingers()) != 0 && (one.planned() || other.planned())) {
          assertTrue(
              look.says("rule.hard-days-apart", one.path())
                  || look.says("rule.hard-days-apart", other.path()),
              one + " and " + other);
        }
      }
    }
    boolean repeated = false;
    Map<String, LocalDate> last = new HashMap<>();
    for (DatedSession session : look.plan.sessions()) {
      LocalDate before = last.put(session.name(), session.date());
      if (before != null && session.happened().isEmpty()) {
        repeated = true;
        long hours = 24 * ChronoUnit.DAYS.between(before, session.date());
        assertTrue(hours >= gap(look, session), session.path().toString());
      }
    }
    Reached.reached(repeated && hard.size() > 1, 40);
  }

  private static long gap(SecondLook look, DatedSession session) {
    return look.block(session).content().sessions().stream()
        .filter(s -> s.name().equals(session.name()))
        .map(SessionPlan::gap)
        .findFirst()
        .orElseThrow()
        .toHours();
  }

  private static List<HardDay> hardDays(SecondLook look) {
    List<HardDay> hard = new ArrayList<>();
    for (DatedSession session : look.plan.sessions()) {
      int fingers = 0;
      for (PlannedExercise exercise : session.exercises()) {
        boolean planned = session.happened().isEmpty();
        assertTrue(
            !planned || exercise.hard() || !mustBeHard(exercise, look.season),
            exercise.path().toString());
        fingers |= exercise.hard() ? exercise.setup().grip().fingers().bits() : 0;
      }
      hard.add(new HardDay(session.date(), fingers, session.path(), session.happened().isEmpty()));
    }
    for (DatedRetest retest : look.plan.retests()) {
      int fingers = 0;
      for (Setup setup : retest.setups()) {
        fingers |= setup.grip().fingers().bits();
      }
      hard.add(new HardDay(retest.date(), fingers, retest.path(), true));
    }
    for (PlanWeek week : look.plan.weeks()) {
      for (LocalDate day = week.from(); !day.isAfter(week.to()); day = day.plusDays(1)) {
        if (climbsHard(look.season, day)) {
          ModelPath path = week.path().then("date", day.toString());
          hard.add(new HardDay(day, 15, path, false));
        }
      }
    }
    return hard;
  }

  private static boolean mustBeHard(PlannedExercise exercise, GeneratedSeason season) {
    boolean written =
        exercise.scheme().holds().stream()
            .map(Scheme.Hold::level)
            .anyMatch(
                l ->
                    (l instanceof Level.Reserve reserve && reserve.time().toSeconds() <= 3)
                        || (l instanceof Level.Effort effort && effort.outOfTen() >= 8));
    return written
        || (exercise.maximum().isEmpty() && !mayBeLight(exercise, season))
        || exercise.maximum().filter(m -> isAtFourFifths(exercise, m)).isPresent()
        || exercise.endReserve().map(r -> r.mean() < 0.15).orElse(false);
  }

  private static boolean isAtFourFifths(PlannedExercise exercise, PlannedExercise.Maximum maximum) {
    double limit = 0.8 * maximum.used().kilograms() + SecondLook.SLACK;
    return exercise.totalLoad().kilograms() >= limit;
  }

  /**
   * Weighed a tenth more at most, four fifths of body mass are the most that is known to be light.
   */
  private static boolean mayBeLight(PlannedExercise exercise, GeneratedSeason season) {
    return exercise.totalLoad().kilograms() <= 0.88 * season.athlete().bodyMass().kilograms();
  }

  /** Invariant 13. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void underSixteenNothingHardUnknownOrTestedIsPlannedWithoutAnError(
      @ForAll GeneratedSeason season) {
    SecondLook look = new SecondLook(season);
    boolean any = false;
    for (DatedSession session : look.planned()) {
      for (PlannedExercise exercise : session.exercises()) {
        if (isUnder16(season, session.date())) {
          any = true;
          double level = SecondLook.level(exercise).orElse(1.0);
          boolean unknown = exercise.maximum().isEmpty() && !mayBeLight(exercise, season);
          ModelPath path = exercise.path();
          if (level > 0.6 + SecondLook.SLACK || unknown) {
            assertTrue(look.refuses("rule.youth-level", path), path + ": " + level);
          } else if (exercise.hard()) {
            assertTrue(
                look.refuses("rule.youth-level", path)
                    || look.refuses("rule.youth-hard", path)
                    || look.refuses("rule.youth-failure", path),
                path.toString());
          }
        }
      }
    }
    for (DatedRetest retest : look.plan.retests()) {
      boolean logged =
          season.log().tests().stream().anyMatch(t -> !t.date().isBefore(season.plan().from()));
      if (isUnder16(season, retest.date()) && !logged) {
        any = true;
        assertTrue(look.refuses("rule.youth-test", retest.path()), retest.path().toString());
      }
    }
    Reached.reached(any, 8);
  }

  /** A bound hides that a hold fails, so a rule must say it where failing is dangerous. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void aHoldToFailureIsSaidWhereItIsDangerous(@ForAll GeneratedSeason season) {
    SecondLook look = new SecondLook(season);
    boolean any = false;
    for (DatedSession session : look.planned()) {
      for (PlannedExercise exercise : session.exercises()) {
        if (exercise.isToFailure()) {
          for (String rule : againstFailure(season, exercise, session.date())) {
            any = true;
            assertTrue(look.says("rule." + rule, exercise.path()), rule + " " + exercise.path());
          }
        }
      }
    }
    Reached.reached(any, 5);
  }

  private static List<String> againstFailure(
      GeneratedSeason season, PlannedExercise exercise, LocalDate day) {
    if (isUnder16(season, day)) {
      return List.of("youth-failure");
    }
    if (exercise.rehabilitation().isPresent()) {
      return List.of("rehabilitation-failure");
    }
    List<String> rules = new ArrayList<>();
    if (exercise.setup().grip().family() == GripFamily.SINGLE) {
      rules.add("single-finger-failure");
    }
    if (exercise.setup().grip() == StandardGrips.FULL_CRIMP) {
      rules.add("full-crimp-failure");
    }
    if (GatedGrips.months(season.athlete().trained(), season, day) < 12) {
      rules.add("first-year-failure");
    }
    if (Wounds.lastCleared(season, exercise, day)
        .filter(cleared -> cleared.plusWeeks(12).isAfter(day))
        .isPresent()) {
      rules.add("after-injury-failure");
    }
    return rules;
  }

  private static boolean isUnder16(GeneratedSeason season, LocalDate day) {
    return Period.between(season.athlete().born(), day).getYears() < 16;
  }

  /** What is logged of a day's climbing in the plan stands for what is usual. */
  private static boolean climbsHard(GeneratedSeason season, LocalDate day) {
    List<LogEntry.Climbed> logged =
        season.log().of(LogEntry.Climbed.class).stream().filter(c -> c.date().equals(day)).toList();
    boolean reported = logged.stream().anyMatch(c -> c.hard() || c.effort().orElse(0) >= 8);
    boolean usually =
        season.athlete().climbing().stream()
                .anyMatch(c -> c.hard() && c.day() == day.getDayOfWeek())
            && season.athlete().away().stream()
                .noneMatch(a -> !day.isBefore(a.from()) && !day.isAfter(a.to()));
    boolean silent = logged.isEmpty() || day.isBefore(season.plan().from());
    return reported || (silent && usually);
  }

  /** Invariant 4, of gates. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void noGatedGripComesBeforeItsPrerequisites(@ForAll GeneratedSeason season) {
    SecondLook look = new SecondLook(season);
    boolean gated = false;
    boolean closed = false;
    for (DatedSession session : look.planned()) {
      for (PlannedExercise exercise : session.exercises()) {
        Optional<String> rule = GatedGrips.missing(season, exercise.setup().grip(), session.date());
        gated |= GatedGrips.gated(exercise.setup().grip());
        rule.ifPresent(
            r -> assertTrue(look.refuses("rule." + r, exercise.path()), r + exercise.path()));
        closed |= rule.isPresent();
      }
    }
    Statistics.label("a gate is closed").collect(closed);
    Reached.reached(gated, 10);
  }

  /** Invariant 4, of ramps. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void anIntroducedGripFollowsItsRamp(@ForAll GeneratedSeason season) {
    SecondLook look = new SecondLook(season);
    boolean ramped = false;
    for (Block block : season.plan().blocks()) {
      for (Block.Introduction introduction : block.content().introductions()) {
        List<DatedSession> sessions =
            look.plan.sessions().stream()
                .filter(s -> s.block().equals(block.name()))
                .filter(s -> !of(introduction, s).isEmpty())
                .toList();
        if (lacksLoads(look, block)) {
          continue; // a line that no load could be given to has not been trained
        }
        for (DatedSession session : sessions) {
          if (session.happened().isPresent()) {
            continue;
          }
          int trained =
              (int)
                  sessions.stream()
                      .mapToInt(DatedSession::week)
                      .filter(w -> w < session.week())
                      .distinct()
                      .count();
          if (trained >= introduction.weeks() - 1) {
            continue;
          }
          double position = (double) trained / (introduction.weeks() - 1);
          for (PlannedExercise exercise : of(introduction, session)) {
            ramped = true;
            assertOnRamp(look, session, exercise, introduction.fromFraction(), position);
          }
        }
      }
    }
    Reached.reached(ramped, 8);
  }

  private static boolean lacksLoads(SecondLook look, Block block) {
    return look.plan.findings().stream()
        .filter(Finding::blocks)
        .filter(f -> f.code().startsWith("plan."))
        .flatMap(f -> f.places().stream())
        .flatMap(p -> p.steps().stream())
        .anyMatch(s -> s.kind().equals("block") && s.name().equals(block.name()));
  }

  private static void assertOnRamp(
      SecondLook look,
      DatedSession session,
      PlannedExercise exercise,
      double from,
      double position) {
    if (exercise.maximum().isEmpty()) {
      return; // light without a test: there is no maximum to ramp towards
    }
    double low = exercise.maximum().orElseThrow().used().kilograms();
    for (int i = 0; i < exercise.scheme().holds().size(); i++) {
      double written =
          look.written(exercise.scheme().holds().get(i), exercise, session).orElseThrow();
      double first = Math.min(written, from * low);
      double most = first + (written - first) * position;
      double load = SecondLook.hold(exercise, i);
      assertTrue(load <= most + SecondLook.SLACK, exercise.path() + ": " + load + " > " + most);
    }
  }

  private static List<PlannedExercise> of(Block.Introduction introduction, DatedSession session) {
    return session.exercises().stream()
        .filter(e -> e.setup().grip().name().equals(introduction.grip().name()))
        .toList();
  }

  /** Invariant 7. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void noUnclearedOrPainfulFingerIsWorkedWithoutAnError(@ForAll GeneratedSeason season) {
    SecondLook look = new SecondLook(season);
    boolean any = false;
    for (DatedSession session : look.planned()) {
      for (PlannedExercise exercise : session.exercises()) {
        boolean injured = Wounds.injured(season, exercise, session.date());
        boolean painful = Wounds.painful(season, exercise, session.date());
        any |= injured || painful;
        if (exercise.rehabilitation().isPresent()) {
          assertTrue(look.says("rule.rehabilitation-exercise", exercise.path()));
        } else {
          assertEquals(injured, look.refuses("rule.injured-finger", exercise.path()));
          assertEquals(painful, look.refuses("rule.painful-finger", exercise.path()));
        }
      }
    }
    Reached.reached(any, 3);
  }

  /** Invariant 7, of the weeks after an injury was cleared. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void fingerReturnsSlowlyAfterAnInjury(@ForAll GeneratedSeason season) {
    SecondLook look = new SecondLook(season);
    boolean any = false;
    for (DatedSession session : look.planned()) {
      for (PlannedExercise exercise : session.exercises()) {
        Optional<Double> level = SecondLook.level(exercise);
        Optional<LocalDate> cleared = Wounds.lastCleared(season, exercise, session.date());
        boolean recent = cleared.map(c -> c.plusWeeks(12).isAfter(session.date())).orElse(false);
        if (recent && level.isPresent() && exercise.rehabilitation().isEmpty()) {
          any = true;
          Optional<Double> before = Wounds.levelBefore(look, exercise, session);
          String rule = before.isPresent() ? "rule.after-injury-rise" : "rule.after-injury-start";
          double most = before.map(b -> b * 1.05).orElse(0.6);
          if (level.get() > most + SecondLook.SLACK) {
            assertTrue(look.refuses(rule, exercise.path()), level.get() + " > " + most);
          }
          if (level.get() < most - SecondLook.SLACK) {
            assertFalse(look.refuses(rule, exercise.path()), level.get() + " < " + most);
          }
        }
      }
    }
    Reached.reached(any, 3);
  }
}
