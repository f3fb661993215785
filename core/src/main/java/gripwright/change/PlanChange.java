package gripwright.change;

import gripwright.finding.Message;
import gripwright.grip.Grip;
import gripwright.plan.Plan;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One way in which a compiled plan differs in meaning from another. {@link PlanChanges} finds them.
 *
 * <p>Blocks are compared by name, weeks by their number in the block, sessions by name in their
 * week, exercises by what is trained. Where a block or the whole plan was only moved, its sessions
 * are not told one by one.
 */
public sealed interface PlanChange {

  /** Returns the day from which the change is felt: of the later plan where it has one. */
  LocalDate date();

  /**
   * The whole plan begins on another day.
   *
   * @param before first day before
   * @param after first day now
   */
  record PlanMoved(LocalDate before, LocalDate after) implements PlanChange {
    @Override
    public LocalDate date() {
      return after;
    }
  }

  /**
   * The day that the plan works towards is another.
   *
   * @param date first day of the later plan
   * @param before the goal before; empty without one
   * @param after the goal now; empty without one
   */
  record GoalChanged(LocalDate date, Optional<Message> before, Optional<Message> after)
      implements PlanChange {}

  /**
   * A block is new.
   *
   * @param block its name
   * @param date its first day
   * @param weeks how many weeks it has
   */
  record BlockAdded(String block, LocalDate date, int weeks) implements PlanChange {}

  /**
   * A block is gone.
   *
   * @param block its name
   * @param date its first day before
   * @param weeks how many weeks it had
   */
  record BlockDropped(String block, LocalDate date, int weeks) implements PlanChange {}

  /**
   * A block begins earlier or later in the plan.
   *
   * @param block its name
   * @param days by how many days it is later; negative where it is earlier
   * @param date its first day now
   */
  record BlockMoved(String block, int days, LocalDate date) implements PlanChange {}

  /**
   * A block is longer or shorter.
   *
   * @param block its name
   * @param date its first day now
   * @param before weeks before
   * @param after weeks now
   */
  record BlockResized(String block, LocalDate date, int before, int after) implements PlanChange {}

  /**
   * A week is eased that was not, or no longer.
   *
   * @param week the week now
   */
  record WeekEased(PlanWeek week) implements PlanChange {
    @Override
    public LocalDate date() {
      return week.from();
    }
  }

  /**
   * A session is new.
   *
   * @param session the session
   */
  record SessionAdded(DatedSession session) implements PlanChange {
    @Override
    public LocalDate date() {
      return session.date();
    }
  }

  /**
   * A session is gone.
   *
   * @param session the session as it was
   */
  record SessionDropped(DatedSession session) implements PlanChange {
    @Override
    public LocalDate date() {
      return session.date();
    }
  }

  /**
   * A session is on another day of its week.
   *
   * @param before as it was
   * @param after as it is
   */
  record SessionMoved(DatedSession before, DatedSession after) implements PlanChange {
    @Override
    public LocalDate date() {
      return after.date();
    }
  }

  /**
   * A session takes another time though its exercises are the same: warm-up or rests changed.
   *
   * @param before as it was
   * @param after as it is
   */
  record SessionTimed(DatedSession before, DatedSession after) implements PlanChange {
    @Override
    public LocalDate date() {
      return after.date();
    }
  }

  /**
   * An exercise is new in a session.
   *
   * @param session the session now
   * @param exercise the exercise
   */
  record ExerciseAdded(DatedSession session, PlannedExercise exercise) implements PlanChange {
    @Override
    public LocalDate date() {
      return session.date();
    }
  }

  /**
   * An exercise is gone from a session.
   *
   * @param session the session now
   * @param exercise the exercise as it was
   */
  record ExerciseDropped(DatedSession session, PlannedExercise exercise) implements PlanChange {
    @Override
    public LocalDate date() {
      return session.date();
    }
  }

