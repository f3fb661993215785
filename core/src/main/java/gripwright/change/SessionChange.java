package gripwright.change;

import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;

/** A change of a session or of its exercises. */
public sealed interface SessionChange extends PlanChange {

  /** Returns the session: the new one, or the old one if it was removed. */
  DatedSession session();

  @Override
  default LocalDate date() {
    return session().date();
  }

  /** Returns what the visitor returns for this kind of change. */
  <R> R accept(Visitor<R> visitor);

  @Override
  default <R> R accept(PlanChange.Visitor<R> visitor) {
    return visitor.session(this);
  }

  /**
   * A session was added.
   *
   * @param session the session
   */
  record SessionAdded(DatedSession session) implements SessionChange {
    @Override
    public Kind kind() {
      return Kind.SESSION_ADDED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.sessionAdded(this);
    }
  }

  /**
   * A session was removed.
   *
   * @param session the session as it was
   */
  record SessionDropped(DatedSession session) implements SessionChange {
    @Override
    public Kind kind() {
      return Kind.SESSION_DROPPED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.sessionDropped(this);
    }
  }

  /**
   * A session is on another day of its week, or at another time of its day.
   *
   * @param before as it was
   * @param after as it is
   */
  record SessionMoved(DatedSession before, DatedSession after) implements SessionChange {
    @Override
    public DatedSession session() {
      return after;
    }

    @Override
    public Kind kind() {
      return Kind.SESSION_MOVED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.sessionMoved(this);
    }
  }

  /**
   * A session's duration changed but not its exercises: warm-up or rests changed.
   *
   * @param before as it was
   * @param after as it is
   */
  record SessionTimed(DatedSession before, DatedSession after) implements SessionChange {
    @Override
    public DatedSession session() {
      return after;
    }

    @Override
    public Kind kind() {
      return Kind.SESSION_TIMED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.sessionTimed(this);
    }
  }

  /**
   * An exercise was added to a session.
   *
   * @param session the session now
   * @param exercise the exercise
   */
  record ExerciseAdded(DatedSession session, PlannedExercise exercise) implements SessionChange {
    @Override
    public Kind kind() {
      return Kind.EXERCISE_ADDED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.exerciseAdded(this);
    }
  }

  /**
   * An exercise was removed from a session.
   *
   * @param session the session now
   * @param exercise the exercise as it was
   */
  record ExerciseDropped(DatedSession session, PlannedExercise exercise) implements SessionChange {
    @Override
    public Kind kind() {
      return Kind.EXERCISE_DROPPED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.exerciseDropped(this);
    }
  }

  /**
   * A property of an exercise changed.
   *
   * @param session the session now
   * @param before the exercise as it was
   * @param after the exercise as it is
   * @param measure what changed; for a level, both exercises are as planned, whatever was trained
   */
  record ExerciseChanged(
      DatedSession session, PlannedExercise before, PlannedExercise after, Measure measure)
      implements SessionChange {
    @Override
    public Kind kind() {
      return Kind.EXERCISE_CHANGED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.exerciseChanged(this);
    }
  }

  /** The properties of an exercise. */
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
    /** Load or time of some holds, if no other measure shows it. */
    COURSE,
    /** Whether sets or times are bounds, or a hold goes to failure. */
    BOUND,
    /** Whether it is a warm-up. */
    WARM_UP,
    /** Whose rehabilitation plan it follows. */
    REHABILITATION,
    /** Place in the order of training. */
    ORDER,
    /**
     * The level after progression if the load stays the same, because the equipment can't build the
     * step.
     */
    LEVEL,
    /** Whether it counts as hard, if everything else is the same. */
    HARDNESS
  }

  /**
   * One method for each kind of change of a session.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits an added session. */
    R sessionAdded(SessionAdded change);

    /** Visits a removed session. */
    R sessionDropped(SessionDropped change);

    /** Visits a session on another day. */
    R sessionMoved(SessionMoved change);

    /** Visits a session with another duration. */
    R sessionTimed(SessionTimed change);

    /** Visits an added exercise. */
    R exerciseAdded(ExerciseAdded change);

    /** Visits a removed exercise. */
    R exerciseDropped(ExerciseDropped change);

    /** Visits a changed property of an exercise. */
    R exerciseChanged(ExerciseChanged change);
  }
}
