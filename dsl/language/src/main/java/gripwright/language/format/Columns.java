package gripwright.language.format;

import gripwright.language.syntax.NodeKind;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * Where what follows the first word of a line begins. The column is fixed for each kind of block: a
 * new line never moves its neighbours, and a changed load stays a change of one line.
 */
final class Columns {

  private static final Map<NodeKind, Integer> WIDTHS =
      new EnumMap<>(
          Map.of(
              NodeKind.ATHLETE_BODY, 11,
              NodeKind.HAND_BODY, 10,
              NodeKind.EQUIPMENT_BODY, 9,
              NodeKind.GRIP_BODY, 9,
              NodeKind.PROTOCOL_BODY, 7,
              NodeKind.PLAN_BODY, 9,
              NodeKind.RULE_BODY, 9,
              NodeKind.COMPARE_BODY, 9));

  /** Statements that are read as a sentence, not as a label and its value. */
  private static final Set<NodeKind> SENTENCES =
      EnumSet.of(
          NodeKind.HOLD_STEP,
          NodeKind.REST_STEP,
          NodeKind.RETEST,
          NodeKind.WAIVE,
          NodeKind.REST_BETWEEN,
          NodeKind.NEVER_WAIVED);

  private Columns() {}

  /**
   * Returns how far the second word of a statement stands from the first one's beginning, in
   * characters; 0 if one space follows the first word, whatever it is.
   *
   * @param block what the statement stands in
   * @param statement what it is
   */
  static int of(NodeKind block, NodeKind statement) {
    return SENTENCES.contains(statement) ? 0 : WIDTHS.getOrDefault(block, 0);
  }
}
