package gripwright.ability;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * How hard someone climbs, on a published scale, with the IRCRA number that makes scales
 * comparable.
 *
 * <p>The conversion follows the comparative table of Draper et al. 2015, Sports Technology
 * 8(3-4):88-94, one step of the French and Yosemite scales a number; recalled from memory, not read
 * off the printed table. The UIAA and the two boulder columns are less certain than the others and
 * have not been verified; below V4 and above V16 they go on by one step a number, which is our own.
 *
 * <p>French letters below 6 are read as half grades: {@code 5a} and {@code 5b} are 5, {@code 5c} is
 * 5+. A Yosemite grade without its letter is the easiest of the four. Both are common practice.
 * Ordered by the IRCRA number. Immutable.
 *
 * @param scale the scale the grade was given on
 * @param grade the grade as it is written on that scale, in lower case
 * @param ircra the IRCRA number, 1 to 32
 */
public record Ability(GradeScale scale, String grade, int ircra) implements Comparable<Ability> {

  private static final String[] FRENCH = {
    "1", "2", "2+", "3-", "3", "3+", "4", "4+", "5", "5+", "6a", "6a+", "6b", "6b+", "6c", "6c+",
    "7a", "7a+", "7b", "7b+", "7c", "7c+", "8a", "8a+", "8b", "8b+", "8c", "8c+", "9a", "9a+", "9b",
    "9b+"
  };
  private static final String[] YDS = {
    "5.1", "5.2", "5.3", "5.4", "5.5", "5.6", "5.7", "5.8", "5.9", "5.10a", "5.10b", "5.10c",
    "5.10d", "5.11a", "5.11b", "5.11c", "5.11d", "5.12a", "5.12b", "5.12c", "5.12d", "5.13a",
    "5.13b", "5.13c", "5.13d", "5.14a", "5.14b", "5.14c", "5.14d", "5.15a", "5.15b", "5.15c"
  };
  private static final String[] UIAA = {
    "1", "2", "3", "3+", "4", "4+", "5-", "5", "5+", "6-", "6", "6+", "7-", "7", "7+", "8-", "8",
    "8+", "", "9-", "9", "9+", "", "10-", "10", "10+", "", "11-", "11", "11+", "", "12-"
  };
  // From 14 on; several grades may share a number.
  private static final String[] FONT = {
    "4 4+", "5", "5+", "6a 6a+", "6b 6b+", "6c 6c+", "7a", "7a+", "7b 7b+", "7c", "7c+", "8a",
    "8a+", "8b", "8b+", "8c", "8c+", "9a"
  };
  private static final int FIRST_BOULDER = 14;

  /** Other ways to write a grade; what says less than a grade of the table is the easiest it is. */
  private static final Map<GradeScale, Map<String, String>> ALSO =
      Map.of(
          GradeScale.FRENCH,
          Map.of("4a", "4", "4b", "4", "4c", "4+", "5a", "5", "5b", "5", "5c", "5+"),
          GradeScale.YDS,
          Map.of(
              "5.10", "5.10a", "5.11", "5.11a", "5.12", "5.12a", "5.13", "5.13a", "5.14", "5.14a",
              "5.15", "5.15a"));

  private static final int LAST = 32;
  private static final int NEAR = 2;
  private static final int LONGEST_NUMBER = 9;

  /**
   * Checks that the parts belong together.
   *
   * @throws IllegalArgumentException if the number is not the grade's
   */
  public Ability {
    Objects.requireNonNull(scale, "scale");
    Objects.requireNonNull(grade, "grade");
    if (number(scale, grade).orElse(0) != ircra) {
      throw new IllegalArgumentException(
          "not a grade: " + scale.word() + " " + grade + " as IRCRA " + ircra);
    }
  }

  /**
   * Finds a grade on a scale; upper and lower case are the same. Empty if there is no such grade.
   */
  public static Optional<Ability> find(GradeScale scale, String grade) {
    String lower = grade.toLowerCase(Locale.ROOT);
    return number(scale, lower).map(n -> new Ability(scale, lower, n));
  }

  /**
   * Returns a grade on a scale.
   *
   * @throws IllegalArgumentException if the scale has no such grade
   */
  public static Ability of(GradeScale scale, String grade) {
    return find(scale, grade)
        .orElseThrow(
            () -> new IllegalArgumentException("not a grade: " + scale.word() + " " + grade));
  }

  /** Returns the grades of a scale, easiest first, each as the table writes it. */
  public static List<String> grades(GradeScale scale) {
    List<String> grades = new ArrayList<>();
    for (int n = 1; n <= LAST; n++) {
      for (String grade : names(scale, n).split(" ", -1)) {
        if (!grade.isEmpty()) {
          grades.add(grade);
        }
      }
    }
    return grades;
  }

  /**
   * Returns the grades of a scale between which something belongs that is no grade of it: two
   * easier and two harder ones, fewer at an end of the scale. What begins with no number belongs
   * before all.
   *
   * @param written what was written for a grade
   */
  public static List<String> near(GradeScale scale, String written) {
    List<String> grades = grades(scale);
    String wanted = ordered(written.toLowerCase(Locale.ROOT));
    int place = 0;
    while (place < grades.size() && ordered(grades.get(place)).compareTo(wanted) < 0) {
      place++;
    }
    return grades.subList(Math.max(0, place - NEAR), Math.min(grades.size(), place + NEAR));
  }

  /**
   * Returns a grade with numbers of one length and minus before plus, so that text order serves.
   */
  private static String ordered(String grade) {
    StringBuilder text = new StringBuilder();
    int digits = 0;
    for (int i = grade.length() - 1; i >= 0; i--) {
      char sign = grade.charAt(i);
      boolean digit = sign >= '0' && sign <= '9';
      if (!digit && digits > 0) {
        text.append("0".repeat(Math.max(0, LONGEST_NUMBER - digits)));
      }
      digits = digit ? digits + 1 : 0;
      text.append(sign == '-' ? '!' : sign == '+' ? '~' : sign);
    }
    text.append("0".repeat(digits > 0 ? Math.max(0, LONGEST_NUMBER - digits) : 0));
    return text.reverse().toString();
  }

  /** Returns the first grade at this IRCRA number on another scale, if that scale reaches it. */
  public Optional<String> on(GradeScale other) {
    String names = names(other, ircra);
    return names.isEmpty() ? Optional.empty() : Optional.of(names.split(" ", -1)[0]);
  }

  private static Optional<Integer> number(GradeScale scale, String written) {
    Objects.requireNonNull(scale, "scale");
    String grade = ALSO.getOrDefault(scale, Map.of()).getOrDefault(written, written);
    for (int n = 1; n <= LAST; n++) {
      if (!grade.isEmpty() && List.of(names(scale, n).split(" ", -1)).contains(grade)) {
        return Optional.of(n);
      }
    }
    return Optional.empty();
  }

  private static String names(GradeScale scale, int number) {
    int boulder = number - FIRST_BOULDER;
    boolean bouldered = boulder >= 0 && boulder < FONT.length;
    return switch (scale) {
      case FRENCH -> FRENCH[number - 1];
      case YDS -> YDS[number - 1];
      case UIAA -> UIAA[number - 1];
      case FONT -> bouldered ? FONT[boulder] : "";
      case V -> bouldered ? Integer.toString(boulder) : "";
      case IRCRA -> Integer.toString(number);
    };
  }

  @Override
  public int compareTo(Ability other) {
    return Integer.compare(ircra, other.ircra);
  }

  /** Returns the grade with its scale, such as {@code french 7c}. */
  @Override
  public String toString() {
    return scale.word() + " " + grade;
  }
}
