package gripwright.ability.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The comparative grading scale of Draper N et al. 2015, Sports Technol 8(3-4):88-94. Its male
 * ability bands end at French 7a (17), 8a (23) and 8c (27). From memory; UIAA and the boulder
 * columns are unverified.
 */
class IrcraTableTest {

  @ParameterizedTest
  @CsvSource({
    "FRENCH, 5+, 10", "FRENCH, 6a, 11", "FRENCH, 7a, 17", "FRENCH, 7a+, 18", "FRENCH, 8a, 23",
    "FRENCH, 8c, 27", "FRENCH, 8c+, 28", "FRENCH, 9b+, 32", "YDS, 5.10a, 10", "YDS, 5.12d, 21",
    "YDS, 5.15c, 32"
  })
  void frenchAndYosemite(GradeScale scale, String grade, int ircra) {
    assertEquals(ircra, Ability.of(scale, grade).ircra());
  }

  @ParameterizedTest
  @CsvSource({
    "UIAA, 8+, 18",
    "UIAA, 11, 29",
    "V, 6, 20",
    "V, 16, 30",
    "FONT, 7a, 20",
    "FONT, 8a, 25"
  })
  void unverifiedColumns(GradeScale scale, String grade, int ircra) {
    assertEquals(ircra, Ability.of(scale, grade).ircra());
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
