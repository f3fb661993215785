package gripwright.change;

import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;

/** A change of a session or of what is trained in it. */
public sealed interface SessionChange extends PlanChange {

  /** Returns the session: as it is now, or as it was where it is gone. */
  DatedSession session();

  @Override
  default LocalDate date() {
    return session().date();
  }

  /** Answers with what a visitor has for this kind of change. */
  <R> R accept(Visitor<R> visitor);

  @Override
  default <R> R accept(PlanChange.Visitor<R> visitor) {
    return visitor.session(this);
  }

  /**
   * A session is new.
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
   * A session is gone.
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
   * A session is on another day of its week.
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
   * A session takes another time though its exercises are the same: warm-up or rests changed.
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
   * An exercise is new in a session.
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
   * An exercise is gone from a session.
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
   * One answer for each kind of change of a session.
   *
   * @param <R> what is answered
   */
  interface Visitor<R> {
    /** Answers for a session that is new. */
    R sessionAdded(SessionAdded change);

    /** Answers for a session that is gone. */
    R sessionDropped(SessionDropped change);

    /** Answers for a session on another day. */
    R sessionMoved(SessionMoved change);

    /** Answers for a session that takes another time. */
    R sessionTimed(SessionTimed change);

    /** Answers for an exercise that is new. */
    R exerciseAdded(ExerciseAdded change);

    /** Answers for an exercise that is gone. */
    R exerciseDropped(ExerciseDropped change);

    /** Answers for one thing about an exercise that is another. */
    R exerciseChanged(ExerciseChanged change);
  }
}
