package gripwright.schedule;

import gripwright.plan.PlanSize;
import java.util.List;

/**
 * The size of dated sessions and tests, in the terms of {@link PlanSize}.
 *
 * @param sessions number of sessions
 * @param holds their holds and rests
 */
public record ScheduleSize(long sessions, long holds) {

  /** Returns the size of a schedule. */
  public static ScheduleSize of(Schedule schedule) {
    return new ScheduleSize(0, PlanSize.AN_ATHLETE + PlanSize.A_WEEK * schedule.weeks().size())
        .plus(schedule.sessions(), schedule.retests())
        .plus(schedule.beside(), List.of());
  }

  /** Returns this with more sessions and tests. */
  public ScheduleSize plus(List<DatedSession> more, List<DatedRetest> tests) {
    long size = holds;
    for (DatedSession session : more) {
      size += PlanSize.A_SESSION + size(session.exercises());
    }
    for (DatedRetest test : tests) {
      size += PlanSize.A_TEST * Math.max(1, test.setups().size()) + size(test.exercises());
    }
    return new ScheduleSize(sessions + more.size(), size);
  }

  private static long size(List<PlannedExercise> exercises) {
    long size = 0;
    for (PlannedExercise exercise : exercises) {
      size += Math.max(PlanSize.AN_EXERCISE, exercise.steps().size());
    }
    return size;
  }

  /** Returns this with further weeks. */
  public ScheduleSize plusWeeks(int weeks) {
    return new ScheduleSize(sessions, holds + PlanSize.A_WEEK * weeks);
  }
}
