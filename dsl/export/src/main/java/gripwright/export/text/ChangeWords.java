package gripwright.export.text;

import gripwright.change.PlanChange;
import gripwright.change.PlanChange.ExerciseChanged;
import gripwright.change.PlanChange.Measure;
import gripwright.export.words.Words;
import gripwright.finding.Message;
import gripwright.plan.Plan;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Says in a coach's words how a plan differs from another. */
final class ChangeWords {

  private final Words words;

  ChangeWords(Words words) {
    this.words = words;
  }

  /**
   * Returns a sentence for changes that are one.
   *
   * @param after the plan as it is now
   */
  String sentence(ChangeGroup group, CompiledPlan after) {
    PlanChange change = group.first();
    if (change instanceof ExerciseChanged c) {
      return at(
          where(group, after),
          words.say("diff.exercise-changed", "setup", setup(c), "change", values(group, c)));
    }
    if (change instanceof PlanChange.ExerciseAdded c) {
      return at(where(group, after), isNew(exercise(c.exercise())));
    }
    if (change instanceof PlanChange.ExerciseDropped c) {
      return at(where(group, after), fallsAway(exercise(c.exercise())));
    }
    if (change instanceof PlanChange.SessionTimed c) {
      return at(
          where(group, after),
          words.say("diff.minutes", "after", c.after().minutes(), "before", c.before().minutes()));
    }
    if (change instanceof PlanChange.SessionAdded c) {
      return at(days(group), isNew(c.session().name()));
    }
    if (change instanceof PlanChange.SessionDropped c) {
      return at(days(group), fallsAway(c.session().name()));
    }
    if (change instanceof PlanChange.SessionMoved c) {
      return moved(group, c);
    }
    if (change instanceof PlanChange.RetestChanged c) {
      return tests(group, c);
    }
    return ofPlan(change);
  }

  private String at(String where, String change) {
    return words.say("diff.where", "where", where, "change", change);
  }

  private String isNew(String what) {
    return words.say("diff.is-new", "what", what);
  }

  private String fallsAway(String what) {
    return words.say("diff.falls-away", "what", what);
  }

  /** Says what is about no one session. */
  private String ofPlan(PlanChange change) {
    if (change instanceof PlanChange.PlanMoved c) {
      return words.say(
          "diff.plan-moved",
          "after",
          words.dayAndYear(c.after()),
          "before",
          words.dayAndYear(c.before()),
          "shift",
          shift(ChronoUnit.DAYS.between(c.before(), c.after())));
    }
    if (change instanceof PlanChange.GoalChanged c) {
      return part(words.say("diff.part-goal"), c.before(), c.after());
    }
    if (change instanceof PlanChange.PartChanged c) {
      return part(words.of("diff.part", c.part()), c.before(), c.after());
    }
    if (change instanceof PlanChange.GripStarts c) {
      return words.say(
          "diff.grip-starts",
          "grip",
          c.grip().name(),
          "shift",
          shift(ChronoUnit.DAYS.between(c.before(), c.after())),
          "after",
          words.day(c.after()),
          "before",
          words.day(c.before()));
    }
    if (change instanceof PlanChange.WaiverAdded c) {
      return words.say(
          "diff.waiver-new", "waiver", waiver(c.waiver()), "reason", c.waiver().because());
    }
    if (change instanceof PlanChange.WaiverDropped c) {
      return words.say(
          "diff.waiver-gone", "waiver", waiver(c.waiver()), "reason", c.waiver().because());
    }
    return ofBlock(change);
  }

  /** Says what is about a block or a week. */
  private String ofBlock(PlanChange change) {
    String date = words.day(change.date());
    if (change instanceof PlanChange.BlockAdded c) {
      String weeks = words.count("page.weeks", c.weeks());
      return words.say("diff.block-new", "block", c.block(), "weeks", weeks, "date", date);
    }
    if (change instanceof PlanChange.BlockDropped c) {
      String weeks = words.count("page.weeks", c.weeks());
      return words.say("diff.block-gone", "block", c.block(), "weeks", weeks, "date", date);
    }
    if (change instanceof PlanChange.BlockMoved c) {
      return words.say(
          "diff.block-moved", "block", c.block(), "date", date, "shift", shift(c.days()));
    }
    if (change instanceof PlanChange.BlockResized c) {
      String weeks = words.count("page.weeks", c.after());
      return words.say(
          "diff.block-resized", "block", c.block(), "weeks", weeks, "before", c.before());
    }
    if (change instanceof PlanChange.BlockRewritten c) {
      return words.say("diff.block-rewritten", "block", c.block());
    }
    if (change instanceof PlanChange.WeekEased c) {
      return words.say(
          c.week().eased() ? "diff.week-eased" : "diff.week-not-eased",
          "week",
          c.week().number(),
          "date",
          words.day(c.week().from()));
    }
    return words.say("diff.other-plan", "date", date);
  }

  /** Says by how much something is earlier or later, as in {@code 2 weeks later}. */
  private String shift(long days) {
    long size = Math.abs(days);
    boolean later = days > 0;
    return size % 7 == 0
        ? words.count(later ? "diff.weeks-later" : "diff.weeks-earlier", size / 7)
        : words.count(later ? "diff.days-later" : "diff.days-earlier", size);
  }

  private String part(String part, Optional<Message> before, Optional<Message> after) {
    String key =
        before.isEmpty()
            ? "diff.part-new"
            : after.isEmpty() ? "diff.part-gone" : "diff.part-changed";
    return words.say(
        key,
        "part",
        part,
        "before",
        before.map(words::of).orElse(""),
        "after",
        after.map(words::of).orElse(""));
  }

