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
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.Transfer;
import gripwright.tissue.Pulley;
import gripwright.tissue.Slip;
import gripwright.tissue.TissueLoad;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The value of each grip that a line may choose for one athlete: its share of the demand, its
 * transfer to the rest, and which pulleys it strengthens against which slips.
 *
 * <p>Loads are the athlete's maxima as known when the plan begins, body mass where nothing is
 * known. A pulley's margin in a slip is its capacity divided by its load; capacity grows by {@link
 * #HARDENING} times the use that training makes of the pulley, so margins are linear in the shares.
 * Of all slips of the grips in demand, the one that loads a pulley most counts.
 */
final class MixQuestion {

  /**
   * Growth of a pulley's capacity if all work used its full capacity. The library's own choice: no
   * number is published, and scores are scaled so that its size matters little
   */
  static final double HARDENING = 0.2;

  /**
   * A pulley loaded by a slip to less than this share of its capacity is left out of the scores.
   */
  private static final double LEAST_USE = 0.01;

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
    return new MixSolver(candidates(), margins(), weights);
  }

  private List<MixSolver.Candidate> candidates() {
    List<MixSolver.Candidate> all = new ArrayList<>();
    for (Setup setup : setups) {
      double carryOver = 0;
      for (Map.Entry<Setup, Double> wanted : demand.entrySet()) {
        carryOver +=
            wanted.getValue() * Transfer.between(posture(setup), posture(wanted.getKey())).share();
      }
      all.add(
          new MixSolver.Candidate(
              setup.grip().name(), demand.getOrDefault(setup, 0.0), Math.min(1, carryOver)));
    }
    return all;
  }

  private Posture posture(Setup setup) {
    return Posture.of(fits.of(setup).values());
  }

  private List<MixSolver.Margin> margins() {
    Map<Structure, Double> threats = new TreeMap<>(Structure.ORDER);
    demand.forEach(
        (setup, share) -> {
          if (share > 0) {
            loads(setup).forEach((side, load) -> threats(side, load, threats));
          }
        });
    List<MixSolver.Margin> margins = new ArrayList<>();
    threats.forEach(
        (structure, use) ->
            margins.add(
                new MixSolver.Margin(
                    1 / use,
                    setups.stream()
                        .map(setup -> HARDENING * use(setup, structure) / use)
                        .toList())));
    return margins;
  }

  private static void threats(Side side, TissueLoad load, Map<Structure, Double> threats) {
    for (Slip slip : load.slips()) {
      for (Finger finger : slip.after().keySet()) {
        for (Pulley pulley : Pulley.values()) {
          double use = load.use(finger, pulley) * slip.ratio(finger);
          if (use > LEAST_USE) {
            threats.merge(new Structure(side, finger, pulley), use, Math::max);
          }
        }
      }
    }
  }

  private double use(Setup setup, Structure structure) {
    TissueLoad load = loads(setup).get(structure.side());
    return load == null ? 0 : load.use(structure.finger(), structure.pulley());
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
