package gripwright.export.study;

import gripwright.export.words.Words;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Report;
import gripwright.protocol.Scheme;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a plan says about each fact that reports of exercise trials ask for. Immutable. */
final class PlanFacts {

  /** What a fact is about. */
  enum Fact {
    NAME,
    WHY,
    EQUIPMENT,
    PROVIDER,
    DELIVERY,
    SUPERVISION,
    FIDELITY,
    MOTIVATION,
    PROGRESSION_RULE,
    PROGRESSION,
    EXERCISES,
    HOME,
    OTHER_PARTS,
    ADVERSE_EVENTS,
    SETTING,
    DOSE,
    TAILORED,
    TAILORING,
    STARTING_LEVEL,
    DELIVERED,
    LEVELS,
    REPETITIONS,
    SETS,
    REST_BETWEEN_SETS,
    FREQUENCY,
    PERIOD,
    CONTRACTION,
    REST_BETWEEN_HOLDS,
    TIME_UNDER_TENSION,
    FAILURE,
    RANGE_OF_MOTION,
    RECOVERY,
    FORM;

    /** Returns the fact that a {@code report} line states. */
    static Fact of(Report.Item item) {
      return valueOf(item.name());
    }
  }

  /**
   * What the plan says.
   *
   * @param text in words
   * @param place where it says so
   */
  record Value(String text, ModelPath place) {}

  private final Plan plan;
  private final Words words;
  private final boolean hiding;
  private final List<Block.Content> contents = new ArrayList<>();
  private final List<SessionPlan> sessions = new ArrayList<>();
  private final List<Exercise> exercises = new ArrayList<>();

  /** The warm-ups of tests. */
  private final List<Exercise> tested = new ArrayList<>();

  private final Map<Fact, Value> values = new EnumMap<>(Fact.class);

  /**
   * Collects the facts of a plan.
   *
   * @param hiding true if persons must not be named
   */
  PlanFacts(Plan plan, Words words, boolean hiding) {
    this.plan = plan;
    this.words = words;
    this.hiding = hiding;
    for (Block block : plan.blocks()) {
      contents.add(block.content());
      contents.addAll(block.only().values());
    }
    contents.forEach(content -> sessions.addAll(content.sessions()));
    for (SessionPlan session : sessions) {
      exercises.addAll(session.content().exercises());
      session.only().values().forEach(own -> exercises.addAll(own.exercises()));
    }
    plan.retests().forEach(test -> tested.addAll(test.exercises()));
    reported();
    delivered();
    progressed();
    dosed();
    held();
  }

  /** Returns what the plan says about a fact; empty if it says nothing. */
  Optional<Value> of(Fact fact) {
    return Optional.ofNullable(values.get(fact));
  }

  private void put(Fact fact, String text) {
    values.put(fact, new Value(text, plan.path()));
  }

  private void say(Fact fact, String key, Object... facts) {
    put(fact, words.say(key, facts));
  }

  /** Puts the facts that {@code report} lines state, those of the plan before its protocols'. */
  private void reported() {
    report(plan.reports(), plan.path());
    Set<Protocol> protocols =
        Stream.concat(exercises.stream(), tested.stream())
            .map(Exercise::protocol)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    protocols.forEach(
        protocol -> report(protocol.reports(), ModelPath.of("protocol", protocol.name())));
  }

  private void report(List<Report> reports, ModelPath path) {
    for (Report report : reports) {
      Value value = new Value(report.text(), path.then("report", report.item().word()));
      values.merge(
          Fact.of(report.item()),
          value,
          (one, other) ->
              one.text().equals(other.text())
                  ? one
                  : new Value(words.semicolons(List.of(one.text(), other.text())), one.place()));
    }
  }

  private void delivered() {
    put(Fact.NAME, plan.title().orElse(plan.name()));
    plan.towards()
        .ifPresent(
            goal ->
                say(
                    Fact.WHY,
                    goal.title().isPresent() ? "methods.why-goal" : "methods.why-day",
                    "date",
                    words.dayAndYear(goal.date()),
                    "goal",
                    goal.title().orElse("")));
    plan.supervisedBy()
        .ifPresent(
            who ->
                values.put(
                    Fact.SUPERVISION,
                    new Value(
                        hiding
                            ? words.say("methods.supervised")
                            : words.say("methods.supervised-by", "who", who),
                        plan.path().then("supervised", 1))));
    String edges = each(exercises, Exercise::edge);
    boolean lifting = exercises.stream().anyMatch(Exercise::lifting);
    say(
        Fact.EQUIPMENT,
        lifting ? "methods.equipment-lifting" : "methods.equipment",
        "edges",
        edges);
    say(Fact.EXERCISES, "methods.see-above");
    say(Fact.OTHER_PARTS, "methods.warm-up", "time", plan.warmUp());
  }

