package gripwright.rule.view;

import java.time.LocalDate;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The rise of an athlete's weekly load across consecutive blocks and plans, each week compared with
 * its {@link RecentWeeks}. A week that returns from time off counts with its full load, so that the
 * return is no rise. If there was a test between two weeks, levels are compared instead of loads.
 *
 * <p>Within a block the loads of weeks are compared. At the start of a block the athlete may change
 * protocols, so each protocol on a grip is compared with itself; a new one is compared with both
 * the highest level and the load of the week. Work that is light before and after the start is
 * ignored there.
 */
final class LoadRise {

  private static final int RECENT = 3;

  /**
   * The largest rise of a week that one smallest step of one exercise may cause; the library's own
   * choice.
   */
  private static final double LARGEST_STEP = 0.35;

  private static final double SLACK = 1e-9;

  private final PlanView plan;
  private final double equipmentStep;
  private final RecentWeeks recent;
  private final NavigableSet<LocalDate> tests = new TreeSet<>();

  LoadRise(PlanView plan) {
    this.plan = plan;
    equipmentStep =
        plan.schedule.athlete().allEquipment().stream()
            .flatMap(each -> Stream.of(each.added(), each.assist()))
            .flatMap(Optional::stream)
            .mapToDouble(steps -> steps.step().kilograms())
            .max()
            .orElse(0);
    recent = new RecentWeeks(plan);
    plan.timeline.log().tests().forEach(test -> tests.add(test.date()));
    plan.evaluation.take(tests.size());
  }

  private static double most(List<TrainedWeek> weeks, ToDoubleFunction<TrainedWeek> number) {
    return weeks.stream().mapToDouble(number).max().orElse(Double.NaN);
  }

  /** Returns the longest row of weeks of heavy training that includes a week of this plan. */
  double longestRow() {
    return recent.longestRow();
  }

  private static int linesOf(List<TrainedWeek> weeks) {
    return weeks.stream().mapToInt(week -> week.lines.size()).sum();
  }

  /**
   * Returns the highest load of the exercises of a week in the last three complete weeks; NaN if
   * the block has none before it. A warm-up of a test, of which those weeks know nothing, counts
   * with its load.
   */
  double recentLoad(WeekView view) {
    return recentLoadOfSessions(view) + view.lightBeforeTests();
  }

  private double recentLoadOfSessions(WeekView view) {
    RecentWeeks.Compared compared = recent.of(view);
    if (compared == null || !compared.inBlock()) {
      return Double.NaN;
    }
    plan.evaluation.take((long) compared.week().lines.size() * linesOf(compared.recent()));
    return most(compared.recent(), w -> inTermsOf(compared.week(), w));
  }

  /**
   * Returns the load of an earlier week, comparable with a later one. Across blocks only the
   * exercises of both count, and if there was a test in between, the load is converted to the new
   * maximum.
   */
  private double inTermsOf(TrainedWeek week, TrainedWeek before) {
    boolean inBlock = before.view.block == week.view.block;
    return before.lines.stream()
        .mapToDouble(
            line ->
                week.lines.stream()
                    .filter(line::isLike)
                    .findFirst()
                    .map(now -> loadInTermsOf(now, week, line, before))
                    .orElse(inBlock ? line.load() : 0))
        .sum();
  }

  private double loadInTermsOf(
      TrainedLine now, TrainedWeek week, TrainedLine line, TrainedWeek before) {
    return line.load() * (tested(now, week, line, before) ? now.maximumFrom(line) : 1);
  }

  /** Returns whether loads changed with a test in between, so that levels must be compared. */
  private boolean tested(TrainedLine now, TrainedWeek week, TrainedLine line, TrainedWeek before) {
    return now.hasMaximum()
        && line.hasMaximum()
        && testedBetween(before.view.week.from(), week.view.week.to());
  }

  private boolean testedBetween(LocalDate since, LocalDate until) {
    LocalDate next = tests.ceiling(since);
    return next != null && !next.isAfter(until);
  }

  /**
   * Returns whether a week exceeds the last three complete ones by one smallest step of one
   * exercise only, within the rise that such a step may cause. Steps of light exercises do not
   * count.
   */
  boolean isOneStep(WeekView view) {
    RecentWeeks.Compared compared = recent.of(view);
    if (compared == null || !compared.inBlock()) {
      return false;
    }
    TrainedWeek week = compared.week();
    plan.evaluation.take((long) week.lines.size() * linesOf(compared.recent()));
    int steps = 0;
    int lightSteps = 0;
    double light = 0;
    for (TrainedLine line : week.lines) {
      int taken = stepsOf(line, compared);
      List<TrainedLine> before =
          compared.recent().stream().flatMap(w -> w.lines.stream()).filter(line::isLike).toList();
      if (taken == 1 && isLight(line, before)) {
        lightSteps++;
        light += line.load() - before.stream().mapToDouble(TrainedLine::load).max().orElse(0);
      } else {
        steps += taken;
      }
    }
    return steps <= 1
        && steps + lightSteps > 0
        && week.load - light <= (1 + LARGEST_STEP) * recentLoadOfSessions(view) + SLACK;
  }

  /**
   * Returns the lowest number of steps from any earlier week to this one; an additional session
   * counts as many steps.
   */
  private int stepsOf(TrainedLine line, RecentWeeks.Compared compared) {
    int fewest = RECENT;
    for (TrainedWeek before : compared.recent()) {
      for (TrainedLine was : before.lines) {
        if (line.isLike(was)) {
          boolean relative = tested(line, compared.week(), was, before);
          fewest =
              Math.min(
                  fewest,
                  line.stepsFrom(was, equipmentStep, relative)
                      + Math.max(0, line.sessions() - was.sessions()) * RECENT);
        }
      }
    }
    return fewest;
  }

