package gripwright.compare;

import gripwright.quantity.Unit;
import gripwright.tissue.PulleyDraws;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The measures of a program for a person. What doesn't depend on the person is worked out once. Not
 * thread-safe: each thread has its own.
 */
final class Evaluation {

  private static final int MEASURES = Measure.values().length;

  /** Weeks that a week is compared with. */
  private static final int BEFORE = 3;

  private final Program program;
  private final FatigueScenario scenario;
  private final Set<Measure> wanted;
  private final int[] times;
  private double seconds;
  private double duration;
  private double minutes;
  private final boolean relative;
  private final boolean bounded;
  private List<Program.Session> sessions;
  private double sessionsOf = Double.NaN;
  private final boolean needsBodyMass;
  private FatigueScenario.@Nullable End @Nullable [] ends;
  private double endsOf = Double.NaN;

  Evaluation(Program program, FatigueScenario scenario, Set<Measure> wanted) {
    this.program = program;
    this.scenario = scenario;
    this.wanted = wanted;
    this.times = program.times();
    this.sessions = program.sessions();
    this.relative = sessions.stream().allMatch(Program.Session::isRelative);
    this.bounded = sessions.stream().anyMatch(Program.Session::hasBound);
    this.needsBodyMass = sessions.stream().anyMatch(Program.Session::needsBodyMass);
    addTimes();
  }

  /** Adds up the times of the sessions. */
  private void addTimes() {
    seconds = 0;
    duration = 0;
    minutes = 0;
    for (int i = 0; i < times.length; i++) {
      Program.Session session = sessions.get(i);
      for (int step = 0; step < session.steps(); step++) {
        seconds += session.isHold(step) ? times[i] * session.seconds()[step] : 0;
      }
      duration += times[i] * session.totalSeconds();
      minutes += times[i] * session.minutesInAll();
    }
  }

  /** Sets the times of holds that are bounds to those of a person. */
  private void holdBounds(Person person) {
    if (!bounded || (relative && sessionsOf == person.fatigue())) {
      return;
    }
    sessions = program.sessions().stream().map(each -> scenario.actual(each, person)).toList();
    sessionsOf = person.fatigue();
    ends = null;
    addTimes();
  }

  /** Returns the values by measure; NaN where one can't be given. */
  double[] values(Person person) {
    double[] values = new double[MEASURES];
    Arrays.fill(values, Double.NaN);
    if (program.isNothing()) {
      Arrays.fill(values, 0);
      return values;
    }
    holdBounds(person);
    set(values, Measure.TIME_UNDER_LOAD, seconds);
    set(values, Measure.MINUTES, minutes);
    set(values, Measure.DENSITY, seconds / duration);
    boolean loaded = !needsBodyMass || !Double.isNaN(person.bodyMass());
    if (loaded) {
      loads(values, person);
      fatigue(values, person);
    }
    return values;
  }

  /** Returns why a value can't be given; null if it can. */
  @Nullable Missing missing(Measure measure, Person person) {
    if (!Double.isNaN(values(person)[measure.ordinal()])) {
      return null;
    }
    boolean exposure = isExposure(measure);
    if ((needsBodyMass || exposure) && Double.isNaN(person.bodyMass())) {
      return Missing.NO_BODY_MASS;
    }
    for (Program.Session session : program.sessions()) {
      for (int step = 0; step < session.steps(); step++) {
        if (session.isHold(step) && Double.isNaN(person.maximum(session.setups()[step]))) {
          return Missing.NO_MAXIMUM;
        }
      }
    }
    if (exposure) {
      return Missing.GRIP_OUT_OF_REACH;
    }
    return measure == Measure.IMPULSE_ABOVE_CF
        ? Missing.NO_CRITICAL_FORCE
        : Missing.OUTSIDE_FATIGUE_MODEL;
  }

  static boolean isExposure(Measure measure) {
    return switch (measure) {
      case A2_EXPOSURE, A4_EXPOSURE, PEAK_A2_LOAD, PEAK_A4_LOAD -> true;
      default -> false;
    };
  }

  static boolean isFatigue(Measure measure) {
    return switch (measure) {
      case END_RESERVE, FATIGUE, COMPLETED, FIRST_FAILURE -> true;
      default -> false;
    };
  }

  private static void set(double[] values, Measure measure, double value) {
    values[measure.ordinal()] = value;
  }

