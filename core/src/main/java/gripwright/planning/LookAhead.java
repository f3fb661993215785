package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.FingerSet;
import gripwright.grip.Setup;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.TestKind;
import gripwright.planning.load.Rise;
import gripwright.planning.placement.Placement;
import gripwright.planning.placement.RetestDay;
import gripwright.planning.progression.Progression;
import gripwright.planning.progression.ProgressionBlockers;
import gripwright.protocol.Scheme;
import gripwright.schedule.HandsInTurn;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Estimates the sessions and tests of the weeks ahead.
 *
 * <p>Progress depends on the training to come, so it is not known yet. The rest of a block is
 * assumed to need the same days as this week, and a later block the same as its first week would.
 * Only durations and hardness are estimated; no number of a plan is taken from here.
 */
final class LookAhead {

  /**
   * Number of weeks placed together, including the present one; more made no measurable difference.
   */
  static final int WEEKS = 8;

  /** The time allowed for a hold to failure; the library's own choice. */
  private static final Duration TO_FAILURE = Duration.ofMinutes(3);

  private final Plan plan;
  private final Athlete athlete;
  private final ProgressionBlockers blockers;
  private final SessionExpansion expansion;
  private final Map<String, List<Placement.Request>> ofBlock = new HashMap<>();
  private final Map<String, Integer> gapDays = new HashMap<>();

  LookAhead(Plan plan, Athlete athlete, ProgressionBlockers blockers, SessionExpansion expansion) {
    this.plan = plan;
    this.athlete = athlete;
    this.blockers = blockers;
    this.expansion = expansion;
    plan.blocks().stream()
        .flatMap(block -> block.contentFor(athlete.name()).sessions().stream())
        .forEach(
            session -> gapDays.merge(session.name(), Placement.gapDays(session.gap()), Math::max));
  }

  /** Returns the longest gap required between sessions of a name anywhere in the plan, in days. */
  int gapDays(String name) {
    return gapDays.getOrDefault(name, 1);
  }

  /** Returns the tests that are due in a week of the plan, numbered from 1. */
  List<Placement.Tests> testsIn(int number) {
    if (tapers(number)) {
      return List.of();
    }
    return plan.retests().stream()
        .filter(retest -> retest.isDueIn(number, plan.weeks()))
        .map(
            retest ->
                new Placement.Tests(
                    minutes(retest),
                    fingers(retest),
                    RetestDay.restedDays(retest),
                    retest.onlyOn(),
                    places(retest).open()))
        .toList();
  }

  /** Returns the places at which a test can be. */
  SlotPlaces places(PlannedTest retest) {
    return SlotPlaces.of(
        athlete, retest.onlyAt(), retest.setups().stream().map(Setup::edge).toList());
  }

  /** Returns whether a week of the plan, numbered from 1, is in the taper, which has no tests. */
  boolean tapers(int number) {
    return plan.taperIn(plan.from().plusWeeks(number - 1L)).isPresent();
  }

  /** Returns the duration of the tests and their warm-up, in minutes, rounded up. */
  int minutes(PlannedTest retest) {
    Duration one =
        time(retest.kind())
            .multipliedBy(retest.attempts())
            .plus(retest.resting().multipliedBy(retest.attempts() - 1L));
    Duration time = retest.warmUp().orElse(plan.warmUp());
    for (int i = 0; i < retest.setups().size(); i++) {
      time = time.plus(one).plus(i == 0 ? Duration.ZERO : plan.restBetween());
    }
    for (Exercise exercise : retest.exercises()) {
      List<Scheme> hand = List.of(exercise.scheme());
      time =
          time.plus(plan.restBetween())
              .plus(
                  exercise.alternating()
                      ? HandsInTurn.time(hand, hand, plan.restBetween())
                      : exercise.scheme().duration());
    }
    return (int) ((time.toSeconds() + 59) / 60);
  }

  /** Returns the time of one attempt; of a hold to failure an estimate. */
  private static Duration time(TestKind kind) {
    return kind.accept(
        new TestKind.Visitor<>() {
          @Override
          public Duration hold(TestKind.Hold hold) {
            return hold.time();
          }

          @Override
          public Duration toFailure(TestKind.ToFailure failure) {
            return TO_FAILURE;
          }

          @Override
          public Duration series(TestKind.Series series) {
            return series
                .work()
                .multipliedBy(series.holds())
                .plus(series.rest().multipliedBy(series.holds() - 1L));
          }
        });
  }

  private static FingerSet fingers(PlannedTest retest) {
    return retest.setups().stream()
        .map(s -> s.grip().fingers())
        .reduce((a, b) -> new FingerSet(a.bits() | b.bits()))
        .orElse(FingerSet.FOUR);
  }

  /**
   * Returns the estimated demand of the weeks after one.
   *
   * @param now the requests of the present week
   * @param week the present week
   * @param hardDays returns the hard days near a week by its first day
   */
  List<Placement.WeekDemand> after(
      WeekContext week,
      List<Placement.Request> now,
      Function<LocalDate, List<Placement.HardDay>> hardDays) {
    List<Placement.WeekDemand> weeks = new ArrayList<>();
    int left = week.block().weeks() - week.blockWeek();
    int next = plan.blocks().indexOf(week.block());
    List<Placement.Request> requests = now;
    for (int ahead = 1; ahead < WEEKS; ahead++) {
      while (left == 0 && ++next < plan.blocks().size()) {
        left = plan.blocks().get(next).weeks();
        requests = firstWeekOf(plan.blocks().get(next), week.first().plusWeeks(ahead));
      }
      if (next == plan.blocks().size()) {
        break;
      }
      left--;
      LocalDate first = week.first().plusWeeks(ahead);
      weeks.add(
          new Placement.WeekDemand(
              new Placement.Week(first, athlete::slotsOn, hardDays.apply(first), Map.of()),
              requests,
              testsIn(week.number() + ahead)));
    }
    return weeks;
  }

  /**
   * Returns a week before or after those of the plan, in which nothing advances.
   *
   * @param number its number: 0 before the plan, above its last after it
   * @param first first day
   */
  WeekContext outside(int number, LocalDate first) {
    Block block = plan.blocks().get(number < 1 ? 0 : plan.blocks().size() - 1);
    return week(block, number, first, plan.path().then("for", athlete.name()));
  }

  private WeekContext week(Block block, int number, LocalDate first, ModelPath place) {
    return new WeekContext(
        block,
        number,
        1,
        first,
        place.then("week", number),
        new Progression.Week(
            first,
            List.of(),
            List.of(),
            Optional.empty(),
            Progression.Returning.NOTHING,
            Rise.of(0),
            blockers,
            Optional.empty()));
  }

  private List<Placement.Request> firstWeekOf(Block block, LocalDate first) {
    return ofBlock.computeIfAbsent(
        block.name(),
        name -> {
          ModelPath place = plan.path().then("for", athlete.name()).then("block", name);
          return expansion.drafts(week(block, 1, first, place), new FindingList()).stream()
              .map(SessionExpansion.Draft::request)
              .toList();
        });
  }
}
