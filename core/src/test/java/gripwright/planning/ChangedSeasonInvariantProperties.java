package gripwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Injury;
import gripwright.athlete.Slot;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.history.LogTimeline;
import gripwright.log.FeltPain;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.strength.PlausibleTests;
import gripwright.wording.Words;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;

/** What a change of the athlete, the log or the dates may do to a compiled plan, and what not. */
class ChangedSeasonInvariantProperties {

  /** Invariant 8. A sixteenth or eighteenth birthday is no whole number of weeks after birth. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void shiftingAllDatesByWeeksShiftsOnlyDates(
      @ForAll GeneratedSeason season, @ForAll @IntRange(min = 1, max = 300) int weeks) {
    boolean grows = comesOfAge(season, 16) || comesOfAge(season, 18);
    if (!grows) {
      CompiledPlan plan = season.compile();
      CompiledPlan later = season.later(weeks).compile();
      assertEquals(moved(plan, weeks), moved(later, 0));
      assertEquals(
          plan.findings().stream().map(f -> said(f, weeks)).toList(),
          later.findings().stream().map(f -> said(f, 0)).toList());
    }
    Reached.reached(!grows, 80);
  }

  private static boolean comesOfAge(GeneratedSeason season, int years) {
    LocalDate day = season.athlete().born().plusYears(years);
    return day.isAfter(season.plan().from().minusDays(3))
        && day.isBefore(season.plan().to().plusDays(3));
  }

  /** Writes out all that a plan holds, later by so many weeks. */
  private static List<String> moved(CompiledPlan plan, int weeks) {
    List<String> all = new ArrayList<>();
    for (PlanWeek week : plan.weeks()) {
      all.add(
          List.of(
                  week.from().plusWeeks(weeks),
                  week.eased(),
                  week.away(),
                  week.timeUnderLoadSeconds(),
                  week.loadIndex())
              .toString());
    }
    for (DatedSession session : plan.sessions()) {
      all.add(
          List.of(
                  session.date().plusWeeks(weeks),
                  session.name(),
                  session.minutes(),
                  session.hard(),
                  session.bodyMass().kilograms())
              .toString());
      for (PlannedExercise exercise : session.exercises()) {
        all.add(
            List.of(
                    exercise.setup(),
                    exercise.scheme(),
                    exercise.steps(),
                    exercise.percentOfMax(),
                    exercise.maximum(),
                    exercise.hard(),
                    exercise.endReserve())
                .toString());
        exercise.why().forEach(link -> all.add(Words.step(link) + link.value() + Words.unit(link)));
      }
    }
    for (DatedRetest retest : plan.retests()) {
      all.add(retest.date().plusWeeks(weeks) + retest.insteadOf() + retest.setups());
    }
    plan.climbing().forEach(day -> all.add(day.plusWeeks(weeks).toString()));
    return all;
  }

  private static String said(Finding finding, int weeks) {
    List<String> places = new ArrayList<>();
    for (ModelPath place : finding.places()) {
      StringBuilder text = new StringBuilder();
      for (ModelPath.Step step : place.steps()) {
        boolean date = step.kind().equals("date");
        text.append(date ? LocalDate.parse(step.name()).plusWeeks(weeks) : step);
      }
      places.add(text.toString());
    }
    return finding.code() + finding.severity() + finding.place().without("date") + places;
  }

  /** Two loads of the same hold of the same line and grip. */
  private record Pair(double before, double after, ModelPath place) {}

  /**
   * Pairs the loads of two plans: the same line, grip, edge, sets and holds, in the same session of
   * the same week, up to the first week that only one of them trains alike. Where a log covers
   * pain, up to the first week with a session on another day: of two days one may be before it.
   */
  private static List<Pair> pairs(GeneratedSeason season, CompiledPlan one, CompiledPlan other) {
    List<Pair> pairs = new ArrayList<>();
    for (PlanWeek week : one.weeks()) {
      List<DatedSession> before = one.sessionsOf(week.number());
      List<DatedSession> after = other.sessionsOf(week.number());
      if (before.isEmpty() != after.isEmpty() || (hurts(season) && !onSameDays(before, after))) {
        break;
      }
      for (DatedSession session : before) {
        for (DatedSession changed : after) {
          if (session.happened().isEmpty()
              && changed.happened().isEmpty()
              && session.name().equals(changed.name())
              && !news(season, session, changed)) {
            pair(session, changed, pairs);
          }
        }
      }
    }
    return pairs;
  }

