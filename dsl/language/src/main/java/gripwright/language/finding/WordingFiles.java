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
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The property files with the wording; a file is read when a sentence of it is first needed. */
final class WordingFiles {

  /** Files of what is wrong with a text, read together. */
  private static final List<String> OF_TEXT = List.of("syntax", "names", "values", "rules");

  /** Files of one word each, with which every key in them begins. */
  private static final List<String> OF_ONE_WORD =
      List.of("plan", "related", "fit", "hold", "breach", "log", "review");

  /** One file per area, so that two writers rarely meet in one. */
  static final List<String> AREAS = Stream.concat(OF_TEXT.stream(), OF_ONE_WORD.stream()).toList();

  private static final Map<List<String>, Map<String, String>> READ = new ConcurrentHashMap<>();

  private WordingFiles() {}

  static Optional<String> find(String key) {
    return Optional.ofNullable(of(areas(key)).get(key));
  }

  private static List<String> areas(String key) {
    String word = key.substring(0, Math.max(0, key.indexOf('.')));
    return OF_ONE_WORD.contains(word) ? List.of(word) : OF_TEXT;
  }

  static SortedSet<String> codes() {
    return Codes.ALL;
  }

  static List<String> variants(String key) {
    List<String> found = new ArrayList<>();
    for (Map.Entry<String, String> entry : of(AREAS).entrySet()) {
      if (entry.getKey().equals(key) || entry.getKey().startsWith(key + ".")) {
        found.add(entry.getValue());
      }
    }
    return found;
  }

  /** The codes, told from their parts when somebody first asks for them. */
  private static final class Codes {
    private static final Pattern PART =
        Pattern.compile(
            ".*\\.(message|hint|label)(\\..*)?"
                + "|related\\..*|fit\\..*|hold\\..*|breach\\..*|review\\..*");

    static final SortedSet<String> ALL = among(of(AREAS).keySet());

    private static SortedSet<String> among(Set<String> keys) {
      TreeSet<String> codes = new TreeSet<>(keys);
      codes.removeIf(key -> PART.matcher(key).matches());
      return Collections.unmodifiableSortedSet(codes);
    }
  }

  private static Map<String, String> of(List<String> areas) {
    return READ.computeIfAbsent(areas, WordingFiles::load);
  }

  private static Map<String, String> load(List<String> areas) {
    TreeMap<String, String> all = new TreeMap<>();
    for (String area : areas) {
      for (Map.Entry<Object, Object> entry : read(area).entrySet()) {
        String key = (String) entry.getKey();
        if (!areas(key).contains(area)) {
          throw new IllegalStateException("wording of " + key + " does not belong to " + area);
        }
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
