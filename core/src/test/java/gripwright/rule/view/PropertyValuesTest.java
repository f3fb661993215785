package gripwright.rule.view;

import static gripwright.rule.Winter.BACK_TWO;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.line;
import static gripwright.rule.view.PropertyReader.all;
import static gripwright.rule.view.PropertyReader.value;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.expression.Kind;
import gripwright.rule.Winter;
import org.junit.jupiter.api.Test;

/** What every property says of exercises, sessions and grips of one plan. */
class PropertyValuesTest {

  private final PlanView plan = PropertyReader.plan();

  @Test
  void anExercise() {
    assertEquals(
        """
        grip first-two
        edge 15
        hands left
        lifting no
        protocol single-holds
        level 0.5
        total-load 50
        added-load -10
        load 1000
        time-under-load 20
        impulse 9806.65
        sets 2
        repetitions 1
        hold 10
        rest 0
        set-rest 180
        order 1
        hard no
        to-failure no
        warm-up no
        known-light no
        light-load -
        test no
        tested no
        logged no
        since-test -
        end-reserve -
        rehabilitation no
        meets-needs yes
        familiar 18408600
        uses-injured-finger no
        uses-painful-finger no
        uses-growing-joint-in-pain no
        hurts-too-much no
        since-clearance -
        level-before -
        since-pain -
        level-since-pain -
        fingers left index, left middle
        session strength 4
        week week 1
        block base
        plan winter
        athlete tove on 2027-01-04
        date 2027-01-04
        """,
        all(Kind.EXERCISE, plan.exercises.get(0)));
  }

  @Test
  void anExerciseAfterAnInjuryAndWithPain() {
    assertEquals(
        """
        grip half-crimp
        edge 20
        hands both
        lifting no
        protocol single-holds
        level 0.5
        total-load 50
        added-load -10
        load 1500
        time-under-load 30
        impulse 14709.97
        sets 3
        repetitions 1
        hold 10
        rest 0
        set-rest 180
        order 1
        hard no
        to-failure no
        warm-up no
        known-light no
        light-load 36.6
        test no
        tested no
        logged no
        since-test -
        end-reserve -
        rehabilitation yes
        meets-needs yes
        familiar 0
        uses-injured-finger no
        uses-painful-finger yes
        uses-growing-joint-in-pain no
        hurts-too-much yes
        since-clearance 1036800
        level-before 0.4
        since-pain -
        level-since-pain -
        fingers left index, left middle, left ring, left little, right index, right \
        middle, right ring, right little
        session strength 18
        week week 3
        block base
        plan winter
        athlete tove on 2027-01-18
        date 2027-01-18
        """,
        all(Kind.EXERCISE, plan.exercises.get(5)));
  }

  @Test
  void aSession() {
    assertEquals(
        """
        name power
        what training
        date 2027-01-08
        weekday fri
        place\s
        minutes 2400
        intensity high
        hard yes
        eased no
        load 4350
        time-under-load 60
        end-reserve -
        most-holds 6
        most-time-under-load 60
        body-mass 60
        warm-up -
        hard-efforts -
        exercises half-crimp 8, first-two 8
        fingers left index, left middle, left ring, left little, right index, right \
        middle, right ring, right little
        week week 1
        block base
        plan winter
        athlete tove on 2027-01-08
        """,
        all(Kind.SESSION, plan.sessions.get(1)));
  }

  @Test
  void anEasedSession() {
    assertEquals(
        """
        name strength
        what training
        date 2027-01-13
        weekday wed
        place\s
        minutes 2400
        intensity low
        hard no
        eased yes
        load 1200
        time-under-load 30
        end-reserve -
        most-holds 3
        most-time-under-load 30
        body-mass 60
        warm-up -
        hard-efforts -
        exercises half-crimp 13
        fingers left index, left middle, left ring, left little, right index, right \
        middle, right ring, right little
        week week 2
        block base
        plan winter
        athlete tove on 2027-01-13
        """,
        all(Kind.SESSION, plan.sessions.get(2)));
  }

  @Test
  void aTestInAPair() {
    assertEquals(
        """
        name retest
        what retest
        date 2027-01-24
        weekday sun
        place\s
        minutes -
        intensity high
        hard yes
        eased no
        load 0
        time-under-load 0
        end-reserve -
        most-holds 0
        most-time-under-load 0
        body-mass -
        warm-up -
        hard-efforts -
        exercises\s
        fingers\s
        week week 3
        block base
        plan winter
        athlete tove on 2027-01-24
        """,
        all(Kind.SESSION, plan.events.get(5)));
  }

  @Test
  void aPairOfSessions() {
    assertEquals(
        """
        earlier strength 4
        later power 8
        gap 345600
        pause 345600
        shared-fingers yes
        shared-hard-fingers no
        plan winter
        athlete tove on 2027-01-08
        """,
        all(Kind.PAIR, new PairView(plan.events.get(0), plan.events.get(1))));
  }

  @Test
  void aGrip() {
    assertEquals(
        """
        name first-two
        family split
        structure split
        fully-crimped no
        fingers 2
        uses-index yes
        uses-middle yes
        uses-ring no
        uses-little no
        """,
        all(Kind.GRIP, FRONT_TWO));
  }

  @Test
  void propertiesOfOtherExercises() {
    assertEquals("yes", value(Kind.EXERCISE, plan.exercises.get(1), "uses-injured-finger"));
    assertEquals("yes", value(Kind.EXERCISE, plan.exercises.get(3), "hard"));
    assertEquals("yes", value(Kind.ATHLETE, plan.athlete, "injured"));
    assertEquals("60", value(Kind.ATHLETE, plan.athlete, "body-mass"));
    SessionView power = plan.sessions.get(1);
    SessionView test = plan.events.get(5);
    assertEquals("yes", value(Kind.PAIR, new PairView(power, test), "shared-hard-fingers"));
    assertEquals("tove on 2027-01-24", value(Kind.PAIR, new PairView(power, test), "athlete"));
    PlanView split =
        Views.of(new Winter().session(0, line(FRONT_TWO, 50)).session(2, line(BACK_TWO, 50)));
    PairView apart = new PairView(split.sessions.get(0), split.sessions.get(1));
    assertEquals("no", value(Kind.PAIR, apart, "shared-fingers"));
    assertEquals("base", value(Kind.SESSION, plan.events.get(2), "block"));
  }

  private static String level(Winter.Line line) {
    PlanView plan = Views.of(new Winter().session(0, line));
    return value(Kind.EXERCISE, plan.exercises.get(0), "level");
  }

  @Test
  void levelIsTheHigherOfWrittenLevelAndLoadShare() {
    assertEquals("0.55", level(line(HALF_CRIMP, 50).lifted(55)));
    assertEquals("0.5", level(line(HALF_CRIMP, 50).lifted(49)));
    assertEquals("0.5", level(line(HALF_CRIMP, 50).lifted(55).untested()));
    assertEquals("0.5", level(line(HALF_CRIMP, 50).inKilograms()));
    assertEquals("0.5", level(line(HALF_CRIMP, 50).mixed().untested()));
    assertEquals("-", level(line(HALF_CRIMP, 50).inKilograms().untested()));
  }
}
