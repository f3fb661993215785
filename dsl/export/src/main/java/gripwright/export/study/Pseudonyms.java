package gripwright.export.study;

import gripwright.athlete.Athlete;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How athletes are called in an output: by their names or, where nobody may be recognized, by
 * codes. Immutable and thread-safe.
 *
 * <p>With codes, a name is also replaced where it stands as a word in another name or text, such as
 * that of a plan, a session or a file. Words are compared without regard to case. Of a title every
 * word that begins with a capital letter counts as a name. Texts that describe an athlete without
 * naming anybody are beyond this.
 *
 * @since 1.0
 */
public final class Pseudonyms {

  /** What replaces the name of an athlete without a code. */
  private static final String WITHHELD = "withheld";

  private final Map<String, String> codes;
  private final Map<String, String> words;
  private final Pattern pattern;

  private Pseudonyms(Map<String, String> codes, Map<String, String> words) {
    this.codes = codes;
    this.words = words;
    pattern =
        Pattern.compile(
            words.keySet().stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(Pattern::quote)
                .collect(Collectors.joining("|", "(?<![\\p{L}\\p{N}])(?:", ")(?![\\p{L}\\p{N}])")),
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  /** Returns that everybody is called by name. */
  public static Pseudonyms none() {
    return new Pseudonyms(Map.of(), Map.of());
  }

  /**
   * Returns codes for athletes.
   *
   * @param codes code by name of the athlete
   * @param athletes everybody whose name must not appear, with a code or without
   */
  public static Pseudonyms of(Map<String, String> codes, Collection<Athlete> athletes) {
    Map<String, String> words = new LinkedHashMap<>();
    codes.forEach((name, code) -> put(words, name, code));
    for (Athlete athlete : athletes) {
      String code = codes.getOrDefault(athlete.name(), WITHHELD);
      namesOf(athlete).forEach(name -> put(words, name, code));
    }
    return new Pseudonyms(Map.copyOf(codes), words);
  }

  private static void put(Map<String, String> words, String name, String code) {
    words.putIfAbsent(name.toLowerCase(Locale.ROOT), code);
  }

  /**
   * Returns the names by which an athlete could be recognized: the name in plans, the title, and
   * each word of the title that begins with a capital letter.
   */
  public static List<String> namesOf(Athlete athlete) {
    return Stream.concat(
            Stream.of(athlete.name(), athlete.title().strip()),
            Pattern.compile("[^\\p{L}\\p{N}'-]+")
                .splitAsStream(athlete.title())
                .filter(word -> word.length() > 1 && Character.isUpperCase(word.codePointAt(0))))
        .filter(name -> !name.isEmpty())
        .distinct()
        .toList();
  }

  /** Returns whether athletes are called by codes. */
  public boolean hiding() {
    return !words.isEmpty();
  }

  /** Returns the code of an athlete, or the name if there are no codes. */
  public String of(String athlete) {
    return hiding() ? codes.getOrDefault(athlete, WITHHELD) : athlete;
  }

  /** Returns a name or a text in which each athlete's name is replaced by the code. */
  public String hide(String text) {
    Objects.requireNonNull(text, "text");
    if (!hiding()) {
      return text;
    }
    Matcher names = pattern.matcher(text);
    return names.replaceAll(
        found ->
            Matcher.quoteReplacement(
                words.getOrDefault(found.group().toLowerCase(Locale.ROOT), WITHHELD)));
  }
}
