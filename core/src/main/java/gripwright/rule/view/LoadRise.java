package gripwright.rule.view;

import gripwright.athlete.Equipment;
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
 * How the load of an athlete's weeks rises, over the blocks and plans that follow each other, each
 * beside its {@link RecentWeeks}. What a week lacks on the way back from time off is counted as if
 * it were there, so that the way back is no rise. Where a test came between, levels are compared.
 *
 * <p>Within a block loads are compared; at its edge the athlete may begin something else, so each
 * protocol on a grip is compared with itself, and only what is new is held to the greatest level
 * and the week's load together. What is light before and after an edge makes no rise there.
 */
final class LoadRise {

  private static final int RECENT = 3;

  /** The most that one smallest step of one exercise adds to a week; our own number. */
  private static final double LARGEST_STEP = 0.35;

  private static final double SLACK = 1e-9;

  private final PlanView plan;
  private final double equipmentStep;
  private final RecentWeeks recent;
  private final NavigableSet<LocalDate> tests = new TreeSet<>();

  LoadRise(PlanView plan) {
    this.plan = plan;
    Equipment equipment = plan.schedule.athlete().equipment();
    equipmentStep =
        Stream.of(equipment.added(), equipment.assist())
            .flatMap(steps -> steps.stream())
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

  /** Returns the most weeks in a row of heavy training that this plan is part of. */
  double longestRow() {
    return recent.longestRow();
  }

  private static int linesOf(List<TrainedWeek> weeks) {
    return weeks.stream().mapToInt(week -> week.lines.size()).sum();
  }

  /**
   * Returns the highest load, of what a week trains, among the last three whole weeks; not a number
   * where the block has none before it.
   */
  double recentLoad(WeekView view) {
    RecentWeeks.Compared compared = recent.of(view);
    if (compared == null || !compared.inBlock()) {
      return Double.NaN;
    }
    plan.evaluation.take((long) compared.week().lines.size() * linesOf(compared.recent()));
    return most(compared.recent(), w -> inTermsOf(compared.week(), w));
  }

  /**
   * Returns the load of a week before another: of what both train if they are of two blocks, and as
   * it would be with the maximum of today where a test came between.
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

  /** Tells whether loads follow a test made since, so that levels and not loads are compared. */
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
   * Tells whether a week differs from the last three whole ones by one smallest step of one
   * exercise, and by no more than that may add. A step of what is and was light is no rise: each
   * may take one.
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
        && week.load - light <= (1 + LARGEST_STEP) * recentLoad(view) + SLACK;
  }

  /** Returns the fewest steps from what a line was in a week before; a session more is many. */
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

  /** Returns the highest load of the weeks before a block; not a number in other weeks. */
  double loadBefore(WeekView view) {
    RecentWeeks.Compared join = join(view);
    return join == null ? Double.NaN : most(join.recent(), w -> w.load);
  }

  /**
   * Returns how much more a block begins with than the last three whole weeks had: the greatest
   * rise of the load a session of a protocol on a grip, but for one smallest step of one of them,
   * which may come on top of the plan's weekly rise; of what is new, the lesser of the rises of the
   * greatest level and of the week's load, and of what has only a new name, the lesser of its own
   * rise and the week's. What is and was light is left out. Not a number in other weeks.
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
      List<TrainedLine> before = same.isEmpty() ? before(join, line::isAlike) : same;
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

  /** Tells whether a line is light, and was so where there was anything like it. */
  private static boolean isLight(TrainedLine line, List<TrainedLine> before) {
    return line.isLight() && before.stream().allMatch(TrainedLine::isLight);
  }

  private static List<TrainedLine> before(RecentWeeks.Compared join, Predicate<TrainedLine> which) {
    return join.recent().stream().flatMap(week -> week.together.stream()).filter(which).toList();
  }

  /** Tells the same of a line and all that it is compared with at a join. */
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
   * Tells whether a line has one smallest step more and beyond it no more than the plan's weekly
   * rise, and the week no more by both than one step may add.
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
   * Returns how many sessions a week more a block begins with, of a protocol on a grip that the
   * last three whole weeks had as well, and that is not light in both; not a number in other weeks.
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
