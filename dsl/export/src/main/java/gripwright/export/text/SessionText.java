package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.Caution;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Describes one session or one day's tests for the athlete who trains it, in lines without columns,
 * as for a calendar or a message.
 *
 * <p>It contains what the coach wrote about the session and its exercises, and the cautions. Notes
 * of the plan, its blocks, protocols and grips, and what the athlete wrote in the log, are not in
 * it, since others may read a calendar. Stateless and thread-safe.
 *
 * @since 1.0
 */
public final class SessionText {

  private static final String ITEM = "- ";
  private static final String DETAIL = "  ";
  private static final String CAUTION = "* ";

  private final CompiledPlan compiled;
  private final Words words;
  private final List<String> lines = new ArrayList<>();

  private SessionText(CompiledPlan compiled, Wording wording) {
    this.compiled = compiled;
    words = new Words(wording);
  }

  /**
   * Returns a session's name, its minutes and whether it is hard; of a past session also how it was
   * done. One line without a line break.
   */
  public static String heading(DatedSession session, Wording wording) {
    return clean(new LogNotes(new Words(wording)).head(session));
  }

  /** Returns what is done in a test. One line without a line break. */
  public static String heading(DatedRetest test, Wording wording) {
    Words words = new Words(wording);
    return clean(words.say("calendar.test", "what", new TestWords(words).what(test)));
  }

  /**
   * Returns who supervises a session, its warm-up and notes, every exercise with its load as what
   * to put on or take off, and the cautions of the day.
   *
   * @param compiled the plan of the session
   * @param session a session of the plan, past or future
   * @param wording words of the text
   * @return lines separated by {@code \n}, without one at the end
   */
  public static String of(CompiledPlan compiled, DatedSession session, Wording wording) {
    SessionText text = new SessionText(compiled, wording);
    text.session(session);
    return text.withCautions(session.date());
  }

  /**
   * Returns the grips and edges of a test, the coach's notes, who supervises the plan, and the
   * cautions of the day.
   *
   * @param compiled the plan of the test
   * @param test a test of the plan, past or future
   * @param wording words of the text
   * @return lines separated by {@code \n}, without one at the end
   */
  public static String of(CompiledPlan compiled, DatedRetest test, Wording wording) {
    SessionText text = new SessionText(compiled, wording);
    text.test(test);
    return text.withCautions(test.date());
  }

  private void session(DatedSession session) {
    supervised(compiled.supervisorOf(session));
    session.warmUpText().ifPresent(text -> add(words.say("season.warm-up-text", "text", text)));
    session.notes().forEach(note -> add(words.say("season.note", "note", note)));
    session.exercises().forEach(this::exercise);
  }

  private void test(DatedRetest test) {
    supervised(compiled.plan().supervisedBy());
    if (!test.insteadOf().isEmpty()) {
      add(words.say("calendar.test-instead", "session", test.insteadOf()));
    }
    test.notes().forEach(note -> add(words.say("season.note", "note", note)));
    test.setups().forEach(setup -> add(ITEM + words.setup(setup)));
  }

  private void supervised(Optional<String> supervisor) {
    supervisor.ifPresent(who -> add(words.say("season.supervised", "by", who)));
  }

  private void exercise(PlannedExercise exercise) {
    Scheme scheme = exercise.scheme();
    List<String> facts = new ArrayList<>();
    facts.add(new WorkWords(words).of(scheme));
    rest("calendar.rest-holds", scheme.restBetweenHolds()).ifPresent(facts::add);
    rest("calendar.rest-sets", scheme.restBetweenSets()).ifPresent(facts::add);
    facts.add(load(exercise));
    add(
        ITEM
            + words.say(
                "calendar.exercise",
                "protocol",
                exercise.protocol(),
                "setup",
                words.setup(exercise.setup()),
                "facts",
                words.commas(facts)));
    exercise
        .rehabilitation()
        .ifPresent(plan -> detail(words.say("season.rehabilitation", "plan", plan)));
    if (exercise.warmUp()) {
      detail(words.say("season.warm-up"));
    }
    for (Scheme.Rest rest : scheme.restsWithText()) {
      detail(
          words.say(
              "season.rest",
              "time",
              ExerciseTable.time(rest.time()),
              "text",
              rest.text().orElse("")));
    }
    exercise.note().ifPresent(note -> detail(words.say("season.note", "note", note)));
  }

  private Optional<String> rest(String key, Duration time) {
    return time.isZero()
        ? Optional.empty()
        : Optional.of(words.say(key, "time", ExerciseTable.time(time)));
  }

  /**
   * Returns what to put on or take off; from the least to the greatest if holds differ. The total
   * load is left out: it would show the athlete's body mass.
   */
  private String load(PlannedExercise exercise) {
    List<Load> loads =
        exercise.steps().stream()
            .filter(LoadedStep::isHold)
            .flatMap(step -> step.load().stream())
            .distinct()
            .sorted()
            .toList();
    String greatest = change(exercise, exercise.totalLoad());
    if (loads.size() < 2) {
      return greatest;
    }
    return words.say(
        "calendar.load-range", "low", change(exercise, loads.get(0)), "high", greatest);
  }

  private String change(PlannedExercise exercise, Load total) {
    if (exercise.setup().lifting()) {
      return words.say("calendar.lift", "load", total);
    }
    Load added = total.minus(exercise.bodyMass());
    if (added.kilograms() == 0) {
      return words.say("calendar.body-mass");
    }
    return added.kilograms() > 0
        ? words.say("calendar.put-on", "load", added)
        : words.say("calendar.take-off", "load", exercise.bodyMass().minus(total));
  }

  private String withCautions(LocalDate day) {
    for (Caution caution : compiled.on(day).cautions()) {
      add(CAUTION + words.of(caution));
    }
    return String.join("\n", lines);
  }

  private void detail(String what) {
    add(DETAIL + what);
  }

  private void add(String line) {
    lines.add(clean(line));
  }

  private static String clean(String line) {
    return Page.clean(line.replace("\r\n", "\n").replace('\r', '\n')).stripTrailing();
  }
}
