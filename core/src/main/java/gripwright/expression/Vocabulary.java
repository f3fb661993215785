package gripwright.expression;

import gripwright.finding.Clause;
import gripwright.finding.Message;
import java.util.List;
import java.util.stream.Stream;

/**
 * The words a property can have.
 *
 * @param what the kind of name, such as {@code grip-family}: a key of {@code term.kind}
 * @param words all of them, in a fixed order; empty if a project adds its own, such as the names of
 *     grips
 */
public record Vocabulary(String what, List<String> words) {

  /** Names of grips. */
  public static final Vocabulary GRIPS = new Vocabulary("grip", List.of());

  /** Names of protocols. */
  public static final Vocabulary PROTOCOLS = new Vocabulary("protocol", List.of());

  /** Names of sessions. */
  public static final Vocabulary SESSIONS = new Vocabulary("session", List.of());

  /** Names of places. */
  public static final Vocabulary PLACES = new Vocabulary("place", List.of());

  /** Names of blocks. */
  public static final Vocabulary BLOCKS = new Vocabulary("block", List.of());

  /** Names of plans. */
  public static final Vocabulary PLANS = new Vocabulary("plan", List.of());

  /** Names of athletes. */
  public static final Vocabulary ATHLETES = new Vocabulary("athlete", List.of());

  /** Copies the words. */
  public Vocabulary {
    words = List.copyOf(words);
  }

  /** Returns a vocabulary of these words and no others, such as those of an enumeration. */
  public static Vocabulary of(String what, Object... words) {
    return new Vocabulary(what, Stream.of(words).map(Object::toString).toList());
  }

  /** Returns the name of the kind. */
  public Message name() {
    return Clause.of("term.kind-" + what);
  }

  /** Returns whether a word can be one of them. */
  public boolean allows(String word) {
    return words.isEmpty() || words.contains(word);
  }

  /** Returns whether {@link #words} lists all words. */
  public boolean closed() {
    return !words.isEmpty();
  }
}
