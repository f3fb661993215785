package gripwright.compare;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.protocol.Protocol;
import gripwright.protocol.Scheme;
import gripwright.rule.RuleSet;
import gripwright.schedule.DatedSession;
import gripwright.schedule.HandsInTurn;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.Season;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Writes arms out as programs for some people, and keeps the table of the setups that they use. Not
 * thread-safe.
 */
final class Programs {

  private final People people;
  private final int perWeek;
  private final int weeks;
  private final Collection<RuleSet> ruleSets;
  private final List<Setup> setups = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Map<Plan, Program> plans = new HashMap<>();

  Programs(People people, int perWeek, int weeks, Collection<RuleSet> ruleSets) {
    this.people = people;
    this.perWeek = perWeek;
    this.weeks = weeks;
    this.ruleSets = List.copyOf(ruleSets);
  }

  /** Returns programs for the same people and setups, to be used by another thread. */
  Programs copy() {
    Programs copy = new Programs(people, perWeek, weeks, ruleSets);
    copy.setups.addAll(setups);
    copy.plans.putAll(plans);
    return copy;
  }

  /** Returns the setups used so far, in the order of their places. */
  List<Setup> setups() {
    return setups;
  }

  /** Returns why arms can't be written out, each reason once. */
  List<Finding> findings() {
    return List.copyOf(new LinkedHashSet<>(findings));
  }

  private int place(Setup setup) {
    int place = setups.indexOf(setup);
    if (place < 0) {
      setups.add(setup);
      return setups.size() - 1;
    }
    return place;
  }

  /**
   * Returns the program of an arm; empty if it can't be written out, which is among the findings.
   *
   * @param path place of the arm
   */
  Optional<Program> of(Arm arm, ModelPath path) {
    return arm.content()
        .accept(
            new Arm.Content.Visitor<>() {
              @Override
              public Optional<Program> trained(Arm.Trained content) {
                return exercise(content.exercise(), path);
              }

              @Override
              public Optional<Program> planned(Arm.Planned content) {
                Program known = plans.get(content.plan());
                Optional<Program> program =
                    known == null ? plan(content.plan(), path) : Optional.of(known);
                program.ifPresent(made -> plans.put(content.plan(), made));
                return program;
              }

              @Override
              public Optional<Program> noTraining(Arm.NoTraining content) {
                return Optional.of(Program.NOTHING);
              }
            });
  }

  private Optional<Program> exercise(Exercise exercise, ModelPath path) {
    SessionSteps session = new SessionSteps();
    boolean taken =
        exercise.alternating() ? inTurn(exercise, session, path) : alone(exercise, session, path);
    if (!taken) {
      return Optional.empty();
    }
    List<int[]> all = new ArrayList<>();
    for (int week = 0; week < weeks; week++) {
      all.add(new int[perWeek]);
    }
    return Optional.of(new Program(List.of(session.session(0)), all, new boolean[weeks]));
  }

  private boolean alone(Exercise exercise, SessionSteps session, ModelPath path) {
    return add(exercise.scheme(), new Steps(setup(exercise), session), path);
  }

  /** Adds each set of the left hand, then of the right; a hand rests for at least its rest. */
  private boolean inTurn(Exercise exercise, SessionSteps session, ModelPath path) {
    Scheme set = exercise.scheme().withSets(1);
    double more =
        exercise.scheme().restBetweenSets().minus(set.duration()).toNanos() / 1e9; // rest left over
    for (int n = 0; n < exercise.scheme().sets(); n++) {
      if (n > 0) {
        session.rest(Math.max(0, more));
      }
      for (Exercise side : exercise.sides()) {
        if (!add(set, new Steps(setup(side), session), path)) {
          return false;
        }
      }
    }
    return true;
  }

  private static Setup setup(Exercise exercise) {
    return exercise.setup(exercise.target().grips().get(0));
  }

  /** Adds the steps of a scheme; returns false, with a finding, if these people can't do them. */
  private boolean add(Scheme scheme, Steps steps, ModelPath path) {
    for (Scheme.Bout bout : scheme.flat()) {
      if (!bout.accept(steps)) {
        steps.refused.map(finding -> finding.at(path)).ifPresent(findings::add);
        return false;
      }
    }
    return true;
  }

