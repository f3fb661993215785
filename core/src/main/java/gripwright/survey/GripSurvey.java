package gripwright.survey;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.HandShape;
import gripwright.hand.Segment;
import gripwright.hand.Side;
import gripwright.log.Log;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Range;
import gripwright.rule.Gates;
import gripwright.strength.EdgeDepth;
import gripwright.strength.KnownLight;
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.UsableTests;
import gripwright.tissue.Estimate;
import gripwright.tissue.LumbricalIndex;
import gripwright.tissue.OwnHang;
import gripwright.tissue.RelativeLoad;
import gripwright.tissue.SlipViews;
import gripwright.tissue.TissueLoad;
import gripwright.tissue.TissueModel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Every grip fitted to one athlete's hands on one edge: whether the hands can take it, the load on
 * tendons and pulleys at a stated load, and which rules prevent it. Immutable.
 *
 * <p>Forces are estimates with intervals, not measurements; {@link TissueLoad} describes their
 * reliability. They can be trusted relative to each other, not in newtons, so each row has them
 * relative to the athlete's {@linkplain OwnHang own hang}. Rules are checked for a light hold,
 * where a broken rule closes the grip, and for a maximal hold, where a further broken rule is a
 * limit.
 */
public final class GripSurvey {

  /** Age in months at which the youth rules end. */
  private static final int YOUTH_MONTHS = 16 * 12;

  /** The parameters of every estimate of a survey. */
  public static final TissueModel MODEL = TissueModel.STANDARD;

  /**
   * Returns the order of grips: the catalogue first, crimps before open, split and single grips.
   */
  static Comparator<Grip> order() {
    Map<String, Grip> catalogue = StandardGrips.byName();
    return Comparator.comparing((Grip grip) -> !grip.equals(catalogue.get(grip.name())))
        .thenComparing(Grip::family)
        .thenComparing(grip -> -grip.fingers().count())
        .thenComparing(grip -> grip.fingers().fingers().get(0))
        .thenComparing(grip -> !grip.needs().isNone())
        .thenComparing(Grip::name);
  }

  /**
   * A grip on one hand.
   *
   * @param side which hand; empty if both hold it the same way
   * @param fit the fit of the hand; the left one if both are the same
   * @param load load on tendons and pulleys; in the nearest pose if the hand can't take it
   * @param relative the same by finger, relative to the hand's own hang
   * @param slips the load on the other fingers when one slips off; empty for a single finger
   * @param lumbrical the lumbrical index in mm, with idle fingers relaxed
   * @param lumbricalPulledLow the same with idle fingers pulled into the palm
   * @param gates rules that even a light hold of this grip breaks
   * @param limits further rules that a hold of it at the maximum with load added breaks
   * @param maximum the greatest load of both hands together, held for 7 s, by the athlete's tests;
   *     empty without an estimate
   */
  public record Row(
      Optional<Side> side,
      GripFit fit,
      TissueLoad load,
      List<RelativeLoad> relative,
      List<SlipViews> slips,
      Estimate lumbrical,
      Estimate lumbricalPulledLow,
      List<Gate> gates,
      List<Gate> limits,
      Optional<StrengthMap.Estimate> maximum) {

    /** Copies the lists. */
    public Row {
      relative = List.copyOf(relative);
      slips = List.copyOf(slips);
      gates = List.copyOf(gates);
      limits = List.copyOf(limits);
    }

    /** Returns the grip. */
    public Grip grip() {
      return fit.grip();
    }

    /** Returns whether no rule closes the grip to this athlete; warnings don't close a grip. */
    public boolean open() {
      return gates.stream().noneMatch(Gate::closes);
    }

    /** Returns whether the grip is open to this athlete, but not at any load. */
    public boolean limited() {
      return open() && limits.stream().anyMatch(Gate::closes);
    }
  }

  /**
   * Returns whether the stated load is above the athlete's estimated maximum in the grip.
   *
   * @return empty without an estimate
   */
  public Optional<Boolean> aboveMaximum(Row row) {
    return row.maximum().map(estimate -> parts.total.compareTo(estimate.load().best()) > 0);
  }

  /** The components; map and lists are copied. */
  private record Parts(
      Athlete athlete,
      LocalDate day,
      Length edge,
      Load total,
      HandShape left,
      HandShape right,
      Map<Side, OwnHang> hangs,
      List<Row> rows,
      List<Gate> notes) {
    Parts {
      hangs = Collections.unmodifiableMap(new EnumMap<>(hangs));
      rows = List.copyOf(rows);
      notes = List.copyOf(notes);
    }
  }

  private final Parts parts;

  private GripSurvey(Parts parts) {
    this.parts = parts;
  }

  /** Returns this survey with other rows. */
  public GripSurvey withRows(List<Row> others) {
    return new GripSurvey(
        new Parts(
            parts.athlete,
            parts.day,
            parts.edge,
            parts.total,
            parts.left,
            parts.right,
            parts.hangs,
            others,
            parts.notes));
  }

