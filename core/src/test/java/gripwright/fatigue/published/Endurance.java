package gripwright.fatigue.published;

import java.util.List;

/**
 * Published endurance of hand and grip at 20 to 60 % of MVC, one hold to failure.
 *
 * @param source where it is published
 * @param ofMvc load as a fraction of MVC
 * @param seconds mean time to failure
 */
record Endurance(String source, double ofMvc, double seconds) {

  /** Standard deviations from the mean to the 95th percentile. */
  static final double TO_95_PERCENT = 1.645;

  /** Hand and grip of Frey Law LA, Avin KG 2010, Ergonomics 53(1):109-129, in s. */
  static double freyLaw(double ofMvc) {
    return 33.55 * Math.pow(ofMvc, -1.61);
  }

  /**
   * Rohmert W 1960, Int Z angew Physiol 18:123-164 and Manenica I 1986, both as tabulated by El
   * Ahrache K et al. 2006, Int J Ind Ergon 36:1-14 (from memory); West W et al. 1995, Eur J Appl
   * Physiol 71:301-305; Nolan J et al. 2020, J Sports Med Phys Fitness 60(8):1057-1064.
   */
  static List<Endurance> measured() {
    return List.of(
        new Endurance("Frey Law 2010\u2020", 0.2, freyLaw(0.2)),
        new Endurance("Frey Law 2010\u2020", 0.3, freyLaw(0.3)),
        new Endurance("Frey Law 2010\u2020", 0.4, freyLaw(0.4)),
        new Endurance("Frey Law 2010\u2020", 0.5, freyLaw(0.5)),
        new Endurance("Frey Law 2010\u2020", 0.6, freyLaw(0.6)),
        new Endurance("Rohmert 1960\u2020", 0.2, 390.0),
        new Endurance("Rohmert 1960\u2020", 0.3, 152.2),
        new Endurance("Rohmert 1960\u2020", 0.5, 66.0),
        new Endurance("Manenica 1986\u2020", 0.2, 405.2),
        new Endurance("Manenica 1986\u2020", 0.5, 105.0),
        new Endurance("West 1995, women", 0.3, 400.7),
        new Endurance("West 1995, men", 0.3, 364.3),
        new Endurance("West 1995, women", 0.5, 205.1),
        new Endurance("West 1995, men", 0.5, 139.4),
        new Endurance("Nolan 2020, climbers", 0.4, 87),
        new Endurance("Nolan 2020, power lifters", 0.4, 62),
        new Endurance("Nolan 2020, aerobic", 0.4, 56));
  }
}
