package gripwright.review;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.HandShape;
import gripwright.hand.Side;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.review.ReviewedSession.Work;
import gripwright.tissue.Estimate;
import gripwright.tissue.FingerLoad;
import gripwright.tissue.OwnHang;
import gripwright.tissue.Pulley;
import gripwright.tissue.RelativeLoad;
import gripwright.tissue.TissueLoad;
import gripwright.tissue.TissueModel;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
   * @param a2OwnHang how long the athlete's own hang would ask the same of A2, in s; empty if that
   *     hang hardly loads it
   * @param a4OwnHang the same of A4
   */
  public record OfFinger(
      Side side,
      Finger finger,
      double seconds,
      Estimate impulse,
      Estimate a2,
      Estimate a4,
      Optional<Estimate> a2OwnHang,
      Optional<Estimate> a4OwnHang) {

    OfFinger on(Side other) {
      return new OfFinger(other, finger, seconds, impulse, a2, a4, a2OwnHang, a4OwnHang);
    }

    /** Returns the work of a hold, of which this is that of 1 N s on the hand. */
    OfFinger held(double seconds, double impulse) {
      return new OfFinger(
          side,
          finger,
          seconds,
          this.impulse.times(impulse),
          a2.times(impulse),
          a4.times(impulse),
          a2OwnHang.map(hang -> hang.times(impulse)),
          a4OwnHang.map(hang -> hang.times(impulse)));
    }

    OfFinger plus(OfFinger other) {
      return new OfFinger(
          side,
          finger,
          seconds + other.seconds,
          sum(impulse, other.impulse),
          sum(a2, other.a2),
          sum(a4, other.a4),
          sum(a2OwnHang, other.a2OwnHang),
          sum(a4OwnHang, other.a4OwnHang));
    }

    private static Optional<Estimate> sum(Optional<Estimate> one, Optional<Estimate> other) {
      return one.flatMap(first -> other.map(second -> sum(first, second)));
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
   * @param bodyMass on the last day, for the own hang
   * @param until last day
   * @param weekStart day on which weeks begin
   */
  static Exposure of(
      Athlete athlete,
      List<ReviewedSession> sessions,
      Load bodyMass,
      LocalDate until,
      DayOfWeek weekStart) {
    SortedMap<LocalDate, List<Work>> byWeek = new TreeMap<>();
    for (ReviewedSession session : sessions) {
      if (session.trained()) {
        LocalDate from = session.date().with(TemporalAdjusters.previousOrSame(weekStart));
        byWeek.computeIfAbsent(from, day -> new ArrayList<>()).addAll(session.work());
      }
    }
    List<Week> weeks = new ArrayList<>();
    if (!byWeek.isEmpty()) {
      UnitLoads unit = new UnitLoads(athlete, bodyMass);
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
      Optional<Setup> trained = each.match().trainedSetup();
      if (trained.isPresent() && each.seconds() > 0) {
        Setup setup = trained.get();
        double impulse = each.impulse().orElse(0);
        grips.merge(
            setup.grip().name(),
            new OfGrip(setup.grip().name(), each.seconds(), impulse),
            (one, other) ->
                new OfGrip(
                    one.grip(), one.seconds() + other.seconds(), one.impulse() + other.impulse()));
        for (Side side : setup.hands().sides()) {
          double own = impulse / setup.hands().sides().size();
          for (OfFinger newton : unit.of(setup, side)) {
            fingers.merge(
                side.ordinal() + "/" + newton.finger().ordinal(),
                newton.held(each.seconds(), own),
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
    private final Load bodyMass;
    private final Map<HandShape, OwnHang> hangs = new HashMap<>();
    private final Map<Question, List<OfFinger>> known = new HashMap<>();

    UnitLoads(Athlete athlete, Load bodyMass) {
      shapes = Map.of(Side.LEFT, athlete.shape(Side.LEFT), Side.RIGHT, athlete.shape(Side.RIGHT));
      this.bodyMass = bodyMass;
    }

    List<OfFinger> of(Setup setup, Side side) {
      HandShape shape = Objects.requireNonNull(shapes.get(side));
      return known
          .computeIfAbsent(
              new Question(setup.grip(), setup.edge(), shape), q -> newton(setup, side, shape))
          .stream()
          .map(finger -> finger.on(side))
          .toList();
    }

    private OwnHang hang(HandShape shape) {
      Setup own = OwnHang.SETUP;
      return hangs.computeIfAbsent(
          shape,
          hand ->
              OwnHang.of(GripFit.of(own.grip(), hand, own.edge()), bodyMass, TissueModel.STANDARD));
    }

    private List<OfFinger> newton(Setup setup, Side side, HandShape shape) {
      TissueLoad load = TissueLoad.of(GripFit.of(setup.grip(), shape, setup.edge()), 1);
      OwnHang hang = hang(shape);
      List<OfFinger> fingers = new ArrayList<>();
      for (RelativeLoad relative : hang.relative(load)) {
        FingerLoad finger = load.finger(relative.finger()).orElseThrow();
        fingers.add(
            new OfFinger(
                side,
                finger.finger(),
                0,
                finger.fingertip(),
                finger.a2(),
                finger.a4(),
                seconds(hang, relative, Pulley.A2),
                seconds(hang, relative, Pulley.A4)));
      }
      return fingers;
    }

    private static Optional<Estimate> seconds(OwnHang hang, RelativeLoad load, Pulley pulley) {
      return hang.loads(load.finger(), pulley) ? Optional.of(load.of(pulley)) : Optional.empty();
    }
  }
}
