package gripwright.review;

import gripwright.finding.Message;
import gripwright.grip.FingerSet;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.hand.Structure;
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
 * Pain in one place as time goes on, and what the pain-monitoring model makes of it. Immutable.
 *
 * <p>Sources: Thomee R 1997, Phys Ther 77(12):1690-1703; Silbernagel KG et al. 2007, Am J Sports
 * Med 35(6):897-906: up to 2 of 10 training goes on, up to 5 is accepted, above 5 is too much, and
 * pain may not rise from week to week. Sharp or sudden pain, and what follows from 3 to 5, are
 * common practice. No diagnosis: that is for a licensed practitioner.
 *
 * @param place where it hurts
 * @param scores every score written down, oldest first
 * @param rule what follows on the day of the review
 * @param because what the rule rests on
 */
public record PainCourse(Place place, List<Score> scores, Rule rule, Because because) {

  /** Up to this score training goes on. */
  public static final double MILD = RisingPain.MILD;

  /** Days for which a score above 5, or sharp, sudden or rising pain, stops a grip. */
  public static final int STOP_DAYS = 14;

  /** Sessions with the finger that stay the same or get lighter after a score of 3 to 5. */
  public static final int HELD_SESSIONS = 2;

  /** Where it hurts. */
  public sealed interface Place extends Message {
    /** Tells whether an exercise that was done loads what hurts. */
    boolean isUsedBy(Done done);

    /** Answers with what a visitor has for this kind. */
    <R> R accept(Visitor<R> visitor);

    /**
     * One answer for each kind of place.
     *
     * @param <R> what is answered
     */
    interface Visitor<R> {
      /** Answers for a finger. */
      R inFinger(InFinger place);

      /** Answers for a grip. */
      R inGrip(InGrip place);

      /** Answers for climbing. */
      R whileClimbing(WhileClimbing place);
    }
  }

  /**
   * A finger, from a line about pain.
   *
   * @param finger which
   * @param structure what hurts, if known
   * @param side which hand; empty if both or not said
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
    public boolean isUsedBy(Done done) {
      return done.setup().grip().fingers().has(finger)
          && (side.isEmpty() || done.setup().hands().sides().contains(side.get()));
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.inFinger(this);
    }
  }

  /**
   * A grip, from the line of an exercise; which of its fingers hurt is not known.
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
    public boolean isUsedBy(Done done) {
      return done.setup().grip().fingers().overlaps(fingers);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.inGrip(this);
    }
  }

  /** Somewhere, from a line about climbing. */
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
    public boolean isUsedBy(Done done) {
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

    /** Tells whether it alone calls for stopping. */
    public boolean stops() {
      return value > Pain.LIMIT || kind != Kind.DULL;
    }
  }

  /** What follows, the mildest first. */
  public enum Rule {
    /** Go on. */
    GO_ON,
    /** The same or less for the next two sessions. */
    HOLD,
    /** Stop grips with this finger, and see a licensed practitioner. */
    STOP
  }

  /** What a rule rests on. */
  public enum Because {
    /** No score of late is above 2. */
    MILD,
    /** A score above 2 and up to 5. */
    MODERATE,
    /** With a score of late the highest of seven days was above that of the seven before. */
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

  /** Returns the score that the rule rests on: the gravest of those that still count. */
  public Score gravest(LocalDate day) {
    return scores.stream()
        .filter(score -> score.date().isAfter(day.minusDays(STOP_DAYS)))
        .max(
            Comparator.comparing(Score::stops)
                .thenComparing(Score::value)
                .thenComparing(Score::date))
        .orElseGet(this::last);
  }

  /** Returns the course of every place that has a score, the gravest first, then by place. */
  static List<PainCourse> of(Log log, LocalDate day) {
    Map<String, Place> places = new TreeMap<>();
    Map<String, List<Score>> scores = new TreeMap<>();
    List<LogEntry.Trained> sessions =
        log.of(LogEntry.Trained.class).stream().filter(s -> !s.date().isAfter(day)).toList();
    Reader reader = new Reader(places, scores);
    for (LogEntry entry : log.entries()) {
      if (!entry.date().isAfter(day)) {
        entry.pain(reader);
      }
    }
    List<PainCourse> courses = new ArrayList<>();
    places.forEach(
        (name, place) -> {
          List<Score> ofPlace =
              scores.getOrDefault(name, List.of()).stream().sorted(Score.ORDER).toList();
          Because because = because(place, ofPlace, sessions, day);
          courses.add(new PainCourse(place, ofPlace, rule(because), because));
        });
    courses.sort(
        Comparator.<PainCourse, Rule>comparing(PainCourse::rule, Comparator.reverseOrder())
            .thenComparing(PainCourse::because, Comparator.reverseOrder())
            .thenComparing(course -> course.place().toString()));
    return courses;
  }

  private record Reader(Map<String, Place> places, Map<String, List<Score>> scores)
      implements LogEntry.PainReader {
    @Override
    public void ofFinger(Pain pain) {
      add(
          new InFinger(pain.finger(), pain.structure(), pain.side()),
          new Score(pain.date(), pain.score(), pain.kind()),
          places,
          scores);
    }

    @Override
    public void whileClimbing(LogEntry.Climbed climbed, double score) {
      add(new WhileClimbing(), new Score(climbed.date(), score, Kind.DULL), places, scores);
    }

    @Override
    public void inTraining(LogEntry.Trained trained, Done done, double score) {
      add(
          new InGrip(done.setup().grip().name(), done.setup().grip().fingers()),
          new Score(trained.date(), score, Kind.DULL),
          places,
          scores);
    }
  }

  private static void add(
      Place place, Score score, Map<String, Place> places, Map<String, List<Score>> scores) {
    // A grip may have a finger's name; the kind of place keeps them apart.
    String key = place.getClass().getSimpleName() + " " + place;
    places.putIfAbsent(key, place);
    scores.computeIfAbsent(key, name -> new ArrayList<>()).add(score);
  }

  private static Rule rule(Because because) {
    return switch (because) {
      case MILD -> Rule.GO_ON;
      case MODERATE -> Rule.HOLD;
      case RISING, SHARP, ABOVE_LIMIT -> Rule.STOP;
    };
  }

  private static Because because(
      Place place, List<Score> scores, List<LogEntry.Trained> sessions, LocalDate day) {
    List<Score> stopping =
        scores.stream()
            .filter(score -> score.date().isAfter(day.minusDays(STOP_DAYS)) && score.stops())
            .toList();
    if (stopping.stream().anyMatch(score -> score.value() > Pain.LIMIT)) {
      return Because.ABOVE_LIMIT;
    }
    if (!stopping.isEmpty()) {
      return Because.SHARP;
    }
    if (scores.stream()
        .filter(score -> score.date().isAfter(day.minusDays(STOP_DAYS)))
        .anyMatch(score -> rises(scores, score.date()))) {
      return Because.RISING;
    }
    boolean held =
        scores.stream()
            .filter(score -> score.value() > MILD || score.stops())
            .anyMatch(score -> after(score.date(), place, sessions) < HELD_SESSIONS);
    return held ? Because.MODERATE : Because.MILD;
  }

  /** Tells whether pain rises week on week with the scores of a day. */
  private static boolean rises(List<Score> scores, LocalDate day) {
    TreeMap<LocalDate, Double> worst = new TreeMap<>();
    scores.forEach(score -> worst.merge(score.date(), score.value(), Math::max));
    return RisingPain.on(day, worst);
  }

  /** Returns on how many days after a day the place was trained. */
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
