package gripwright.expression;

import java.util.Optional;

/** The subjects that a rule checks. */
public enum Scope {
  /** Each exercise of each session. */
  EXERCISE(Kind.EXERCISE),
  /** Each session. */
  SESSION(Kind.SESSION),
  /** Each day with a session, test or hard climbing. */
  DAY(Kind.DAY),
  /** Each week with a session. */
  WEEK(Kind.WEEK),
  /** Each block. */
  BLOCK(Kind.BLOCK),
  /** The plan as a whole. */
  PLAN(Kind.PLAN),
  /** Each two sessions, the earlier and the later; retests and hard climbing count as sessions. */
  PAIR_OF_SESSIONS(Kind.PAIR);

  private final Kind kind;

  Scope(Kind kind) {
    this.kind = kind;
  }

  /** Returns the kind of subject. */
  public Kind kind() {
    return kind;
  }

  /** Returns the words written in a rule, such as {@code pair of sessions}. */
  public String words() {
    return this == PAIR_OF_SESSIONS ? "pair of sessions" : kind.word();
  }

  /** Finds a scope by its words; {@code pair} alone is enough. */
  public static Optional<Scope> parse(String words) {
    for (Scope scope : values()) {
      if (scope.words().equals(words) || scope.kind.word().equals(words)) {
        return Optional.of(scope);
      }
    }
    return Optional.empty();
  }
}
