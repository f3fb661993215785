package gripwright.fatigue;

/**
 * A named set of rates of the model with two pools of fatigue, with the range of loads where it is
 * valid.
 *
 * <p>Every second under load adds fatigue in proportion to the load; a fixed share of it goes into
 * a fast pool, the rest into a slow one. At rest each pool empties at its own rate; under load
 * neither does. The fast pool stands for what returns with blood flow when the fingers let go. The
 * model is our own. See {@link Pools} for its equations.
 *
 * @param name name of the set in results and pages
 * @param fatigue capacity lost each second at MVC, as a fraction of MVC; above 0, at most 1
 * @param fastShare share of it that goes into the fast pool, above 0 and below 1
 * @param fastRecovery share of the fast pool that recovers each second at rest, in 1/s, at most 1;
 *     more than the slow pool's
 * @param slowSeconds time constant of the slow pool at rest, in seconds, above 0
 * @param spread factor by which {@code fatigue} is divided for the optimistic end of the interval
 *     and multiplied for the pessimistic end, 1 or more
 * @param from the lightest load where the set is valid, as a fraction of MVC
 * @param to the heaviest load where it is valid
 * @param source source of the rates
 */
public record PoolRates(
    String name,
    double fatigue,
    double fastShare,
    double fastRecovery,
    double slowSeconds,
    double spread,
    double from,
    double to,
    String source)
    implements FatigueSet {

  /**
   * The longest hold, in seconds, and the longest rest after which the set is the standard one; our
   * own number, near the 5 to 7 s and 2 to 5 s that were measured.
   */
  public static final double LONGEST_SECONDS = 10;

  /** A shorter rest, in seconds, doesn't separate two holds here; 2 s is the shortest measured. */
  public static final double SHORTEST_REST_SECONDS = 2;

  /**
   * Fingers in short holds with short rests: holds of 5 to 7 s with rests of 2 to 5 s, at 40 to 80
   * % of MVC. It gives 7.8, 16 and 28 holds of 7 s with 3 s of rest at 80, 70 and 60 %, where
   * critical force gives climbers 10.9, 14.7 and 22.4.
   *
   * <p>It misses: persons without training in climbing, who fail much earlier; one long hold at 70
   * % and more, for which it gives half the published time; force at the end of all-out series,
   * which it puts at 60 % instead of 41 %. Rests of minutes were not measured, so the slow pool's
   * recovery is our own choice. The page on fatigue lists every row.
   */
  public static final PoolRates SHORT_RESTS =
      new PoolRates(
          "SHORT_RESTS",
          0.0109,
          0.7,
          0.43,
          600,
          FatigueRates.USUAL_SPREAD,
          0.4,
          FatigueRates.HEAVY,
          "our own set, near Quaine F, Vigouroux L, Martin L 2003, Int J Sports Med 24(6):424-427;"
              + " Vigouroux L, Quaine F 2006, J Sports Sci 24(2):181-186; Giles D et al. 2019, Int"
              + " J Sports Physiol Perform 14(7):972-979\u2020");

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if a number is out of its range
   */
  public PoolRates {
    if (!(fatigue > 0 && fatigue <= 1)
        || !(fastShare > 0 && fastShare < 1)
        || !(fastRecovery <= 1 && slowSeconds > 0 && fastRecovery * slowSeconds > 1)
        || !(spread >= 1)
        || !(from >= 0 && from <= to)) {
      throw new IllegalArgumentException("not rates of two pools: " + name);
    }
  }

  @Override
  public PoolRates optimistic() {
    return withFatigue(fatigue / spread);
  }

  @Override
  public PoolRates pessimistic() {
    return withFatigue(Math.min(1, fatigue * spread));
  }

  @Override
  public PoolRates times(double factor) {
    return withFatigue(Math.min(1, fatigue * factor));
  }

  private PoolRates withFatigue(double other) {
    return new PoolRates(
        name, other, fastShare, fastRecovery, slowSeconds, spread, from, to, source);
  }

  @Override
  public Pools fresh() {
    return new Pools(this);
  }

  /**
   * Returns how long fresh fingers hold a load: {@code (1 - f) / (F f)}.
   *
   * @param ofMvc load as a fraction of MVC, above 0; 1 and more gives 0 s
   * @throws IllegalArgumentException if the load is not above 0
   */
  public double enduranceSeconds(double ofMvc) {
    if (!(ofMvc > 0)) {
      throw new IllegalArgumentException("not a load to hold: " + ofMvc + " of MVC");
    }
    return Math.max(0, 1 - ofMvc) / (fatigue * ofMvc);
  }

  @Override
  public double greatestLoad(double seconds) {
    if (!(seconds >= 0)) {
      throw new IllegalArgumentException("not a time: " + seconds + " s");
    }
    return 1 / (1 + fatigue * seconds);
  }
}