  private static boolean hurts(GeneratedSeason season) {
    return season.log().entries().stream()
        .filter(e -> !e.date().isBefore(season.plan().from()))
        .anyMatch(
            e ->
                e instanceof LogEntry.Pain
                    || (e instanceof LogEntry.Climbed climbed && climbed.pain().isPresent()));
  }

  private static boolean onSameDays(List<DatedSession> some, List<DatedSession> others) {
    return some.stream()
        .map(DatedSession::date)
        .toList()
        .equals(others.stream().map(DatedSession::date).toList());
  }

  private static boolean news(GeneratedSeason season, DatedSession one, DatedSession other) {
    boolean ordered = one.date().isBefore(other.date());
    LocalDate from = ordered ? one.date() : other.date();
    LocalDate to = ordered ? other.date() : one.date();
    return season.log().entries().stream()
        .anyMatch(e -> e.date().isAfter(from) && !e.date().isAfter(to));
  }

  private static void pair(DatedSession session, DatedSession changed, List<Pair> pairs) {
    for (PlannedExercise one : session.exercises()) {
      for (PlannedExercise other : changed.exercises()) {
        if (SecondLook.line(one).equals(SecondLook.line(other))
            && one.setup().equals(other.setup())
            && one.scheme().equals(other.scheme())) {
          for (int i = 0; i < one.steps().size(); i++) {
            if (one.steps().get(i).isHold()) {
              pairs.add(new Pair(kilograms(one, i), kilograms(other, i), other.path()));
            }
          }
        }
      }
    }
  }

  private static double kilograms(PlannedExercise exercise, int step) {
    return exercise.steps().get(step).load().orElseThrow().kilograms();
  }

  /** Under 16 a test that is too high to be true gives no load at all. */
  private static boolean isDoubtedUnder16(GeneratedSeason season) {
    PlausibleTests plausible =
        new PlausibleTests(
            season.log().tests(),
            day -> season.log().bodyMassOn(day).orElse(season.athlete().bodyMass()));
    return season.athlete().ageInMonths(season.plan().from()) < 16 * 12
        && season.log().tests().stream().anyMatch(test -> plausible.share(test) > 1);
  }

  /** Tells whether no test is above what is likely: such a one counts as less, and steps wait. */
  private static boolean isLikely(GeneratedSeason season) {
    double mass = season.athlete().bodyMass().kilograms();
    return season.log().tests().stream()
        .allMatch(
            test -> {
              boolean hang = test.setup().hands() == Hands.BOTH && !test.setup().lifting();
              double load = test.effort().map(e -> e.load().kilograms()).orElse(0.0);
              return load <= (hang ? 2 : 1.1) * mass;
            });
  }

