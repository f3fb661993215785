package gripwright.language.format;

import gripwright.language.syntax.NodeKind;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * The column of the second word of a line. It is fixed for each kind of block: a new line never
 * moves its neighbours, and a changed load changes one line only.
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
              NodeKind.TEST_BODY, 9,
              NodeKind.RULE_BODY, 9,
              NodeKind.COMPARE_BODY, 9,
              NodeKind.COHORT_BODY, 17));

  /** Statements written as a sentence, not as a label and a value. */
  private static final Set<NodeKind> SENTENCES =
      EnumSet.of(
          NodeKind.HOLD_STEP,
          NodeKind.REST_STEP,
          NodeKind.RETEST,
          NodeKind.EXERCISE,
          NodeKind.TEST_HEADING,
          NodeKind.TEST,
          NodeKind.ATTEMPTS_COUNT,
          NodeKind.ONLY_ON,
          NodeKind.ONLY_AT,
          NodeKind.SHARE_DAYS,
          NodeKind.NO_TRAINING,
          NodeKind.WAIVE,
          NodeKind.REST_BETWEEN,
          NodeKind.SUPERVISED,
          NodeKind.ARM,
          NodeKind.MATCH_EACH,
          NodeKind.HAND_BY_SEX,
          NodeKind.NEVER_WAIVED);

  private Columns() {}

  /**
   * Returns the column of the second word of a statement, counted from the beginning of the first,
   * in characters; 0 if it follows after one space.
   *
   * @param block kind of the enclosing block
   * @param statement kind of the statement
   */
  static int of(NodeKind block, NodeKind statement) {
    return SENTENCES.contains(statement) ? 0 : WIDTHS.getOrDefault(block, 0);
  }
}
