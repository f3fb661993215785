package gripwright.language.finding;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/**
 * The page of each code: what it says, what would be right and, where one is written, an
 * explanation with a wrong and a right example. Stateless and thread-safe.
 */
public final class CodePages {

  private CodePages() {}

  /** Returns every code that has a page, in alphabetical order. */
  public static SortedSet<String> codes() {
    return Wording.codes();
  }

  /**
   * Returns the page of a code as text that ends in a line feed; empty if there is no such code.
   */
  public static Optional<String> page(String code) {
    return Wording.template(code).map(sentence -> page(code, sentence));
  }

  private static String page(String code, String sentence) {
    StringBuilder page = new StringBuilder(code).append("\n\n  ").append(blanks(sentence));
    List<String> hints = Wording.hintTemplates(code);
    for (int i = 0; i < hints.size(); i++) {
      page.append(i == 0 ? "\n  help: " : "\n  or: ").append(blanks(hints.get(i)));
    }
    page.append('\n');
    explanation(code).ifPresent(text -> page.append('\n').append(text));
    return page.toString();
  }

  /** Shows the words that a finding fills in between angle brackets. */
  private static String blanks(String template) {
    return template.replaceAll("\\{([a-zA-Z][a-zA-Z0-9-]*)\\}", "<$1>");
  }

  private static Optional<String> explanation(String code) {
    try (InputStream in = CodePages.class.getResourceAsStream("codes/" + code + ".md")) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the page of " + code, e);
    }
  }
}
