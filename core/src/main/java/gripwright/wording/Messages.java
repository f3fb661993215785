package gripwright.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * A bundle of messages for one locale: templates by key, with the names of arguments in braces.
 * Immutable and thread-safe.
 *
 * <p>English, which is the bundle of {@link Locale#ROOT}, is in property files in this package, one
 * file an area; a file is read when one of its messages is first needed. A host adds another
 * language with {@link #of}: it takes {@link #templates()} of English, translates the values, and
 * keeps keys and names in braces.
 */
public final class Messages {

  /** Files for mistakes in a text, read together. */
  private static final List<String> OF_TEXT = List.of("syntax", "names", "values", "rules");

  /** Files named by the first word of all their keys. */
  private static final List<String> OF_ONE_WORD =
      List.of(
          "plan",
          "compare",
          "compared",
          "study",
          "budget",
          "related",
          "fit",
          "hold",
          "breach",
          "log",
          "athlete",
          "review",
          "common",
          "term",
          "caution",
          "cause",
          "derivation",
          "placement",
          "standard-caution",
          "standard-rule",
          "season",
          "calendar",
          "grips",
          "strength",
          "reviewed",
          "diff",
          "page",
          "methods");

  /** Areas whose messages are parts of sentences, not findings. */
  private static final Pattern PART =
      Pattern.compile(
          ".*\\.(message|hint|label)(\\..*)?"
              + "|(related|fit|hold|breach|review|common|term|caution|cause|derivation|placement"
              + "|standard-caution|standard-rule|season|calendar|grips|strength|reviewed|diff|compared|methods"
              + "|study|page)\\..*");

  private static final Messages ENGLISH = new Messages(Locale.ROOT, Messages::load);

  private final Locale locale;
  private final Function<String, Map<String, String>> areas;
  private final Map<String, Map<String, String>> read = new ConcurrentHashMap<>();

  private Messages(Locale locale, Function<String, Map<String, String>> areas) {
    this.locale = locale;
    this.areas = areas;
  }

  /** Returns the English messages. */
  public static Messages english() {
    return ENGLISH;
  }

  /**
   * Returns a host's own messages. Missing messages are taken from English.
   *
   * @param locale the locale of dates
   * @param templates templates by key, with the names of {@link #templates()} in braces
   */
  public static Messages of(Locale locale, Map<String, String> templates) {
    Map<String, Map<String, String>> byArea = new TreeMap<>();
    templates.forEach(
        (key, template) ->
            byArea.computeIfAbsent(area(key), a -> new TreeMap<>()).put(key, template));
    return new Messages(
        locale,
        area -> {
          Map<String, String> all = new TreeMap<>(ENGLISH.of(area));
          all.putAll(byArea.getOrDefault(area, Map.of()));
          return all;
        });
  }

  /** Returns the locale of dates. */
  public Locale locale() {
    return locale;
  }

  /**
   * Returns the translation of a sentence of the catalogue or of a built-in rule; other sentences
   * unchanged.
   */
  String written(String text) {
    if (this == ENGLISH) {
      return text;
    }
    return find(StandardTexts.key(text)).orElse(text);
  }

  /** Finds a template. */
  public Optional<String> find(String key) {
    return Optional.ofNullable(of(area(key)).get(key));
  }

  /** Returns all templates by key, which a translation must contain. */
  public SortedMap<String, String> templates() {
    TreeMap<String, String> all = new TreeMap<>(of(""));
    OF_ONE_WORD.forEach(area -> all.putAll(of(area)));
    return Collections.unmodifiableSortedMap(all);
  }

  /** Returns the codes of all findings that have a message, in alphabetical order. */
  public SortedSet<String> codes() {
    TreeSet<String> codes = new TreeSet<>(templates().keySet());
    codes.removeIf(key -> PART.matcher(key).matches());
    return Collections.unmodifiableSortedSet(codes);
  }

  /** Returns the templates of a key and of all keys that begin with it and a dot. */
  List<String> variants(String key) {
    List<String> found = new ArrayList<>();
    templates()
        .forEach(
            (each, template) -> {
              if (each.equals(key) || each.startsWith(key + ".")) {
                found.add(template);
              }
            });
    return found;
  }

  /** Returns the area of a key; empty for mistakes in a text. */
  private static String area(String key) {
    String word = key.substring(0, Math.max(0, key.indexOf('.')));
    return OF_ONE_WORD.contains(word) ? word : "";
  }

  private Map<String, String> of(String area) {
    return read.computeIfAbsent(area, areas);
  }

  private static Map<String, String> load(String area) {
    TreeMap<String, String> all = new TreeMap<>();
    if (area.startsWith("standard-")) {
      StandardTexts.all()
          .forEach(
              (key, text) -> {
                if (area(key).equals(area)) {
                  all.put(key, text);
                }
              });
      return Collections.unmodifiableMap(all);
    }
    for (String file : area.isEmpty() ? OF_TEXT : List.of(area)) {
      for (Map.Entry<Object, Object> entry : read(file).entrySet()) {
        String key = (String) entry.getKey();
        if (!area(key).equals(area)) {
          throw new IllegalStateException("wording of " + key + " does not belong to " + file);
        }
        if (all.put(key, ((String) entry.getValue()).strip()) != null) {
          throw new IllegalStateException("wording of " + key + " stands in two files");
        }
      }
    }
    return Collections.unmodifiableMap(all);
  }

  private static Properties read(String file) {
    Properties properties = new Properties();
    try (InputStream in = Messages.class.getResourceAsStream(file + ".properties")) {
      if (in == null) {
        return properties;
      }
      try (Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
        properties.load(reader);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the wording of " + file, e);
    }
    return properties;
  }
}
