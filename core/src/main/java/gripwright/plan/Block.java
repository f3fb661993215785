package gripwright.plan;

import gripwright.grip.Grip;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Some weeks of a plan that are trained alike. Immutable.
 *
 * @param name kebab-case, unique in its plan
 * @param weeks how many, 1 or more
 * @param content what is done in it
 * @param only other content for some athletes, by athlete name
 */
public record Block(String name, int weeks, Content content, Map<String, Content> only) {

  /**
   * What is done in a block.
   *
   * @param sessions the kinds of session
   * @param advances how exercises get harder
   * @param eases weeks of less work
   * @param introductions grips that start low
   */
  public record Content(
      List<SessionPlan> sessions,
      List<Advance> advances,
      List<Ease> eases,
      List<Introduction> introductions) {
    /** Copies the lists. */
    public Content {
      sessions = List.copyOf(sessions);
      advances = List.copyOf(advances);
      eases = List.copyOf(eases);
      introductions = List.copyOf(introductions);
    }
  }

  /**
   * A week of less work.
   *
   * @param week calendar week of the block, from 1
   * @param setsFraction share of the sets that is kept, above 0 and below 1
   */
  public record Ease(int week, double setsFraction) {}

  /**
   * A grip that starts low and rises to its written level.
   *
   * @param grip the grip
   * @param fromFraction share of the maximum in its first trained week
   * @param weeks trained weeks until the written level, 1 or more
   */
  public record Introduction(Grip grip, double fromFraction, int weeks) {}

  /**
   * Checks the length.
   *
   * @throws IllegalArgumentException if there is no week
   */
  public Block {
    only = Collections.unmodifiableMap(new TreeMap<>(only)); // one order, everywhere
    if (weeks < 1) {
      throw new IllegalArgumentException("block " + name + ": " + weeks + " weeks");
    }
  }

  /** Returns what an athlete does in this block. */
  public Content contentFor(String athlete) {
    return only.getOrDefault(athlete, content);
  }

  /** Starts a block of so many weeks. */
  public static Builder named(String name, int weeks) {
    return new Builder(name, weeks);
  }

  /** Collects the parts of a block. Not thread-safe. */
  public static final class Builder {
    private final String name;
    private final int weeks;
    private final List<SessionPlan> sessions = new ArrayList<>();
    private final List<Advance> advances = new ArrayList<>();
    private final List<Ease> eases = new ArrayList<>();
    private final List<Introduction> introductions = new ArrayList<>();
    private final Map<String, Content> only = new TreeMap<>();

    private Builder(String name, int weeks) {
      this.name = name;
      this.weeks = weeks;
    }

    /** Adds a kind of session. */
    public Builder session(SessionPlan session) {
      sessions.add(session);
      return this;
    }

    /** Adds a way to get harder. */
    public Builder advance(Advance advance) {
      advances.add(advance);
      return this;
    }

    /** Adds a week of less work; 0.6 keeps 60 % of the sets. */
    public Builder ease(int week, double setsFraction) {
      eases.add(new Ease(week, setsFraction));
      return this;
    }

    /** Adds a grip that starts low. */
    public Builder introduce(Grip grip, double fromFraction, int overWeeks) {
      introductions.add(new Introduction(grip, fromFraction, overWeeks));
      return this;
    }

    /** Sets other content for one athlete. */
    public Builder onlyFor(String athlete, Content content) {
      only.put(athlete, content);
      return this;
    }

    /** Returns the block. */
    public Block build() {
      return new Block(name, weeks, new Content(sessions, advances, eases, introductions), only);
    }
  }
}
