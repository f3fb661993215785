package gripwright.tools.command;

import gripwright.athlete.Athlete;
import gripwright.export.csv.CsvRows;
import gripwright.export.study.Pseudonyms;
import gripwright.language.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * The key between athletes and their codes: a CSV file with the columns {@code athlete} and {@code
 * code}, which stays outside the folder of the outputs.
 */
final class CodeKey {

  private static final List<String> HEADER = List.of("athlete", "code");

  /** Letters and digits that are not mistaken for each other. */
  private static final String SIGNS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";

  private static final int LENGTH = 6;

  private static final Pattern CODE = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,39}");

  private final Path file;
  private final Map<String, String> codes;
  private final boolean isNew;

  private CodeKey(Path file, Map<String, String> codes, boolean isNew) {
    this.file = file;
    this.codes = codes;
    this.isNew = isNew;
  }

  /**
   * Returns the key that {@code --codes} names, if it does; nothing is written.
   *
   * @throws UsageException as {@link #of(Path, Path, Set, Collection)}
   */
  static Optional<CodeKey> of(Arguments given, Path folder, Set<String> needed, Reading reading)
      throws UsageException {
    Optional<String> written = given.value(Arguments.CODES);
    return written.isEmpty()
        ? Optional.empty()
        : Optional.of(of(given.path(written.get()), folder, needed, reading.athletes().values()));
  }

  /** Returns how athletes are called with a key or without. */
  static Pseudonyms names(Optional<CodeKey> key, Reading reading) {
    return key.map(k -> Pseudonyms.of(k.codes(), reading.athletes().values()))
        .orElseGet(Pseudonyms::none);
  }

  /**
   * Reads a key, or draws a new one if there is no such file; nothing is written.
   *
   * @param file the key
   * @param folder the folder of the outputs, which may not exist yet
   * @param needed names of the athletes that need a code
   * @param all everybody whose name must not appear
   * @throws UsageException if the key lies in the folder, lacks an athlete or has a mistake
   */
  static CodeKey of(Path file, Path folder, Set<String> needed, Collection<Athlete> all)
      throws UsageException {
    if (real(file).startsWith(real(folder))) {
      throw new UsageException(
          "the key `"
              + file
              + "` lies in the folder of the outputs, whose readers must not have it; name a file"
              + " outside `"
              + folder
              + "`");
    }
    Set<String> names = new TreeSet<>();
    all.forEach(
        athlete ->
            Pseudonyms.namesOf(athlete).forEach(name -> names.add(name.toLowerCase(Locale.ROOT))));
    if (!Files.exists(file)) {
      return new CodeKey(file, drawn(needed, names), true);
    }
    Map<String, String> codes = read(file, names);
    for (String athlete : needed) {
      if (!codes.containsKey(athlete)) {
        throw new UsageException(
            "the key `"
                + file
                + "` has no code for "
                + athlete
                + "; add a line `"
                + athlete
                + ",CODE`");
      }
    }
    return new CodeKey(file, codes, false);
  }

  /** Returns a path without links, as far as it exists. */
  static Path real(Path path) {
    Path absolute = path.toAbsolutePath().normalize();
    for (Path at = absolute; at != null; at = at.getParent()) {
      try {
        return at.toRealPath().resolve(at.relativize(absolute)).normalize();
      } catch (IOException e) {
        // does not exist; its parent may
      }
    }
    return absolute;
  }

  private static Map<String, String> drawn(Set<String> needed, Set<String> names) {
    SecureRandom random = new SecureRandom();
    Set<String> taken = new TreeSet<>();
    Map<String, String> codes = new LinkedHashMap<>();
    for (String athlete : new TreeSet<>(needed)) {
      String code;
      do {
        StringBuilder signs = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
          signs.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
        }
        code = signs.toString();
      } while (names.contains(code.toLowerCase(Locale.ROOT)) || !taken.add(code));
      codes.put(athlete, code);
    }
    return codes;
  }

  private static Map<String, String> read(Path file, Set<String> names) throws UsageException {
    List<List<String>> rows;
    try {
      String text = Files.readString(file);
      rows = CsvRows.of(text.startsWith("\uFEFF") ? text.substring(1) : text).orElse(List.of());
    } catch (IOException e) {
      throw new UsageException("cannot read the key `" + file + "`: " + Output.reason(e));
    }
    if (rows.isEmpty() || !rows.get(0).equals(HEADER)) {
      throw new UsageException(
          "the key `" + file + "` needs CSV lines, the first of which is `athlete,code`");
    }
    Map<String, String> codes = new TreeMap<>();
    Set<String> taken = new TreeSet<>();
    for (List<String> row : rows.subList(1, rows.size())) {
      if (row.size() != 2) {
        throw new UsageException(
            "the key `"
                + file
                + "` needs an athlete and a code in each line, not `"
                + String.join(",", row)
                + "`");
      }
      String code = row.get(1);
      if (!CODE.matcher(code).matches() || names.contains(code.toLowerCase(Locale.ROOT))) {
        throw new UsageException(
            "the key `"
                + file
                + "` needs codes of letters, digits, `-` and `_` that are nobody's name, not `"
                + code
                + "`");
      }
      if (!taken.add(code.toLowerCase(Locale.ROOT)) || codes.put(row.get(0), code) != null) {
        throw new UsageException(
            "the key `"
                + file
                + "` names an athlete or a code twice: `"
                + String.join(",", row)
                + "`");
      }
    }
    return codes;
  }

  /** Returns the codes by name of the athlete. */
  Map<String, String> codes() {
    return codes;
  }

  /**
   * Writes the key if it is new.
   *
   * @throws UsageException if it can't be written
   */
  void write() throws UsageException {
    if (isNew) {
      List<List<String>> rows = new ArrayList<>(List.of(HEADER));
      codes.forEach((athlete, code) -> rows.add(List.of(athlete, code)));
      Output.replace(file, CsvRows.text(rows));
    }
  }
}
