package gripwright.diff;

import gripwright.finding.Message;
import java.util.List;

/**
 * A change of an athlete's data, which may change sessions and loads.
 *
 * @param athlete name of the athlete
 * @param fact the kind of data
 * @param before the old value; for a list only what was removed; empty if there was none
 * @param after the new value; for a list only what was added; empty if there is none
 */
public record FactChange(String athlete, Fact fact, List<Message> before, List<Message> after) {

  /** Copies the lists. */
  public FactChange {
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  /** Kinds of data about an athlete. */
  public enum Fact {
    /** The displayed name. */
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
    /** Edges, and how load is added and removed. */
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
