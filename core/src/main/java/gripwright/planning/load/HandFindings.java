package gripwright.planning.load;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.FitAdvice;
import gripwright.grip.FitMiss;
import gripwright.grip.GripFit;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Creates findings about how one athlete's hands take grips on edges. Not thread-safe. */
public final class HandFindings {

  /** A joint that is too stiff is reported first, then a short finger, then the rest. */
  private static final FitMiss.Visitor<Double> SEVERITY =
      new FitMiss.Visitor<>() {
        @Override
        public Double tooShort(FitMiss.TooShort miss) {
          return 360 + miss.by().millimetres();
        }

        @Override
        public Double outOfBand(FitMiss.OutOfBand miss) {
          return Math.abs(miss.degrees());
        }

        @Override
        public Double beyondLimit(FitMiss.BeyondLimit miss) {
          return 720 + miss.degrees();
        }
      };

  /** Whole degrees and tenths of a millimetre: no estimate of a hand is more accurate. */
  private static final FitMiss.Visitor<FitMiss> ROUNDED =
      new FitMiss.Visitor<>() {
        @Override
        public FitMiss tooShort(FitMiss.TooShort miss) {
          return new FitMiss.TooShort(
              miss.finger(), Length.ofMillimetres(Math.rint(miss.by().millimetres() * 10) / 10));
        }

        @Override
        public FitMiss outOfBand(FitMiss.OutOfBand miss) {
          return new FitMiss.OutOfBand(
              miss.finger(),
              miss.joint(),
              miss.required(),
              Angle.ofDegrees(Math.rint(miss.nearest().degrees())),
              Math.rint(miss.degrees()));
        }

        @Override
        public FitMiss beyondLimit(FitMiss.BeyondLimit miss) {
          return miss;
        }
      };

  /**
   * Number of edges tried to find a better one; fewer are needed for the findings that are shown.
   */
  private static final int MOST_EDGES_TRIED = 500;

  /** Only well-known joints decide whether a finger should not be forced. */
  private static final List<FitAdvice.Reason> REPORTED =
      List.of(
          FitAdvice.Reason.WRIST_ROLL,
          FitAdvice.Reason.BEYOND_OWN_LIMIT,
          FitAdvice.Reason.AT_OWN_LIMIT,
          FitAdvice.Reason.AWAY_FROM_NATURAL);

  private final Athlete athlete;
  private final HandFits fits;
  private int edgesTried;

  /**
   * Creates the findings of one athlete.
   *
   * @param athlete owner of the hands
   */
  public HandFindings(Athlete athlete) {
    this.athlete = athlete;
    this.fits = new HandFits(athlete.shape(Side.LEFT), athlete.shape(Side.RIGHT));
  }

  /** Returns the fits. */
  public HandFits fits() {
    return fits;
  }

  /** Returns an error if a hand that holds can't take the grip on the edge. */
  public Optional<Finding> outOfReach(Setup setup, ModelPath path) {
    if (fits.takes(setup)) {
      return Optional.empty();
    }
    Map<Side, GripFit> refused = fits.of(setup);
    refused.values().removeIf(GripFit::reachable);
    FitMiss worst =
        refused.values().stream()
            .flatMap(fit -> fit.misses().stream())
            .max(Comparator.comparingDouble(miss -> miss.accept(SEVERITY)))
            .orElseThrow();
    Finding finding =
        finding(Finding.error("plan.grip-out-of-reach", path), setup, refused)
            .with("reason", worst.accept(ROUNDED));
    return Optional.of(otherEdge(setup).map(e -> finding.with("other-edge", e)).orElse(finding));
  }

  /**
   * Returns advice if a finger of a hand that holds should not be forced into the grip at high
   * intensity. Deviations from the bands of knuckles and end joints are ignored, since the model of
   * these joints leaves out the bend of the wrist and the position of the pad.
   */
  public Optional<Finding> notForced(Setup setup, ModelPath path) {
    Map<Side, GripFit> forced = fits.of(setup);
    forced
        .values()
        .removeIf(fit -> reported(fit).isEmpty()); // a grip out of reach is reported elsewhere
    if (forced.isEmpty()) {
      return Optional.empty();
    }
    Map<Finger, FitAdvice> byFinger = new EnumMap<>(Finger.class);
    for (FitAdvice.Reason reason : REPORTED) {
      Map<Finger, FitAdvice> ofReason = new EnumMap<>(Finger.class);
      forced.values().stream()
          .flatMap(fit -> reported(fit).stream())
          .filter(advice -> advice.reason() == reason)
          .forEach(advice -> ofReason.merge(advice.finger(), advice, HandFindings::larger));
      ofReason.forEach(byFinger::putIfAbsent);
    }
    List<FitAdvice> advice = byFinger.values().stream().map(HandFindings::rounded).toList();
    return Optional.of(
        finding(Finding.advice("plan.finger-not-forced", path), setup, forced)
            .with("advice", advice));
  }

  private Finding finding(Finding finding, Setup setup, Map<Side, GripFit> concerned) {
    return finding
        .with("athlete", athlete.name())
        .with("grip", setup.grip().name())
        .with("edge", setup.edge())
        .with("hands", hands(concerned));
  }

  private static Hands hands(Map<Side, GripFit> concerned) {
    if (concerned.size() == Side.values().length) {
      return Hands.BOTH;
    }
    return concerned.containsKey(Side.LEFT) ? Hands.LEFT : Hands.RIGHT;
  }

  /** Returns the athlete's edge, nearest in depth, on which the same hands take the grip. */
  private Optional<Length> otherEdge(Setup setup) {
    List<Length> nearest =
        new ArrayList<>(
            athlete.allEquipment().stream()
                .flatMap(each -> each.edges().stream())
                .distinct()
                .toList());
    double depth = setup.edge().millimetres();
    nearest.sort(
        Comparator.comparingDouble((Length e) -> Math.abs(e.millimetres() - depth))
            .thenComparing(Comparator.reverseOrder()));
    for (Length edge : nearest) {
      if (edgesTried++ < MOST_EDGES_TRIED && fits.takes(setup.withEdge(edge))) {
        return Optional.of(edge);
      }
    }
    return Optional.empty();
  }

  private static List<FitAdvice> reported(GripFit fit) {
    return fit.advice().stream().filter(advice -> REPORTED.contains(advice.reason())).toList();
  }

  private static FitAdvice larger(FitAdvice one, FitAdvice other) {
    return one.degrees() >= other.degrees() ? one : other;
  }

  private static FitAdvice rounded(FitAdvice advice) {
    return new FitAdvice(
        advice.finger(), advice.joint(), advice.reason(), Math.max(1, Math.rint(advice.degrees())));
  }
}