  /** Returns the athlete whose hands these are. */
  public Athlete athlete() {
    return parts.athlete;
  }

  /** Returns the day for which rules are checked. */
  public LocalDate day() {
    return parts.day;
  }

  /** Returns the depth of the edge. */
  public Length edge() {
    return parts.edge;
  }

  /** Returns the load on both hands together; each holds half. */
  public Load total() {
    return parts.total;
  }

  /** Returns the left hand. */
  public HandShape left() {
    return parts.left;
  }

  /** Returns the right hand. */
  public HandShape right() {
    return parts.right;
  }

  /**
   * Returns the athlete's own hang on the day by hand, which forces are given relative to; that of
   * the other hand where only that one takes the grip.
   */
  public Map<Side, OwnHang> hangs() {
    return parts.hangs;
  }

  /**
   * Returns one row a grip, or one a hand if the two differ; the catalogue's grips come first,
   * crimps before open, split and single ones.
   */
  public List<Row> rows() {
    return parts.rows;
  }

  /** Returns the rules broken by the athlete with any grip. */
  public List<Gate> notes() {
    return parts.notes;
  }

  /**
   * Fits grips to an athlete's hands. Time in training counts as written, unless it has a date.
   *
   * @param athlete whose hands
   * @param log log of the athlete, for pain
   * @param grips the grips, in any order
   * @param edge depth of the edge, 1 to 200 mm
   * @param total load on both hands together, above 0 and up to 1000 kg
   * @param day the day for which rules are checked
   * @throws IllegalArgumentException if the edge is outside 1 to 200 mm, the load is not above 0
   *     and up to 1000 kg, or the log is not the athlete's
   */
  public static GripSurvey of(
      Athlete athlete, Log log, Collection<Grip> grips, Length edge, Load total, LocalDate day) {
    log.requireOf(athlete);
    Range.EDGE.check(edge);
    Range.LOAD.check(total);
    HandFits fits = new HandFits(athlete.shape(Side.LEFT), athlete.shape(Side.RIGHT));
    Gates rules = new Gates(athlete, log, fits, day);
    Function<Setup, Posture> postures = setup -> Posture.of(fits.of(setup).values());
    UsableTests usable =
        new UsableTests(
            log.tests(),
            postures,
            date -> log.bodyMassOn(date).orElse(athlete.bodyMass()),
            date -> KnownLight.isUnder16(athlete, date));
    StrengthMap strength = StrengthMap.of(usable.on(day), postures, day);
    Map<Side, OwnHang> hangs = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      Load bodyMass = log.bodyMassOn(day).orElse(athlete.bodyMass());
      hangs.put(side, OwnHang.of(fits.of(OwnHang.SETUP, side), bodyMass, MODEL));
    }
    Function<Side, OwnHang> hang = side -> Objects.requireNonNull(hangs.get(side));
    for (Side side : Side.values()) {
      OwnHang other = hang.apply(side == Side.LEFT ? Side.RIGHT : Side.LEFT);
      if (!hang.apply(side).taken() && other.taken()) {
        hangs.put(side, other);
      }
    }
    boolean sameHang = areEqual(hang.apply(Side.LEFT).fit(), hang.apply(Side.RIGHT).fit());
    List<Row> rows = new ArrayList<>();
    Map<String, Gate> notes = new LinkedHashMap<>();
    for (Grip grip : grips.stream().sorted(order()).toList()) {
      Setup setup = Setup.of(grip, edge);
      List<Finding> light = rules.againstLightHold(setup);
      light.stream()
          .filter(breach -> !ofGrip(breach))
          .forEach(breach -> notes.putIfAbsent(breach.code(), new Gate(breach, List.of())));
      List<Gate> gates = gates(light, grip, athlete, day);
      List<Finding> hard = rules.againstHardHold(setup);
      List<Gate> limits =
          gates(hard, grip, athlete, day).stream().filter(each -> fresh(each, gates)).toList();
      GripFit leftFit = fits.of(setup, Side.LEFT);
      GripFit rightFit = fits.of(setup, Side.RIGHT);
      Optional<StrengthMap.Estimate> maximum = strength.maximum(setup);
      boolean same = sameHang && areEqual(leftFit, rightFit);
      for (Side side : same ? List.of(Side.LEFT) : List.of(Side.LEFT, Side.RIGHT)) {
        rows.add(
            row(
                same ? Optional.empty() : Optional.of(side),
                TissueLoad.of(fits.of(setup, side), perHand(total), MODEL),
                hang.apply(side),
                gates,
                limits,
                maximum));
      }
    }
    return new GripSurvey(
        new Parts(
            athlete,
            day,
            edge,
            total,
            athlete.shape(Side.LEFT),
            athlete.shape(Side.RIGHT),
            hangs,
            rows,
            List.copyOf(notes.values())));
  }

  /** Returns whether a breach depends on the grip, not on the athlete alone. */
  private static boolean ofGrip(Finding breach) {
    return breach.place().steps().stream().anyMatch(step -> step.kind().equals("exercise"));
  }

  private static boolean fresh(Gate limit, List<Gate> gates) {
    return gates.stream().noneMatch(gate -> gate.rule().equals(limit.rule()));
  }

  private static List<Gate> gates(
      List<Finding> breaches, Grip grip, Athlete athlete, LocalDate day) {
    return breaches.stream()
        .filter(GripSurvey::ofGrip)
        .map(breach -> Gate.of(breach, grip, athlete, day))
        .toList();
  }

  private static Row row(
      Optional<Side> side,
      TissueLoad load,
      OwnHang hang,
      List<Gate> gates,
      List<Gate> limits,
      Optional<StrengthMap.Estimate> maximum) {
    return new Row(
        side,
        load.fit(),
        load,
        hang.relative(load),
        load.slips(),
        load.lumbrical(LumbricalIndex.Idle.RELAXED),
        load.lumbrical(LumbricalIndex.Idle.PULLED_LOW),
        gates,
        limits,
        maximum);
  }

  /** Returns whether a grip has the same fit and load on both hands. */
  private static boolean areEqual(GripFit left, GripFit right) {
    HandShape one = left.pose().shape();
    HandShape other = right.pose().shape();
    return left.pose().fingers().equals(right.pose().fingers())
        && left.misses().equals(right.misses())
        && left.advice().equals(right.advice())
        && one.breadth().equals(other.breadth())
        && left.grip().fingers().fingers().stream().allMatch(f -> isEqual(one, other, f));
  }

  private static boolean isEqual(HandShape left, HandShape right, Finger finger) {
    for (Segment segment : Segment.values()) {
      if (!left.bone(finger, segment).equals(right.bone(finger, segment))
          || left.measured(finger, segment) != right.measured(finger, segment)) {
        return false;
      }
    }
    return drop(left, finger) == drop(right, finger);
  }

  /** Returns how far a finger's knuckle is set back from the middle finger's. */
  private static double drop(HandShape shape, Finger finger) {
    return shape.knuckleAlong(Finger.MIDDLE) - shape.knuckleAlong(finger);
  }

  /** Returns whether the hands are equal in every measure. */
  public boolean handsAreEqual() {
    return parts.athlete.left().equals(parts.athlete.right());
  }

  /** Returns the own hang that a row is given relative to. */
  public OwnHang hang(Row row) {
    return Objects.requireNonNull(parts.hangs.get(row.side().orElse(Side.LEFT)));
  }

  /** Returns the body mass of the athlete on the day. */
  public Load bodyMass() {
    return Objects.requireNonNull(parts.hangs.get(Side.LEFT)).bodyMass();
  }

  /** Returns what each hand holds, in N. */
  public double newtonsPerHand() {
    return perHand(parts.total);
  }

  private static double perHand(Load total) {
    return total.newtons() / 2;
  }

  /** Returns the months of structured finger training on the day. */
  public double trainedMonths() {
    return Gate.trained(parts.athlete, parts.day);
  }

  /** Returns whether the athlete is under 16 on the day and must not train fingers intensively. */
  public boolean underSixteen() {
    return parts.athlete.ageInMonths(parts.day) < YOUTH_MONTHS;
  }

  /** Returns the caveats for a reader of these rows. */
  public List<ModelCaveat> reservations() {
    boolean estimated = parts.left.bonesEstimated() || parts.right.bonesEstimated();
    boolean missed = parts.rows.stream().anyMatch(row -> !row.fit().reachable());
    double depth = parts.edge.millimetres();
    boolean unmodelled = depth <= EdgeDepth.SHALLOWEST_ESTIMATED;
    boolean shallow = !unmodelled && depth < longestPad();
    return List.of(ModelCaveat.values()).stream()
        .filter(each -> each != ModelCaveat.ESTIMATED_BONES || estimated)
        .filter(each -> each != ModelCaveat.UNMODELLED_EDGE || unmodelled)
        .filter(each -> each != ModelCaveat.SHALLOW_EDGE || shallow)
        .filter(each -> each != ModelCaveat.WHOLE_PADS || missed)
        .filter(each -> each != ModelCaveat.OWN_HANG || !hangTaken())
        .toList();
  }

  /** Returns whether a hand takes the grip of the own hang. */
  private boolean hangTaken() {
    return parts.hangs.values().stream().allMatch(OwnHang::taken);
  }

  /** Returns the length of the longest end bone, in mm. */
  private double longestPad() {
    double longest = 0;
    for (HandShape shape : List.of(parts.left, parts.right)) {
      for (Finger finger : Finger.values()) {
        longest = Math.max(longest, shape.bone(finger, Segment.DISTAL).millimetres());
      }
    }
    return longest;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof GripSurvey that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "GripSurvey" + parts.toString().substring("Parts".length());
  }
}
