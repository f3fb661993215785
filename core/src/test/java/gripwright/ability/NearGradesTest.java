package gripwright.ability;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

final class NearGradesTest {

  @Test
  void gradesOnBothSidesAreNear() {
    assertEquals(List.of("7c", "7c+", "8a", "8a+"), Ability.near(GradeScale.FRENCH, "7e"));
    assertEquals(List.of("7c", "7c+", "8a", "8a+"), Ability.near(GradeScale.FRENCH, "7F+"));
    assertEquals(
        List.of("5.9", "5.10a", "5.10b", "5.10c"), Ability.near(GradeScale.YDS, "5.10a+-"));
    assertEquals(List.of("3+", "4", "4+", "5"), Ability.near(GradeScale.FRENCH, "4d"));
  }

  @Test
  void atAnEndOfTheScaleThereAreFewer() {
    assertEquals(List.of("9b", "9b+"), Ability.near(GradeScale.FRENCH, "99z"));
    assertEquals(List.of("5.15b", "5.15c"), Ability.near(GradeScale.YDS, "5.16a"));
    assertEquals(List.of("4", "4+"), Ability.near(GradeScale.FONT, "3"));
    assertEquals(List.of("16", "17"), Ability.near(GradeScale.V, "999999999999"));
  }
}
