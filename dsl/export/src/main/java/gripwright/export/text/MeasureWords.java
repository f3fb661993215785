package gripwright.export.text;

import gripwright.change.SessionChange.ExerciseChanged;
import gripwright.change.SessionChange.Measure;
import gripwright.export.words.Words;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.PlannedExercise;
import java.util.Collections;
import java.util.List;

/** Describes what changed about an exercise, with the value before and now. */
final class MeasureWords {

  private final Words words;

  MeasureWords(Words words) {
    this.words = words;
  }

  /** Returns what changed in the exercises of a group. */
  String values(ChangeGroup group, ExerciseChanged one) {
    String was = value(one.before(), one.measure());
    String is = value(one.after(), one.measure());
    return switch (one.measure()) {
      case LOAD ->
          words.say(
              "diff.load", "after", range(group.loads(false)), "before", range(group.loads(true)));
      case PROTOCOL, GRIP, HANDS, BOUND, HARDNESS -> instead("diff.instead", is, was);
      case SETS -> instead("diff.sets", words.count("page.sets", one.after().scheme().sets()), was);
      case REPETITIONS ->
          words.count("diff.repetitions", one.after().scheme().repetitionsPerSet(), "before", was);
      case EDGE, HOLD, REST, SET_REST, ORDER ->
          instead(Words.key("diff.measure", one.measure()), is, was);
      case COURSE -> words.say("diff.course");
      case REHABILITATION ->
          is.isEmpty()
              ? words.say("diff.no-rehabilitation")
              : words.say("diff.rehabilitation", "after", is);
      case WARM_UP ->
          words.say(one.after().warmUp() ? "diff.as-warm-up" : "diff.no-longer-warm-up");
      case LEVEL -> levels(one);
    };
  }

  private String instead(String key, String after, String before) {
    return words.say(key, "after", after, "before", before);
  }

  /** Returns levels with as many decimals as are needed to see the difference. */
  private String levels(ExerciseChanged change) {
    String was = level(change.before(), 1);
    String is = level(change.after(), 1);
    boolean equal = is.equals(was);
    return instead(
        change.session().happened().isPresent() ? "diff.level-trained" : "diff.level",
        equal ? level(change.after(), 3) : is,
        equal ? level(change.before(), 3) : was);
  }

  private String level(PlannedExercise exercise, int decimals) {
    return exercise.percentOfMax().isPresent()
        ? Numbers.plain(exercise.percentOfMax().getAsDouble(), decimals) + " %"
        : words.and(exercise.scheme().levels().stream().map(level -> words.of(level)).toList());
  }

  private String range(List<Load> loads) {
    Load least = Collections.min(loads);
    Load most = Collections.max(loads);
    return least.toString().equals(most.toString()) ? least.toString() : words.range(least, most);
  }

  /** Returns one property of an exercise in words with its unit; empty if it has none. */
  private String value(PlannedExercise exercise, Measure measure) {
    Scheme scheme = exercise.scheme();
    return switch (measure) {
      case PROTOCOL -> exercise.protocol();
      case GRIP -> exercise.setup().grip().name();
      case EDGE -> exercise.setup().edge().toString();
      case HANDS -> words.hands(exercise.setup().hands(), exercise.setup().lifting());
      case SETS -> Integer.toString(scheme.sets());
      case REPETITIONS -> Integer.toString(scheme.repetitionsPerSet());
      case HOLD -> ExerciseTable.time(scheme.holds().get(0).time());
      case REST -> ExerciseTable.time(scheme.restBetweenHolds());
      case SET_REST -> ExerciseTable.time(scheme.restBetweenSets());
      case LOAD -> exercise.totalLoad().toString();
      case LEVEL -> level(exercise, 3);
      case REHABILITATION -> exercise.rehabilitation().orElse("");
      case ORDER -> Integer.toString(exercise.order());
      case HARDNESS -> words.say(exercise.hard() ? "diff.hard" : "diff.not-hard");
      case BOUND -> new WorkWords(words).of(scheme);
      case COURSE, WARM_UP -> "";
    };
  }
}
