package gripwright.tissue;

import gripwright.grip.FingerShares;
import gripwright.grip.FitSpread;
import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Estimate of what a fitted grip asks of tendons and pulleys at a load. Immutable.
 *
 * <p>Intervals hold 90 % of {@value Variation#DRAWS} random draws over the spread of the parameters
 * (sampling, not first order) and over the hands of the fit's own spread; the same fit, load and
 * model give the same numbers. Valid for a hand that hangs still with the pads flat on one edge;
 * jumps, pockets that pinch and a thumb on top are outside.
 */
public final class TissueLoad {

  private final GripFit fit;
  private final double newtons;
  private final TissueModel model;
  private final Map<Finger, Double> shares;
  private final Map<Finger, FingerPulleys.Forces> best = new EnumMap<>(Finger.class);

  /** Known once asked for: a plan needs best estimates of many grips, intervals of none. */
  private volatile @Nullable Draws draws;

  private volatile @Nullable List<FingerLoad> fingers;

  private volatile @Nullable Map<Finger, FingerDraws> drawn;

  private TissueLoad(GripFit fit, double newtons, TissueModel model) {
    this.fit = fit.under(model.tendons());
    this.newtons = newtons;
    this.model = model;
    this.shares = FingerShares.of(this.fit);
    for (FingerPose pose : this.fit.pose().fingers()) {
      best.put(pose.finger(), pulleys(pose).forces(Variation.NONE));
    }
  }

  private FingerPulleys pulleys(FingerPose pose) {
    return new FingerPulleys(fit.pose().shape(), pose, model);
  }

  private Draws draws() {
    Draws known = draws;
    if (known == null) {
      known = new Draws(fit, model);
      draws = known;
    }
    return known;
  }

  private FingerLoad load(FingerPose pose) {
    return FingerLoad.of(
        pulleys(pose),
        shares.getOrDefault(pose.finger(), 0.0),
        newtons,
        draws().shares(pose.finger()),
        drawn(pose.finger()),
        draws().variations());
  }

  /** Returns the forces on a finger that holds in every draw. */
  FingerDraws drawn(Finger finger) {
    Map<Finger, FingerDraws> known = drawn;
    if (known == null) {
      Draws all = draws();
      Map<Finger, FingerDraws> forces = new EnumMap<>(Finger.class);
      for (FingerPose pose : fit.pose().fingers()) {
        forces.put(
            pose.finger(),
            FingerDraws.of(
                all.pulleys(pose.finger(), model),
                newtons,
                all.shares(pose.finger()),
                all.variations()));
      }
      known = forces;
      drawn = known;
    }
    return Objects.requireNonNull(known.get(finger));
  }

  /** Estimates with {@link TissueModel#STANDARD}. */
  public static TissueLoad of(GripFit fit, double newtons) {
    return of(fit, newtons, TissueModel.STANDARD);
  }

  /**
   * Estimates the load on tissue.
   *
   * @param fit a fitted grip; one that the hand does not take is estimated in its nearest pose
   * @param newtons what this one hand holds, in N, 0 or more
   * @param model named parameters; the pose is solved anew where its tendons are not those of the
   *     fit
   * @throws IllegalArgumentException if the load is negative or not finite
   */
  public static TissueLoad of(GripFit fit, double newtons, TissueModel model) {
    if (!(newtons >= 0 && Double.isFinite(newtons))) {
      throw new IllegalArgumentException("not a load on a hand: " + newtons + " N");
    }
    return new TissueLoad(fit, newtons, model);
  }

  /** Returns the fitted grip, in the pose that the model's tendons hold. */
  public GripFit fit() {
    return fit;
  }

  /** Returns what this hand holds, in N. */
  public double newtons() {
    return newtons;
  }

  /** Returns the parameters. */
  public TissueModel model() {
    return model;
  }

  /** Returns the estimate of each finger that holds, in the order of the hand. */
  public List<FingerLoad> fingers() {
    List<FingerLoad> known = fingers;
    if (known == null) {
      known = fit.pose().fingers().stream().map(this::load).toList();
      fingers = known;
    }
    return known;
  }

  /**
   * Returns the best estimate of the force upwards on a finger's pad, in N, without its interval; 0
   * for a finger that does not hold.
   */
  public double fingertip(Finger finger) {
    return shares.getOrDefault(finger, 0.0) * newtons;
  }

  /**
   * Returns the best estimate of the force on a finger's pulley, in N, without its interval; 0 for
   * a finger that does not hold. Goes in proportion to the load.
   */
  public double force(Finger finger, Pulley pulley) {
    FingerPulleys.Forces forces = best.get(finger);
    if (forces == null) {
      return 0;
    }
    return fingertip(finger) * (pulley == Pulley.A2 ? forces.a2() : forces.a4());
  }

  /** Returns {@link #force} by the pulley's breaking load in cadavers; the estimate is rough. */
  public double use(Finger finger, Pulley pulley) {
    return force(finger, pulley) / pulley.breakingNewtons();
  }

  /** Returns the estimate of a finger; empty if it does not hold. */
  public Optional<FingerLoad> finger(Finger finger) {
    return fingers().stream().filter(load -> load.finger() == finger).findFirst();
  }

  /**
   * Returns what happens in the instant a finger leaves the hold, by one view of the arm.
   *
   * @throws IllegalArgumentException if the finger does not hold, or no other one does
   */
  public Slip slip(Finger leaving, Slip.View view) {
    Map<Finger, Double> forces = new EnumMap<>(Finger.class);
    fit.pose().fingers().forEach(pose -> forces.put(pose.finger(), fingertip(pose.finger())));
    return Slip.of(view, fit.pose().shape(), forces, FingerShares.ofWholeHand(fit.pose()), leaving);
  }

  /**
   * Returns what happens in the instant a finger leaves the hold, by each view of the arm.
   *
   * @throws IllegalArgumentException if the finger does not hold, or no other one does
   */
  public SlipViews slip(Finger leaving) {
    return new SlipViews(slip(leaving, Slip.View.MOMENT_KEPT), slip(leaving, Slip.View.ARM_SWINGS));
  }

  /**
   * Returns the slip ratios of this load's slip with their intervals, over shares and places of the
   * fingers, in the order of the hand.
   *
   * @param slip one view of one of {@link #slips()}
   */
  public Map<Finger, Estimate> ratios(Slip slip) {
    Map<Finger, double[]> drawn = new EnumMap<>(Finger.class);
    slip.after().keySet().forEach(finger -> drawn.put(finger, new double[FitSpread.DRAWS]));
    Draws known = draws();
    for (int i = 0; i < FitSpread.DRAWS; i++) {
      Slip other =
          Slip.of(slip.view(), known.shape(i), known.shares(i), known.capacity(i), slip.leaving());
      int draw = i;
      drawn.forEach((finger, ratios) -> ratios[draw] = other.ratio(finger));
    }
    Map<Finger, Estimate> ratios = new EnumMap<>(Finger.class);
    drawn.forEach((finger, values) -> ratios.put(finger, Estimate.of(slip.ratio(finger), values)));
    return ratios;
  }

  /** Returns the lumbrical index in mm with its interval, over flexions and moment arms. */
  public Estimate lumbrical(LumbricalIndex.Idle idle) {
    Draws known = draws();
    Variation[] variations = known.variations();
    double[] drawn = new double[variations.length];
    for (int i = 0; i < drawn.length; i++) {
      drawn[i] =
          variations[i].statics().pipFdpArm()
              * LumbricalIndex.of(known.flexions(i), model.arms(), idle).millimetres();
    }
    return Estimate.of(LumbricalIndex.of(fit, model.arms(), idle).millimetres(), drawn);
  }

  /** Returns a slip for every finger that holds; none for a single finger. */
  public List<SlipViews> slips() {
    List<FingerPose> holding = fit.pose().fingers();
    return holding.size() == 1
        ? List.of()
        : holding.stream().map(pose -> slip(pose.finger())).toList();
  }

  /**
   * Returns the estimate of every remaining finger and its pulleys in the instant one has left, the
   * pose being as before.
   */
  public List<FingerLoad> after(Slip slip) {
    return fingers().stream()
        .filter(load -> load.finger() != slip.leaving())
        .map(load -> load.times(slip.ratio(load.finger())))
        .toList();
  }
}
