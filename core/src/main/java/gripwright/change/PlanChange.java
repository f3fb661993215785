package gripwright.change;

import gripwright.finding.Message;
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
 * week, exercises by what is trained. If a block or the whole plan was only moved, its sessions are
 * not listed one by one.
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

  /** Returns the day from which the change has an effect, in the later plan if possible. */
  LocalDate date();

  /** Returns which kind of change it is. */
  Kind kind();

  /** Returns what the visitor returns for this kind of change. */
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
   * The goal of the plan changed.
   *
   * @param date first day of the later plan
   * @param before the goal before; empty without one
   * @param after the goal now; empty without one
   */
  record GoalChanged(LocalDate date, Optional<Message> before, Optional<Message> after)
      implements PlanChange {
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
   * Tests were added, removed or moved.
   *
   * @param date the new day, or the old day if they were removed
   * @param before the old tests; empty if they were added
   * @param after the new tests; empty if they were removed
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

  /** A part of the plan as a whole that shows on no day by itself. */
  enum Part {
    /** Its title for people. */
    TITLE,
    /** Which grips the climbing ahead uses. */
    DEMAND,
    /** Rule sets that apply in addition to the built-in rules. */
    RULES,
    /** Greatest rise of the week's load. */
    WEEKLY_RISE,
    /** Weights for choosing grips. */
    WEIGHTS,
    /** Who supervises the sessions. */
    SUPERVISION
  }

  /**
   * A part of the plan as a whole changed.
   *
   * @param date first day of the later plan
   * @param part the part
   * @param before the old value; empty if it was not written
   * @param after the new value; empty if it is not written
   */
  record PartChanged(LocalDate date, Part part, Optional<Message> before, Optional<Message> after)
      implements PlanChange {
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
    /** Another goal. */
    GOAL_CHANGED,
    /** An added block. */
    BLOCK_ADDED,
    /** A removed block. */
    BLOCK_DROPPED,
    /** A block that begins earlier or later. */
    BLOCK_MOVED,
    /** A block that is longer or shorter. */
    BLOCK_RESIZED,
    /** A week that became an eased week or no longer is one. */
    WEEK_EASED,
    /** An added session. */
    SESSION_ADDED,
    /** A removed session. */
    SESSION_DROPPED,
    /** A session on another day. */
    SESSION_MOVED,
    /** A session with another duration. */
    SESSION_TIMED,
    /** An added exercise. */
    EXERCISE_ADDED,
    /** A removed exercise. */
    EXERCISE_DROPPED,
    /** A changed property of an exercise. */
    EXERCISE_CHANGED,
    /** A grip that starts in another week. */
    GRIP_STARTS,
    /** Tests that were added, removed or moved. */
    RETEST_CHANGED,
    /** An added waiver. */
    WAIVER_ADDED,
    /** A removed waiver. */
    WAIVER_DROPPED,
    /** Another text for the plan as a whole. */
    PART_CHANGED,
    /** A block that is written differently but trains the same. */
    BLOCK_REWRITTEN
  }

  /**
   * One method for each kind of change.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits a plan that begins on another day. */
    R planMoved(PlanMoved change);

    /** Visits another goal. */
    R goalChanged(GoalChanged change);

    /** Visits a grip that starts in another week. */
    R gripStarts(GripStarts change);

    /** Visits tests that were added, removed or moved. */
    R retestChanged(RetestChanged change);

    /** Visits an added waiver. */
    R waiverAdded(WaiverAdded change);

    /** Visits a removed waiver. */
    R waiverDropped(WaiverDropped change);

    /** Visits another text for the plan as a whole. */
    R partChanged(PartChanged change);

    /** Visits a change of a block or week. */
    R block(BlockChange change);

    /** Visits a change of a session. */
    R session(SessionChange change);
  }

  /** Returns the session of a change: the new one, or the old one if it was removed. */
  static Optional<DatedSession> session(PlanChange change) {
    return change instanceof SessionChange about ? Optional.of(about.session()) : Optional.empty();
  }
}
