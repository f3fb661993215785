package gripwright.language.check;

import gripwright.expression.Expression;
import gripwright.expression.Kind;
import gripwright.expression.Property;
import gripwright.expression.Type;
import gripwright.expression.Vocabulary;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what stands after {@code is} and {@code in}: words that a property can have. */
final class ExpressionWords {

  private final ExpressionText text;
  private final Ledger ledger;
  private final RuleNames names;

  ExpressionWords(ExpressionText text, Ledger ledger, RuleNames names) {
    this.text = text;
    this.ledger = ledger;
    this.names = names;
  }

  /** Tells whether words can follow: the value is a word, or a thing that has a name. */
  static boolean takesWords(Expression value) {
    return value.type() instanceof Type.Word
        || (value.type() instanceof Type.One one && Property.find(one.kind(), "name").isPresent());
  }

  /** Returns whether a value is a word; of a thing, also whether a yes or no of it is so. */
  Optional<Expression> is(Expr.Is is, Expression value) {
    Optional<Expression> found;
    if (value.type() instanceof Type.One one && isTruth(one.kind(), is.word().text())) {
      found = Optional.of(value.get(is.word().text()));
    } else if (takesWords(value)) {
      found = words(value, List.of(is.word()));
    } else if (value.type() instanceof Type.One one) {
      ledger.unknown(
          is.word(), Terms.of("truth-of", "thing", one.kind().one()), truths(one.kind()));
      found = Optional.empty();
    } else {
      ledger.error(
          is.subject(),
          value.type() == Type.Plain.TRUTH ? "type.is-truth" : "type.is",
          "text",
          text.of(is.subject()),
          "found",
          value.type().words());
      found = Optional.empty();
    }
    return is.negated() ? found.map(Expression::not) : found;
  }

  private static boolean isTruth(Kind kind, String name) {
    return Property.find(kind, name).filter(p -> p.type() == Type.Plain.TRUTH).isPresent();
  }

  private static List<String> truths(Kind kind) {
    return Property.of(kind).stream()
        .filter(p -> p.type() == Type.Plain.TRUTH)
        .map(Property::name)
        .toList();
  }

  /** Returns whether a value is one of some words; each that can't be one is reported. */
  Optional<Expression> words(Expression value, List<Word> words) {
    Expression word = value.type() instanceof Type.Word ? value : value.get("name");
    Vocabulary vocabulary = ((Type.Word) word.type()).vocabulary();
    List<String> known = new ArrayList<>();
    for (Word each : words) {
      if (isKnown(each, vocabulary)) {
        known.add(each.text());
      }
    }
    return known.size() == words.size()
        ? Optional.of(word.is(known.toArray(new String[0])))
        : Optional.empty();
  }

  private boolean isKnown(Word word, Vocabulary vocabulary) {
    if (vocabulary.equals(Vocabulary.GRIPS)) {
      return names.isGrip(ledger, word);
    }
    if (vocabulary.equals(Vocabulary.PROTOCOLS)) {
      return names.isProtocol(ledger, word);
    }
    if (vocabulary.allows(word.text())) {
      return true;
    }
    ledger.unknown(word, vocabulary.what(), vocabulary.words());
    return false;
  }
}
