package gripwright.planning.progression;

import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.planning.load.Dose;
import gripwright.protocol.Scheme;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.Cause;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Derivation;
import gripwright.schedule.ProgressLink;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What an exercise looks like in a week of its block: advanced, ramped, eased.
 *
 * <p>A step is taken only after a week in which something was trained, never in an eased week, and
 * only by an exercise that is not still being introduced.
 */
public final class Progression {

  private final Block.Content block;
  private final IdentityHashMap<Week, IdentityHashMap<Exercise, Map<String, Dose>>> known =
      new IdentityHashMap<>();

  /** Prepares the progress of a block. */
  public Progression(Block.Content block) {
    this.block = block;
  }

  /**
   * A step that may be taken.
   *
   * @param since first day of the weeks that may have earned it
   * @param before first day of the week that takes it
   * @param grips names of the grips that were trained in those weeks
   */
  public record StepOpportunity(LocalDate since, LocalDate before, Set<String> grips) {
    /** Copies the names. */
    public StepOpportunity {
      grips = Set.copyOf(grips);
    }
  }

  /**
   * Where a week stands.
   *
   * @param first first day of the week
   * @param opportunities steps that could have been taken in the block so far
   * @param lost weeks of the block that were not trained, as logged
   * @param easedTo share of the sets that an eased week keeps
   * @param ramp what the load returns to after a time without training
   * @param blockers what the log prevents
   * @param withoutLogLimits the same week as if the log had limited nothing; empty if this is it or
   *     if no line of the log is about the plan's days
   */
  public record Week(
      LocalDate first,
      List<StepOpportunity> opportunities,
      List<Cause> lost,
      Optional<Double> easedTo,
      Returning ramp,
      ProgressionBlockers blockers,
      Optional<Week> withoutLogLimits) {

    /** Copies the lists. */
    public Week {
      opportunities = List.copyOf(opportunities);
      lost = List.copyOf(lost);
    }

    /** Returns this week after sessions that were trained in it. */
    public Week after(List<DatedSession> sessions) {
      return new Week(
          first, opportunities, lost, easedTo, ramp, blockers.after(sessions), withoutLogLimits);
    }

    /** Returns this week with the steps of a grip alone: those after weeks that trained it. */
    private Week of(Grip grip) {
      return new Week(
          first,
          opportunities.stream().filter(c -> c.grips().contains(grip.name())).toList(),
          lost,
          easedTo,
          ramp,
          blockers,
          withoutLogLimits);
    }
  }

  /**
   * The load of a week after a time without training.
   *
   * @param share share of the load; 1 where nothing returns
   * @param from that time, where something returns
   */
  public record Returning(double share, Optional<Cause> from) {

    /** Nothing returns. */
    public static final Returning NOTHING = new Returning(1, Optional.empty());
  }

  /** Returns an exercise as it stands in a week, whatever its day; worked out once a week. */
  public Dose dose(Exercise exercise, Grip grip, Week week) {
    return dose(exercise, grip, week, OptionalInt.empty());
  }

  private Dose dose(Exercise exercise, Grip grip, Week week, OptionalInt ofLine) {
    return known
        .computeIfAbsent(week, w -> new IdentityHashMap<>())
        .computeIfAbsent(exercise, e -> new HashMap<>())
        .computeIfAbsent(
            grip.name() + ofLine, key -> eased(full(exercise, grip, week), week, ofLine));
  }

  /** Returns how many sets an exercise has in a week before it is eased. */
  public int fullSets(Exercise exercise, Grip grip, Week week) {
    return full(exercise, grip, week).scheme().sets();
  }

  /** Eases a dose if its week is; the sets are those of its line, where that has several grips. */
  private static Dose eased(Dose full, Week week, OptionalInt ofLine) {
    Dose dose = ofLine.isPresent() ? full.with(full.scheme().withSets(ofLine.getAsInt())) : full;
    if (week.easedTo().isEmpty()) {
      return dose;
    }
    List<Derivation> why = new ArrayList<>(dose.why());
    Dose eased = eased(dose, week.easedTo().get(), why);
    return eased.because(why);
  }

  private Dose full(Exercise exercise, Grip grip, Week anyGrip) {
    List<Derivation> why = new ArrayList<>();
    Optional<Block.Introduction> introduction = introduction(grip);
    Week week = introduction.isPresent() ? anyGrip.of(grip) : anyGrip;
    int chances = chances(exercise, grip, week, introduction.isPresent(), why);
    int ramped = introduction.map(i -> Math.min(chances, i.weeks() - 1)).orElse(0);
    Optional<Dose.Ramp> ramp =
        introduction
            .filter(i -> chances < i.weeks() - 1)
            .map(i -> new Dose.Ramp(i.fromFraction(), (double) chances / (i.weeks() - 1)));
    Dose dose = Dose.written(exercise.scheme(), exercise.edge()).onRamp(ramp);
    Optional<Advance> advance = ramp.isPresent() ? Optional.empty() : advance(grip);
    if (advance.isPresent()) {
      dose =
          advanced(dose, advance.get(), new Chances(exercise, grip, week, chances - ramped), why);
    }
    if (week.ramp().share() < 1) {
      why.add(new ProgressLink.Returns(week.ramp().share(), week.ramp().from().orElseThrow()));
      dose = dose.scaled(week.ramp().share());
    }
    return dose.because(why);
  }

