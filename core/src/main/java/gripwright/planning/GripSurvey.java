package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.HandShape;
import gripwright.hand.Segment;
import gripwright.hand.Side;
import gripwright.log.Log;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.tissue.LumbricalIndex;
import gripwright.tissue.Slip;
import gripwright.tissue.TissueLoad;
import gripwright.tissue.TissueModel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Every grip fitted to one athlete's hands on one edge: what the hands take, what it asks of
 * tendons and pulleys at a stated load, and which rules stand against it. Immutable.
 *
 * <p>Forces are estimates with intervals, not measurements; {@link TissueLoad} says what they are
 * worth. Rules are asked of a light hold, so that what stands against it stands against any.
 *
 * @param athlete whose hands
 * @param day the day for which rules are asked
 * @param edge depth of the edge
 * @param total what the two hands hold together; each holds half
 * @param left the left hand
 * @param right the right hand
 * @param rows one row a grip, or one a hand where the two don't hold it alike; the catalogue's
 *     grips come first, crimps before open, split and single ones
 * @param notes rules broken by the athlete whatever the grip
 */
public record GripSurvey(
    Athlete athlete,
    LocalDate day,
    Length edge,
    Load total,
    HandShape left,
    HandShape right,
    List<Row> rows,
    List<Finding> notes) {

  /** The catalogue first, crimps before open, split and single grips. */
  static final Comparator<Grip> ORDER =
      Comparator.comparing((Grip grip) -> !grip.equals(StandardGrips.byName().get(grip.name())))
          .thenComparing(Grip::family)
          .thenComparing(grip -> -grip.fingers().count())
          .thenComparing(grip -> grip.fingers().fingers().get(0))
          .thenComparing(grip -> !grip.needs().isNone())
          .thenComparing(Grip::name);

  /**
   * A grip on one hand.
   *
   * @param side which hand; empty if both hold it alike
   * @param fit how the hand takes it; the left one where both hold it alike
   * @param load what it asks of tendons and pulleys; in the nearest pose if the hand does not take
   *     it
   * @param slips what the other fingers take over when one leaves; empty for a single finger
   * @param lumbrical the lumbrical index with idle fingers relaxed
   * @param lumbricalPulledLow the same with idle fingers pulled into the palm
   * @param gates rules that even a light hold of this grip breaks
   */
  public record Row(
      Optional<Side> side,
      GripFit fit,
      TissueLoad load,
      List<Slip> slips,
      LumbricalIndex lumbrical,
      LumbricalIndex lumbricalPulledLow,
      List<Finding> gates) {

    /** Copies the lists. */
    public Row {
      slips = List.copyOf(slips);
      gates = List.copyOf(gates);
    }

    /** Returns the grip. */
    public Grip grip() {
      return fit.grip();
    }

    /** Tells whether no rule closes the grip to this athlete; warnings close nothing. */
    public boolean open() {
      return gates.stream().noneMatch(Finding::blocks);
    }
  }

  /** Copies the lists. */
  public GripSurvey {
    rows = List.copyOf(rows);
    notes = List.copyOf(notes);
  }

  /**
   * Fits grips to an athlete's hands. Time in training counts as written, unless it says from which
   * day.
   *
   * @param athlete whose hands
   * @param log what is known of the athlete, for pain
   * @param grips the grips, in any order
   * @param edge depth of the edge, above 0
   * @param total what the two hands hold together, above 0
   * @param day the day for which rules are asked
   * @throws IllegalArgumentException if edge or load are not above 0
   */
  public static GripSurvey of(
      Athlete athlete, Log log, Collection<Grip> grips, Length edge, Load total, LocalDate day) {
    if (!(total.kilograms() > 0)) {
      throw new IllegalArgumentException("not a load to hold: " + total);
    }
    HandShape left = HandShape.of(athlete.left(), athlete.sex());
    HandShape right = HandShape.of(athlete.right(), athlete.sex());
    List<Row> rows = new ArrayList<>();
    Map<String, Finding> notes = new LinkedHashMap<>();
    for (Grip grip : grips.stream().sorted(ORDER).toList()) {
      List<Finding> gates = new ArrayList<>();
      for (Finding breach : LoneExercise.againstLightHold(grip, edge, athlete, log, day)) {
        if (breach.place().steps().stream().anyMatch(step -> step.kind().equals("exercise"))) {
          gates.add(breach);
        } else {
          notes.putIfAbsent(breach.code(), breach);
        }
      }
      GripFit leftFit = GripFit.of(grip, left, edge);
      GripFit rightFit = left.equals(right) ? leftFit : GripFit.of(grip, right, edge);
      double newtons = perHand(total);
      if (alike(leftFit, rightFit)) {
        rows.add(row(Optional.empty(), leftFit, newtons, gates));
      } else {
        rows.add(row(Optional.of(Side.LEFT), leftFit, newtons, gates));
        rows.add(row(Optional.of(Side.RIGHT), rightFit, newtons, gates));
      }
    }
    return new GripSurvey(
        athlete, day, edge, total, left, right, rows, List.copyOf(notes.values()));
  }

  private static Row row(Optional<Side> side, GripFit fit, double newtons, List<Finding> gates) {
    TissueLoad load = TissueLoad.of(fit, newtons);
    return new Row(
        side,
        fit,
        load,
        load.slips(),
        LumbricalIndex.of(fit, TissueModel.STANDARD.arms(), LumbricalIndex.Idle.RELAXED),
        LumbricalIndex.of(fit, TissueModel.STANDARD.arms(), LumbricalIndex.Idle.PULLED_LOW),
        gates);
  }

  /** Tells whether a grip lies alike on both hands, and asks the same of them. */
  private static boolean alike(GripFit left, GripFit right) {
    HandShape one = left.pose().shape();
    HandShape other = right.pose().shape();
    return left.pose().fingers().equals(right.pose().fingers())
        && left.misses().equals(right.misses())
        && left.advice().equals(right.advice())
        && one.breadth().equals(other.breadth())
        && left.grip().fingers().fingers().stream().allMatch(f -> alike(one, other, f));
  }

  private static boolean alike(HandShape left, HandShape right, Finger finger) {
    for (Segment segment : Segment.values()) {
      if (!left.bone(finger, segment).equals(right.bone(finger, segment))) {
        return false;
      }
    }
    return drop(left, finger) == drop(right, finger);
  }

  /** A finger's place on the palm counts from the middle finger's knuckle. */
  private static double drop(HandShape shape, Finger finger) {
    return shape.knuckleAlong(Finger.MIDDLE) - shape.knuckleAlong(finger);
  }

  /** Tells whether the hands are alike in every measure. */
  public boolean alike() {
    return athlete.left().equals(athlete.right());
  }

  /** Returns what each hand holds, in N. */
  public double newtonsPerHand() {
    return perHand(total);
  }

  private static double perHand(Load total) {
    return total.newtons() / 2;
  }

  /** Returns the months of structured finger training on the day. */
  public double trainedMonths() {
    return athlete.trained().monthsOn(day, day);
  }

  /** Returns the months with a grip on the day; 0 for one the athlete has not used. */
  public double familiarMonths(String grip) {
    return athlete.familiar().stream()
        .filter(f -> f.grip().equals(grip))
        .mapToDouble(f -> f.experience().monthsOn(day, day))
        .max()
        .orElse(0);
  }

  /** Returns what the reader of these rows has to know. */
  public List<Reservation> reservations() {
    boolean missed = rows.stream().anyMatch(row -> !row.fit().reachable());
    boolean single = rows.stream().anyMatch(row -> row.load().fingers().size() == 1);
    return List.of(Reservation.values()).stream()
        .filter(each -> each != Reservation.WHOLE_PADS || missed)
        .filter(each -> each != Reservation.SINGLE_FINGER || single)
        .toList();
  }
}
