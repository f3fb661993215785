package gripwright.published;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.subject;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.expression.Expression;
import gripwright.expression.Kind;
import gripwright.hand.Finger;
import gripwright.hand.Structure;
import gripwright.log.GrowthPain;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.RisingPain;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Unit;
import gripwright.review.ImpulseResponse;
import gripwright.review.MadeWeeks;
import gripwright.review.PainCourse;
import gripwright.review.TrainingLoad;
import gripwright.rule.Rule;
import gripwright.rule.StandardRules;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Loads of days and weeks, pain, youth, grades, protocols and progression. */
final class TrainingComparisons {

  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);
  private static final double[] WEEK = {300, 0, 400, 0, 300, 0, 500};
  private static final ImpulseResponse RESPONSE = ImpulseResponse.STANDARD;
  private static final String[] FRENCH = {
    "5+", "6a", "6a+", "6b", "6b+", "6c", "6c+", "7a", "7a+", "7b", "7b+", "7c", "7c+", "8a", "8a+",
    "8b", "8b+", "8c", "8c+", "9a", "9a+", "9b", "9b+"
  };
  private static final int FIRST_FRENCH = 10;

  private TrainingComparisons() {}

  static void into(Comparisons all) {
    week(all);
    weighted(all);
    response(all);
    pain(all);
    youth(all);
    for (int i = 0; i < FRENCH.length; i++) {
      String grade = FRENCH[i];
      all.constant(
          "ircra." + (FIRST_FRENCH + i) + ".french",
          () -> Ability.of(GradeScale.FRENCH, grade).ircra());
    }
    protocols(all);
  }

  private static void week(Comparisons all) {
    all.rule(
        "load.monotony",
        () ->
            Math.abs(MadeWeeks.of(3, 1, 3, 1, 3, 1, 2).monotony().orElseThrow() - 2 / 0.9258)
                < 1e-3);
    all.rule(
        "load.strain",
        () -> {
          TrainingLoad.Week week = MadeWeeks.of(WEEK);
          double strain = week.load() * week.monotony().orElseThrow();
          return week.load() == 1500 && Math.abs(week.strain().orElseThrow() - strain) < 1e-9;
        });
    all.arithmetic("load.derived.mono.pop", () -> MadeWeeks.of(WEEK).monotony().orElseThrow());
    all.arithmetic("load.derived.strain.pop", () -> MadeWeeks.of(WEEK).strain().orElseThrow());
  }

  private static void weighted(Comparisons all) {
    all.rule("load.ewma.lambda", () -> Math.abs(weightOfADay(3) - 0.5) < 1e-12);
    all.constants(
        "load.ewma.n", () -> new double[] {TrainingLoad.ACUTE_DAYS, TrainingLoad.CHRONIC_DAYS});
    for (int days : new int[] {7, 28}) {
      all.arithmetic("load.ewma.l" + days, () -> weightOfADay(days));
      all.arithmetic(
          "load.ewma.step" + days,
          () -> {
            double[] loads = new double[days + 1];
            Arrays.fill(loads, 1, days + 1, 100);
            return TrainingLoad.weighted(loads, days)[days];
          });
    }
  }

  private static double weightOfADay(int days) {
    return TrainingLoad.weighted(new double[] {0, 1}, days)[1];
  }

  private static void response(Comparisons all) {
    all.constant("load.ir.tau1", RESPONSE::fitnessDays);
    all.constant("load.ir.tau2", RESPONSE::fatigueDays);
    all.constant("load.ir.k1", RESPONSE::fitnessGain);
    all.constant("load.ir.k2", RESPONSE::fatigueGain);
    all.arithmetic("load.ir.g60", () -> RESPONSE.fitnessGain() * onDay(60).fitness());
    all.arithmetic("load.ir.h60", () -> RESPONSE.fatigueGain() * onDay(60).fatigue());
    all.arithmetic("load.ir.p60", () -> onDay(60).balance());
    all.arithmetic("load.ir.asym", () -> onDay(2000).balance());
    all.arithmetic("load.ir.cross", () -> afterOneImpulse(1));
    all.arithmetic(
        "load.ir.peak", () -> afterOneImpulse(RESPONSE.fitnessDays() / RESPONSE.fatigueDays()));
  }

  private static ImpulseResponse.State onDay(int day) {
    double[] loads = new double[day];
    Arrays.fill(loads, 100);
    return RESPONSE.of(loads).get(day - 1);
  }

  /** Days from one load until fatigue by its gain, times a factor, has fallen to fitness. */
  private static double afterOneImpulse(double factor) {
    int passed = 5;
    double[] loads = new double[passed + 1];
    loads[0] = 100;
    ImpulseResponse.State state = RESPONSE.of(loads).get(passed);
    double fatigue = RESPONSE.fatigueGain() * state.fatigue() * factor;
    double fitness = RESPONSE.fitnessGain() * state.fitness();
    double slower = 1 / RESPONSE.fatigueDays() - 1 / RESPONSE.fitnessDays();
    return passed + Math.log(fatigue / fitness) / slower;
  }

  private static void pain(Comparisons all) {
    all.constants("pain.thomee.safe", () -> new double[] {0, PainCourse.MILD});
    all.constants(
        "pain.thomee.acceptable", () -> new double[] {PainCourse.MILD, LogEntry.Pain.LIMIT});
    all.constant("pain.thomee.high", () -> LogEntry.Pain.LIMIT);
    all.constant("pain.silb.limit.during", () -> LogEntry.Pain.LIMIT);
    all.constant("pain.silb.limit.after", () -> LogEntry.Pain.LIMIT);
    all.rule("pain.silb.trend", () -> tooMuch(3, 4) && !tooMuch(4, 4) && !tooMuch(4, 3));
  }

  private static boolean tooMuch(double before, double now) {
    return RisingPain.isTooMuch(
        new TreeMap<>(Map.of(DAY, before, DAY.plusWeeks(1), now)), LogEntry.Pain.LIMIT);
  }

  private static void youth(Comparisons all) {
    all.constant("youth.minage.intensive", () -> monthsBelowWhich("youth-added-load") / 12);
    all.rule("youth.pain.flag", () -> rule("growing-joint-pain").neverWaived());
    all.model("youth.closure.age", TrainingComparisons::yearsOfGrowth);
  }

  private static Rule rule(String name) {
    return StandardRules.STANDARD.rules().stream()
        .filter(rule -> rule.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Returns the age in months below which a rule applies. */
  private static double monthsBelowWhich(String name) {
    Expression when = rule(name).when().orElseThrow();
    for (int months = 1; months < 1200; months++) {
      if (when.equals(
          subject(Kind.EXERCISE).get("athlete").get("age").lessThan(amount(months, Unit.MONTH)))) {
        return months;
      }
    }
    throw new IllegalStateException(name + " has another condition: " + when);
  }

  /** The age in years from which pain of a growth plate no longer stops a finger for good. */
  private static double yearsOfGrowth() {
    int months = 120;
    while (stopsForGood(months)) {
      months++;
    }
    return months / 12.0;
  }

  private static boolean stopsForGood(int months) {
    Athlete athlete = Skarvdal.ylva().born(DAY.minusMonths(months)).build();
    LogEntry pain =
        LogEntry.Pain.builder(DAY, Finger.MIDDLE, 1).structure(Structure.GROWTH_PLATE).build();
    return !GrowthPain.of(athlete, new Log("ylva", List.of(pain))).stopped(DAY).isEmpty();
  }

  private static void protocols(Comparisons all) {
    Protocol strong = StandardProtocols.MAX_HOLDS;
    Protocol calm = StandardProtocols.CALM_HOLDS;
    all.model("prog.acsm.rest.heavy", () -> time(strong, "pause").toSeconds() / 60.0);
    all.model("prog.acsm.inc", () -> 100 * Plan.STANDARD_WEEKLY_RISE);
    all.constant("prog.rest48", () -> SessionPlan.STANDARD_GAP.toHours());
    all.model("dose.oranchuk.tendon.min", () -> 100 * ofMax(calm));
    all.model(
        "tendon.baar.active.max",
        () -> {
          int sets = ((Argument.Count) calm.parameters().get("sets")).times();
          Duration whole =
              time(calm, "work")
                  .multipliedBy(sets)
                  .plus(time(calm, "pause").multipliedBy(sets - 1));
          return whole.toSeconds() / 60.0;
        });
  }

  private static Duration time(Protocol protocol, String parameter) {
    return ((Argument.Time) protocol.parameters().get(parameter)).time();
  }

  private static double ofMax(Protocol protocol) {
    Level level = ((Argument.AtLevel) protocol.parameters().get("level")).level();
    return ((Level.OfMax) level).fraction();
  }
}
