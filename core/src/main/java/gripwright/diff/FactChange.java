package gripwright.diff;

import gripwright.finding.Message;
import java.util.List;

/**
 * Something that is known of an athlete changed: a cause, where sessions and loads follow from it.
 *
 * @param athlete name of the athlete
 * @param fact what
 * @param before how it was; of a list only what is gone; empty if nothing was
 * @param after how it is; of a list only what is new; empty if nothing is
 */
public record FactChange(String athlete, Fact fact, List<Message> before, List<Message> after) {

  /** Copies the lists. */
  public FactChange {
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  /** What is known of an athlete. */
  public enum Fact {
    /** The name people use. */
    NAME,
    /** Date of birth. */
    BORN,
    /** Body mass, as declared. */
    BODY_MASS,
    /** Structured finger training so far. */
    TRAINED,
    /** Level on a published scale. */
    ABILITY,
    /** Sex, for the norms that differ by it. */
    SEX,
    /** Measures of the left hand. */
    LEFT_HAND,
    /** Measures of the right hand. */
    RIGHT_HAND,
    /** Grips already used in training. */
    FAMILIAR,
    /** Injuries. */
    INJURIES,
    /** Time to train by weekday. */
    AVAILABLE,
    /** Regular climbing. */
    CLIMBING,
    /** Days away. */
    AWAY,
    /** Edges, and how load is added and taken off. */
    EQUIPMENT,
    /** Tests in the log. */
    TESTS,
    /** Body masses in the log. */
    WEIGHED,
    /** Sessions and climbing in the log, done and skipped. */
    TRAINING,
    /** Pain in the log. */
    PAIN
  }
}