  /** Counts the steps that nothing in the log stood against, and tells of the others. */
  private int chances(
      Exercise exercise, Grip grip, Week week, boolean introduced, List<Derivation> why) {
    Optional<Advance.Pace> pace = advance(grip).map(a -> a.first().when());
    boolean steps = introduced || pace.filter(Advance.EveryWeeks.class::isInstance).isPresent();
    if (!steps) {
      return week.opportunities().size();
    }
    ProgressionBlockers.Asked asked = new ProgressionBlockers.Asked(exercise, grip, pace);
    List<Cause> causes = new ArrayList<>(week.lost());
    int held = 0;
    for (StepOpportunity chance : week.opportunities()) {
      List<Cause> against = week.blockers().reasons(asked, chance.since(), chance.before());
      held += against.isEmpty() ? 0 : 1;
      causes.addAll(against);
    }
    int all = held + week.lost().size();
    if (all > 0) {
      why.add(new ProgressLink.StepsHeld(all, causes));
    }
    return week.opportunities().size() - held;
  }

  /**
   * Returns an exercise's dose under what may be loaded on a day after what the log tells.
   *
   * @param place where the exercise stands
   */
  public Dose dose(Exercise exercise, Grip grip, Week week, LocalDate day, ModelPath place) {
    return dose(exercise, grip, week, OptionalInt.empty(), day, place);
  }

  /**
   * Returns the dose of one grip of several on a line.
   *
   * @param sets how many the line has before it is eased, which all its grips share
   * @param place where the exercise stands
   */
  public Dose doseOfMix(
      Exercise exercise, Grip grip, Week week, int sets, LocalDate day, ModelPath place) {
    return dose(exercise, grip, week, OptionalInt.of(sets), day, place);
  }

  private Dose dose(
      Exercise exercise, Grip grip, Week week, OptionalInt ofLine, LocalDate day, ModelPath place) {
    Dose dose = dose(exercise, grip, week, ofLine);
    Optional<Advance.Pace> pace = advance(grip).map(a -> a.first().when());
    ProgressionBlockers.Asked asked = new ProgressionBlockers.Asked(exercise, grip, pace);
    Optional<Dose.Ceiling> back =
        week.blockers().comingBack(asked, place, dose.edge(), day, week.easedTo().isPresent());
    return dose.under(
        Stream.concat(week.blockers().ceiling(asked, dose.edge(), day).stream(), back.stream())
            .min(Comparator.comparing(Dose.Ceiling::most)));
  }

