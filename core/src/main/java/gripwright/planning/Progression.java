package gripwright.planning;

import gripwright.grip.Grip;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.PlannedExercise.Derivation;
import gripwright.protocol.Scheme;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What an exercise looks like in a week of its block: advanced, ramped, eased.
 *
 * <p>A step is taken only after a week in which something was trained, never in an eased week, and
 * only by an exercise that is not still being introduced.
 */
final class Progression {

  private final Block.Content block;
  private final Log log;
  private final LocalDate from;

  Progression(Block.Content block, Log log, LocalDate from) {
    this.block = block;
    this.log = log;
    this.from = from;
  }

  /**
   * Where a week stands.
   *
   * @param first first day of the week
   * @param chances weeks of the block so far that could have taken a step
   * @param easedTo share of the sets that an eased week keeps
   * @param returning share of the load in the weeks after a long absence; 1 otherwise
   */
  record Week(LocalDate first, int chances, Optional<Double> easedTo, double returning) {}

  Dose dose(Exercise exercise, Grip grip, Week week) {
    List<Derivation> why = new ArrayList<>();
    Optional<Block.Introduction> introduction = introduction(grip);
    int ramped = introduction.map(i -> Math.min(week.chances(), i.weeks() - 1)).orElse(0);
    Optional<Dose.Ramp> ramp =
        introduction
            .filter(i -> week.chances() < i.weeks() - 1)
            .map(i -> new Dose.Ramp(i.fromFraction(), (double) week.chances() / (i.weeks() - 1)));
    Dose dose = new Dose(exercise.scheme(), exercise.edge(), 1, Load.ZERO, ramp, List.of());
    Optional<Advance> advance = ramp.isPresent() ? Optional.empty() : advance(grip);
    if (advance.isPresent()) {
      dose = advanced(dose, advance.get(), exercise, grip, week, ramped, why);
    }
    if (week.returning() < 1) {
      why.add(
          new Derivation(
              "return", week.returning() * 100, "%", "first weeks after 14 days or more away"));
      dose = scaled(dose, week.returning());
    }
    if (week.easedTo().isPresent()) {
      dose = eased(dose, week.easedTo().get(), why);
    }
    return new Dose(
        dose.scheme(), dose.edge(), dose.loadFactor(), dose.loadStep(), dose.ramp(), why);
  }

  Optional<Block.Introduction> introduction(Grip grip) {
    return block.introductions().stream()
        .filter(i -> i.grip().name().equals(grip.name()))
        .findFirst();
  }

  private Optional<Advance> advance(Grip grip) {
    return block.advances().stream()
        .filter(a -> a.on().isPresent() && a.on().get().equals(grip.name()))
        .findFirst()
        .or(() -> block.advances().stream().filter(a -> a.on().isEmpty()).findFirst());
  }

  private Dose advanced(
      Dose dose,
      Advance advance,
      Exercise exercise,
      Grip grip,
      Week week,
      int ramped,
      List<Derivation> why) {
    int steps = steps(advance.first().when(), exercise, grip, week, ramped);
    if (advance.then().isEmpty()) {
      return changed(dose, advance.first().change(), steps, why);
    }
    int toLimit = stepsToLimit(advance.first().change(), dose);
    int firstSteps = toLimit == Integer.MAX_VALUE ? steps : steps % (toLimit + 1);
    int thenSteps = toLimit == Integer.MAX_VALUE ? 0 : steps / (toLimit + 1);
    Dose second = changed(dose, advance.then().get().change(), thenSteps, why);
    return changed(second, advance.first().change(), firstSteps, why);
  }

  private int steps(Advance.Pace pace, Exercise exercise, Grip grip, Week week, int ramped) {
    if (pace instanceof Advance.EveryWeeks every) {
      return Math.max(0, week.chances() - ramped) / every.weeks();
    }
    return pace instanceof Advance.WhenLogged logged
        ? earned(logged, exercise, grip, week.first())
        : 0;
  }

  /** Counts the steps that the log has earned before a day. */
  private int earned(Advance.WhenLogged pace, Exercise exercise, Grip grip, LocalDate before) {
    int steps = 0;
    int row = 0;
    for (LogEntry.Trained session : log.of(LogEntry.Trained.class)) {
      if (session.date().isBefore(from) || !session.date().isBefore(before)) {
        continue;
      }
      for (LogEntry.Done done : session.done()) {
        if (done.protocol().equals(exercise.protocol().name())
            && done.setup().grip().name().equals(grip.name())
            && done.setup().hands() == exercise.hands()) {
          row = deserves(pace, done) ? row + 1 : 0;
          if (row == pace.sessions()) {
            steps++;
            row = 0;
          }
        }
      }
    }
    return steps;
  }

  private static boolean deserves(Advance.WhenLogged pace, LogEntry.Done done) {
    return (!pace.doneInFull() || done.inFull())
        && (pace.effortAtMost().isEmpty()
            || (done.effort().isPresent()
                && done.effort().getAsDouble() <= pace.effortAtMost().getAsDouble()))
        && (pace.painAtMost().isEmpty()
            || (done.pain().isPresent()
                && done.pain().getAsDouble() <= pace.painAtMost().getAsDouble()));
  }

