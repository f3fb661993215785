package gripwright.review;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.HandShape;
import gripwright.hand.Side;
import gripwright.quantity.Length;
import gripwright.review.ReviewedSession.Work;
import gripwright.tissue.Estimate;
import gripwright.tissue.FingerLoad;
import gripwright.tissue.TissueLoad;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Time under tension and impulse in the sessions of a log, by week: for each grip, and for each
 * finger of each hand with its pulleys. Climbing and tests are not included, since their loads are
 * unknown.
 *
 * <p>Each hand holds half of a load on two hands. The part of a finger and its pulleys is an
 * estimate by {@link TissueLoad}, not a measurement.
 *
 * @param weeks every week from the first with a session to the day of the review
 */
public record Exposure(List<Week> weeks) {

  /**
   * A week.
   *
   * @param from first day
   * @param grips work in each grip, by name
   * @param fingers work of each finger, left hand first; fingers without work are left out
   */
  public record Week(LocalDate from, List<OfGrip> grips, List<OfFinger> fingers) {
    /** Copies the lists. */
    public Week {
      grips = List.copyOf(grips);
      fingers = List.copyOf(fingers);
    }
  }

  /**
   * Work in a grip.
   *
   * @param grip its name
   * @param seconds time under tension, in s
   * @param impulse total load times hold time, on all hands in use, in N s
   */
  public record OfGrip(String grip, double seconds, double impulse) {}

  /**
   * Estimated work of a finger.
   *
   * @param side which hand
   * @param finger which finger
   * @param seconds time under tension in all its holds, in s
   * @param impulse force on its pad times hold time, in N s
   * @param a2 force on the second annular pulley times hold time, in N s
   * @param a4 the same of the fourth
   */
  public record OfFinger(
      Side side, Finger finger, double seconds, Estimate impulse, Estimate a2, Estimate a4) {

    OfFinger plus(OfFinger other) {
      return new OfFinger(
          side,
          finger,
          seconds + other.seconds,
          sum(impulse, other.impulse),
          sum(a2, other.a2),
          sum(a4, other.a4));
    }

    /**
     * Adds the ends of intervals, as if errors had the same direction in all holds, which is mostly
     * true.
     */
    private static Estimate sum(Estimate one, Estimate other) {
      return new Estimate(
          one.value() + other.value(), one.low() + other.low(), one.high() + other.high());
    }
  }

  /** Copies the list. */
  public Exposure {
    weeks = List.copyOf(weeks);
  }

  /**
   * Adds up the work of sessions.
   *
   * @param athlete whose hands
   * @param sessions reviewed sessions, in any order
   * @param until last day
   * @param weekStart day on which weeks begin
   */
  static Exposure of(
      Athlete athlete, List<ReviewedSession> sessions, LocalDate until, DayOfWeek weekStart) {
    SortedMap<LocalDate, List<Work>> byWeek = new TreeMap<>();
    for (ReviewedSession session : sessions) {
      if (session.trained()) {
        LocalDate from = session.date().with(TemporalAdjusters.previousOrSame(weekStart));
        byWeek.computeIfAbsent(from, day -> new ArrayList<>()).addAll(session.work());
      }
    }
    List<Week> weeks = new ArrayList<>();
    if (!byWeek.isEmpty()) {
      UnitLoads unit = new UnitLoads(athlete);
      for (LocalDate from = byWeek.firstKey(); !from.isAfter(until); from = from.plusDays(7)) {
        weeks.add(week(from, byWeek.getOrDefault(from, List.of()), unit));
      }
    }
    return new Exposure(weeks);
  }

  private static Week week(LocalDate from, List<Work> work, UnitLoads unit) {
    SortedMap<String, OfGrip> grips = new TreeMap<>();
    SortedMap<String, OfFinger> fingers = new TreeMap<>();
    for (Work each : work) {
      if (each.match().done().isPresent() && each.seconds() > 0) {
        Setup setup = each.match().done().get().setup();
        double impulse = each.impulse().orElse(0);
        grips.merge(
            setup.grip().name(),
            new OfGrip(setup.grip().name(), each.seconds(), impulse),
            (one, other) ->
                new OfGrip(
                    one.grip(), one.seconds() + other.seconds(), one.impulse() + other.impulse()));
        for (Side side : setup.hands().sides()) {
          double own = impulse / setup.hands().sides().size();
          for (FingerLoad load : unit.of(setup, side)) {
            fingers.merge(
                side.ordinal() + "/" + load.finger().ordinal(),
                new OfFinger(
                    side,
                    load.finger(),
                    each.seconds(),
                    load.fingertip().times(own),
                    load.a2().times(own),
                    load.a4().times(own)),
                OfFinger::plus);
          }
        }
      }
    }
    return new Week(from, List.copyOf(grips.values()), List.copyOf(fingers.values()));
  }

  /** Returns the work of each finger in all weeks, left hand first. */
  public List<OfFinger> fingers() {
    SortedMap<String, OfFinger> all = new TreeMap<>();
    weeks.stream()
        .flatMap(week -> week.fingers().stream())
        .forEach(
            finger ->
                all.merge(
                    finger.side().ordinal() + "/" + finger.finger().ordinal(),
                    finger,
                    OfFinger::plus));
    return List.copyOf(all.values());
  }

  /** Returns the names of all grips with work, the one with the longest time first. */
  public List<String> grips() {
    Map<String, Double> seconds = new TreeMap<>();
    weeks.stream()
        .flatMap(week -> week.grips().stream())
        .forEach(grip -> seconds.merge(grip.grip(), grip.seconds(), Double::sum));
    return seconds.entrySet().stream()
        .sorted(
            Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .map(Map.Entry::getKey)
        .toList();
  }

  /**
   * The load on fingers for 1 N on a hand, calculated once for each grip, edge and shape of hand.
   */
  private static final class UnitLoads {

    private record Question(Grip grip, Length edge, HandShape shape) {}

    private final Map<Side, HandShape> shapes;
    private final Map<Question, List<FingerLoad>> known = new HashMap<>();

    UnitLoads(Athlete athlete) {
      shapes = Map.of(Side.LEFT, athlete.shape(Side.LEFT), Side.RIGHT, athlete.shape(Side.RIGHT));
    }

    List<FingerLoad> of(Setup setup, Side side) {
      HandShape shape = java.util.Objects.requireNonNull(shapes.get(side));
      return known.computeIfAbsent(
          new Question(setup.grip(), setup.edge(), shape),
          q -> TissueLoad.of(GripFit.of(q.grip(), q.shape(), q.edge()), 1).fingers());
    }
  }
}
