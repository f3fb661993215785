package gripwright.language.finding;

import gripwright.finding.Finding;
import gripwright.finding.ReportedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sentences that findings are told in.
 *
 * <p>All of them stand in property files beside this package, one file per area, where a writer can
 * polish them without reading Java:
 *
 * <pre>
 * name.unknown = unknown {kind} `{name}`
 * name.unknown.hint = write one that is declared in this file or in the catalogue
 * name.unknown.hint.suggestion = did you mean `{suggestion}`?
 * name.unknown.label = no {kind} of this name here or in the catalogue
 * </pre>
 *
 * <p>A word in braces is replaced by the finding's argument of that name. A hint, label or {@code
 * message} that ends in the name of an argument is used where the finding has that argument. How a
 * finger lies in a grip has words of its own. The sentence of a broken rule is the rule's own
 * message, with what it was and what the limit is. Immutable and thread-safe; the same in every
 * locale.
 */
public final class Wording {

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z][a-zA-Z0-9-]*)\\}");

  private static final int LONGEST_FACT = 1_000;

  private Wording() {}

  /** Returns a finding as it is shown, with its sentences and its place in the file. */
  public static ReportedFinding report(LocatedFinding located) {
    SourceFile file = located.file();
    Span span = located.span();
    return reported(
        located.finding(),
        file.name(),
        new int[] {
          file.line(span.start()),
          file.column(span.start()),
          file.line(span.end()),
          file.column(span.end())
        });
  }

  /** Returns a finding of a model that has no text; file is null and line and column are 0. */
  public static ReportedFinding report(Finding finding) {
    return reported(finding, null, new int[4]);
  }

  private static ReportedFinding reported(
      Finding finding, @org.jspecify.annotations.Nullable String file, int[] at) {
    String place = finding.place().toString();
    return new ReportedFinding(
        finding.code(),
        finding.severity(),
        sentence(finding),
        hint(finding).orElse(null),
        file,
        at[0],
        at[1],
        at[2],
        at[3],
        finding.rule().orElse(null),
        finding.waivedBecause().orElse(null),
        place.isEmpty() ? null : place);
  }

  /** Returns the sentence that says what is wrong. */
  public static String sentence(Finding finding) {
    Object message = finding.arguments().get("message");
    if (message != null && finding.rule().isPresent()) {
      return BreachWords.sentence(Arguments.print(message), finding);
    }
    Optional<String> template = WordingFiles.find(finding.code());
    assert template.isPresent() : "no wording for " + finding.code();
    return variant(finding, ".message")
        .or(() -> template.map(t -> fill(t, finding)))
        .orElse(finding.code());
  }

  /**
   * Returns what would be right, the places where the mistake shows and the source of a broken
   * rule, as far as there are any, in one line with semicolons.
   */
  public static Optional<String> hint(Finding finding) {
    List<String> parts = new ArrayList<>();
    advice(finding).ifPresent(parts::add);
    where(finding).ifPresent(parts::add);
    source(finding).ifPresent(s -> parts.add("source: " + s));
    return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", parts));
  }

  /** Returns the sentence that says what would be right, if there is one. */
  public static Optional<String> advice(Finding finding) {
    return variant(finding, ".hint");
  }

  /** Returns the few words under the marked characters, if there are any. */
  public static Optional<String> label(Finding finding) {
    return variant(finding, ".label");
  }

  /** Returns where a broken rule comes from, if it says. */
  public static Optional<String> source(Finding finding) {
    return finding.rule().isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(finding.arguments().get("source")).map(Arguments::print);
  }

  /**
   * Returns the weeks and days where the mistake shows, such as {@code base week 1 (Tue 12 Jan, Thu
   * 14 Jan), week 3}; empty where it is about none.
   */
  public static Optional<String> where(Finding finding) {
    return Where.inWords(finding.places().isEmpty() ? List.of(finding.place()) : finding.places());
  }

  /** Returns what a related place is, in words, such as {@code first defined here}. */
  public static String related(String key) {
    return WordingFiles.find("related." + key).orElseGet(() -> key.replace('-', ' '));
  }

  /** Returns every code that has wording, in alphabetical order. */
  public static SortedSet<String> codes() {
    return WordingFiles.codes();
  }

  /** Returns the sentence of a code as it stands in the file, with its words in braces. */
  public static Optional<String> template(String code) {
    return WordingFiles.codes().contains(code) ? WordingFiles.find(code) : Optional.empty();
  }

  /** Returns the hints of a code as they stand in the file, the general one first. */
  public static List<String> hintTemplates(String code) {
    return WordingFiles.variants(code + ".hint");
  }

  /** Returns a part of a sentence that stands in the files under a key of its own. */
  static String part(String key, Map<String, Object> arguments) {
    return fill(WordingFiles.find(key).orElse(key), key, arguments);
  }

  private static Optional<String> variant(Finding finding, String kind) {
    String key = finding.code() + kind;
    for (String argument : finding.arguments().keySet()) {
      Optional<String> special = WordingFiles.find(key + "." + argument);
      if (special.isPresent()) {
        return special.map(t -> fill(t, finding));
      }
    }
    return WordingFiles.find(key).map(t -> fill(t, finding));
  }

  /** Cuts a fact that is longer than anybody reads, such as a name of a million letters. */
  private static String shortened(String fact) {
    return fact.length() <= LONGEST_FACT
        ? fact
        : fact.substring(0, fact.offsetByCodePoints(0, LONGEST_FACT / 2)) + "\u2026";
  }

  /** Replaces words in braces once; what is put in is never looked at again. */
  private static String fill(String template, Finding finding) {
    return fill(template, finding.code(), finding.arguments());
  }

  private static String fill(String template, String code, Map<String, Object> arguments) {
    Matcher matcher = PLACEHOLDER.matcher(template);
    StringBuilder filled = new StringBuilder();
    while (matcher.find()) {
      Object argument = arguments.get(matcher.group(1));
      assert argument != null
          : code + " is told with {" + matcher.group(1) + "} and has only " + arguments.keySet();
      matcher.appendReplacement(
          filled,
          Matcher.quoteReplacement(argument == null ? "?" : shortened(Arguments.print(argument))));
    }
    return matcher.appendTail(filled).toString();
  }
}
