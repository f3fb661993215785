package gripwright.expression;

import java.util.Locale;
import java.util.Optional;

/** A kind of thing that rules speak of. Each has properties, see {@link Property#of(Kind)}. */
public enum Kind {
  /** A line of a session on a day, with its loads. */
  EXERCISE("an exercise", "exercises"),
  /** A session on a day; in a pair also a retest or a day of hard climbing. */
  SESSION("a session", "sessions"),
  /** A day with a session, a retest or hard climbing. */
  DAY("a day", "days"),
  /** Seven days of a plan. */
  WEEK("a week", "weeks"),
  /** A block of weeks. */
  BLOCK("a block", "blocks"),
  /** A plan for one athlete. */
  PLAN("a plan", "plans"),
  /** Two sessions, the earlier and the later. */
  PAIR("a pair of sessions", "pairs of sessions"),
  /** The athlete, as things stand on a day. */
  ATHLETE("an athlete", "athletes"),
  /** A grip. */
  GRIP("a grip", "grips"),
  /** A finger of one hand, in an exercise, session, day, week, block or plan. */
  FINGER("a finger", "fingers");

  private final String one;
  private final String many;

  Kind(String one, String many) {
    this.one = one;
    this.many = many;
  }

  /** Returns the word by which a rule names the thing itself, such as {@code exercise}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns what one of them is called, with its article. */
  public String one() {
    return one;
  }

  /** Returns what several of them are called. */
  public String many() {
    return many;
  }

  /** Finds the kind a word stands for. */
  public static Optional<Kind> parse(String word) {
    for (Kind kind : values()) {
      if (kind.word().equals(word)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
