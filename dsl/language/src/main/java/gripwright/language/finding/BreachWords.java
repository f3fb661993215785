package gripwright.language.finding;

import gripwright.finding.Finding;
import gripwright.rule.Shortfall;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The numbers behind a broken rule, in words: what it was and what the limit is. */
final class BreachWords {

  private BreachWords() {}

  /** Returns the rule's message with the numbers, if the rule compares any. */
  static String sentence(String message, Finding finding) {
    List<Shortfall> missing = new ArrayList<>();
    if (finding.arguments().get("missing") instanceof List<?> all) {
      all.forEach(
          each -> {
            if (each instanceof Shortfall shortfall) {
              missing.add(shortfall);
            }
          });
    }
    if (missing.isEmpty()) {
      return message;
    }
    boolean several = missing.size() > 1;
    boolean first = finding.places().size() > 1;
    String numbers =
        String.join("; ", missing.stream().map(s -> numbers(s, several, first)).toList());
    return Wording.part(
        message.endsWith(")") ? "breach.after-brackets" : "breach.numbers",
        Map.of(
            "message",
            message,
            "numbers",
            first ? Wording.part("breach.first", Map.of("numbers", numbers)) : numbers));
  }

  private static String numbers(Shortfall shortfall, boolean several, boolean first) {
    String bound =
        Wording.part("breach." + shortfall.bound().word(), Map.of("limit", shortfall.limit()));
    String what = several ? shortfall.what() : "";
    String of = shortfall.of();
    String was = what.isEmpty() ? shortfall.was() : what + " " + shortfall.was();
    String key =
        of.isEmpty() ? (what.isEmpty() && !first ? "breach.was" : "breach.plain") : "breach.of";
    return Wording.part(key, Map.of("of", of, "was", was, "bound", bound));
  }
}