  /**
   * One thing about an exercise is another.
   *
   * @param session the session now
   * @param before the exercise as it was
   * @param after the exercise as it is
   * @param measure what changed; of a level, both exercises are as they were asked, whatever was
   *     trained
   */
  record ExerciseChanged(
      DatedSession session, PlannedExercise before, PlannedExercise after, Measure measure)
      implements PlanChange {
    @Override
    public LocalDate date() {
      return session.date();
    }
  }

  /** What can be another about an exercise. */
  enum Measure {
    /** What is done: the protocol. */
    PROTOCOL,
    /** The grip. */
    GRIP,
    /** Depth of the edge. */
    EDGE,
    /** Which hands hold, or whether a weight is lifted. */
    HANDS,
    /** Number of sets. */
    SETS,
    /** Holds in a set. */
    REPETITIONS,
    /** Time of a hold. */
    HOLD,
    /** Rest between the holds of a set. */
    REST,
    /** Rest between sets. */
    SET_REST,
    /** Greatest total load. */
    LOAD,
    /** Load or time of some holds, where none of the others tells it. */
    COURSE,
    /** Whose rehabilitation plan it follows. */
    REHABILITATION,
    /** Place in the order of training. */
    ORDER,
    /** The level after progression, where the load stays: the equipment can't build the step. */
    LEVEL,
    /** Whether it counts as hard, where all that is done is the same. */
    HARDNESS
  }

  /**
   * A grip is trained for the first time in another week.
   *
   * @param grip the grip
   * @param before first day before
   * @param after first day now
   */
  record GripStarts(Grip grip, LocalDate before, LocalDate after) implements PlanChange {
    @Override
    public LocalDate date() {
      return after;
    }
  }

  /**
   * Tests are new, gone, or on another day.
   *
   * @param date the day now, or the day before where they are gone
   * @param before tests as they were; empty where they are new
   * @param after tests as they are; empty where they are gone
   */
  record RetestChanged(LocalDate date, List<DatedRetest> before, List<DatedRetest> after)
      implements PlanChange {
    /** Copies the lists. */
    public RetestChanged {
      before = List.copyOf(before);
      after = List.copyOf(after);
    }
  }

  /**
   * The coach accepts a finding that was not accepted before.
   *
   * @param date first day of the later plan
   * @param waiver the waiver
   */
  record WaiverAdded(LocalDate date, Plan.Waiver waiver) implements PlanChange {}

  /**
   * The coach no longer accepts a finding.
   *
   * @param date first day of the later plan
   * @param waiver the waiver as it was
   */
  record WaiverDropped(LocalDate date, Plan.Waiver waiver) implements PlanChange {}

  /** What is written for a plan as a whole and shows in no day by itself. */
  enum Part {
    /** Its title for people. */
    TITLE,
    /** Which grips the climbing ahead uses. */
    DEMAND,
    /** Rule sets that apply beside the built-in rules. */
    RULES,
    /** Greatest rise of the week's load. */
    WEEKLY_RISE,
    /** What counts how much when grips are chosen. */
    WEIGHTS
  }

  /**
   * What is written for the plan as a whole is another.
   *
   * @param date first day of the later plan
   * @param part what
   * @param before how it was; empty where it was not written
   * @param after how it is; empty where it is not written
   */
  record PartChanged(
      LocalDate date, Part part, Optional<Message> before, Optional<Message> after)
      implements PlanChange {}

  /**
   * A block is written otherwise, such as when it gets harder, and trains the same all the same.
   *
   * @param block its name
   * @param date its first day now
   */
  record BlockRewritten(String block, LocalDate date) implements PlanChange {}

  /** Returns the session that a change is about: as it is now, or as it was where it is gone. */
  static Optional<DatedSession> session(PlanChange change) {
    return Optional.ofNullable(
        change instanceof SessionAdded c
            ? c.session()
            : change instanceof SessionDropped c
                ? c.session()
                : change instanceof SessionMoved c
                    ? c.after()
                    : change instanceof SessionTimed c
                        ? c.after()
                        : change instanceof ExerciseAdded c
                            ? c.session()
                            : change instanceof ExerciseDropped c
                                ? c.session()
                                : change instanceof ExerciseChanged c ? c.session() : null);
  }
}
