package gripwright.expression;

import gripwright.finding.Message;
import java.util.Locale;
import java.util.Optional;

/**
 * A comparison that a broken requirement owes to, with amounts in the units of the rule. A breach
 * of a rule carries those it owes to as its argument {@code missing}.
 *
 * @param of the one among several that misses the limit by most, such as {@code left ring finger};
 *     empty where the rule speaks of no several things
 * @param what the property that was compared, as a rule names it, such as {@code trained}; empty
 *     where something was worked out from several
 * @param was what there is, such as {@code 14 months}, or {@code 12.4 % above recent-load} where
 *     the limit is a share of something
 * @param bound on which side of the limit it should be
 * @param limit what it was compared with, such as {@code 24 months}
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

    /** Returns the word by which wording finds it, such as {@code at-most}. */
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
