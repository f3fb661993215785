package gripwright.wording;

import gripwright.finding.Finding;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.finding.ReportedFinding;
import gripwright.finding.WrittenText;
import gripwright.schedule.Derivation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Puts the data of core into words, from one bundle of {@link Messages}:
 *
 * <pre>{@code
 * name.unknown = unknown {kind} `{name}`
 * name.unknown.hint = write one that is declared in this file or in the catalogue
 * name.unknown.hint.suggestion = did you mean `{suggestion}`?
 * name.unknown.label = no {kind} of this name here or in the catalogue
 * }</pre>
 *
 * <p>A word in braces is replaced by the argument of that name. A key of a hint, label or {@code
 * message} that ends in the name of an argument is used if the finding has that argument. The
 * sentence of a broken rule is the rule's own message, with the actual value and the limit.
 * Immutable and thread-safe.
 */
public final class Wording {

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z][a-zA-Z0-9-]*)\\}");

  private static final int LONGEST_FACT = 1_000;

  private static final Wording ENGLISH = new Wording(Messages.english());

  private final Messages messages;
  private final Arguments print = new Arguments(this);

  private Wording(Messages messages) {
    this.messages = messages;
  }

  /** Returns the wording of the English messages. */
  public static Wording english() {
    return ENGLISH;
  }

  /** Returns the wording of a bundle. */
  public static Wording of(Messages messages) {
    return new Wording(messages);
  }

  /** Returns the bundle. */
  public Messages messages() {
    return messages;
  }

  /**
   * Returns a finding with its sentences for a model without text; file is null and line and column
   * are 0.
   */
  public ReportedFinding report(Finding finding) {
    return report(finding, null, 0, 0, 0, 0);
  }

  /**
   * Returns a finding with its sentences and its place in a file.
   *
   * @param file name of the file; null if there is none
   * @param line first line, from 1
   * @param column first column, from 1
   * @param endLine last line
   * @param endColumn column after the last character
   */
  public ReportedFinding report(
      Finding finding, @Nullable String file, int line, int column, int endLine, int endColumn) {
    String place = finding.place().toString();
    return ReportedFinding.builder(finding.code(), finding.severity(), sentence(finding))
        .hint(hint(finding).orElse(null))
        .file(file)
        .line(line)
        .column(column)
        .endLine(endLine)
        .endColumn(endColumn)
        .rule(finding.rule().orElse(null))
        .waivedBecause(finding.waivedBecause().orElse(null))
        .place(place.isEmpty() ? null : place)
        .athletes(finding.athletes())
        .build();
  }

  /** Puts a message into words. */
  public String say(Message message) {
    if (message instanceof Listing listing) {
      return listed(listing);
    }
    if (message instanceof WrittenText written) {
      return messages.written(written.text());
    }
    return say(message.key(), message.arguments());
  }

  private String listed(Listing listing) {
    List<String> parts =
        new ArrayList<>(listing.parts().stream().limit(listing.most()).map(print::of).toList());
    int more = listing.parts().size() - parts.size();
    if (more > 0 && listing.style() != Listing.Style.COMMAS) {
      parts.add(say("common.and-more", Map.of("count", more)));
    }
    String separator =
        say(listing.style() == Listing.Style.CLAUSES ? "common.clause-end" : "common.comma") + " ";
    String counted =
        more > 0 && listing.style() == Listing.Style.COMMAS
            ? " " + say("common.and-more", Map.of("count", more))
            : "";
    int last = parts.size() - 1;
    boolean word = listing.style() == Listing.Style.AND || listing.style() == Listing.Style.OR;
    return !word || last < 1
        ? String.join(separator, parts) + counted
        : say(
            listing.key(),
            Map.of(
                "parts", String.join(separator, parts.subList(0, last)), "last", parts.get(last)));
  }

  /** Returns what a link of a derivation did, in words. */
  public String step(Derivation link) {
    return say(link.key() + ".step", link.arguments());
  }

  /** Returns the unit of a link of a derivation: its symbol, or a word; empty if it has none. */
  public String unit(Derivation link) {
    return messages
        .find(link.key() + ".unit")
        .map(template -> fill(template, link.key(), link.arguments(), UnaryOperator.identity()))
        .orElse(link.unit());
  }

  /** Returns an argument as text: a message in words, a number or quantity in its usual form. */
  public String fact(Object value) {
    return print.of(value);
  }

  /** Puts a message given by key and arguments into words. */
  public String say(String key, Map<String, Object> arguments) {
    Optional<String> template = messages.find(key);
    assert template.isPresent() : "no wording for " + key;
    return fill(template.orElse(key), key, arguments, UnaryOperator.identity());
  }

  /** Puts a message without arguments into words. */
  public String say(String key) {
    return say(key, Map.of());
  }

  /** Returns the sentence of a finding. */
  public String sentence(Finding finding) {
    Object message = finding.arguments().get("message");
    if (message != null && finding.rule().isPresent()) {
      return new BreachWords(this).sentence(messages.written(print.of(message)), finding);
    }
    Optional<String> template = messages.find(finding.code());
    assert template.isPresent() : "no wording for " + finding.code();
    return variant(finding, ".message")
        .or(() -> template.map(t -> fill(t, finding)))
        .orElse(finding.code());
  }

  /**
   * Returns the correction, the places of the mistake and the source of a broken rule, as far as
   * there are any, in one line with semicolons.
   */
  public Optional<String> hint(Finding finding) {
    List<String> parts = new ArrayList<>();
    advice(finding).ifPresent(parts::add);
    where(finding).ifPresent(parts::add);
    source(finding).ifPresent(s -> parts.add(say("common.source-of", Map.of("source", s))));
    return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", parts));
  }

  /** Returns the sentence on how to correct a finding, if there is one. */
  public Optional<String> advice(Finding finding) {
    return variant(finding, ".hint");
  }

  /** Returns the few words under the marked characters, if there are any. */
  public Optional<String> label(Finding finding) {
    return variant(finding, ".label");
  }

  /** Returns the source of a broken rule, if it has one. */
  public Optional<String> source(Finding finding) {
    return finding.rule().isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(finding.arguments().get("source")).map(print::of);
  }

  /**
   * Returns the weeks and days of the mistake, such as {@code base week 1 (Tue 12 Jan, Thu 14 Jan),
   * week 3}; empty if there are none.
   */
  public Optional<String> where(Finding finding) {
    return new Where(this)
        .inWords(finding.places().isEmpty() ? List.of(finding.place()) : finding.places());
  }

  /** Returns the description of a related place, such as {@code first defined here}. */
  public String related(String key) {
    return messages.find("related." + key).orElseGet(() -> key.replace('-', ' '));
  }

  /** Returns every code that has wording, in alphabetical order. */
  public SortedSet<String> codes() {
    return messages.codes();
  }

  /** Returns the sentence of a code as it is in the file, with its words in braces. */
  public Optional<String> template(String code) {
    return messages.codes().contains(code) ? messages.find(code) : Optional.empty();
  }

  /** Returns the templates of a code's hints, the general one first. */
  public List<String> hintTemplates(String code) {
    return messages.variants(code + ".hint");
  }

  private Optional<String> variant(Finding finding, String kind) {
    String key = finding.code() + kind;
    for (String argument : finding.arguments().keySet()) {
      Optional<String> special = messages.find(key + "." + argument);
      if (special.isPresent()) {
        return special.map(t -> fill(t, finding));
      }
    }
    return messages.find(key).map(t -> fill(t, finding));
  }

  /** Cuts a very long argument, such as a name of a million letters. */
  private static String shortened(String fact) {
    return fact.length() <= LONGEST_FACT
        ? fact
        : fact.substring(0, fact.offsetByCodePoints(0, LONGEST_FACT / 2)) + "\u2026";
  }

  /** Replaces words in braces once; inserted text is not processed again. */
  private String fill(String template, Finding finding) {
    return fill(template, finding.code(), finding.arguments(), Wording::shortened);
  }

  private String fill(
      String template,
      String code,
      Map<String, Object> arguments,
      UnaryOperator<String> shortening) {
    Matcher matcher = PLACEHOLDER.matcher(template);
    StringBuilder filled = new StringBuilder();
    while (matcher.find()) {
      Object argument = arguments.get(matcher.group(1));
      assert argument != null
          : code + " is told with {" + matcher.group(1) + "} and has only " + arguments.keySet();
      matcher.appendReplacement(
          filled,
          Matcher.quoteReplacement(argument == null ? "?" : shortening.apply(print.of(argument))));
    }
    return matcher.appendTail(filled).toString();
  }
}
