package gripwright.review;

import gripwright.athlete.Injury;
import gripwright.finding.Message;
import gripwright.grip.FingerSet;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.FeltPain;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
import gripwright.log.LogEntry.Pain;
import gripwright.log.LogEntry.Pain.Kind;
import gripwright.log.RisingPain;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Pain in one place over time, and its evaluation by the pain-monitoring model. Immutable.
 *
 * <p>Sources: Thomee R 1997, Phys Ther 77(12):1690-1703; Silbernagel KG et al. 2007, Am J Sports
 * Med 35(6):897-906: up to 2 of 10 training continues, up to 5 is accepted, above 5 is too much,
 * and pain may not rise from week to week. Sharp or sudden pain, and the consequences of 3 to 5,
 * are common practice. {@link FeltPain} decides what stops and until when. No diagnosis: that is
 * for a licensed practitioner.
 *
 * @param place where it hurts
 * @param scores every logged score, oldest first
 * @param rule the consequence on the day of the review
 * @param because the reason for it
 * @param worst the score behind it: the highest of those that still count
 */
public record PainCourse(Place place, List<Score> scores, Rule rule, Because because, Score worst) {

  /** Up to this score training continues. */
  public static final double MILD = RisingPain.MILD;

  /** Sessions with the finger that stay the same or get lighter after a score of 3 to 5. */
  public static final int HELD_SESSIONS = 2;

  /** Where it hurts. */
  public sealed interface Place extends Message {
    /** Returns whether these fingers of these hands load the place that hurts. */
    boolean isUsedBy(FingerSet fingers, Hands hands);

    /** Returns whether an exercise loads the place that hurts. */
    default boolean isUsedBy(Done done) {
      return isUsedBy(done.setup().grip().fingers(), done.setup().hands());
    }

    /** Returns what the visitor returns for this kind. */
    <R> R accept(Visitor<R> visitor);

    /**
     * One method for each kind of place.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> {
      /** Visits a finger. */
      R inFinger(InFinger place);

      /** Visits a grip. */
      R inGrip(InGrip place);

