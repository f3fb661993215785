package gripwright.expression;

import gripwright.finding.Clause;
import gripwright.finding.Message;
import java.util.Locale;
import java.util.Optional;

/** A kind of thing that rules refer to. Each has properties, see {@link Property#of(Kind)}. */
public enum Kind {
  /** A line of a session on a day, with its loads. */
  EXERCISE,
  /** A session on a day; in a pair also a retest or a day of hard climbing. */
  SESSION,
  /** A day with a session, a retest or hard climbing. */
  DAY,
  /** Seven days of a plan. */
  WEEK,
  /** A block of weeks. */
  BLOCK,
  /** A plan for one athlete. */
  PLAN,
  /** Two sessions, the earlier and the later. */
  PAIR,
  /** The athlete, on a day. */
  ATHLETE,
  /** A grip. */
  GRIP,
  /** A finger of one hand, in an exercise, session, day, week, block or plan. */
  FINGER;

  /** Returns the word by which a rule names the thing itself, such as {@code exercise}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns the name of one of them, such as {@code an exercise}. */
  public Message one() {
    return Clause.of("term.one-" + word());
  }

  /** Returns the name of several of them, such as {@code exercises}. */
  public Message many() {
    return Clause.of("term.many-" + word());
  }

  /** Returns the kind for a word. */
  public static Optional<Kind> parse(String word) {
    for (Kind kind : values()) {
      if (kind.word().equals(word)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