  /** Collects the steps of a session. */
  private final class Steps implements Scheme.Bout.Visitor<Boolean> {
    private final Setup setup;
    private final SessionSteps session;
    private Optional<Finding> refused = Optional.empty();

    Steps(Setup setup, SessionSteps session) {
      this.setup = setup;
      this.session = session;
    }

    @Override
    public Boolean hold(Scheme.Hold hold) {
      refused = people.refusal(setup, hold.level(), hold.seconds());
      if (refused.isPresent()) {
        return false;
      }
      People.Amount load = people.load(setup, hold.level(), hold.seconds()).orElseThrow();
      session.hold(
          new Timed(hold.seconds(), hold.extent().isBound()), load, place(setup), setup.hands());
      return true;
    }

    @Override
    public Boolean rest(Scheme.Rest rest) {
      session.rest(rest.seconds());
      return true;
    }
  }

  /** Compiles a plan for these people, whoever it is for. */
  private Optional<Program> plan(Plan plan, ModelPath path) {
    boolean cohort = people.size() > 0;
    boolean own = plan.athletes().contains(people.name());
    String as = own ? people.name() : plan.athletes().get(0);
    Athlete athlete = cohort ? withEdges(people.planned(as), plan) : named(people.planned(as), as);
    Season season =
        Season.of(List.of(plan), List.of(athlete), List.of(log(as, plan)), ruleSets)
            .withMistakesLeftOut();
    List<CompiledPlan> compiled =
        season.compile().plans().stream().filter(each -> each.athlete().name().equals(as)).toList();
    Optional<Finding> stopped =
        compiled.isEmpty()
            ? Optional.of(Finding.error("plan.no-day", path))
            : compiled.get(0).findings().stream()
                .filter(Finding::blocks)
                .filter(finding -> !cohort || isNeeded(finding))
                .findFirst();
    if (compiled.isEmpty() || stopped.isPresent()) {
      findings.add(
          Finding.error("compare.plan-unusable", path)
              .with("plan", plan.name())
              .with("athlete", people.name())
              .with("code", stopped.map(Finding::code).orElse("")));
      return Optional.empty();
    }
    return Optional.of(program(compiled.get(0)));
  }

  /** Returns whether a session lacks something; broken rules are no matter for a cohort. */
  private static boolean isNeeded(Finding finding) {
    return finding.rule().isEmpty();
  }

  private static Athlete named(Athlete athlete, String as) {
    return athlete.name().equals(as) ? athlete : athlete.toBuilder().name(as).build();
  }

  private static Athlete withEdges(Athlete athlete, Plan plan) {
    Set<gripwright.quantity.Length> edges = new TreeSet<>();
    Athlete.Builder builder = athlete.toBuilder();
    plan.blocks()
        .forEach(
            block ->
                block
                    .content()
                    .sessions()
                    .forEach(
                        session ->
                            session
                                .content()
                                .exercises()
                                .forEach(exercise -> add(exercise, edges, builder))));
    return builder.edges(edges).build();
  }

  private static void add(
      Exercise exercise, Set<gripwright.quantity.Length> edges, Athlete.Builder builder) {
    edges.add(exercise.edge());
    for (Grip grip : exercise.target().grips()) {
      builder.familiar(grip.name(), 240);
    }
  }

  private Log log(String as, Plan plan) {
    if (people instanceof AthletePeople athlete) {
      return new Log(as, athlete.log().entries());
    }
    List<LogEntry> entries = new ArrayList<>();
    ((CohortPeople) people)
        .tests(plan.from().minusDays(7))
        .forEach(test -> entries.add(new LogEntry.Tested(test, Optional.empty())));
    return new Log(as, entries);
  }

