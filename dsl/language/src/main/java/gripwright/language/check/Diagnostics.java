package gripwright.language.check;

import gripwright.finding.Finding;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.finding.Nearest;
import gripwright.finding.Severity;
import gripwright.finding.Topic;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Declared;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.Word;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Records the findings about one declaration, and whether it is still valid. Equal findings about
 * the same words are recorded once. Not thread-safe.
 */
final class Diagnostics {

  /** Most names listed in a hint; if there are more, only the nearest is named. */
  private static final int FEW = 8;

  /** After this many findings, nearest names are no longer looked up, to limit the time. */
  private static final int MOST_SUGGESTIONS = 200;

  private final ParsedFile file;
  private final ModelPath place;
  private final List<LocatedFinding> findings;
  private final Set<String> recorded = new HashSet<>();
  private boolean sound = true;

  Diagnostics(Declared<?> declared, ModelPath place, List<LocatedFinding> findings) {
    this.file = declared.file();
    this.place = place;
    this.findings = findings;
    if (declared.misnamed()) {
      sound = false;
    }
  }

  /** Returns whether the declaration is valid so far. */
  boolean sound() {
    return sound;
  }

  /** Marks the declaration as invalid without a finding. */
  void markInvalid() {
    sound = false;
  }

  /** Marks the declaration as invalid without a finding if part of it could not be parsed. */
  void markInvalidIf(boolean damaged) {
    if (damaged) {
      sound = false;
    }
  }

  /** Records an error; arguments are alternating names and values. */
  void error(Syntax at, String code, Object... arguments) {
    sound = false;
    add(at, finding(Severity.ERROR, code, arguments), Optional.empty());
  }

  /** Records an error with a related place. */
  void errorBeside(Syntax at, Syntax first, String key, String code, Object... arguments) {
    sound = false;
    add(
        at,
        finding(Severity.ERROR, code, arguments),
        Optional.of(new LocatedFinding.Related(key, file.source(), file.span(first.id()))));
  }

  /** Records advice, which leaves the declaration valid. */
  void advice(Syntax at, String code, Object... arguments) {
    add(at, finding(Severity.ADVICE, code, arguments), Optional.empty());
  }

  private Finding finding(Severity severity, String code, Object... arguments) {
    Finding finding = Finding.of(code, severity, place);
    for (int i = 0; i < arguments.length; i += 2) {
      finding = finding.with((String) arguments[i], arguments[i + 1]);
    }
    return finding;
  }

  private void add(Syntax at, Finding finding, Optional<LocatedFinding.Related> related) {
    if (!recorded.add(finding.code() + " " + at.id())) {
      return;
    }
    LocatedFinding located = LocatedFinding.at(file.source(), file.span(at.id()), finding);
    findings.add(related.map(r -> located.related(r.key(), r.file(), r.span())).orElse(located));
  }

  /** Returns whether a word was already reported as not written like a name. */
  private boolean isMiswritten(Word word) {
    return miswritten().anyMatch(f -> word.text().equals(f.arguments().get("name")));
  }

  /** Returns whether a name is written as it should be, unlike the declaration that it means. */
  private boolean isMiswrittenWhereDeclared(Word word, String declared) {
    return miswritten()
        .anyMatch(
            f ->
                declared.equals(f.arguments().get("name"))
                    && word.text().equals(f.arguments().get("suggestion")));
  }

  private Stream<Finding> miswritten() {
    return file.findings().stream()
        .map(LocatedFinding::finding)
        .filter(f -> f.isAbout(Topic.MISWRITTEN_NAME));
  }

  /**
   * Records an unknown name with the nearest known one, unless it was already reported as not
   * written like a name.
   */
  void unknown(Word word, String kind, Collection<String> known) {
    unknown(word, Terms.kind(kind), known);
  }

  /** Records an unknown name of a kind given as a message with arguments. */
  void unknown(Word word, Message kind, Collection<String> known) {
    if (isMiswritten(word)) {
      markInvalid();
      return;
    }
    Optional<String> nearest =
        findings.size() < MOST_SUGGESTIONS
            ? Nearest.to(word.text(), known).or(() -> shortened(word.text(), known))
            : Optional.empty();
    if (nearest.isPresent() && isMiswrittenWhereDeclared(word, nearest.get())) {
      markInvalid();
    } else if (nearest.isPresent()) {
      error(word, "name.unknown", "kind", kind, "name", word.text(), "suggestion", nearest.get());
    } else if (!known.isEmpty() && known.size() <= FEW) {
      error(
          word,
          "name.unknown",
          "kind",
          kind,
          "name",
          word.text(),
          "known",
          Listing.of(Listing.Style.COMMAS, List.copyOf(known)));
    } else {
      error(word, "name.unknown", "kind", kind, "name", word.text());
    }
  }

  /** Records an unknown name for which no known one fits, with a value that would be right. */
  void unknownValue(Word word, String kind, String value) {
    if (isMiswritten(word)) {
      markInvalid();
    } else {
      error(word, "name.unknown", "kind", Terms.kind(kind), "name", word.text(), "value", value);
    }
  }

  /** Returns the known word that begins a longer one, as {@code mon} for {@code monday}. */
  private static Optional<String> shortened(String word, Collection<String> known) {
    return known.stream().filter(k -> k.length() >= 3 && word.startsWith(k)).findFirst();
  }

  /**
   * Returns the meaning of a word from a fixed list.
   *
   * @param kind kind of the list, such as {@code weekday}
   * @param parse finds the meaning of a word
   * @param known the words of the list
   */
  <T> Optional<T> word(
      Word word, String kind, Function<String, Optional<T>> parse, Collection<String> known) {
    return word(word, Terms.kind(kind), parse, known);
  }

  /** Returns the meaning of a word from a fixed list whose kind is a message with arguments. */
  <T> Optional<T> word(
      Word word, Message kind, Function<String, Optional<T>> parse, Collection<String> known) {
    Optional<T> found = parse.apply(word.text());
    if (found.isEmpty()) {
      unknown(word, kind, known);
    }
    return found;
  }

  /** Returns the words of an enumeration whose {@code toString} is the written form. */
  static <E extends Enum<E>> List<String> words(E[] values) {
    return java.util.Arrays.stream(values).map(Object::toString).toList();
  }

  /** Reports duplicate names in a list, and returns the distinct ones. */
  Set<String> distinct(List<Word> words, String kind) {
    Once once = new Once(this);
    Set<String> names = new TreeSet<>();
    for (Word word : words) {
      if (once.first(word, kind, word.text())) {
        names.add(word.text());
      }
    }
    return names;
  }
}
