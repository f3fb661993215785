package gripwright.rule.view;

import static gripwright.rule.Winter.BACK_TWO;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.rule.Winter;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What rules see of sessions and of days of climbing. */
class SessionViewTest {

  @Test
  void dayOfClimbingBelongsToItsWeek() {
    PlanView plan = Views.of(new Winter().climbing(8));
    assertEquals(Winter.weekPath(2).then("date", "2027-01-12"), plan.events.get(0).path);
  }

  @Test
  void aSessionUsesTheFingersOfAllItsExercises() {
    PlanView plan =
        Views.of(
            new Winter()
                .session(0, line(FRONT_TWO, 85), line(BACK_TWO, 85))
                .session(3, line(BACK_TWO, 85))
                .session(5, line(FRONT_TWO, 85)));
    for (int other : List.of(1, 2)) {
      PairView pair = new PairView(plan.sessions.get(0), plan.sessions.get(other));
      assertEquals(true, pair.sharedFingers());
      assertEquals(true, pair.sharedHardFingers());
    }
    assertEquals(false, new PairView(plan.sessions.get(1), plan.sessions.get(2)).sharedFingers());
  }
}
