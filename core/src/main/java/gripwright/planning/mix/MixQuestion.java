package gripwright.planning.mix;

import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.plan.Exercise;
import gripwright.quantity.Load;
import gripwright.quantity.Unit;
import gripwright.strength.LoadEstimate;
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.Transfer;
import gripwright.tissue.Estimate;
import gripwright.tissue.OwnHang;
import gripwright.tissue.Pulley;
import gripwright.tissue.RelativeLoad;
import gripwright.tissue.SlipViews;
import gripwright.tissue.TissueLoad;
import gripwright.tissue.TissueModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The value of each grip that a line may choose for one athlete: its share of the demand, its
 * transfer to the rest, and which pulleys it strengthens against which slips.
 *
 * <p>Loads are the athlete's maxima as known when the plan begins, body mass where nothing is
 * known. What they ask of a pulley is relative to the athlete's {@linkplain OwnHang own hang}. A
 * pulley's margin in a slip is its capacity divided by its load; capacity is the own hang's and
 * grows by {@link #HARDENING} times the use that training makes of the pulley, so margins are
 * linear in the shares. Of all slips of the grips in demand, the one that loads a pulley most
 * counts, by the worse of the two views of a slip. Pulleys that the own hang hardly loads are left
 * out: nothing can be said relative to next to nothing.
 *
 * <p>What a grip adds to a margin has an interval: that of the pulley's load relative to the own
 * hang, and the 20th to the 80th percentile of the athlete's maximum.
 */
final class MixQuestion {

  /**
   * Growth of a pulley's capacity if all work asked of it what the own hang does. The library's own
   * choice: no number is published, and scores are scaled so that its size matters little
   */
  static final double HARDENING = 0.2;

  private static final Estimate NO_USE = new Estimate(0, 0, 0);

  private record Structure(Side side, Finger finger, Pulley pulley) {
    static final Comparator<Structure> ORDER =
        Comparator.comparing(Structure::side)
            .thenComparing(Structure::finger)
            .thenComparing(Structure::pulley);
  }

  private final List<Setup> setups;
  private final Map<Setup, Double> demand;
  private final HandFits fits;
  private final StrengthMap strength;
  private final Load bodyMass;
  private final Map<Setup, Map<Side, TissueLoad>> loads = new HashMap<>();
  private final Map<Side, OwnHang> hangs = new EnumMap<>(Side.class);
  private final IdentityHashMap<TissueLoad, List<RelativeLoad>> relative = new IdentityHashMap<>();

  /**
   * Prepares the values of a line's grips.
   *
   * @param setups one for each grip, sorted by its name
   * @param demand how much of the climbing ahead uses each grip, 0 to 1; if empty, all grips of the
   *     line that need not be named have equal demand
   */
  MixQuestion(
      List<Setup> setups,
      Map<Grip, Double> demand,
      HandFits fits,
      StrengthMap strength,
      Load bodyMass) {
    this.setups = List.copyOf(setups);
    this.fits = fits;
    this.strength = strength;
    this.bodyMass = bodyMass;
    this.demand = new TreeMap<>(Comparator.comparing((Setup setup) -> setup.grip().name()));
    demand.forEach((grip, share) -> this.demand.put(with(grip), share));
    if (demand.isEmpty()) {
      List<Setup> usual =
          setups.stream().filter(setup -> !Choice.onlyIfNamed(setup.grip())).toList();
      List<Setup> wanted = usual.isEmpty() ? setups : usual;
      wanted.forEach(setup -> this.demand.put(setup, 1.0 / wanted.size()));
    }
  }

  /** Returns a grip in the line's setup. */
  private Setup with(Grip grip) {
    Setup line = setups.get(0);
    return new Setup(grip, line.edge(), line.hands(), line.lifting());
  }

  MixSolver solver(Exercise.Weights weights) {
    return new MixSolver(candidates(), margins(weights.margin() > 0), weights);
  }

  private List<MixSolver.Candidate> candidates() {
    List<MixSolver.Candidate> all = new ArrayList<>();
    for (Setup setup : setups) {
      double wanted = demand.getOrDefault(setup, 0.0);
      boolean tested = strength.maximum(setup).map(StrengthMap.Estimate::tested).orElse(false);
      double carryOver = 0;
      for (Map.Entry<Setup, Double> other : demand.entrySet()) {
        Transfer transfer = Transfer.between(posture(setup), posture(other.getKey()));
        carryOver += other.getValue() * (tested || wanted > 0 ? transfer.share() : transfer.low());
      }
      all.add(new MixSolver.Candidate(setup.grip().name(), wanted, Math.min(1, carryOver), tested));
    }
    return all;
  }

  private Posture posture(Setup setup) {
    return Posture.of(fits.of(setup).values());
  }

  /**
   * Returns the margins.
   *
   * @param ranged whether their intervals count; without, each is its best estimate
   */
  private List<MixSolver.Margin> margins(boolean ranged) {
    Map<Structure, Double> threats = new TreeMap<>(Structure.ORDER);
    demand.forEach(
        (setup, share) -> {
          if (share > 0) {
            loads(setup).forEach((side, load) -> threats(side, load, threats));
          }
        });
    List<MixSolver.Margin> margins = new ArrayList<>();
    threats.forEach(
        (structure, threat) ->
            margins.add(
                new MixSolver.Margin(
                    1 / threat,
                    setups.stream()
                        .map(setup -> use(setup, structure, ranged).times(HARDENING / threat))
                        .toList())));
    return margins;
  }

  private void threats(Side side, TissueLoad load, Map<Structure, Double> threats) {
    for (SlipViews slip : load.slips()) {
      for (Finger finger : slip.remaining()) {
        for (Pulley pulley : Pulley.values()) {
          double use = hang(side).relative(load, finger, pulley) * slip.ratio(finger);
          if (use > 0 && hang(side).loads(finger, pulley)) {
            threats.merge(new Structure(side, finger, pulley), use, Math::max);
          }
        }
      }
    }
  }

  private Estimate use(Setup setup, Structure structure, boolean ranged) {
    TissueLoad load = loads(setup).get(structure.side());
    if (load == null || !load.fit().grip().fingers().fingers().contains(structure.finger())) {
      return NO_USE;
    }
    if (!ranged) {
      double best = hang(structure.side()).relative(load, structure.finger(), structure.pulley());
      return new Estimate(best, best, best);
    }
    Estimate tissue =
        relative.computeIfAbsent(load, known -> hang(structure.side()).relative(known)).stream()
            .filter(each -> each.finger() == structure.finger())
            .findFirst()
            .orElseThrow()
            .of(structure.pulley());
    double spread = strength.maximum(setup).map(known -> known.load().spread()).orElse(0.0);
    double factor = Math.exp(LoadEstimate.LOW_DEVIATE * spread);
    return new Estimate(tissue.value(), tissue.low() / factor, tissue.high() * factor);
  }

  private OwnHang hang(Side side) {
    return hangs.computeIfAbsent(
        side, hand -> OwnHang.of(fits.of(OwnHang.SETUP, hand), bodyMass, TissueModel.STANDARD));
  }

  /** Returns the load on each hand in use; equal hands appear once. */
  private Map<Side, TissueLoad> loads(Setup setup) {
    return loads.computeIfAbsent(
        setup,
        each -> {
          double kilograms =
              strength.maximum(each).map(e -> e.load().best()).orElse(bodyMass).kilograms();
          Map<Side, GripFit> hands = fits.of(each);
          double newtons = kilograms * Unit.NEWTONS_PER_KILOGRAM / hands.size();
          Map<Side, TissueLoad> bySide = new EnumMap<>(Side.class);
          hands.forEach(
              (side, fit) -> {
                if (side == Side.LEFT || !fit.equals(hands.get(Side.LEFT))) {
                  bySide.put(side, TissueLoad.of(fit, newtons));
                }
              });
          return bySide;
        });
  }
}