  private Program program(CompiledPlan plan) {
    List<Program.Session> sessions = new ArrayList<>();
    Map<List<Object>, Integer> known = new HashMap<>();
    List<int[]> all = new ArrayList<>();
    List<PlanWeek> planned = plan.weeks();
    boolean[] eased = new boolean[planned.size()];
    double between = plan.plan().restBetween().toNanos() / 1e9;
    for (int week = 0; week < planned.size(); week++) {
      eased[week] = planned.get(week).eased();
      List<DatedSession> dated = plan.sessionsOf(planned.get(week).number());
      int[] places = new int[dated.size()];
      for (int i = 0; i < places.length; i++) {
        DatedSession session = dated.get(i);
        List<Object> key = new ArrayList<>();
        key.add(session.minutes());
        session
            .exercises()
            .forEach(
                exercise -> {
                  key.add(exercise.setup());
                  key.add(exercise.steps());
                });
        Integer place = known.get(key);
        if (place == null) {
          place = sessions.size();
          known.put(key, place);
          sessions.add(session(session, between));
        }
        places[i] = place;
      }
      all.add(places);
    }
    return new Program(sessions, all, eased);
  }

  private Program.Session session(DatedSession dated, double between) {
    SessionSteps session = new SessionSteps();
    List<PlannedExercise> before = List.of();
    for (PlannedExercise exercise : dated.exercises()) {
      if (before.stream().anyMatch(last -> !HandsInTurn.areOfOneLine(last, exercise))) {
        session.rest(between);
      }
      before = List.of(exercise);
      Setup setup = exercise.setup();
      for (PlannedExercise.LoadedStep step : exercise.steps()) {
        if (step.load().isEmpty()) {
          session.rest(step.seconds());
          continue;
        }
        double load = step.load().get().kilograms();
        People.Amount amount =
            people.size() > 0
                ? new People.Amount(
                    Program.Kind.SHARE,
                    load / exercise.maximum().map(m -> m.mean().kilograms()).orElse(Double.NaN))
                : new People.Amount(Program.Kind.KILOGRAMS, load);
        session.hold(
            new Timed(step.seconds(), step.extent().isBound()),
            amount,
            place(setup),
            setup.hands());
      }
    }
    return session.session(dated.minutes());
  }

  /** The time of a hold, and whether it is the greatest one. */
  private record Timed(double seconds, boolean bound) {}

  /** The steps of a session, as arrays in the end. */
  private static final class SessionSteps {
    private final List<Double> seconds = new ArrayList<>();
    private final List<Program.Kind> kinds = new ArrayList<>();
    private final List<Double> values = new ArrayList<>();
    private final List<Integer> setups = new ArrayList<>();
    private final List<Hands> hands = new ArrayList<>();
    private final List<Boolean> bounds = new ArrayList<>();

    void hold(Timed time, People.Amount load, int setup, Hands which) {
      add(time, load, setup, which);
    }

    void rest(double time) {
      if (time > 0) {
        add(new Timed(time, false), new People.Amount(Program.Kind.REST, 0), -1, Hands.BOTH);
      }
    }

    private void add(Timed time, People.Amount load, int setup, Hands which) {
      seconds.add(time.seconds());
      bounds.add(time.bound());
      kinds.add(load.kind());
      values.add(load.value());
      setups.add(setup);
      hands.add(which);
    }

    private boolean[] bounds() {
      boolean[] all = new boolean[bounds.size()];
      for (int i = 0; i < all.length; i++) {
        all[i] = bounds.get(i);
      }
      return all;
    }

    Program.Session session(double minutes) {
      return new Program.Session(
          seconds.stream().mapToDouble(Double::doubleValue).toArray(),
          kinds.toArray(Program.Kind[]::new),
          values.stream().mapToDouble(Double::doubleValue).toArray(),
          setups.stream().mapToInt(Integer::intValue).toArray(),
          hands.toArray(Hands[]::new),
          bounds(),
          minutes);
    }
  }

  /** Returns an arm of one exercise with another value of a parameter. */
  static Arm with(Arm arm, String parameter, gripwright.protocol.Argument value) {
    Exercise exercise = ((Arm.Trained) arm.content()).exercise();
    return Arm.of(arm.name(), exercise.with(parameter, value));
  }

  /** Returns the protocol of an arm of one exercise. */
  static Optional<Protocol> protocol(Arm arm) {
    return arm.content() instanceof Arm.Trained trained
        ? Optional.of(trained.exercise().protocol())
        : Optional.empty();
  }
}
