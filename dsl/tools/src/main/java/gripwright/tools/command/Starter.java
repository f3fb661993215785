package gripwright.tools.command;

import gripwright.language.format.Formatter;
import gripwright.language.source.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The files of a starter project, from the templates in {@code starter}. */
final class Starter {

  /** The file with the plan, which uses the others. */
  static final String PLAN = "plan.grip";

  /** The file with the athletes. */
  static final String ATHLETES = "athletes.grip";

  /** The file with the tests. */
  static final String LOG = "log.grip";

  /** Most athletes of a project. */
  static final int MOST = 30;

  /** First day of the plan unless another one is given: a Monday. */
  static final LocalDate FROM = LocalDate.of(2027, 1, 11);

  /** Days from the test to the first day of the plan, more than the 48 h that a test keeps. */
  private static final int TESTED_BEFORE = 5;

  private static final Pattern BLANK = Pattern.compile("\\{([a-z-]+)}");

  private final List<InventedAthlete> athletes;
  private final StarterUnits units;
  private final LocalDate from;

  /**
   * Describes a project.
   *
   * @param size number of athletes, 1 to {@value #MOST}
   * @param units the units of its values
   * @param from the first day of its plan
   */
  Starter(int size, StarterUnits units, LocalDate from) {
    this.athletes = invented().subList(0, size);
    this.units = units;
    this.from = from;
  }

  /** Returns the texts by file name, in the standard layout. */
  Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(ATHLETES, formatted(athleteFile()));
    files.put(LOG, formatted(logFile()));
    files.put(PLAN, formatted(planFile()));
    return files;
  }

  private String athleteFile() {
    String people =
        athletes.size() == 1
            ? "This athlete is invented."
            : "These " + athletes.size() + " athletes are invented.";
    return filled("athletes.grip", Map.of("people", people))
        + each("first-athlete.grip", "athlete.grip");
  }

  private String logFile() {
    return filled("log.grip", Map.of()) + each("first-log.grip", "next-log.grip");
  }

  private String planFile() {
    Map<String, String> values = new TreeMap<>();
    values.put("names", names(athletes));
    values.put("new", names(athletes.stream().filter(InventedAthlete::isNew).toList()));
    values.put("from", from.toString());
    return filled(athletes.size() == 1 ? "plan.grip" : "squad-plan.grip", values);
  }

  /** Returns one part for each athlete; the first part has the comments. */
  private String each(String first, String next) {
    List<String> parts = new ArrayList<>();
    for (InventedAthlete athlete : athletes) {
      Map<String, String> values = new TreeMap<>(athlete.values(units, from));
      values.put("tested", from.minusDays(TESTED_BEFORE).toString());
      values.put("trained-on", from.toString());
      parts.add(filled(parts.isEmpty() ? first : next, values));
    }
    return String.join("\n", parts);
  }

  private static String names(List<InventedAthlete> athletes) {
    return String.join(", ", athletes.stream().map(InventedAthlete::name).toList());
  }

  private static List<InventedAthlete> invented() {
    List<String> lines = resource("athletes.csv").lines().toList();
    List<InventedAthlete> athletes = new ArrayList<>();
    for (int number = 1; number < lines.size(); number++) {
      athletes.add(new InventedAthlete(lines.get(0), lines.get(number), number));
    }
    return athletes;
  }

  private static String filled(String template, Map<String, String> values) {
    return BLANK
        .matcher(resource(template))
        .replaceAll(blank -> Matcher.quoteReplacement(value(blank.group(1), values)));
  }

  private static String value(String blank, Map<String, String> values) {
    String value = values.get(blank);
    if (value == null) {
      throw new IllegalStateException("no value for {" + blank + "} of a template");
    }
    return value;
  }

  private static String formatted(String text) {
    return Formatter.format(SourceFile.of(PLAN, text)).text().orElseThrow();
  }

  private static String resource(String name) {
    try (InputStream in = Starter.class.getResourceAsStream("starter/" + name)) {
      if (in == null) {
        throw new IllegalStateException("no " + name + " in the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