  private RecentWeeks.@Nullable Compared join(WeekView view) {
    RecentWeeks.Compared compared = recent.of(view);
    return compared == null || compared.inBlock() || compared.recent().isEmpty() ? null : compared;
  }

  /** Returns the highest load of the weeks before a block; NaN unless the week is its first. */
  double loadBefore(WeekView view) {
    RecentWeeks.Compared join = join(view);
    return join == null ? Double.NaN : most(join.recent(), w -> w.load);
  }

  /**
   * Returns the rise from the last three complete weeks to the first week of a block; NaN for other
   * weeks. It is the highest rise of the load per session of any protocol on a grip. One of them
   * may add one smallest step to the plan's weekly rise. For a new protocol it is the smaller of
   * the rises of the highest level and of the week's load; for one with only a new name it is the
   * smaller of its own rise and the week's. Exercises that are and were light are ignored.
   */
  double joinRise(WeekView view) {
    RecentWeeks.Compared join = join(view);
    return join == null ? Double.NaN : steepest(join).rise();
  }

  /** Returns the exercise that rises most where a block begins; empty in other weeks. */
  Optional<TrainedLine> steepestAtJoin(WeekView view) {
    RecentWeeks.Compared join = join(view);
    return join == null ? Optional.empty() : Optional.ofNullable(steepest(join).line());
  }

  /** The greatest rise at the beginning of a block, and the exercise that has it. */
  private record Steepest(double rise, @Nullable TrainedLine line) {
    Steepest or(double other, TrainedLine of) {
      return other > rise ? new Steepest(other, of) : this;
    }
  }

  private Steepest steepest(RecentWeeks.Compared join) {
    plan.evaluation.take((long) join.week().lines.size() * linesOf(join.recent()));
    double ofWeek = join.week().load / most(join.recent(), w -> w.load) - 1;
    double ofLevel = join.week().level / most(join.recent(), w -> w.level) - 1;
    Steepest rise = new Steepest(0, null);
    int steps = 0;
    for (TrainedLine line : join.week().together) {
      List<TrainedLine> same = before(join, line::isSame);
      List<TrainedLine> before = same.isEmpty() ? before(join, line::hasSameContent) : same;
      if (isLight(line, before)) {
        continue;
      }
      if (before.isEmpty()) {
        rise = rise.or(Math.min(ofLevel, ofWeek), line);
        continue;
      }
      boolean relative = tested(join, line, before);
      double own = riseOf(line, before, relative);
      if (own > plan.weeklyRise() + SLACK
          && steps == 0
          && isOneStep(line, before, relative, join)) {
        steps++;
        continue;
      }
      boolean milder = same.isEmpty() && before.stream().allMatch(line::isMilderThan);
      rise = rise.or(!same.isEmpty() ? own : Math.min(milder ? ofLevel : own, ofWeek), line);
    }
    return rise;
  }

  /** Returns whether a line is light and all similar lines before it were. */
  private static boolean isLight(TrainedLine line, List<TrainedLine> before) {
    return line.isLight() && before.stream().allMatch(TrainedLine::isLight);
  }

  private static List<TrainedLine> before(RecentWeeks.Compared join, Predicate<TrainedLine> which) {
    return join.recent().stream().flatMap(week -> week.together.stream()).filter(which).toList();
  }

  /** Returns the same for a line and all lines that it is compared with at the start of a block. */
  private boolean tested(RecentWeeks.Compared join, TrainedLine line, List<TrainedLine> before) {
    LocalDate since = join.recent().get(0).view.week.from();
    LocalDate until = join.week().view.week.to();
    return line.hasMaximum()
        && before.stream().allMatch(TrainedLine::hasMaximum)
        && testedBetween(since, until);
  }

  private static double riseOf(TrainedLine line, List<TrainedLine> before, boolean relative) {
    return before.stream().mapToDouble(b -> line.riseFrom(b, relative)).min().orElseThrow();
  }

  /**
   * Returns whether a line rises by at most one smallest step plus the plan's weekly rise, and the
   * week by at most the rise that one step may cause.
   */
  private boolean isOneStep(
      TrainedLine line, List<TrainedLine> before, boolean relative, RecentWeeks.Compared join) {
    double most = LARGEST_STEP * most(join.recent(), w -> w.load);
    return before.stream()
        .anyMatch(
            b ->
                (line.stepsFrom(b, equipmentStep, relative) == 1
                        || line.riseBeyondAStep(b, equipmentStep, relative)
                            <= plan.weeklyRise() + SLACK)
                    && line.riseFrom(b, relative) * b.perSession(false) * line.sessions()
                        <= most + SLACK);
  }

  /**
   * Returns the increase in sessions a week, at the start of a block, of any protocol on a grip
   * that the last three complete weeks had too, unless it is light in both; NaN for other weeks.
   */
  double moreSessions(WeekView view) {
    RecentWeeks.Compared join = join(view);
    if (join == null) {
      return Double.NaN;
    }
    int more = 0;
    for (TrainedLine line : join.week().together) {
      List<TrainedLine> before = before(join, line::isLike);
      int most = before.stream().mapToInt(TrainedLine::sessions).max().orElse(-1);
      more = most < 0 || isLight(line, before) ? more : Math.max(more, line.sessions() - most);
    }
    return more;
  }
}