  public Optional<Block.Introduction> introduction(Grip grip) {
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

  /** How many chances of a step an exercise on a grip had up to a week. */
  private record Chances(Exercise exercise, Grip grip, Week week, int count) {}

  private static Dose advanced(Dose dose, Advance advance, Chances chances, List<Derivation> why) {
    int steps = steps(advance.first().when(), chances);
    if (advance.then().isEmpty()) {
      return changed(dose, advance.first().change(), steps, why);
    }
    int toLimit = stepsToLimit(advance.first().change(), dose);
    int firstSteps = toLimit == Integer.MAX_VALUE ? steps : steps % (toLimit + 1);
    int thenSteps = toLimit == Integer.MAX_VALUE ? 0 : steps / (toLimit + 1);
    Dose second = changed(dose, advance.then().get().change(), thenSteps, why);
    return changed(second, advance.first().change(), firstSteps, why);
  }

  private static int steps(Advance.Pace pace, Chances chances) {
    int count = Math.max(0, chances.count());
    return pace.accept(
        new Advance.Pace.Visitor<Integer>() {
          @Override
          public Integer everyWeeks(Advance.EveryWeeks every) {
            return count / every.weeks();
          }

          @Override
          public Integer whenLogged(Advance.WhenLogged logged) {
            Week week = chances.week();
            int all = week.opportunities().size();
            return taken(
                week.blockers(),
                new ProgressionBlockers.Asked(
                    chances.exercise(), chances.grip(), Optional.of(pace)),
                logged,
                week.opportunities().subList(all - Math.min(all, count), all));
          }
        });
  }

  /** Counts the steps that the log has earned: one a chance at most, and none before the first. */
  private static int taken(
      ProgressionBlockers blockers,
      ProgressionBlockers.Asked asked,
      Advance.WhenLogged pace,
      List<StepOpportunity> chances) {
    int before = chances.isEmpty() ? 0 : blockers.earned(asked, pace, chances.get(0).since());
    int steps = 0;
    for (StepOpportunity chance : chances) {
      boolean waits = blockers.held(asked, Optional.empty(), chance.before()).isPresent();
      boolean earned = blockers.earned(asked, pace, chance.before()) - before > steps;
      steps += earned && !waits ? 1 : 0;
    }
    return steps;
  }

  /** Returns how many steps a variable can take from where a dose stands. */
  private static int stepsToLimit(Advance.Change change, Dose dose) {
    return change.accept(new StepsToLimit(dose));
  }

  private record StepsToLimit(Dose dose) implements Advance.Change.Visitor<Integer> {
    @Override
    public Integer loadByShare(Advance.LoadByShare load) {
      return Integer.MAX_VALUE;
    }

    @Override
    public Integer loadBy(Advance.LoadBy load) {
      return Integer.MAX_VALUE;
    }

    @Override
    public Integer setsTo(Advance.SetsTo sets) {
      return stepsBetween(sets.limit() - dose.scheme().sets(), sets.step());
    }

    @Override
    public Integer holdTo(Advance.HoldTo hold) {
      Duration longest =
          dose.scheme().written().stream()
              .map(Scheme.Hold::time)
              .max(Duration::compareTo)
              .orElse(Duration.ZERO);
      return stepsBetween(hold.limit().minus(longest).toNanos() / 1e9, hold.step().toNanos() / 1e9);
    }

    @Override
    public Integer edgeTo(Advance.EdgeTo edge) {
      return stepsBetween(
          dose.edge().millimetres() - edge.limit().millimetres(), edge.step().millimetres());
    }
  }

  private static int stepsBetween(double distance, double step) {
    return distance <= 0 ? 0 : (int) Math.ceil(distance / step - 1e-9);
  }

  private static Dose changed(Dose dose, Advance.Change change, int asked, List<Derivation> why) {
    int steps = Math.min(asked, stepsToLimit(change, dose));
    if (steps <= 0) {
      return dose;
    }
    return change.accept(new Changed(dose, steps, why));
  }

  private record Changed(Dose dose, int steps, List<Derivation> why)
      implements Advance.Change.Visitor<Dose> {
    @Override
    public Dose loadByShare(Advance.LoadByShare share) {
      why.add(new ProgressLink.LoadShare(steps, share.fraction()));
      return dose.scaled(Math.pow(1 + share.fraction(), steps));
    }

    @Override
    public Dose loadBy(Advance.LoadBy by) {
      why.add(new ProgressLink.LoadStep(steps, by.step()));
      return dose.heavierBy(Load.ofKilograms(by.step().kilograms() * steps));
    }

    @Override
    public Dose setsTo(Advance.SetsTo to) {
      int sets = Math.min(to.limit(), dose.scheme().sets() + steps * to.step());
      why.add(new ProgressLink.Sets(steps, to.step(), sets));
      return dose.with(dose.scheme().withSets(sets));
    }

    @Override
    public Dose holdTo(Advance.HoldTo to) {
      Duration more = to.step().multipliedBy(steps);
      Scheme scheme =
          dose.scheme().mapHolds(h -> new Scheme.Hold(longer(h.time(), more, to), h.level()));
      why.add(
          new ProgressLink.Hold(
              steps, to.step().toNanos() / 1e9, scheme.written().get(0).seconds()));
      return dose.with(scheme);
    }

    @Override
    public Dose edgeTo(Advance.EdgeTo to) {
      Length depth =
          Length.ofMillimetres(
              Math.max(
                  to.limit().millimetres(),
                  dose.edge().millimetres() - steps * to.step().millimetres()));
      why.add(new ProgressLink.Edge(steps, to.step(), depth));
      return dose.on(depth);
    }
  }

  private static Duration longer(Duration time, Duration more, Advance.HoldTo to) {
    Duration wanted = time.plus(more);
    if (wanted.compareTo(to.limit()) <= 0) {
      return wanted;
    }
    return time.compareTo(to.limit()) > 0 ? time : to.limit();
  }

  /** Keeps a share of the sets, at least one; of a single set, a share of each hold. */
  private static Dose eased(Dose dose, double keep, List<Derivation> why) {
    int sets = dose.scheme().sets();
    if (sets > 1) {
      int kept = Math.max(1, (int) Math.floor(sets * keep + 1e-9));
      why.add(new ProgressLink.EasedSets(kept, keep, sets));
      return dose.with(dose.scheme().withSets(kept));
    }
    Scheme shorter =
        dose.scheme().mapHolds(h -> new Scheme.Hold(shorter(h.time(), keep), h.level()));
    why.add(new ProgressLink.EasedHold(shorter.written().get(0).seconds(), keep));
    return dose.shortened(shorter);
  }

  private static Duration shorter(Duration time, double keep) {
    long millis = (long) Math.floor(time.toMillis() * keep);
    long whole = millis >= 1000 ? millis / 1000 * 1000 : millis;
    return Duration.ofMillis(Math.max(1, whole));
  }
}
