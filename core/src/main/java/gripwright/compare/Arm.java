package gripwright.compare;

import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import java.util.Objects;

/**
 * One of the things that are compared. Immutable.
 *
 * @param name kebab-case, unique in a comparison
 * @param content what is done in it
 */
public record Arm(String name, Content content) {
  /** Refuses null. */
  public Arm {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(content, "content");
  }

  /** Returns an arm of one exercise in every session. */
  public static Arm of(String name, Exercise exercise) {
    return new Arm(name, new Trained(exercise));
  }

  /** Returns an arm that follows a plan, with the plan's own weeks. */
  public static Arm of(String name, Plan plan) {
    return new Arm(name, new Planned(plan));
  }

  /** Returns a control arm without training. */
  public static Arm withoutTraining(String name) {
    return new Arm(name, new NoTraining());
  }

  /** What is done in an arm. */
  public sealed interface Content {
    /** Returns what the visitor returns for this kind. */
    <R> R accept(Visitor<R> visitor);

    /**
     * One method for each kind.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> {
      /** Visits one exercise. */
      R trained(Trained content);

      /** Visits a plan. */
      R planned(Planned content);

      /** Visits a control. */
      R noTraining(NoTraining content);
    }
  }

  /**
   * One exercise in every session.
   *
   * @param exercise one grip, without rehabilitation
   */
  public record Trained(Exercise exercise) implements Content {
    /**
     * Checks the exercise.
     *
     * @throws IllegalArgumentException if it chooses among grips or is part of a rehabilitation
     */
    public Trained {
      Objects.requireNonNull(exercise, "exercise");
      if (exercise.target().grips().size() != 1) {
        throw new IllegalArgumentException("an arm has one grip: " + exercise);
      }
      if (exercise.rehabilitation().isPresent()) {
        throw new IllegalArgumentException("rehabilitation is not compared: " + exercise);
      }
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.trained(this);
    }
  }

  /**
   * A plan with its own weeks, whoever it is for.
   *
   * @param plan the plan
   */
  public record Planned(Plan plan) implements Content {
    /** Refuses null. */
    public Planned {
      Objects.requireNonNull(plan, "plan");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.planned(this);
    }
  }

  /** A control: nothing is trained. */
  public record NoTraining() implements Content {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.noTraining(this);
    }
  }
}
