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

/**
 * Takes down what is wrong with one declaration, and whether anything can be made of it. The same
 * thing said twice of the same words is taken down once. Not thread-safe.
 */
final class Ledger {

  /** So many names are listed in a hint; of more, only the nearest is named. */
  private static final int FEW = 8;

  /** After so many findings nearest names are no longer sought, to bound the time it takes. */
  private static final int MOST_SUGGESTIONS = 200;

  private final ParsedFile file;
  private final ModelPath place;
  private final List<LocatedFinding> findings;
  private final Set<String> told = new HashSet<>();
  private boolean sound = true;

  Ledger(Declared<?> declared, ModelPath place, List<LocatedFinding> findings) {
    this.file = declared.file();
    this.place = place;
    this.findings = findings;
    if (declared.misnamed()) {
      sound = false;
    }
  }

  /** Tells whether something can be made of the declaration. */
  boolean sound() {
    return sound;
  }

  /** Notes, without a word, that nothing can be made of the declaration. */
  void spoil() {
    sound = false;
  }

  /** Notes, without a word, that something inside did not parse. */
  void spoilIf(boolean damaged) {
    if (damaged) {
      sound = false;
    }
  }

  /** Takes down an error; arguments are names and values by turns. */
  void error(Syntax at, String code, Object... arguments) {
    sound = false;
    add(at, finding(Severity.ERROR, code, arguments), Optional.empty());
  }

  /** Takes down an error that a second place helps to understand. */
  void errorBeside(Syntax at, Syntax first, String key, String code, Object... arguments) {
    sound = false;
    add(
        at,
        finding(Severity.ERROR, code, arguments),
        Optional.of(new LocatedFinding.Related(key, file.source(), file.span(first.id()))));
  }

  /** Takes down a piece of advice, which spoils nothing. */
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
    if (!told.add(finding.code() + " " + at.id())) {
      return;
    }
    LocatedFinding located = LocatedFinding.at(file.source(), file.span(at.id()), finding);
    findings.add(related.map(r -> located.related(r.key(), r.file(), r.span())).orElse(located));
  }

  /** Tells whether it was told already that a word is not written as names are. */
  private boolean isMiswritten(Word word) {
    return file.findings().stream()
        .anyMatch(
            f ->
                f.finding().isAbout(Topic.MISWRITTEN_NAME)
                    && f.span().equals(file.span(word.id())));
  }

  /**
   * Takes down a name that is not known, with the nearest one that is; nothing if it is not written
   * as names are, since that was told.
   */
  void unknown(Word word, String kind, Collection<String> known) {
    unknown(word, Terms.kind(kind), known);
  }

  /** Reports a name that is not known, of a kind whose words have facts in them. */
  void unknown(Word word, Message kind, Collection<String> known) {
    if (isMiswritten(word)) {
      spoil();
      return;
    }
    Optional<String> nearest =
        findings.size() < MOST_SUGGESTIONS ? Nearest.to(word.text(), known) : Optional.empty();
    if (nearest.isPresent()) {
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

  /**
   * Returns what a word of a fixed list stands for.
   *
   * @param kind what the list is of, such as {@code weekday}
   * @param parse finds what a word stands for
   * @param known the words of the list
   */
  <T> Optional<T> word(
      Word word, String kind, Function<String, Optional<T>> parse, Collection<String> known) {
    return word(word, Terms.kind(kind), parse, known);
  }

  /** Returns what a word of a fixed list stands for, whose words have facts in them. */
  <T> Optional<T> word(
      Word word, Message kind, Function<String, Optional<T>> parse, Collection<String> known) {
    Optional<T> found = parse.apply(word.text());
    if (found.isEmpty()) {
      unknown(word, kind, known);
    }
    return found;
  }

  /** Returns the words of an enumeration whose constants print as they are written. */
  static <E extends Enum<E>> List<String> words(E[] values) {
    return java.util.Arrays.stream(values).map(Object::toString).toList();
  }

  /** Reports names of a list that stand in it twice, and returns the others. */
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
