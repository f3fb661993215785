package gripwright.language.finding;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The property files with the wording, read once when the first sentence is needed. */
final class WordingFiles {

  /** One file per area, so that two writers rarely meet in one. */
  static final List<String> AREAS =
      List.of(
          "syntax", "names", "values", "plan", "rules", "related", "fit", "hold", "breach", "log",
          "review");

  private static final Pattern PART =
      Pattern.compile(
          ".*\\.(message|hint|label)(\\..*)?"
              + "|related\\..*|fit\\..*|hold\\..*|breach\\..*|review\\..*");

  private static final Map<String, String> ALL = load();
  private static final SortedSet<String> CODES = codesOf(ALL);

  private WordingFiles() {}

  static Optional<String> find(String key) {
    return Optional.ofNullable(ALL.get(key));
  }

  static SortedSet<String> codes() {
    return CODES;
  }

  static List<String> variants(String key) {
    List<String> found = new ArrayList<>();
    for (Map.Entry<String, String> entry : ALL.entrySet()) {
      if (entry.getKey().equals(key) || entry.getKey().startsWith(key + ".")) {
        found.add(entry.getValue());
      }
    }
    return found;
  }

  private static SortedSet<String> codesOf(Map<String, String> all) {
    TreeSet<String> codes = new TreeSet<>();
    for (String key : all.keySet()) {
      if (!PART.matcher(key).matches()) {
        codes.add(key);
      }
    }
    return Collections.unmodifiableSortedSet(codes);
  }

  private static Map<String, String> load() {
    TreeMap<String, String> all = new TreeMap<>();
    for (String area : AREAS) {
      for (Map.Entry<Object, Object> entry : read(area).entrySet()) {
        String key = (String) entry.getKey();
        if (all.put(key, ((String) entry.getValue()).strip()) != null) {
          throw new IllegalStateException("wording of " + key + " stands in two files");
        }
      }
    }
    return Collections.unmodifiableMap(all);
  }

  private static Properties read(String area) {
    Properties properties = new Properties();
    try (InputStream in =
        WordingFiles.class.getResourceAsStream("wording/" + area + ".properties")) {
      if (in == null) {
        return properties;
      }
      try (Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
        properties.load(reader);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the wording of " + area, e);
    }
    return properties;
  }
}
