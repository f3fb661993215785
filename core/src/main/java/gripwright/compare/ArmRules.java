package gripwright.compare;

import gripwright.athlete.Athlete;
import gripwright.athlete.Slot;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Severity;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.season.CompiledPlan;
import gripwright.season.Season;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Checks an arm of one exercise against the built-in rules for one athlete, as a plan that begins
 * on the Monday after the last line of the log. How many days the athlete has is no matter.
 */
final class ArmRules {

  /** Long enough for any session, since an arm need not fit into the athlete's week. */
  private static final Duration ANY_TIME = Duration.ofHours(10);

  private final Athlete athlete;
  private final Log log;
  private final int perWeek;
  private final int weeks;

  ArmRules(Athlete athlete, Log log, int perWeek, int weeks) {
    List<Slot> days = Arrays.stream(DayOfWeek.values()).map(day -> Slot.on(day, ANY_TIME)).toList();
    this.athlete = athlete.toBuilder().available(days).build();
    this.log = log;
    this.perWeek = perWeek;
    this.weeks = weeks;
  }

  /**
   * Returns the rules that an exercise breaks at a level above advice, each once. Rules about a day
   * or a week count only as errors, because what else is in it is not known. Without a log there is
   * no date, so that nothing is known of age and experience.
   *
   * @param arm place of the arm
   */
  List<Finding> broken(Exercise exercise, ModelPath arm) {
    if (log.entries().isEmpty()) {
      return List.of();
    }
    Exercise work = exercise.toBuilder().warmUp(false).build(); // alone, it is the session's work
    LocalDate last = log.entries().get(log.entries().size() - 1).date();
    Plan plan =
        Plan.named("arm")
            .athlete(athlete.name())
            .from(last.with(TemporalAdjusters.next(DayOfWeek.MONDAY)))
            .block(
                Block.named("arm", weeks)
                    .session(
                        SessionPlan.builder("arm", perWeek, SessionPlan.Content.of(work))
                            .gap(Duration.ofHours(24))
                            .build())
                    .build())
            .build();
    Set<Finding> broken = new LinkedHashSet<>();
    ModelPath place = arm.then("for", athlete.name());
    for (CompiledPlan compiled :
        Season.of(List.of(plan), List.of(athlete), List.of(log), List.of()).compile().plans()) {
      compiled.findings().stream()
          .filter(finding -> finding.rule().isPresent() && isOfArm(finding))
          .map(finding -> finding.withPlaces(place, List.of(place)))
          .forEach(broken::add);
    }
    return List.copyOf(broken);
  }

  private static boolean isOfArm(Finding finding) {
    List<ModelPath.Step> steps = finding.place().steps();
    boolean ofExercise = steps.get(steps.size() - 1).kind().equals("exercise");
    boolean ofWeek = steps.stream().anyMatch(step -> step.kind().equals("week"));
    return finding.severity() == Severity.ERROR
        ? ofWeek
        : finding.severity() == Severity.WARNING && ofExercise;
  }
}
