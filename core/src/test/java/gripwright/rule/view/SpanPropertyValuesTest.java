package gripwright.rule.view;

import static gripwright.rule.Winter.MONDAY;
import static gripwright.rule.view.PropertyReader.all;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.expression.Kind;
import org.junit.jupiter.api.Test;

/** What every property says of days, weeks, blocks, an athlete and fingers of one plan. */
class SpanPropertyValuesTest {

  private final PlanView plan = PropertyReader.plan();

  @Test
  void aDay() {
    assertEquals(
        """
        date 2027-01-08
        weekday fri
        hard yes
        retest no
        climbing no
        minutes 2400
        load 4350
        time-under-load 60
        other-sessions 0
        sessions-in-7 2
        planned-sessions 1
        planned-in-7 2
        hand-holds 6
        hand-holds-above-80 3
        hand-time-at-80 30
        hand-time-at-60 60
        grip-time-at-60 30
        hand-time-at-40 60
        hand-sets-at-60 6
        days-at-80 1
        days-at-70 1
        rest-days 6
        until-fresh -
        sessions power 8
        exercises half-crimp 8, first-two 8
        fingers left index, left middle, left ring, left little, right index, right \
        middle, right ring, right little
        week week 1
        block base
        plan winter
        athlete tove on 2027-01-08
        """,
        all(Kind.DAY, plan.days.get(1)));
  }

  @Test
  void aDayOfClimbing() {
    assertEquals(
        """
        date 2027-01-10
        weekday sun
        hard yes
        retest no
        climbing yes
        minutes 0
        load 0
        time-under-load 0
        other-sessions 0
        sessions-in-7 2
        planned-sessions 0
        planned-in-7 2
        hand-holds 0
        hand-holds-above-80 0
        hand-time-at-80 0
        hand-time-at-60 0
        grip-time-at-60 0
        hand-time-at-40 0
        hand-sets-at-60 0
        days-at-80 1
        days-at-70 1
        rest-days 5
        until-fresh -
        sessions\s
        exercises\s
        fingers\s
        week week 1
        block base
        plan winter
        athlete tove on 2027-01-10
        """,
        all(Kind.DAY, plan.days.get(2)));
  }

  @Test
  void aDayOfTests() {
    assertEquals(
        """
        date 2027-01-24
        weekday sun
        hard yes
        retest yes
        climbing no
        minutes 0
        load 0
        time-under-load 0
        other-sessions 0
        sessions-in-7 1
        planned-sessions 0
        planned-in-7 1
        hand-holds 0
        hand-holds-above-80 0
        hand-time-at-80 0
        hand-time-at-60 0
        grip-time-at-60 0
        hand-time-at-40 0
        hand-sets-at-60 0
        days-at-80 1
        days-at-70 1
        rest-days 6
        until-fresh -
        sessions\s
        exercises\s
        fingers\s
        week week 3
        block base
        plan winter
        athlete tove on 2027-01-24
        """,
        all(Kind.DAY, plan.days.get(5)));
  }

  @Test
  void theFirstWeek() {
    assertEquals(
        """
        number 1
        block-week 1
        from 2027-01-04
        eased no
        away no
        load 6250
        time-under-load 110
        minutes 4800
        previous -
        recent-load -
        one-step no
        load-before -
        starting-load -
        more-sessions -
        other-sessions 0
        sessions strength 4, power 8
        exercises first-two 4, half-crimp 4, half-crimp 8, first-two 8
        fingers left index, left middle, left ring, left little, right index, right \
        middle, right ring, right little
        days 4, 8, 10
        block base
        plan winter
        athlete tove on 2027-01-04
        """,
        all(Kind.WEEK, plan.weeks.get(0)));
  }

  @Test
  void anEasedWeek() {
    assertEquals(
        """
        number 2
        block-week 2
        from 2027-01-11
        eased yes
        away no
        load 1200
        time-under-load 30
        minutes 2400
        previous week 1
        recent-load 6250
        one-step no
        load-before -
        starting-load -
        more-sessions -
        other-sessions 0
        sessions strength 13
        exercises half-crimp 13
        fingers left index, left middle, left ring, left little, right index, right \
        middle, right ring, right little
        days 13
        block base
        plan winter
        athlete tove on 2027-01-11
        """,
        all(Kind.WEEK, plan.weeks.get(1)));
  }

  @Test
  void aBlock() {
    assertEquals(
        """
        name base
        length 2419200
        load 8950
        time-under-load 170
        weeks week 1, week 2, week 3, week 4
        sessions strength 4, power 8, strength 13, strength 18
        exercises first-two 4, half-crimp 4, half-crimp 8, first-two 8, half-crimp 13, \
        half-crimp 18
        fingers left index, left middle, left ring, left little, right index, right \
        middle, right ring, right little
        plan winter
        athlete tove on 2027-01-04
        """,
        all(Kind.BLOCK, plan.blocks.get(0)));
  }

  @Test
  void thePlan() {
    assertEquals(
        """
        name winter
        from 2027-01-04
        towards -
        length 4838400
        weekly-rise 0.05
        tests-under-16 0
        hard-work-under-16 0
        weeks-without-ease 0
        longest-climbing 0
        hard-climbing-days 0
        hard-on-injury 0
        load 8950
        time-under-load 170
        blocks base, build
        weeks week 1, week 2, week 3, week 4, week 5, week 6, week 7, week 8
        days 4, 8, 10, 13, 18, 24
        sessions strength 4, power 8, strength 13, strength 18
        exercises first-two 4, half-crimp 4, half-crimp 8, first-two 8, half-crimp 13, \
        half-crimp 18
        fingers left index, left middle, left ring, left little, right index, right \
        middle, right ring, right little
        athlete tove on 2027-01-04
        """,
        all(Kind.PLAN, plan));
  }

  @Test
  void theAthleteOnADay() {
    assertEquals(
        """
        name tove
        age 998899838.71
        trained 211075200
        ability 26
        body-mass 61
        sex female
        hard-climbing-days 0
        hard-climbing-time 0
        injured no
        """,
        all(Kind.ATHLETE, plan.athleteOn(MONDAY.plusDays(8))));
  }

  @Test
  void aFingerOfAWeek() {
    assertEquals(
        """
        name ring
        hand left
        time-under-load 30
        impulse 1857.32
        a2-exposure 5519.54
        a4-exposure 2135.82
        recent-time-under-load 60
        recent-impulse 3343.18
        recent-a2-exposure 9935.18
        recent-a4-exposure 3844.48
        """,
        all(Kind.FINGER, plan.weeks.get(2).fingers().get(2)));
  }
}
