package gripwright.language.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.language.finding.LocatedFinding;
import gripwright.wording.Wording;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Habits of coaches: each gives one finding that says what to write. */
class HabitTest {

  private static final String ATHLETE = "language 1\nathlete pia \"Pia\" {\n  %s\n}\n";
  private static final String PLAN =
      "language 1\nplan p \"P\" {\n  block b 2 weeks {\n    %s {\n      %s\n    }\n  }\n}\n";
  private static final String LOG = "language 1\nlog pia {\n  %s\n}\n";
  private static final String SESSION = "session s 2 per week";
  private static final String EXERCISE = "do tens on half-crimp edge 20 mm";

  private static void says(String text, String hint) {
    List<LocatedFinding> findings = Texts.parse(text).findings();
    Wording wording = Wording.english();
    assertEquals(
        1,
        findings.size(),
        () -> findings.stream().map(f -> wording.sentence(f.finding())).toList().toString());
    String advice = wording.hint(findings.get(0).finding()).orElseThrow();
    assertTrue(advice.contains(hint), () -> advice + " does not say " + hint);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          weight 60 kg       | `body-mass`
          bodyweight 60 kg   | `body-mass`
          ability V7         | `ability v 7`
          ability v7         | `ability v 7`
          ability 7c+        | `ability french 7c+`
          ability 5.12a      | `ability yds 5.12a`
          level french 7c    | `ability`
          born 1996\u201303\u201302 | `1996-03-02`
          born 1996\u20113\u20112   | `1996-03-02`
          available Monday 60 min   | `mon`
          injured ring a2 left from 2026-02-03 | `injury`
          """)
  void habitsInAnAthlete(String line, String hint) {
    says(ATHLETE.formatted(line), hint);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          session s 2x per week      | `2 per week`
          session s 2 x per week     | `2 per week`
          session s 3 times per week | `3 per week`
          session s 3 times a week   | `3 per week`
          session s twice a week     | `2 per week`
          session s 2/week           | `2 per week`
          session s 2x/week          | `2 per week`
          session s 2 per week at least 48 q apart | min, h, days
          session s weekly           | session strength 2 per week
          """)
  void habitsInSessionsPerWeek(String heading, String hint) {
    says(PLAN.formatted(heading, EXERCISE), hint);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          do tens on half-crimp 3x10 edge 20 mm       | with sets 3 on
          do tens on half-crimp edge 20 mm 3x10       | with sets 3 on
          do tens on half-crimp edge 20 mm 4x7s       | with sets 4 on
          do tens on half-crimp edge 20 mm 3 x 10     | with sets 3 on
          do tens 3x10 on half-crimp edge 20 mm       | with sets 3 on
          do tens with sets 3x10 on half-crimp edge 20 mm | with sets 3 on
          do tens on half crimp edge 20 mm            | `half-crimp`
          do max holds on half-crimp edge 20 mm       | `max-holds`
          do max holds with sets 3 on half-crimp edge 20 mm | `max-holds`
          do tens on half-crimp edge 20 mm rpe 8      | level effort 8 on
          do tens on half-crimp edge 20 mm at 80 %    | level 80 % max on
          do tens with level rpe 8 on half-crimp edge 20 mm | level effort 8 on
          do tens with level +10 kg on half-crimp edge 20 mm | level body-mass + 10 kg on
          do tens on half-crimp edge 20 mm +10 kg     | level body-mass + 10 kg on
          do tens on half-crimp edge 20 mm -5 lbs     | level body-mass - 5 lb on
          do tens on half-crimp edge 20 mm with sets 3 | `with`
          do tens half-crimp edge 20 mm               | write it like this
          on tue                                      | `prefer`
          """)
  void habitsInAnExercise(String line, String hint) {
    if (hint.equals("`with`")) {
      says(PLAN.formatted(SESSION, line), "with level 80 % max, sets 4 on half-crimp");
    } else {
      says(PLAN.formatted(SESSION, line), hint);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2027-03-03 ill "fever"                       | `skipped strength "ill"`
          2027-03-03 sick                              | `skipped strength "sick"`
          2027-03-03 weight 60 kg                      | `body-mass`
          2027\u201303\u201303 body-mass 60 kg         | `2027-03-03`
          2027-03-06 test half crimp edge 20 mm hold 7 s load 80 kg | `half-crimp`
          2027-03-06 missed strength                   | `skipped`
          2027-03-06 climbed hard 60 min               | `climbing`
          """)
  void habitsInALog(String line, String hint) {
    says(LOG.formatted(line), hint);
  }
}
