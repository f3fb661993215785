package gripwright.tools.command;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * An athlete of a starter project, a line of {@code starter/athletes.csv}. Nobody of them is a real
 * person.
 */
final class InventedAthlete {

  private static final String NAME = "name";
  private static final String BODY_MASS = "body mass kg";
  private static final String TRAINED = "months trained";
  private static final String HALF_CRIMP = "half crimp kg";
  private static final String OPEN_FOUR = "open four kg";

  /** Below this many months of training an athlete has the lighter sessions. */
  private static final int FIRST_YEAR = 12;

  /** Share of the test in the example of a logged load, a little below the plan's 75 %. */
  private static final double LOGGED = 0.72;

  private final Map<String, String> fields = new TreeMap<>();
  private final int number;

  /**
   * Reads a line.
   *
   * @param header names of the fields
   * @param line the fields, with semicolons between them
   * @param number of the line, from 1
   */
  InventedAthlete(String header, String line, int number) {
    List<String> names = List.of(header.split(";", -1));
    List<String> values = List.of(line.split(";", -1));
    for (int i = 0; i < names.size(); i++) {
      fields.put(names.get(i), values.get(i));
    }
    this.number = number;
  }

  String name() {
    return text(NAME);
  }

  /** Returns whether this is the athlete's first year of finger training. */
  boolean isNew() {
    return whole(TRAINED) < FIRST_YEAR;
  }

  /**
   * Returns the values of the templates, by their names there.
   *
   * @param units the units of masses and hand length
   * @param from the first day of the plan
   */
  Map<String, String> values(StarterUnits units, LocalDate from) {
    Map<String, String> values = new TreeMap<>(units.equipment());
    String name = name();
    values.put("name", name);
    values.put("title", name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1));
    // The day differs from athlete to athlete, and each of them is of age on the first day.
    values.put("born", from.minusYears(whole("age")).minusDays(11L * number).toString());
    values.put("sex", text("sex"));
    values.put("mass", units.mass(whole(BODY_MASS)));
    values.put("trained", text(TRAINED));
    values.put("ability", units.ability(text("french"), text("yds")));
    values.put("length", units.handLength(whole("hand mm")));
    values.put("available", text("available"));
    values.put("climbing", text("climbing"));
    values.put("half-crimp", units.mass(whole(HALF_CRIMP)));
    values.put("open-four", units.mass(whole(OPEN_FOUR)));
    values.put("load", units.mass(whole(HALF_CRIMP) * LOGGED));
    return values;
  }

  private String text(String field) {
    String value = fields.get(field);
    if (value == null) {
      throw new IllegalStateException("no " + field + " in athletes.csv");
    }
    return value;
  }

  private int whole(String field) {
    return Integer.parseInt(text(field));
  }
}
