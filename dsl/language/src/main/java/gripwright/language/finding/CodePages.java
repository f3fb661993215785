package gripwright.language.finding;

import gripwright.rule.Rule;
import gripwright.rule.StandardRules;
import gripwright.wording.Messages;
import gripwright.wording.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The page of each code: its sentence, how to correct it, an explanation and, if possible, a wrong
 * and a right example. Explanations and examples come from the findings reference, which is part of
 * the library. Stateless and thread-safe.
 */
public final class CodePages {

  private static final String HEADING = "### `";
  private static final String FENCE = "```";

  private CodePages() {}

  /** Returns every code that has a page, in alphabetical order; built-in rules are among them. */
  public static SortedSet<String> codes() {
    SortedSet<String> codes = new TreeSet<>(Messages.english().codes());
    StandardRules.sets()
        .forEach(set -> set.rules().forEach(rule -> codes.add("rule." + rule.name())));
    return codes;
  }

  /**
   * Returns the page of a code as text that ends in a line feed; empty if there is no such code.
   */
  public static Optional<String> page(String code) {
    return Wording.english()
        .template(code)
        .map(sentence -> heading(code, sentence))
        .or(() -> rule(code).map(rule -> heading(code, rule)))
        .map(heading -> heading + explanation(code));
  }

  /**
   * Returns the sentence of a code, with the arguments of a finding in angle brackets; empty if
   * there is no such code.
   */
  public static Optional<String> sentence(String code) {
    return Wording.english()
        .template(code)
        .map(CodePages::blanks)
        .or(() -> rule(code).map(Rule::message));
  }

  /**
   * Returns the page of a rule, as text that ends in a line feed: its message, its severity and its
   * source.
   */
  public static String page(Rule rule) {
    return heading("rule." + rule.name(), rule);
  }

  private static String heading(String code, String sentence) {
    StringBuilder page = new StringBuilder(code).append("\n\n  ").append(blanks(sentence));
    List<String> hints = Wording.english().hintTemplates(code);
    for (int i = 0; i < hints.size(); i++) {
      page.append(i == 0 ? "\n  help: " : "\n  or: ").append(blanks(hints.get(i)));
    }
    return page.append('\n').toString();
  }

  private static String heading(String code, Rule rule) {
    return code
        + "\n\n  "
        + rule.message()
        + "\n  "
        + rule.severity().word()
        + (rule.neverWaived() ? ", never waived" : "")
        + rule.source().map(source -> "; source: " + source).orElse("")
        + "\n";
  }

  private static Optional<Rule> rule(String code) {
    return StandardRules.sets().stream()
        .flatMap(set -> set.rules().stream())
        .filter(rule -> code.equals("rule." + rule.name()))
        .findFirst();
  }

  /** Replaces the placeholders of a template by names in angle brackets. */
  private static String blanks(String template) {
    return template.replaceAll("\\{([a-zA-Z][a-zA-Z0-9-]*)\\}", "<$1>");
  }

  /** Returns the section of the reference as plain text: examples are indented, not fenced. */
  private static String explanation(String code) {
    StringBuilder text = new StringBuilder();
    boolean fenced = false;
    for (String line : section(code)) {
      if (line.startsWith(FENCE)) {
        fenced = !fenced;
      } else {
        text.append(fenced && !line.isEmpty() ? "    " : "").append(line).append('\n');
      }
    }
    if (text.indexOf("use \"demo.grip\"") >= 0) {
      text.append("\nThe examples use demo.grip from the folder docs of the project.\n");
    }
    return text.toString();
  }

  private static List<String> section(String code) {
    List<String> section = new ArrayList<>();
    boolean inside = false;
    for (String line : reference().lines().toList()) {
      if (line.startsWith("#")) {
        inside = line.equals(HEADING + code + "`");
      } else if (inside) {
        section.add(line);
      }
    }
    while (!section.isEmpty() && section.get(section.size() - 1).isBlank()) {
      section.remove(section.size() - 1);
    }
    return section;
  }

  private static String reference() {
    try (InputStream in = CodePages.class.getResourceAsStream("findings.md")) {
      if (in == null) {
        throw new IllegalStateException("the findings reference is missing from the library");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the findings reference", e);
    }
  }
}
