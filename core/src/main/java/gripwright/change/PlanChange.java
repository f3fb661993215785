package gripwright.change;

import gripwright.grip.Grip;
import gripwright.plan.Plan;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One way in which a compiled plan differs in meaning from another. {@link PlanChanges} finds them.
 *
 * <p>Blocks are compared by name, weeks by their number in the block, sessions by name in their
 * week, exercises by what is trained. Where a block or the whole plan was only moved, its sessions
 * are not listed one by one.
 */
public sealed interface PlanChange
    permits BlockChange,
        SessionChange,
        PlanChange.PlanMoved,
        PlanChange.GoalChanged,
        PlanChange.GripStarts,
        PlanChange.RetestChanged,
        PlanChange.WaiverAdded,
        PlanChange.WaiverDropped,
        PlanChange.PartChanged {

  /** Returns the day from which the change is felt: of the later plan where it has one. */
  LocalDate date();

  /** Returns which kind of change it is. */
  Kind kind();

  /** Answers with what a visitor has for this kind of change. */
  <R> R accept(Visitor<R> visitor);

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

    @Override
    public Kind kind() {
      return Kind.PLAN_MOVED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.planMoved(this);
    }
  }

  /**
   * The day that the plan works towards is another.
   *
   * @param date first day of the later plan
   * @param before the goal before, in words; empty without one
   * @param after the goal now, in words; empty without one
   */
  record GoalChanged(LocalDate date, String before, String after) implements PlanChange {
    @Override
    public Kind kind() {
      return Kind.GOAL_CHANGED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.goalChanged(this);
    }
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

    @Override
    public Kind kind() {
      return Kind.GRIP_STARTS;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.gripStarts(this);
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

    @Override
    public Kind kind() {
      return Kind.RETEST_CHANGED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.retestChanged(this);
    }
  }

  /**
   * The coach accepts a finding that was not accepted before.
   *
   * @param date first day of the later plan
   * @param waiver the waiver
   */
  record WaiverAdded(LocalDate date, Plan.Waiver waiver) implements PlanChange {
    @Override
    public Kind kind() {
      return Kind.WAIVER_ADDED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.waiverAdded(this);
    }
  }

  /**
   * The coach no longer accepts a finding.
   *
   * @param date first day of the later plan
   * @param waiver the waiver as it was
   */
  record WaiverDropped(LocalDate date, Plan.Waiver waiver) implements PlanChange {
    @Override
    public Kind kind() {
      return Kind.WAIVER_DROPPED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.waiverDropped(this);
    }
  }

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
   * @param before how it was, in words; empty where it was not written
   * @param after how it is, in words; empty where it is not written
   */
  record PartChanged(LocalDate date, Part part, String before, String after) implements PlanChange {
    @Override
    public Kind kind() {
      return Kind.PART_CHANGED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.partChanged(this);
    }
  }

  /** The kinds of change. */
  enum Kind {
    /** The whole plan begins on another day. */
    PLAN_MOVED,
    /** Another day that the plan works towards. */
    GOAL_CHANGED,
    /** A block that is new. */
    BLOCK_ADDED,
    /** A block that is gone. */
    BLOCK_DROPPED,
    /** A block that begins earlier or later. */
    BLOCK_MOVED,
    /** A block that is longer or shorter. */
    BLOCK_RESIZED,
    /** A week that is eased, or no longer. */
    WEEK_EASED,
    /** A session that is new. */
    SESSION_ADDED,
    /** A session that is gone. */
    SESSION_DROPPED,
    /** A session on another day. */
    SESSION_MOVED,
    /** A session that takes another time. */
    SESSION_TIMED,
    /** An exercise that is new. */
    EXERCISE_ADDED,
    /** An exercise that is gone. */
    EXERCISE_DROPPED,
    /** One thing about an exercise that is another. */
    EXERCISE_CHANGED,
    /** A grip that starts in another week. */
    GRIP_STARTS,
    /** Tests that are new, gone or moved. */
    RETEST_CHANGED,
    /** A waiver that is new. */
    WAIVER_ADDED,
    /** A waiver that is gone. */
    WAIVER_DROPPED,
    /** Another text for the plan as a whole. */
    PART_CHANGED,
    /** A block that trains the same and is written otherwise. */
    BLOCK_REWRITTEN
  }

  /**
   * One answer for each kind of change.
   *
   * @param <R> what is answered
   */
  interface Visitor<R> {
    /** Answers for the whole plan begins on another day. */
    R planMoved(PlanMoved change);

    /** Answers for another day that the plan works towards. */
    R goalChanged(GoalChanged change);

    /** Answers for a grip that starts in another week. */
    R gripStarts(GripStarts change);

    /** Answers for tests that are new, gone or moved. */
    R retestChanged(RetestChanged change);

    /** Answers for a waiver that is new. */
    R waiverAdded(WaiverAdded change);

    /** Answers for a waiver that is gone. */
    R waiverDropped(WaiverDropped change);

    /** Answers for another text for the plan as a whole. */
    R partChanged(PartChanged change);

    /** Answers for a change of a block or week. */
    R block(BlockChange change);

    /** Answers for a change of a session. */
    R session(SessionChange change);
  }

  /** Returns the session that a change is about: as it is now, or as it was where it is gone. */
  static Optional<DatedSession> session(PlanChange change) {
    return change instanceof SessionChange about ? Optional.of(about.session()) : Optional.empty();
  }
}
