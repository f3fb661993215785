package gripwright.wording;

import gripwright.expression.Shortfall;
import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes the numbers of a broken rule: the actual value and the limit. */
final class BreachWords {

  private static final String AS = "breach.as-";
  private static final String CALLED = "breach.called-";

  private final Wording wording;

  BreachWords(Wording wording) {
    this.wording = wording;
  }

  /** Returns the rule's message with its numbers, if it compares any. */
  String sentence(String message, Finding finding) {
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
    boolean places = finding.places().size() > 1;
    String numbers =
        String.join("; ", missing.stream().map(s -> numbers(s, several, places)).toList());
    return wording.say(
        message.endsWith(")") ? "breach.after-brackets" : "breach.numbers",
        Map.of("message", message, "numbers", places ? ofOne(finding, numbers) : numbers));
  }

  /** Adds the place of the numbers: the worst place, which is the first if none is named. */
  private String ofOne(Finding finding, String numbers) {
    if (!(finding.arguments().get("worst") instanceof ModelPath worst)) {
      return wording.say("breach.first", Map.of("numbers", numbers));
    }
    return new Where(wording)
        .inWords(List.of(worst))
        .map(where -> wording.say("breach.worst-in", Map.of("where", where, "numbers", numbers)))
        .orElseGet(() -> wording.say("breach.worst", Map.of("numbers", numbers)));
  }

  private String numbers(Shortfall shortfall, boolean several, boolean places) {
    String bound =
        wording.say("breach." + shortfall.bound().word(), Map.of("limit", shortfall.limit()));
    String what = several ? shortfall.what() : "";
    String of = shortfall.of().map(wording::say).orElse("");
    String was = measured(what, shortfall);
    String key =
        of.isEmpty() ? (what.isEmpty() && !places ? "breach.was" : "breach.plain") : "breach.of";
    return wording.say(key, Map.of("of", of, "was", was, "bound", bound));
  }

  /** Returns the value, with its property or words around it where the number tells little. */
  private String measured(String property, Shortfall shortfall) {
    String was = wording.say(inWords(shortfall.was()));
    String key = AS + shortfall.what();
    return wording.messages().find(key).isPresent()
        ? wording.say(key, Map.of("was", was))
        : named(property, was);
  }

  private String named(String property, String was) {
    if (property.isEmpty()) {
      return was;
    }
    return wording
        .messages()
        .find(CALLED + property)
        .map(what -> wording.say("breach.named", Map.of("what", what, "was", was)))
        .orElse(property + " " + was);
  }

  /**
   * Replaces the name of the property that a share refers to with words that a coach understands.
   */
  private Message inWords(Message was) {
    return was instanceof Clause clause && clause.arguments().get("of") instanceof String of
        ? clause.with("of", called(of))
        : was;
  }

  /** Returns the words for a property inside a sentence, or else its name. */
  private String called(String property) {
    return wording.messages().find(CALLED + property).orElse(property);
  }
}
