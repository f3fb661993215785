package gripwright.rule;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.subject;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.expression.Expression;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.quantity.Unit;
import org.junit.jupiter.api.Test;

/** Which pairs of sessions are checked: up to 14 days apart, or as far as a rule's own gap. */
class PairReachTest {

  private static final Expression PAIR = subject(Kind.PAIR);
  private static final Expression GAP = PAIR.get("gap");
  private static final Expression EASY = PAIR.get("shared-hard-fingers").not();

  /** Returns whether two hard sessions, this many days apart, break a rule. */
  private static boolean broken(int days, Expression require) {
    Rule rule =
        Rule.advice("pairs", Scope.PAIR_OF_SESSIONS)
            .require(require)
            .message("two that do not go together")
            .build();
    return new Winter()
        .rules("mine")
        .session(0, line(HALF_CRIMP, 85))
        .session(days, line(HALF_CRIMP, 85))
        .codes(RuleSet.of("mine", rule))
        .contains("advice rule.pairs");
  }

  private static Expression days(double count) {
    return amount(count, Unit.DAY);
  }

  @Test
  void pairsAreCheckedUpToTheGapOfTheRule() {
    assertEquals(true, broken(16, GAP.atLeast(days(20))));
    assertEquals(false, broken(20, GAP.atLeast(days(20))));
    assertEquals(true, broken(20, GAP.moreThan(days(20))));
    assertEquals(true, broken(16, EASY.or(GAP.atLeast(days(20)))));
    assertEquals(true, broken(16, GAP.atLeast(days(20)).or(EASY)));
  }

  @Test
  void pairsOfOtherRulesAreCheckedForFourteenDays() {
    assertEquals(true, broken(10, GAP.atMost(days(2))));
    assertEquals(true, broken(10, GAP.lessThan(days(2))));
    assertEquals(true, broken(14, EASY));
    assertEquals(false, broken(15, EASY));
    assertEquals(
        true,
        broken(10, PAIR.get("earlier").get("minutes").atLeast(amount(1, Unit.HOUR))),
        "a time that is not the gap");
  }
}