  private void loads(double[] values, Person person) {
    int setups = person.maxima().length;
    double[] ofSession = new double[times.length];
    double[] ofSetup = new double[setups]; // kg s on one hand
    double[] most = new double[setups]; // kg on one hand
    double above = 0;
    double all = 0;
    for (int i = 0; i < times.length; i++) {
      Program.Session session = sessions.get(i);
      double sum = 0;
      for (int step = 0; step < session.steps(); step++) {
        if (!session.isHold(step)) {
          continue;
        }
        double load = session.load(step, person);
        double held = session.seconds()[step];
        int setup = session.setups()[step];
        sum += load * held;
        double onHand = load / session.hands()[step].sides().size();
        ofSetup[setup] += times[i] * onHand * held;
        most[setup] = Math.max(most[setup], onHand);
        double critical = person.criticalForce()[setup] * person.maximum(setup);
        above += times[i] * Math.max(0, load - critical) * held;
      }
      ofSession[i] = sum;
      all += times[i] * sum;
    }
    set(values, Measure.LOAD_TIME, all);
    set(values, Measure.IMPULSE, all * Unit.NEWTONS_PER_KILOGRAM);
    set(values, Measure.IMPULSE_ABOVE_CF, above * Unit.NEWTONS_PER_KILOGRAM);
    set(values, Measure.WEEKLY_RISE, Double.isNaN(all) ? Double.NaN : weeklyRise(ofSession));
    exposure(values, person, ofSetup, most);
  }

  /** Returns the greatest rise of an uneased week over the highest of the three uneased before. */
  private double weeklyRise(double[] ofSession) {
    double[] before = new double[program.weeks().size()];
    int known = 0;
    double greatest = 0;
    for (int week = 0; week < program.weeks().size(); week++) {
      double load = 0;
      for (int session : program.weeks().get(week)) {
        load += ofSession[session];
      }
      if (program.eased()[week] || load <= 0) {
        continue;
      }
      double highest = 0;
      for (int i = Math.max(0, known - BEFORE); i < known; i++) {
        highest = Math.max(highest, before[i]);
      }
      if (highest > 0) {
        greatest = Math.max(greatest, load / highest - 1);
      }
      before[known++] = load;
    }
    return greatest;
  }

  private static void exposure(double[] values, Person person, double[] ofSetup, double[] most) {
    double[] own = person.ownHang();
    double @Nullable [] @Nullable [] pulleys = person.pulleys();
    if (own == null || pulleys == null || Double.isNaN(person.bodyMass())) {
      return;
    }
    double[] sums = new double[PulleyDraws.PLACES];
    double[] peaks = new double[PulleyDraws.PLACES];
    for (int setup = 0; setup < ofSetup.length; setup++) {
      double[] unit = pulleys[setup];
      if (most[setup] == 0) {
        continue;
      }
      if (unit == null) {
        return;
      }
      for (int place = 0; place < sums.length; place++) {
        sums[place] += ofSetup[setup] * unit[place];
        peaks[place] = Math.max(peaks[place], most[setup] * unit[place]);
      }
    }
    for (int pulley = 0; pulley < 2; pulley++) {
      double sum = Double.NaN;
      double peak = Double.NaN;
      for (int place = pulley; place < sums.length; place += 2) {
        if (own[place] > 0) {
          double hang = person.bodyMass() / 2 * own[place];
          sum = Double.isNaN(sum) ? sums[place] / hang : Math.max(sum, sums[place] / hang);
          peak = Double.isNaN(peak) ? peaks[place] / hang : Math.max(peak, peaks[place] / hang);
        }
      }
      set(values, pulley == 0 ? Measure.A2_EXPOSURE : Measure.A4_EXPOSURE, sum);
      set(values, pulley == 0 ? Measure.PEAK_A2_LOAD : Measure.PEAK_A4_LOAD, peak);
    }
  }

  private void fatigue(double[] values, Person person) {
    if (wanted.stream().noneMatch(Evaluation::isFatigue)) {
      return;
    }
    FatigueScenario.@Nullable End[] all = ends(person);
    double least = 1;
    long completed = 0;
    long holds = 0;
    int first = Integer.MAX_VALUE;
    boolean fails = false;
    for (int i = 0; i < times.length; i++) {
      FatigueScenario.End end = all[i];
      if (end == null || Double.isNaN(end.reserve())) {
        return;
      }
      int inSession = sessions.get(i).holds();
      least = Math.min(least, end.reserve());
      completed += (long) times[i] * end.completed();
      holds += (long) times[i] * inSession;
      fails |= end.firstFailure() <= inSession;
      first = Math.min(first, end.firstFailure());
    }
    double share = holds == 0 ? 1 : (double) completed / holds;
    set(values, Measure.END_RESERVE, least);
    set(values, Measure.FATIGUE, 1 - least);
    set(values, Measure.COMPLETED, share);
    set(values, Measure.FIRST_FAILURE, fails ? first : Double.POSITIVE_INFINITY);
  }

  /** Returns how each session ends; everybody of a cohort tires equally by shares of a maximum. */
  private FatigueScenario.@Nullable End[] ends(Person person) {
    FatigueScenario.@Nullable End[] known = ends;
    if (known != null && relative && endsOf == person.fatigue()) {
      return known;
    }
    FatigueScenario.@Nullable End[] fresh = new FatigueScenario.End[times.length];
    for (int i = 0; i < times.length; i++) {
      fresh[i] = scenario.end(sessions.get(i), person);
    }
    ends = fresh;
    endsOf = person.fatigue();
    return fresh;
  }
}
