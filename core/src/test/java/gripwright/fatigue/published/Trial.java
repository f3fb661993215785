package gripwright.fatigue.published;

import gripwright.fatigue.Bout;
import gripwright.fatigue.Drills;
import gripwright.fatigue.FatigueRates;
import java.util.List;

/**
 * A published protocol as holds and rests. Abstracts leave much out; added values are marked.
 *
 * @param protocol load, work, rest and count
 * @param filledIn what the abstract doesn't say
 * @param source where it is published
 * @param bouts holds and rests; per cent of the trial taken as per cent of MVC
 */
record Trial(String protocol, String filledIn, String source, List<Bout> bouts) {

  /**
   * Full sources:
   *
   * <ul>
   *   <li>Lopez-Rivera E, Gonzalez-Badillo JJ 2012, Sports Technol 5(3-4):100-110; 10 s with 3 s in
   *       reserve from memory.
   *   <li>Lopez-Rivera E, Gonzalez-Badillo JJ 2019, J Hum Kinet 66:183-195; scheme from memory.
   *   <li>Devise M et al. 2022, Front Sports Act Living 4:862782; Devise M et al. 2023, the same
   *       group, flexion at 80 %.
   *   <li>Dynamic finger strength 2024: five weeks, 3 to 5 sets of 4 to 10.
   *   <li>Kitai TA, Sale DG 1989, Eur J Appl Physiol 58(7):744-748.
   *   <li>Weir JP et al. 1995, Eur J Appl Physiol 70(4):337-343.
   *   <li>Augste C, Winkler M, Kuenzell S 2022, Front Sports Act Living 4:902521.
   *   <li>McClean ZJ et al. 2023, Int J Exerc Sci 16(4):912-923, as Giles D et al. 2021, Int J
   *       Sports Physiol Perform.
   *   <li>Balas J et al. 2024, Eur J Appl Physiol: measuring critical force in sport climbers.
   *   <li>Quaine F et al. 2003, Int J Sports Med 24(6):424-427; Vigouroux L, Quaine F 2006, J
   *       Sports Sci 24(2):181-186.
   *   <li>Handgrip and quadriceps muscle endurance testing in young adults 2013, SpringerPlus
   *       2:451.
   *   <li>Nolan J et al. 2020, J Sports Med Phys Fitness 60(8):1057-1064.
   * </ul>
   */
  static List<Trial> all() {
    double thirteenSeconds = FatigueRates.FINGERS_INTENSE.greatestLoad(13);
    return List.of(
        new Trial(
            "4 x 10 s at the load for 13 s",
            "sets, 3 min between",
            "Lopez-Rivera 2012\u2020",
            Drills.repeated(4, 10, 180, thirteenSeconds)),
        new Trial(
            "4 x 5 x 10:5 s, 60 s between sets",
            "load 60 %, sets",
            "Lopez-Rivera 2019\u2020",
            Drills.sets(4, 60, 5, 10, 5, 0.6)),
        new Trial("100 %", "6 x 6 s, 3 min between", "Devise 2022", Drills.repeated(6, 6, 180, 1)),
        new Trial(
            "80 %, intermittent",
            "4 x 6 x 7:3 s, 3 min between", "Devise 2022, 2023", Drills.sets(4, 180, 6, 7, 3, 0.8)),
        new Trial(
            "60 %, intermittent",
            "4 x 6 x 7:3 s, 3 min between", "Devise 2022", Drills.sets(4, 180, 6, 7, 3, 0.6)),
        new Trial(
            "5 x 10",
            "5:5 s at 70 %, 2 min between",
            "Finger strength 2024",
            Drills.sets(5, 120, 10, 5, 5, 0.7)),
        new Trial(
            "2 x 10 x 5 s, maximal",
            "5 s rest, 2 min between",
            "Kitai 1989",
            Drills.sets(2, 120, 10, 5, 5, 1)),
        new Trial(
            "80 %",
            "3 x 10 x 6:6 s, 2 min between", "Weir 1995", Drills.sets(3, 120, 10, 6, 6, 0.8)),
        new Trial(
            "60 %, 7:2 s to failure", "60 times", "Augste 2022", Drills.repeated(60, 7, 2, 0.6)),
        new Trial("24 x 7:3 s, all-out", "", "McClean 2023", Drills.repeated(24, 7, 3, 1)),
        new Trial(
            "7:3 s for 720 s at critical force",
            "load 40 %",
            "Balas 2024",
            Drills.repeated(72, 7, 3, 0.4)),
        new Trial(
            "36 x 5:5 s at 80 %, beyond failure",
            "", "Quaine 2003, Vigouroux 2006", Drills.repeated(36, 5, 5, 0.8)),
        new Trial("12 x 3:5 s, maximal", "", "SpringerPlus 2013", Drills.repeated(12, 3, 5, 1)),
        new Trial("18 x 5:5 s at 40 %", "", "Nolan 2020", Drills.repeated(18, 5, 5, 0.4)),
        new Trial("180 s at 40 %", "", "Nolan 2020", List.of(Bout.hold(180, 0.4))),
        new Trial("maximal until exhausted", "120 s", "Nolan 2020", List.of(Bout.hold(120, 1))));
  }

  double heaviest() {
    return bouts.stream().mapToDouble(Bout::ofMvc).max().orElseThrow();
  }

  /** Whether two pools are the standard: holds and some rests of at most 10 s. */
  boolean shortRests() {
    return bouts.stream().filter(Bout::isHold).allMatch(b -> b.seconds() <= 10)
        && bouts.stream().anyMatch(b -> !b.isHold() && b.seconds() <= 10);
  }
}
