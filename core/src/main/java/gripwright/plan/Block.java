package gripwright.plan;

import gripwright.grip.Grip;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A number of weeks of a plan with the same sessions. Immutable. */
public final class Block {

  /**
   * The training in a block.
   *
   * @param sessions the kinds of session; none if the block is empty on purpose
   * @param advances how exercises get harder
   * @param eases eased (deload) weeks
   * @param introductions grips that start at a low load
   * @param notes what the coach wrote about it for people, in order
   */
  public record Content(
      List<SessionPlan> sessions,
      List<Advance> advances,
      List<Ease> eases,
      List<Introduction> introductions,
      List<String> notes) {
    /**
     * Copies and checks the lists.
     *
     * @throws IllegalArgumentException if there is no session but something else, two have the same
     *     name, two advances are for the same exercises, a week is eased or a grip introduced
     *     twice, or a grip that advances or is introduced is not trained
     */
    public Content {
      Objects.requireNonNull(sessions, "sessions");
      Objects.requireNonNull(advances, "advances");
      Objects.requireNonNull(eases, "eases");
      Objects.requireNonNull(introductions, "introductions");
      sessions = List.copyOf(sessions);
      advances = List.copyOf(advances);
      eases = List.copyOf(eases);
      introductions = List.copyOf(introductions);
      notes = List.copyOf(Objects.requireNonNull(notes, "notes"));
      boolean more = !advances.isEmpty() || !eases.isEmpty() || !introductions.isEmpty();
      if (sessions.isEmpty() && more) {
        throw new IllegalArgumentException("a block without a session");
      }
      distinct("session", sessions.stream().map(SessionPlan::name).toList());
      distinct("eased week", eases.stream().map(Ease::week).toList());
      distinct("introduced grip", introductions.stream().map(i -> i.grip().name()).toList());
      Set<String> trained = trained(sessions);
      introductions.forEach(each -> requireTrained(each.grip().name(), trained));
      advances.forEach(each -> each.on().ifPresent(grip -> requireTrained(grip, trained)));
      if (advances.size() > 1 && advances.stream().anyMatch(each -> each.on().isEmpty())) {
        throw new IllegalArgumentException("two ways to advance the same exercises");
      }
      distinct("advanced grip", advances.stream().flatMap(each -> each.on().stream()).toList());
    }

    /** Creates content without notes. */
    public Content(
        List<SessionPlan> sessions,
        List<Advance> advances,
        List<Ease> eases,
        List<Introduction> introductions) {
      this(sessions, advances, eases, introductions, List.of());
    }

    /** Returns whether the block is empty on purpose. */
    public boolean isNoTraining() {
      return sessions.isEmpty();
    }
  }

  /** Returns the content of a block that is empty on purpose. */
  public static Content noTraining() {
    return new Content(List.of(), List.of(), List.of(), List.of());
  }

  private static void distinct(String what, List<?> all) {
    Set<Object> seen = new HashSet<>();
    for (Object each : all) {
      if (!seen.add(each)) {
        throw new IllegalArgumentException(what + " " + each + " is there twice");
      }
    }
  }

  /** Returns the names of the grips that any athlete trains. */
  private static Set<String> trained(List<SessionPlan> sessions) {
    Set<String> trained = new HashSet<>();
    for (SessionPlan session : sessions) {
      session.exercises().forEach(exercise -> trained.addAll(exercise.gripNames()));
    }
    return trained;
  }

  private static void requireTrained(String grip, Set<String> trained) {
    if (!trained.contains(grip)) {
      throw new IllegalArgumentException("no session of the block trains " + grip);
    }
  }