  private String waiver(Plan.Waiver waiver) {
    List<String> place = new ArrayList<>();
    waiver.block().ifPresent(block -> place.add(words.say("diff.waiver-block", "block", block)));
    waiver.week().ifPresent(week -> place.add(words.say("diff.waiver-week", "week", week)));
    waiver.session().ifPresent(session -> place.add(session));
    waiver
        .exercise()
        .ifPresent(exercise -> place.add(words.say("diff.waiver-exercise", "exercise", exercise)));
    return place.isEmpty()
        ? waiver.rule()
        : words.say("diff.waiver-in", "rule", waiver.rule(), "place", String.join(" ", place));
  }

  /**
   * Says on which days and in which session, as in {@code every fingers session from week 2 on}.
   */
  private String where(ChangeGroup group, CompiledPlan after) {
    DatedSession first = PlanChange.session(group.first()).orElseThrow();
    DatedSession last = PlanChange.session(group.last()).orElseThrow();
    List<DatedSession> alike =
        after.sessions().stream().filter(s -> s.name().equals(first.name())).toList();
    long between =
        alike.stream().filter(s -> s.week() >= first.week() && s.week() <= last.week()).count();
    if (group.changes().size() == 1 || between != group.changes().size()) {
      return words.say("diff.on-session", "days", days(group), "session", first.name());
    }
    int end = alike.get(alike.size() - 1).week();
    boolean oneWeek = first.week() == last.week();
    String key;
    if (last.week() == end && alike.get(0).week() == first.week()) {
      key = "diff.every-session";
    } else if (oneWeek) {
      key = "diff.every-session-of-week";
    } else {
      key = last.week() == end ? "diff.every-session-from" : "diff.every-session-of-weeks";
    }
    return words.say(key, "session", first.name(), "from", first.week(), "to", last.week());
  }

  /** Says on which days, as in {@code week 3 Tue 26 Jan}. */
  private String days(ChangeGroup group) {
    DatedSession first = PlanChange.session(group.first()).orElseThrow();
    DatedSession last = PlanChange.session(group.last()).orElseThrow();
    int number = group.changes().size();
    if (number == 1) {
      return words.say("diff.on-day", "week", first.week(), "date", words.day(first.date()));
    }
    String key =
        first.week() == last.week()
            ? number == 2 ? "diff.on-two-days-of-week" : "diff.on-days-of-week"
            : number == 2 ? "diff.on-two-days" : "diff.on-days";
    return words.say(
        key,
        "week",
        first.week(),
        "from",
        first.week(),
        "to",
        last.week(),
        "first",
        words.day(first.date()),
        "last",
        words.day(last.date()),
        "sessions",
        words.count("diff.sessions", number));
  }

  private String moved(ChangeGroup group, PlanChange.SessionMoved one) {
    LocalDate after = one.after().date();
    LocalDate before = one.before().date();
    return group.changes().size() == 1
        ? words.say(
            "diff.session-moved",
            "session",
            one.after().name(),
            "after",
            words.day(after),
            "before",
            words.day(before))
        : words.say(
            "diff.sessions-moved",
            "session",
            one.after().name(),
            "days",
            days(group),
            "after",
            words.weekday(after),
            "before",
            words.weekday(before));
  }

  private String tests(ChangeGroup group, PlanChange.RetestChanged one) {
    String days = words.commas(group.changes().stream().map(c -> words.day(c.date())).toList());
    boolean several = group.changes().size() > 1;
    if (one.after().isEmpty()) {
      return words.say(several ? "diff.tests-gone" : "diff.test-gone", "days", days);
    }
    String is = test(one.after());
    if (one.before().isEmpty()) {
      return words.say(several ? "diff.tests-new" : "diff.test-new", "days", days, "after", is);
    }
    LocalDate day = one.before().get(0).date();
    String was = test(one.before());
    boolean same = was.equals(is);
    String key =
        day.equals(one.date())
            ? same ? "diff.test-same" : "diff.test-changed"
            : same ? "diff.test-moved" : "diff.test-moved-changed";
    return words.say(key, "days", days, "day", words.day(day), "after", is, "before", was);
  }

  private String test(List<DatedRetest> tests) {
    return words.semicolons(
        tests.stream()
            .map(
                t ->
                    words.say(
                        "diff.test",
                        "setups",
                        words.commas(t.setups().stream().map(words::setup).toList()),
                        "time",
                        ExerciseTable.time(t.hold())))
            .toList());
  }

  private String exercise(PlannedExercise exercise) {
    return words.say("diff.exercise", "protocol", exercise.protocol(), "setup", setup(exercise));
  }

  private String setup(ExerciseChanged change) {
    return setup(change.after());
  }

  private String setup(PlannedExercise exercise) {
    return words.setup(exercise.setup());
  }

  private String values(ChangeGroup group, ExerciseChanged one) {
    String was = value(one.before(), one.measure());
    String is = value(one.after(), one.measure());
    return switch (one.measure()) {
      case LOAD ->
          words.say(
              "diff.load", "after", range(group.loads(false)), "before", range(group.loads(true)));
      case PROTOCOL, GRIP, HANDS, HARDNESS -> instead("diff.instead", is, was);
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
      case LEVEL -> levels(one);
    };
  }

  private String instead(String key, String after, String before) {
    return words.say(key, "after", after, "before", before);
  }

  /** Writes levels with as many decimals as tell them apart. */
  private String levels(ExerciseChanged change) {
    String was = level(change.before(), 1);
    String is = level(change.after(), 1);
    boolean alike = is.equals(was);
    return instead(
        change.session().happened().isPresent() ? "diff.level-trained" : "diff.level",
        alike ? level(change.after(), 3) : is,
        alike ? level(change.before(), 3) : was);
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

  /** Returns one thing about an exercise in words with its unit; empty if it has none. */
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
      case COURSE -> "";
    };
  }
}
