package gripwright.language.check;

import gripwright.expression.Type;
import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.quantity.Unit;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The names of things and values in findings, as messages, so that each bundle has its own words.
 */
final class Terms {

  private Terms() {}

  /** Returns the word for a kind of thing, such as {@code rule-set}. */
  static Message kind(String kind) {
    return Clause.of("term.kind-" + kind);
  }

  /** Returns the words for a value or a place, such as {@code level-of-hold}. */
  static Message of(String key) {
    return Clause.of("term." + key);
  }

  /** Returns words with one argument. */
  static Message of(String key, String name, Object fact) {
    return Clause.of("term." + key, name, fact);
  }

  /** Returns words with two arguments. */
  static Message of(String key, String name, Object fact, String other, Object otherFact) {
    return new Clause("term." + key, Map.of(name, fact, other, otherFact));
  }

  /** Returns what an amount of a unit measures. */
  static Message measured(@Nullable Unit unit) {
    if (unit == null) {
      return of("bare-number");
    }
    return unit == Unit.PERCENT ? of("percentage") : new Type.Quantity(unit.dimension()).words();
  }
}