  /**
   * An eased (deload) week.
   *
   * @param week calendar week of the block, from 1
   * @param setsFraction share of the sets that is kept, above 0 and up to 0.99
   */
  public record Ease(int week, double setsFraction) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the week is outside 1 to 520, or the share not above 0
     *     and up to 0.99
     */
    public Ease {
      Range.WEEK.check(week);
      Range.EASE.check(setsFraction);
    }
  }

  /**
   * A grip that starts at a low load and rises to its written level.
   *
   * @param grip the grip
   * @param fromFraction share of the maximum in its first trained week, above 0 and up to 1
   * @param weeks trained weeks until the written level, 1 to 520
   */
  public record Introduction(Grip grip, double fromFraction, int weeks) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the first share is not above 0 and up to 1, or the weeks
     *     are outside 1 to 520
     */
    public Introduction {
      Objects.requireNonNull(grip, "grip");
      Range.OF_MAX.check(fromFraction);
      Range.RAMP.checkIn(Unit.WEEK, weeks);
    }
  }

  /** The components, checked. */
  private record Parts(String name, int weeks, Content content, Map<String, Content> only) {
    Parts {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(content, "content");
      Objects.requireNonNull(only, "only");
      only = Collections.unmodifiableMap(new TreeMap<>(only)); // a fixed order, whatever the input
      Range.BLOCK.checkIn(Unit.WEEK, weeks);
      checkEases(name, weeks, content);
      only.values().forEach(each -> checkEases(name, weeks, each));
    }
  }

  private final Parts parts;

  private Block(Parts parts) {
    this.parts = parts;
  }

  /** Returns the name: kebab-case, unique in its plan. */
  public String name() {
    return parts.name;
  }

  /** Returns the number of weeks, 1 to 520. */
  public int weeks() {
    return parts.weeks;
  }

  /** Returns the training in it. */
  public Content content() {
    return parts.content;
  }

  /** Returns other content for some athletes, by athlete name. */
  public Map<String, Content> only() {
    return parts.only;
  }

  private static void checkEases(String name, int weeks, Content content) {
    for (Ease ease : content.eases()) {
      if (ease.week() > weeks) {
        throw new IllegalArgumentException(
            "block " + name + ": eased week " + ease.week() + " is outside 1 to " + weeks);
      }
    }
  }

  /** Returns the content for an athlete. */
  public Content contentFor(String athlete) {
    return parts.only.getOrDefault(athlete, parts.content);
  }

  /** Returns a builder with all parts of this block; parts added later follow them. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /**
   * Returns a builder for a block of this many weeks.
   *
   * @param name kebab-case, unique in its plan
   * @param weeks 1 to 520
   */
  public static Builder named(String name, int weeks) {
    Objects.requireNonNull(name, "name");
    return new Builder(name, weeks);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Block that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "Block" + parts.toString().substring("Parts".length());
  }

  /** Collects the parts of a block. Not thread-safe. */
  public static final class Builder {
    private final String name;
    private final int weeks;
    private final List<SessionPlan> sessions = new ArrayList<>();
    private final List<Advance> advances = new ArrayList<>();
    private final List<Ease> eases = new ArrayList<>();
    private final List<Introduction> introductions = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final Map<String, Content> only = new TreeMap<>();
    private boolean noTraining;

    private Builder(String name, int weeks) {
      this.name = name;
      this.weeks = weeks;
    }

    private Builder(Parts copied) {
      this(copied.name, copied.weeks);
      content(copied.content);
      only.putAll(copied.only);
    }

    /** Sets the training of all athletes, in place of what is already there. */
    public Builder content(Content content) {
      Objects.requireNonNull(content, "content");
      noTraining = content.isNoTraining();
      sessions.clear();
      sessions.addAll(content.sessions());
      advances.clear();
      advances.addAll(content.advances());
      eases.clear();
      eases.addAll(content.eases());
      introductions.clear();
      introductions.addAll(content.introductions());
      notes.clear();
      notes.addAll(content.notes());
      return this;
    }

    /** Adds a kind of session. */
    public Builder session(SessionPlan session) {
      Objects.requireNonNull(session, "session");
      sessions.add(session);
      return this;
    }

    /** Adds an advance. */
    public Builder advance(Advance advance) {
      Objects.requireNonNull(advance, "advance");
      advances.add(advance);
      return this;
    }

    /** Adds an eased (deload) week; 0.6 keeps 60 % of the sets. */
    public Builder ease(int week, double setsFraction) {
      eases.add(new Ease(week, setsFraction));
      return this;
    }

    /** Adds a grip that starts at a low load. */
    public Builder introduce(Grip grip, double fromFraction, int overWeeks) {
      Objects.requireNonNull(grip, "grip");
      introductions.add(new Introduction(grip, fromFraction, overWeeks));
      return this;
    }

    /** Adds a note for people; it changes no load and no rule. */
    public Builder note(String text) {
      notes.add(Objects.requireNonNull(text, "text"));
      return this;
    }

    /** Sets other content for some athletes, in place of what is already there. */
    public Builder only(Map<String, Content> byAthlete) {
      Objects.requireNonNull(byAthlete, "byAthlete");
      only.clear();
      only.putAll(byAthlete);
      return this;
    }

    /** Sets other content for one athlete. */
    public Builder onlyFor(String athlete, Content content) {
      Objects.requireNonNull(athlete, "athlete");
      Objects.requireNonNull(content, "content");
      only.put(athlete, content);
      return this;
    }

    /**
     * Returns the block.
     *
     * @throws IllegalArgumentException if the weeks are outside 1 to 520, an eased week is beyond
     *     them, there is no session and no {@link Block#noTraining}, or the content is refused as
     *     {@link Content} says
     */
    public Block build() {
      if (sessions.isEmpty() && !noTraining) {
        throw new IllegalArgumentException("a block without a session");
      }
      return new Block(
          new Parts(
              name, weeks, new Content(sessions, advances, eases, introductions, notes), only));
    }
  }
}
