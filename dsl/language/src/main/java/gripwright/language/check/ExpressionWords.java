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

/** Reads what follows {@code is} and {@code in}: words that a property can have. */
final class ExpressionWords {

  private final ExpressionText text;
  private final Diagnostics diagnostics;
  private final RuleNames names;

  ExpressionWords(ExpressionText text, Diagnostics diagnostics, RuleNames names) {
    this.text = text;
    this.diagnostics = diagnostics;
    this.names = names;
  }

  /** Returns whether words can follow: the value is a word, or a subject with a name. */
  static boolean takesWords(Expression value) {
    return value.type() instanceof Type.Word
        || (value.type() instanceof Type.One one && Property.find(one.kind(), "name").isPresent());
  }

  /**
   * Returns the condition that a value is a word; for a subject also the condition that one of its
   * yes-or-no properties is true.
   */
  Optional<Expression> is(Expr.Is is, Expression value) {
    Optional<Expression> found =
        value.type() instanceof Type.One one
            ? isOf(one.kind(), is.word(), value)
            : takesWords(value) ? words(value, List.of(is.word())) : isOfNoWord(is, value);
    return is.negated() ? found.map(Expression::not) : found;
  }

  private Optional<Expression> isOf(Kind kind, Word word, Expression thing) {
    if (isTruth(kind, word.text())) {
      return Optional.of(thing.get(word.text()));
    }
    if (takesWords(thing)) {
      return words(thing, List.of(word));
    }
    diagnostics.unknown(word, Terms.of("truth-of", "thing", kind.one()), truths(kind));
    return Optional.empty();
  }

  private Optional<Expression> isOfNoWord(Expr.Is is, Expression value) {
    diagnostics.error(
        is.subject(),
        value.type() == Type.Plain.TRUTH ? "type.is-truth" : "type.is",
        "text",
        text.of(is.subject()),
        "found",
        value.type().words());
    return Optional.empty();
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

  /**
   * Returns the condition that a value is one of some words; each word that is not possible is
   * reported.
   */
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
      return names.isGrip(diagnostics, word);
    }
    if (vocabulary.equals(Vocabulary.PROTOCOLS)) {
      return names.isProtocol(diagnostics, word);
    }
    if (vocabulary.allows(word.text())) {
      return true;
    }
    diagnostics.unknown(word, vocabulary.what(), vocabulary.words());
    return false;
  }
}