  /** Returns how many steps a variable can take from where a dose stands. */
  private static int stepsToLimit(Advance.Change change, Dose dose) {
    if (change instanceof Advance.SetsTo sets) {
      return stepsBetween(sets.limit() - dose.scheme().sets(), sets.step());
    }
    if (change instanceof Advance.HoldTo hold) {
      Duration longest =
          dose.scheme().holds().stream()
              .map(Scheme.Hold::time)
              .max(Duration::compareTo)
              .orElse(Duration.ZERO);
      return stepsBetween(hold.limit().minus(longest).toNanos() / 1e9, hold.step().toNanos() / 1e9);
    }
    if (change instanceof Advance.EdgeTo edge) {
      return stepsBetween(
          dose.edge().millimetres() - edge.limit().millimetres(), edge.step().millimetres());
    }
    return Integer.MAX_VALUE;
  }

  private static int stepsBetween(double distance, double step) {
    return distance <= 0 ? 0 : (int) Math.ceil(distance / step - 1e-9);
  }

  private static Dose changed(Dose dose, Advance.Change change, int asked, List<Derivation> why) {
    int steps = Math.min(asked, stepsToLimit(change, dose));
    if (steps <= 0) {
      return dose;
    }
    String count = steps + (steps == 1 ? " step" : " steps");
    if (change instanceof Advance.LoadByShare share) {
      double factor = Math.pow(1 + share.fraction(), steps);
      why.add(
          new Derivation(
              "advance load",
              factor * 100,
              "%",
              count + " of " + Numbers.plain(share.fraction() * 100, 3) + " %"));
      return scaled(dose, factor);
    }
    if (change instanceof Advance.LoadBy by) {
      double kilograms = by.step().kilograms() * steps;
      why.add(new Derivation("advance load", kilograms, "kg", count + " of " + by.step()));
      return new Dose(
          dose.scheme(),
          dose.edge(),
          dose.loadFactor(),
          dose.loadStep().plus(Load.ofKilograms(kilograms)),
          dose.ramp(),
          dose.why());
    }
    if (change instanceof Advance.SetsTo to) {
      int sets = Math.min(to.limit(), dose.scheme().sets() + steps * to.step());
      why.add(new Derivation("advance sets", sets, "", count + " of " + to.step()));
      return withScheme(dose, dose.scheme().withSets(sets));
    }
    if (change instanceof Advance.HoldTo to) {
      Duration more = to.step().multipliedBy(steps);
      Scheme scheme =
          dose.scheme().mapHolds(h -> new Scheme.Hold(longer(h.time(), more, to), h.level()));
      why.add(
          new Derivation(
              "advance hold",
              scheme.holds().get(0).seconds(),
              "s",
              count + " of " + Numbers.plain(to.step().toNanos() / 1e9, 3) + " s"));
      return withScheme(dose, scheme);
    }
    if (change instanceof Advance.EdgeTo to) {
      double depth =
          Math.max(
              to.limit().millimetres(),
              dose.edge().millimetres() - steps * to.step().millimetres());
      why.add(new Derivation("advance edge", depth, "mm", count + " of " + to.step()));
      return new Dose(
          dose.scheme(),
          Length.ofMillimetres(depth),
          dose.loadFactor(),
          dose.loadStep(),
          dose.ramp(),
          dose.why());
    }
    return dose;
  }

  private static Duration longer(Duration time, Duration more, Advance.HoldTo to) {
    Duration wanted = time.plus(more);
    if (wanted.compareTo(to.limit()) <= 0) {
      return wanted;
    }
    return time.compareTo(to.limit()) > 0 ? time : to.limit();
  }

  private static Dose scaled(Dose dose, double factor) {
    return new Dose(
        dose.scheme(),
        dose.edge(),
        dose.loadFactor() * factor,
        dose.loadStep(),
        dose.ramp(),
        dose.why());
  }

  private static Dose withScheme(Dose dose, Scheme scheme) {
    return new Dose(
        scheme, dose.edge(), dose.loadFactor(), dose.loadStep(), dose.ramp(), dose.why());
  }

  /** Keeps a share of the sets, at least one; of a single set, a share of each hold. */
  private static Dose eased(Dose dose, double keep, List<Derivation> why) {
    int sets = dose.scheme().sets();
    if (sets > 1) {
      int kept = Math.max(1, (int) Math.floor(sets * keep + 1e-9));
      why.add(new Derivation("ease", kept, "", Numbers.plain(keep * 100, 1) + " % of " + sets));
      return withScheme(dose, dose.scheme().withSets(kept));
    }
    Scheme shorter =
        dose.scheme().mapHolds(h -> new Scheme.Hold(shorter(h.time(), keep), h.level()));
    why.add(
        new Derivation(
            "ease",
            shorter.holds().get(0).seconds(),
            "s",
            Numbers.plain(keep * 100, 1) + " % of the one set's hold"));
    return withScheme(dose, shorter);
  }

  private static Duration shorter(Duration time, double keep) {
    long millis = (long) Math.floor(time.toMillis() * keep);
    long whole = millis >= 1000 ? millis / 1000 * 1000 : millis;
    return Duration.ofMillis(Math.max(1, whole));
  }
}
