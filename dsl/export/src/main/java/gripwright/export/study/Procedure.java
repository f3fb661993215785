package gripwright.export.study;

import gripwright.export.words.Words;
import gripwright.grip.Grip;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.plan.TestCount;
import gripwright.plan.TestKind;
import gripwright.plan.TestTime;
import gripwright.protocol.Scheme;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What is done in a plan, in sentences, as Markdown. Used for one plan. */
final class Procedure {

  private final Plan plan;
  private final Words words;
  private final Pseudonyms names;
  private final List<String> paragraphs = new ArrayList<>();

  Procedure(Plan plan, Words words, Pseudonyms names) {
    this.plan = plan;
    this.words = words;
    this.names = names;
    whole();
    plan.blocks().forEach(this::block);
    plan.retests().forEach(this::retest);
    plan.waivers().forEach(this::waiver);
  }

  /** Returns the paragraphs and lists. */
  List<String> paragraphs() {
    return paragraphs;
  }

  private String say(String key, Object... facts) {
    return Methods.flat(words.say(key, facts));
  }

  private void whole() {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        say(
            "methods.plan",
            "plan",
            plan.name(),
            "from",
            words.dayAndYear(plan.from()),
            "weeks",
            words.count("methods.weeks", plan.weeks()),
            "athletes",
            words.count("methods.athletes", plan.athletes().size())));
    sentences.add(say("methods.around", "warm-up", plan.warmUp(), "rest", plan.restBetween()));
    plan.taper()
        .ifPresent(
            taper ->
                sentences.add(
                    say(
                        "methods.taper",
                        "weeks",
                        words.count("methods.weeks", taper.weeks()),
                        "percent",
                        taper.setsFraction() * 100)));
    paragraphs.add(String.join(" ", sentences));
  }

  private void block(Block block) {
    paragraphs.add(
        say(
            "methods.block",
            "block",
            block.name(),
            "weeks",
            words.count("methods.weeks", block.weeks())));
    sessions(
        block.content(),
        session -> {
          session
              .only()
              .forEach(
                  (athlete, own) -> {
                    if (!block.only().containsKey(athlete)) {
                      paragraphs.add(say("methods.only", "athlete", names.of(athlete)));
                      paragraphs.add(exercises(own));
                    }
                  });
          return session.content();
        });
    changes(block.content());
    block
        .only()
        .forEach(
            (athlete, own) -> {
              paragraphs.add(say("methods.only", "athlete", names.of(athlete)));
              sessions(own, session -> session.only().getOrDefault(athlete, session.content()));
              changes(own);
            });
  }

  /**
   * Adds the sessions of a block.
   *
   * @param exercises the exercises of a session
   */
  private void sessions(
      Block.Content content, Function<SessionPlan, SessionPlan.Content> exercises) {
    for (SessionPlan session : content.sessions()) {
      paragraphs.add(
          say(
              "methods.session",
              "session",
              session.name(),
              "times",
              words.count("methods.times", session.perWeek()),
              "gap",
              session.gap()));
      int list = paragraphs.size();
      String own = exercises(exercises.apply(session)); // which may add those of single athletes
      paragraphs.add(list, own);
    }
  }

  /** Adds what changes from week to week. */
  private void changes(Block.Content content) {
    List<String> sentences = new ArrayList<>();
    for (Advance advance : content.advances()) {
      sentences.add(say("methods.advances", "steps", new AdvanceWords(words).of(advance)));
    }
    for (Block.Ease ease : content.eases()) {
      sentences.add(
          say("methods.eases", "week", ease.week(), "percent", ease.setsFraction() * 100));
    }
    for (Block.Introduction slow : content.introductions()) {
      sentences.add(
          say(
              "methods.introduces",
              "grip",
              slow.grip().name(),
              "percent",
              slow.fromFraction() * 100,
              "weeks",
              words.count("methods.weeks", slow.weeks())));
    }
    if (!sentences.isEmpty()) {
      paragraphs.add(String.join(" ", sentences));
    }
  }

  /** Returns a numbered list of exercises. */
  private String exercises(SessionPlan.Content content) {
    List<String> lines = new ArrayList<>();
    for (Exercise exercise : content.exercises()) {
      lines.add((lines.size() + 1) + ". " + Methods.flat(exercise(exercise)));
    }
    return String.join("\n", lines);
  }

  private String exercise(Exercise exercise) {
    List<String> grips = exercise.target().grips().stream().map(Grip::name).toList();
    Scheme scheme = exercise.scheme();
    List<String> facts = new ArrayList<>();
    facts.add(words.count("methods.sets", scheme.sets()));
    facts.add(words.count("methods.holds", scheme.repetitionsPerSet()));
    facts.add(
        scheme.holdTime().isPresent()
            ? words.say("methods.hold-time", "time", scheme.holdTime().get())
            : words.say("methods.hold-times", "times", times(scheme)));
    rest("methods.rest-holds", scheme.restBetweenHolds()).ifPresent(facts::add);
    rest("methods.rest-sets", scheme.restBetweenSets()).ifPresent(facts::add);
    facts.add(words.say("methods.at-level", "levels", scheme.levels()));
    exercise
        .rehabilitation()
        .ifPresent(
            who ->
                facts.add(
                    names.hiding()
                        ? words.say("methods.rehabilitation")
                        : words.say("methods.rehabilitation-of", "who", who)));
    return words.say(
        grips.size() == 1 ? "methods.exercise" : "methods.exercise-best",
        "protocol",
        exercise.protocol().name(),
        "grip",
        words.commas(grips),
        "edge",
        exercise.edge(),
        "hands",
        words.hands(exercise),
        "facts",
        words.commas(facts));
  }

  private static List<Duration> times(Scheme scheme) {
    return scheme.written().stream().map(Scheme.Hold::time).distinct().toList();
  }

  private Optional<String> rest(String key, Duration rest) {
    return rest.isZero() ? Optional.empty() : Optional.of(words.say(key, "rest", rest));
  }

  private void retest(PlannedTest test) {
    List<String> facts = new ArrayList<>();
    facts.add(test.kind().accept(new TestKindWords()));
    if (test.attempts() > 1) {
      facts.add(
          words.say("methods.test-attempts", "count", test.attempts(), "rest", test.resting()));
    }
    test.counts()
        .ifPresent(
            counts ->
                facts.add(
                    words.say(
                        counts == TestCount.BEST ? "methods.test-best" : "methods.test-mean")));
    facts.add(words.say("methods.test-rested", "time", test.rested()));
    test.warmUp().ifPresent(time -> facts.add(words.say("methods.test-warm-up", "time", time)));
    if (!test.exercises().isEmpty()) {
      facts.add(
          words.say(
              "methods.test-exercises",
              "exercises",
              words.semicolons(test.exercises().stream().map(this::exercise).toList())));
    }
    paragraphs.add(
        say(
            "methods.retest",
            "setups",
            words.commas(test.setups().stream().map(words::setup).toList()),
            "facts",
            words.commas(facts),
            "times",
            words.commas(
                test.times().stream().map(time -> time.accept(new TestTimeWords())).toList())));
  }

  /** What is done in a test, in words. */
  private final class TestKindWords implements TestKind.Visitor<String> {
    @Override
    public String hold(TestKind.Hold kind) {
      return words.say("methods.test-hold", "time", kind.time());
    }

    @Override
    public String toFailure(TestKind.ToFailure kind) {
      return words.say("methods.test-failure", "level", words.of(kind.level()));
    }

    @Override
    public String series(TestKind.Series kind) {
      return words.say(
          "methods.test-series", "count", kind.holds(), "time", kind.work(), "rest", kind.rest());
    }
  }

  /** When a test is due, in words. */
  private final class TestTimeWords implements TestTime.Visitor<String> {
    @Override
    public String every(TestTime.Every time) {
      return words.count("methods.pace-weeks", time.weeks());
    }

    @Override
    public String inWeek(TestTime.InWeek time) {
      return words.say("methods.test-week", "week", time.week());
    }

    @Override
    public String before(TestTime.Before time) {
      return words.say("methods.test-before");
    }

    @Override
    public String after(TestTime.After time) {
      return words.say("methods.test-after");
    }

    @Override
    public String later(TestTime.Later time) {
      return words.say("methods.test-later", "weeks", words.count("methods.weeks", time.weeks()));
    }
  }

  private void waiver(Plan.Waiver waiver) {
    paragraphs.add(say("methods.waiver", "rule", waiver.rule(), "reason", waiver.because()));
  }
}
