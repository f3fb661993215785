package gripwright.expression;

import gripwright.finding.Message;
import java.util.Locale;
import java.util.Optional;

/**
 * A comparison that makes a requirement fail, with amounts in the units of the rule. A breach of a
 * rule has them as its argument {@code missing}.
 *
 * @param of the element that violates the limit most, such as {@code left ring finger}; empty if
 *     the rule has no collection
 * @param what the compared property, as a rule names it, such as {@code trained}; empty if it was
 *     calculated from several
 * @param was the actual value, such as {@code 14 months}, or {@code 12.4 % above recent-load} if
 *     the limit is a share of another property
 * @param bound the required side of the limit
 * @param limit the limit, such as {@code 24 months}
 */
public record Shortfall(
    Optional<Message> of, String what, Message was, Bound bound, Message limit) {

  /** On which side of a limit something should be. */
  public enum Bound {
    /** Less than the limit. */
    UNDER,
    /** The limit or less. */
    AT_MOST,
    /** More than the limit. */
    OVER,
    /** The limit or more. */
    AT_LEAST,
    /** The limit itself. */
    EXACTLY,
    /** Anything else. */
    OTHER_THAN,
    /** Between two limits or at one of them. */
    WITHIN;

    /** Returns its word in keys of the wording, such as {@code at-most}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Bound of(Condition.Relation relation) {
      return switch (relation) {
        case LESS -> UNDER;
        case AT_MOST -> AT_MOST;
        case GREATER -> OVER;
        case AT_LEAST -> AT_LEAST;
        case EQUAL -> EXACTLY;
        case NOT_EQUAL -> OTHER_THAN;
      };
    }
  }
}