  private void progressed() {
    List<String> steps =
        contents.stream()
            .flatMap(content -> content.advances().stream())
            .map(advance -> new AdvanceWords(words).of(advance))
            .distinct()
            .toList();
    Optional<ModelPath> first = firstAdvance();
    if (first.isPresent()) {
      values.put(Fact.PROGRESSION_RULE, new Value(words.semicolons(steps), first.get()));
      values.put(Fact.PROGRESSION, new Value(words.say("methods.progression"), first.get()));
    }
    boolean tests = anyLevel(PlanFacts::isOwn);
    boolean own =
        plan.blocks().stream().anyMatch(block -> !block.only().isEmpty())
            || sessions.stream().anyMatch(session -> !session.only().isEmpty());
    if (tests || own) {
      say(Fact.TAILORED, "methods.tailored");
      say(
          Fact.TAILORING,
          own
              ? (tests ? "methods.tailoring-both" : "methods.tailoring-own")
              : "methods.tailoring-load");
    }
    if (tests) {
      say(Fact.STARTING_LEVEL, "methods.starting-level");
    }
  }

  private Optional<ModelPath> firstAdvance() {
    return plan.blocks().stream()
        .filter(block -> !block.content().advances().isEmpty())
        .map(block -> plan.path().then("block", block.name()).then("advance", 1))
        .findFirst();
  }

  private void dosed() {
    List<String> weekly = new ArrayList<>();
    for (Block block : plan.blocks()) {
      int times = block.content().sessions().stream().mapToInt(SessionPlan::perWeek).sum();
      weekly.add(
          words.say(
              "methods.frequency",
              "block",
              block.name(),
              "times",
              words.count("methods.sessions", times)));
    }
    String weeks = words.count("methods.weeks", plan.weeks());
    put(Fact.FREQUENCY, words.semicolons(weekly));
    put(Fact.PERIOD, weeks);
    say(Fact.DOSE, "methods.dose", "weeks", weeks, "frequency", words.semicolons(weekly));
    say(Fact.RECOVERY, "methods.recovery", "times", each(sessions, SessionPlan::gap));
  }

  private void held() {
    List<Scheme> schemes = exercises.stream().map(Exercise::scheme).toList();
    put(Fact.LEVELS, said(schemes.stream().flatMap(scheme -> scheme.levels().stream())));
    put(Fact.REPETITIONS, each(schemes, Scheme::repetitionsPerSet));
    put(Fact.SETS, each(schemes, Scheme::sets));
    rest(Fact.REST_BETWEEN_SETS, schemes.stream().map(Scheme::restBetweenSets));
    rest(Fact.REST_BETWEEN_HOLDS, schemes.stream().map(Scheme::restBetweenHolds));
    String holds = said(schemes.stream().flatMap(s -> s.written().stream()).map(Scheme.Hold::time));
    say(Fact.CONTRACTION, "methods.isometric", "times", holds);
    say(Fact.TIME_UNDER_TENSION, "methods.tension", "times", each(schemes, Scheme::timeUnderLoad));
    say(Fact.RANGE_OF_MOTION, "methods.no-motion");
    List<Level> byTime =
        schemes.stream().flatMap(s -> s.levels().stream()).filter(Level::byTime).toList();
    if (!byTime.isEmpty()) {
      put(Fact.FAILURE, said(byTime.stream()));
    }
    Stream<String> forms =
        exercises.stream()
            .map(
                e ->
                    words.say(
                        "methods.form",
                        "grip",
                        words.commas(e.target().grips().stream().map(Grip::name).toList()),
                        "hands",
                        words.hands(e)));
    put(Fact.FORM, words.semicolons(forms.distinct().toList()));
  }

  /** Puts rests; a scheme without any has none to state. */
  private void rest(Fact fact, Stream<Duration> rests) {
    List<Duration> stated = rests.filter(rest -> !rest.isZero()).toList();
    put(fact, stated.isEmpty() ? words.say("methods.no-rest") : said(stated.stream()));
  }

  private boolean anyLevel(Predicate<Level> wanted) {
    return exercises.stream().flatMap(e -> e.scheme().levels().stream()).anyMatch(wanted);
  }

  private <T> String each(List<T> of, Function<T, ?> value) {
    return said(of.stream().map(value));
  }

  /** Returns different values in words, in the order in which they appear. */
  private String said(Stream<?> of) {
    return words.commas(of.distinct().map(v -> words.say("methods.value", "value", v)).toList());
  }

  /** Returns whether the load of a level follows from the athlete's own tests. */
  private static boolean isOwn(Level level) {
    return level.accept(
        new Level.Visitor<>() {
          @Override
          public Boolean ofMax(Level.OfMax share) {
            return true;
          }

          @Override
          public Boolean ofTest(Level.OfTest share) {
            return true;
          }

          @Override
          public Boolean total(Level.Total load) {
            return false;
          }

          @Override
          public Boolean bodyMass(Level.BodyMass load) {
            return false;
          }

          @Override
          public Boolean reserve(Level.Reserve reserve) {
            return true;
          }

          @Override
          public Boolean effort(Level.Effort effort) {
            return true;
          }
        });
  }
}