      /** Visits climbing. */
      R whileClimbing(WhileClimbing place);
    }
  }

  /**
   * A finger, from a line about pain.
   *
   * @param finger which
   * @param structure what hurts, if known
   * @param side which hand; empty if both or not reported
   */
  public record InFinger(Finger finger, Optional<Structure> structure, Optional<Side> side)
      implements Place {
    @Override
    public String toString() {
      return finger + structure.map(s -> " " + s).orElse("") + side.map(s -> " " + s).orElse("");
    }

    @Override
    public String key() {
      return (structure.isPresent() ? "common.place-structure" : "common.place-finger")
          + (side.isPresent() ? "-side" : "");
    }

    @Override
    public Map<String, Object> arguments() {
      Map<String, Object> facts = new TreeMap<>();
      facts.put("finger", finger);
      structure.ifPresent(s -> facts.put("structure", s));
      side.ifPresent(s -> facts.put("side", s));
      return facts;
    }

    @Override
    public boolean isUsedBy(FingerSet fingers, Hands hands) {
      return fingers.has(finger) && (side.isEmpty() || hands.sides().contains(side.get()));
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.inFinger(this);
    }
  }

  /**
   * A grip, from the line of an exercise; which of its fingers hurts is unknown.
   *
   * @param grip its name
   * @param fingers the fingers it uses
   */
  public record InGrip(String grip, FingerSet fingers) implements Place {
    @Override
    public String toString() {
      return grip;
    }

    @Override
    public String key() {
      return "common.place-grip";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("grip", grip);
    }

    @Override
    public boolean isUsedBy(FingerSet others, Hands hands) {
      return fingers.overlaps(others);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.inGrip(this);
    }
  }

  /** An unknown place, from a line about climbing. */
  public record WhileClimbing() implements Place {
    @Override
    public String toString() {
      return "climbing";
    }

    @Override
    public String key() {
      return "common.place-climbing";
    }

    @Override
    public boolean isUsedBy(FingerSet fingers, Hands hands) {
      return true;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.whileClimbing(this);
    }
  }

  /**
   * A score.
   *
   * @param date when
   * @param value 0 to 10
   * @param kind sharp, sudden or neither
   */
  public record Score(LocalDate date, double value, Kind kind) {

    private static final Comparator<Score> ORDER =
        Comparator.comparing(Score::date).thenComparing(Score::value).thenComparing(Score::kind);

    private static Score of(FeltPain felt) {
      return new Score(felt.date(), felt.score(), felt.kind());
    }
  }

  /** The consequences, the mildest first. */
  public enum Rule {
    /** Go on. */
    GO_ON,
    /** The same or less for the next two sessions. */
    HOLD,
    /** Stop grips with this finger, and see a licensed practitioner. */
    STOP
  }

  /** The reason for a consequence. */
  public enum Because {
    /** No recent score is above 2, or its two held sessions are over. */
    MILD,
    /** A score above 2 and up to 5; or a higher one that is of the skin or whose stop is over. */
    MODERATE,
    /** A score above 2 was the second rise in a row from week to week. */
    RISING,
    /** Sharp or sudden pain. */
    SHARP,
    /** A score above 5. */
    ABOVE_LIMIT
  }

  /** Copies the scores. */
  public PainCourse {
    scores = List.copyOf(scores);
  }

  /** Returns the last score. */
  public Score last() {
    return scores.get(scores.size() - 1);
  }

  /**
   * Returns the course of every place with a score, the worst first, then by place.
   *
   * @param injuries of the athlete
   * @param day the last day that counts
   */
  static List<PainCourse> of(Log log, List<Injury> injuries, LocalDate day) {
    Map<String, Place> places = new TreeMap<>();
    Map<String, List<FeltPain>> pains = new TreeMap<>();
    List<LogEntry.Trained> sessions =
        log.of(LogEntry.Trained.class).stream().filter(s -> !s.date().isAfter(day)).toList();
    Log known =
        new Log(log.athlete(), log.entries().stream().filter(e -> !e.date().isAfter(day)).toList());
    for (FeltPain felt : FeltPain.of(known, injuries)) {
      Place place = place(felt);
      // A grip may have a finger's name, so the kind of place is part of the key.
      String key = place.getClass().getSimpleName() + " " + place;
      places.putIfAbsent(key, place);
      pains.computeIfAbsent(key, name -> new ArrayList<>()).add(felt);
    }
    List<PainCourse> courses = new ArrayList<>();
    places.forEach(
        (name, place) ->
            courses.add(course(place, pains.getOrDefault(name, List.of()), sessions, day)));
    courses.sort(
        Comparator.<PainCourse, Rule>comparing(PainCourse::rule, Comparator.reverseOrder())
            .thenComparing(PainCourse::because, Comparator.reverseOrder())
            .thenComparing(course -> course.place().toString()));
    return courses;
  }

  private static Place place(FeltPain felt) {
    if (felt.line() instanceof Pain pain) {
      return new InFinger(pain.finger(), pain.structure(), pain.side());
    }
    return felt.done()
        .<Place>map(done -> new InGrip(done.setup().grip().name(), felt.fingers()))
        .orElseGet(WhileClimbing::new);
  }

  private static PainCourse course(
      Place place, List<FeltPain> pains, List<LogEntry.Trained> sessions, LocalDate day) {
    List<Score> scores = pains.stream().map(Score::of).sorted(Score.ORDER).toList();
    List<FeltPain> stopping = pains.stream().filter(pain -> pain.stopsOn(day, List.of())).toList();
    if (!stopping.isEmpty()) {
      Because because =
          stopping.stream().map(PainCourse::because).max(Because::compareTo).orElseThrow();
      return new PainCourse(place, scores, rule(because), because, worst(stopping, because));
    }
    List<FeltPain> holding =
        pains.stream()
            .filter(pain -> pain.score() > MILD || pain.kind() != Kind.DULL)
            .filter(pain -> after(pain.date(), place, sessions) < HELD_SESSIONS)
            .toList();
    Because because = holding.isEmpty() ? Because.MILD : Because.MODERATE;
    return new PainCourse(
        place,
        scores,
        rule(because),
        because,
        holding.isEmpty() ? scores.get(scores.size() - 1) : worst(holding, because));
  }

  private static Because because(FeltPain pain) {
    if (!pain.isStrong()) {
      return Because.RISING;
    }
    return pain.score() > Pain.LIMIT ? Because.ABOVE_LIMIT : Because.SHARP;
  }

  private static Score worst(List<FeltPain> pains, Because because) {
    return pains.stream()
        .filter(pain -> because == Because.MODERATE || because(pain) == because)
        .map(Score::of)
        .max(Comparator.comparing(Score::value).thenComparing(Score::date))
        .orElseThrow();
  }

  private static Rule rule(Because because) {
    return switch (because) {
      case MILD -> Rule.GO_ON;
      case MODERATE -> Rule.HOLD;
      case RISING, SHARP, ABOVE_LIMIT -> Rule.STOP;
    };
  }

  /** Returns the number of days after a day on which the place was trained. */
  private static long after(LocalDate date, Place place, List<LogEntry.Trained> sessions) {
    Set<LocalDate> days = new HashSet<>();
    for (LogEntry.Trained session : sessions) {
      if (session.date().isAfter(date)
          && session.done().stream().anyMatch(done -> place.isUsedBy(done))) {
        days.add(session.date());
      }
    }
    return days.size();
  }
}
