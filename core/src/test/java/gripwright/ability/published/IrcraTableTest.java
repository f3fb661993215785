package gripwright.ability.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * ircra.*.french: the comparative grading scale of Draper N et al. 2015, Sports Technol
 * 8(3-4):88-94. Its male ability bands end at French 7a (17), 8a (23) and 8c (27). From memory;
 * UIAA and the boulder columns are unverified.
 */
class IrcraTableTest {

  /** Both columns whole: one grade a number, and nothing else. */
  @Test
  void frenchAndYosemiteStepByStep() {
    assertColumn(
        GradeScale.FRENCH,
        "1 2 2+ 3- 3 3+ 4 4+ 5 5+ 6a 6a+ 6b 6b+ 6c 6c+ 7a 7a+ 7b 7b+ 7c 7c+ 8a 8a+ 8b 8b+ 8c 8c+"
            + " 9a 9a+ 9b 9b+");
    assertColumn(
        GradeScale.YDS,
        "5.1 5.2 5.3 5.4 5.5 5.6 5.7 5.8 5.9 5.10a 5.10b 5.10c 5.10d 5.11a 5.11b 5.11c 5.11d 5.12a"
            + " 5.12b 5.12c 5.12d 5.13a 5.13b 5.13c 5.13d 5.14a 5.14b 5.14c 5.14d 5.15a 5.15b"
            + " 5.15c");
  }

  private static void assertColumn(GradeScale scale, String column) {
    List<String> grades = List.of(column.split(" ", -1));
    assertEquals(grades, Ability.grades(scale));
    for (int i = 0; i < grades.size(); i++) {
      assertEquals(i + 1, Ability.of(scale, grades.get(i)).ircra(), grades.get(i));
      assertEquals(Optional.of(grades.get(i)), ircra(i + 1).on(scale));
    }
  }

  private static Ability ircra(int number) {
    return Ability.of(GradeScale.IRCRA, Integer.toString(number));
  }

  @ParameterizedTest
  @CsvSource({
    "UIAA, 8+, 18",
    "UIAA, 11, 29",
    "V, 0, 14",
    "V, 3, 17",
    "V, 4, 18",
    "V, 6, 20",
    "V, 16, 30",
    "V, 17, 31",
    "FONT, 4, 14",
    "FONT, 4+, 14",
    "FONT, 5, 15",
    "FONT, 5+, 16",
    "FONT, 6a, 17",
    "FONT, 6a+, 17",
    "FONT, 6b, 18",
    "FONT, 7a, 20",
    "FONT, 8a, 25",
    "FONT, 8c+, 30",
    "FONT, 9a, 31"
  })
  void unverifiedColumns(GradeScale scale, String grade, int ircra) {
    assertEquals(ircra, Ability.of(scale, grade).ircra());
  }

  /** A letter that is missing is the easiest; French letters below 6 are half grades. */
  @ParameterizedTest
  @CsvSource({
    "FRENCH, 4a, 4",
    "FRENCH, 4b, 4",
    "FRENCH, 4c, 4+",
    "FRENCH, 5a, 5",
    "FRENCH, 5b, 5",
    "FRENCH, 5c, 5+",
    "YDS, 5.10, 5.10a",
    "YDS, 5.11, 5.11a",
    "YDS, 5.12, 5.12a",
    "YDS, 5.13, 5.13a",
    "YDS, 5.14, 5.14a",
    "YDS, 5.15, 5.15a"
  })
  void otherWaysToWriteAGrade(GradeScale scale, String written, String grade) {
    Ability ability = Ability.of(scale, written);
    assertEquals(written, ability.grade());
    assertEquals(Ability.of(scale, grade).ircra(), ability.ircra());
    assertEquals(Optional.of(grade), ability.on(scale));
    assertEquals(false, Ability.grades(scale).contains(written));
  }

  @ParameterizedTest
  @CsvSource({"V, 18", "FONT, 3", "FONT, 9a+", "FRENCH, 6", "FRENCH, 5d", "YDS, 5.16", "YDS, 5.0"})
  void whatIsNoGrade(GradeScale scale, String written) {
    assertEquals(Optional.empty(), Ability.find(scale, written));
  }

  @ParameterizedTest
  @EnumSource(GradeScale.class)
  void everyGradeFindsItsNumberAndOrderIsKept(GradeScale scale) {
    List<String> grades = Ability.grades(scale);
    int last = 0;
    for (String grade : grades) {
      int number = Ability.of(scale, grade).ircra();
      assertEquals(true, number >= last, grade);
      last = number;
    }
  }

  @Test
  void aBoulderGradeIsNotTheRouteGradeOfTheSameName() {
    assertEquals(25, Ability.of(GradeScale.FONT, "8A").ircra());
    assertEquals(23, Ability.of(GradeScale.FRENCH, "8a").ircra());
  }
}