  /** Invariant 9, of tests. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void proportionallyHigherTestsNeverLowerALoad(
      @ForAll GeneratedSeason season, @ForAll @DoubleRange(min = 1, max = 1.6) double factor) {
    // Of stronger athletes more is asked, so the sessions of a log would tell of less than asked.
    CompiledPlan plan = season.withoutSessionsLogged().compile();
    if (isDoubtedUnder16(season.stronger(factor)) || !isLikely(season.stronger(factor))) {
      return;
    }
    List<Pair> pairs =
        pairs(season, plan, season.withoutSessionsLogged().stronger(factor).compile());
    boolean raised = false;
    for (Pair pair : pairs) {
      raised |= pair.after() > pair.before();
      assertTrue(pair.after() >= pair.before() - SecondLook.SLACK, pair.toString());
    }
    Reached.reached(raised, 50);
  }

  /** Invariant 9, of injuries. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void additionalInjuryNeverRaisesALoad(
      @ForAll GeneratedSeason season,
      @ForAll Finger finger,
      @ForAll Optional<Side> side,
      @ForAll @IntRange(min = -200, max = 30) int day,
      @ForAll @IntRange(min = 0, max = 150) int clearedAfter) {
    LocalDate from = season.plan().from().plusDays(day);
    Optional<LocalDate> cleared =
        clearedAfter < 30 ? Optional.empty() : Optional.of(from.plusDays(clearedAfter));
    Injury injury = Injury.builder(finger, Structure.A2, from).side(side).cleared(cleared).build();
    // With other grips chosen, another exercise would be the one that a log holds back.
    CompiledPlan plan = season.withoutSessionsLogged().compile();
    CompiledPlan injured = season.withoutSessionsLogged().injured(injury).compile();
    List<Pair> pairs = pairs(season, plan, injured);
    boolean hurts =
        !FeltPain.of(season.log(), List.of()).isEmpty()
            || season.athlete().injuries().stream().anyMatch(i -> i.finger() == finger);
    if (hurts) {
      return; // an injury takes the place of the pain of its finger, and a clearance ends it
    }
    for (Pair pair : pairs) {
      assertTrue(pair.after() <= pair.before() + SecondLook.SLACK, pair.toString());
    }
    Statistics.label("an error more").collect(plan.usable() && !injured.usable());
    Reached.reached(!pairs.isEmpty(), 60);
  }

  /** Invariant 9, of time to train. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void lessTimeNeverAddsASession(
      @ForAll GeneratedSeason season,
      @ForAll @IntRange(max = 6) int dropped,
      @ForAll @IntRange(min = 20, max = 105) int percentOfTime) {
    List<Slot> less = new ArrayList<>();
    List<Slot> days = season.athlete().available();
    days.forEach(
        slot -> {
          if (days.indexOf(slot) != dropped) {
            long minutes = slot.time().toMinutes() * Math.min(100, percentOfTime) / 100;
            less.add(new Slot(slot.on(), slot.at(), Duration.ofMinutes(minutes)));
          }
        });
    // Of two days one may be before a test, and nobody knows of it when the week begins.
    CompiledPlan plan = season.ahead().compile();
    CompiledPlan shorter = season.ahead().available(less).compile();
    assertTrue(
        grows(season) || shorter.sessions().size() <= plan.sessions().size(), less.toString());
    Reached.reached(shorter.sessions().size() < plan.sessions().size(), 10);
  }

  /**
   * Returns whether sessions get longer with the weeks. Days are found as if the weeks ahead were
   * like the present one, and what waits for a week that was not trained stays shorter and lighter.
   */
  private static boolean grows(GeneratedSeason season) {
    return season.plan().blocks().stream()
        .map(Block::content)
        .anyMatch(
            content ->
                !content.introductions().isEmpty()
                    || content.advances().stream()
                        .flatMap(a -> Stream.concat(Stream.of(a.first()), a.then().stream()))
                        .map(Advance.Progress::change)
                        .anyMatch(c -> c instanceof Advance.SetsTo || c instanceof Advance.HoldTo));
  }

  /** Invariant 12. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void aCompiledPlanIsCheckedAgainWithTheSameResult(
      @ForAll GeneratedSeason season, @ForAll Random random) {
    CompiledPlan plan = season.compile();
    Set<ModelPath> trained =
        plan.sessions().stream()
            .flatMap(s -> s.exercises().stream())
            .map(PlannedExercise::path)
            .collect(Collectors.toSet());
    List<Finding> first =
        plan.findings().stream()
            .filter(ChangedSeasonInvariantProperties::isOfRules)
            .filter(f -> !isOfAnExercise(f) || trained.contains(f.place()))
            .toList();
    List<DatedSession> shuffled = new ArrayList<>(plan.sessions());
    Collections.shuffle(shuffled, random);
    Schedule again = plan.schedule().toBuilder().sessions(shuffled).build();
    assertEquals(first, checked(plan.schedule(), plan.timeline()));
    assertEquals(first, checked(again, plan.timeline()));
    assertEquals(plan, season.compile());
    Reached.reached(plan.usable(), 60);
  }

  private static boolean isOfAnExercise(Finding finding) {
    return finding.place().steps().stream().anyMatch(step -> step.kind().equals("exercise"));
  }

  private static boolean isOfRules(Finding finding) {
    return finding.rule().isPresent() || finding.code().startsWith("plan.waiver");
  }

  private static List<Finding> checked(Schedule schedule, LogTimeline timeline) {
    return Planner.checked(schedule, timeline).stream()
        .filter(ChangedSeasonInvariantProperties::isOfRules)
        .toList();
  }
}
