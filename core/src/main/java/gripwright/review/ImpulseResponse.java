package gripwright.review;

import java.util.ArrayList;
import java.util.List;

/**
 * Fitness and fatigue from each day's load, which decay at two rates.
 *
 * <p>Sources: Banister EW et al. 1975, Aust J Sports Med 7:57-61; recurrence of Morton RH,
 * Fitz-Clarke JR, Banister EW 1990, J Appl Physiol 69(3):1171-1177. The parameters differ between
 * persons and sports and were measured on runners; none are known for fingers. The result describes
 * the logged load in its own unit and is no forecast.
 *
 * @param fitnessDays days in which fitness fades to 37 %, above 0
 * @param fatigueDays days in which fatigue fades to 37 %, above 0
 * @param fitnessGain weight of fitness
 * @param fatigueGain weight of fatigue
 */
public record ImpulseResponse(
    double fitnessDays, double fatigueDays, double fitnessGain, double fatigueGain) {

  /** 45 and 15 days, gains of 1 and 2: Morton et al. 1990 (from memory). */
  public static final ImpulseResponse STANDARD = new ImpulseResponse(45, 15, 1, 2);

  /**
   * Checks the range.
   *
   * @throws IllegalArgumentException if a time is not above 0 or a gain is below 0
   */
  public ImpulseResponse {
    if (!(fitnessDays > 0 && fatigueDays > 0 && fitnessGain >= 0 && fatigueGain >= 0)) {
      throw new IllegalArgumentException(
          "not a response: " + fitnessDays + ", " + fatigueDays + " days");
    }
  }

  /**
   * Fitness and fatigue on the evening of a day.
   *
   * @param fitness in the unit of the load
   * @param fatigue in the unit of the load
   * @param balance fitness times its gain less fatigue times its gain
   */
  public record State(double fitness, double fatigue, double balance) {}

  /**
   * Returns the state on the evening of each day, starting from 0.
   *
   * @param loads load of consecutive days, 0 on days without load
   */
  public List<State> of(double[] loads) {
    List<State> states = new ArrayList<>(loads.length);
    double fitness = 0;
    double fatigue = 0;
    for (double load : loads) {
      fitness = fitness * Math.exp(-1 / fitnessDays) + load;
      fatigue = fatigue * Math.exp(-1 / fatigueDays) + load;
      states.add(new State(fitness, fatigue, fitnessGain * fitness - fatigueGain * fatigue));
    }
    return states;
  }
}
