package gripwright.language.check;

import gripwright.language.resolve.Project;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/** Checks every declaration of a project and makes core objects of those that are in order. */
public final class Checker {

  private Checker() {}

  /**
   * Checks a project.
   *
   * @param project what was read and declared
   * @param standard the catalogue
   */
  public static Checked check(Project project, Standard standard) {
    return new Checked(
        new TreeMap<>(),
        new TreeMap<>(standard.grips()),
        new TreeMap<>(standard.protocols()),
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        List.of(),
        Set.of(),
        List.of());
  }
}
