package gripwright.fatigue;

import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A hold or a rest with its time.
 *
 * @param seconds how long, 0 s or more
 * @param ofMvc load as a fraction of the greatest voluntary force of fresh fingers, not of the 7 s
 *     maximum; 0 for a rest; above 1 can't be held
 */
public record Bout(double seconds, double ofMvc) {

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if time or load is negative or not finite
   */
  public Bout {
    if (!(seconds >= 0 && seconds < Double.POSITIVE_INFINITY)
        || !(ofMvc >= 0 && ofMvc < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("not a hold or rest: " + seconds + " s at " + ofMvc);
    }
  }

  /** Returns a hold of this many seconds at a fraction of MVC. */
  public static Bout hold(double seconds, double ofMvc) {
    return new Bout(seconds, ofMvc);
  }

  /** Returns a rest of this many seconds. */
  public static Bout rest(double seconds) {
    return new Bout(seconds, 0);
  }

  /** Tells whether a load is held. */
  public boolean isHold() {
    return ofMvc > 0;
  }

  /**
   * Returns holds and rests of a scheme in the order they happen.
   *
   * @param ofMvc the load of each level as a fraction of MVC, above 0
   */
  public static List<Bout> of(Scheme scheme, ToDoubleFunction<Level> ofMvc) {
    Scheme.Bout.Visitor<Bout> bout =
        new Scheme.Bout.Visitor<>() {
          @Override
          public Bout hold(Scheme.Hold hold) {
            return Bout.hold(hold.seconds(), ofMvc.applyAsDouble(hold.level()));
          }

          @Override
          public Bout rest(Scheme.Rest rest) {
            return Bout.rest(rest.seconds());
          }
        };
    return scheme.flat().stream().map(step -> step.accept(bout)).toList();
  }
}
