package gripwright.export.text;

import gripwright.change.BlockChange;
import gripwright.change.PlanChange;
import gripwright.change.SessionChange;
import gripwright.change.SessionChange.ExerciseChanged;
import gripwright.export.words.Words;
import gripwright.finding.Message;
import gripwright.plan.Plan;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Describes in a coach's words how a plan differs from another. */
final class ChangeWords {

  private final Words words;
  private final MeasureWords measures;

  ChangeWords(Words words) {
    this.words = words;
    measures = new MeasureWords(words);
  }

  /**
   * Returns a sentence for a group of changes.
   *
   * @param after the plan as it is now
   */
  String sentence(ChangeGroup group, CompiledPlan after) {
    return group.first().accept(new OfPlan(group, after));
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

  /** Describes changes of the plan as a whole. */
  private final class OfPlan implements PlanChange.Visitor<String> {
    private final ChangeGroup group;
    private final CompiledPlan after;

    OfPlan(ChangeGroup group, CompiledPlan after) {
      this.group = group;
      this.after = after;
    }

    @Override
    public String planMoved(PlanChange.PlanMoved c) {
      return words.say(
          "diff.plan-moved",
          "after",
          words.dayAndYear(c.after()),
          "before",
          words.dayAndYear(c.before()),
          "shift",
          shift(ChronoUnit.DAYS.between(c.before(), c.after())));
    }

    @Override
    public String goalChanged(PlanChange.GoalChanged c) {
      return part(words.say("diff.part-goal"), c.before(), c.after());
    }

    @Override
    public String gripStarts(PlanChange.GripStarts c) {
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

    @Override
    public String retestChanged(PlanChange.RetestChanged c) {
      return tests(group, c);
    }

    @Override
    public String waiverAdded(PlanChange.WaiverAdded c) {
      return words.say(
          "diff.waiver-new", "waiver", waiver(c.waiver()), "reason", c.waiver().because());
    }

    @Override
    public String waiverDropped(PlanChange.WaiverDropped c) {
      return words.say(
          "diff.waiver-gone", "waiver", waiver(c.waiver()), "reason", c.waiver().because());
    }

    @Override
    public String partChanged(PlanChange.PartChanged c) {
      return part(words.of("diff.part", c.part()), c.before(), c.after());
    }

    @Override
    public String block(BlockChange change) {
      return change.accept(new OfBlock());
    }

    @Override
    public String session(SessionChange change) {
      return change.accept(new OfSession(group, after));
    }
  }

  /** Describes changes of a block or a week. */
  private final class OfBlock implements BlockChange.Visitor<String> {
    @Override
    public String blockAdded(BlockChange.BlockAdded c) {
      String weeks = words.count("page.weeks", c.weeks());
      return words.say(
          "diff.block-new", "block", c.block(), "weeks", weeks, "date", words.day(c.date()));
    }

    @Override
    public String blockDropped(BlockChange.BlockDropped c) {
      String weeks = words.count("page.weeks", c.weeks());
      return words.say(
          "diff.block-gone", "block", c.block(), "weeks", weeks, "date", words.day(c.date()));
    }

    @Override
    public String blockMoved(BlockChange.BlockMoved c) {
      return words.say(
          "diff.block-moved",
          "block",
          c.block(),
          "date",
          words.day(c.date()),
          "shift",
          shift(c.days()));
    }

    @Override
    public String blockResized(BlockChange.BlockResized c) {
      String weeks = words.count("page.weeks", c.after());
      return words.say(
          "diff.block-resized", "block", c.block(), "weeks", weeks, "before", c.before());
    }

    @Override
    public String blockRewritten(BlockChange.BlockRewritten c) {
      return words.say("diff.block-rewritten", "block", c.block());
    }

    @Override
    public String weekEased(BlockChange.WeekEased c) {
      return words.say(
          c.week().eased() ? "diff.week-eased" : "diff.week-not-eased",
          "week",
          c.week().number(),
          "date",
          words.day(c.week().from()));
    }
  }

  /** Describes changes of sessions. */
  private final class OfSession implements SessionChange.Visitor<String> {
    private final ChangeGroup group;
    private final CompiledPlan after;

    OfSession(ChangeGroup group, CompiledPlan after) {
      this.group = group;
      this.after = after;
    }

    @Override
    public String sessionAdded(SessionChange.SessionAdded c) {
      return at(days(group), isNew(c.session().name()));
    }

    @Override
    public String sessionDropped(SessionChange.SessionDropped c) {
      return at(days(group), fallsAway(c.session().name()));
    }

    @Override
    public String sessionMoved(SessionChange.SessionMoved c) {
      return moved(group, c);
    }

    @Override
    public String sessionTimed(SessionChange.SessionTimed c) {
      return at(
          where(group, after),
          words.say("diff.minutes", "after", c.after().minutes(), "before", c.before().minutes()));
    }

    @Override
    public String exerciseAdded(SessionChange.ExerciseAdded c) {
      return at(where(group, after), isNew(exercise(c.exercise())));
    }

    @Override
    public String exerciseDropped(SessionChange.ExerciseDropped c) {
      return at(where(group, after), fallsAway(exercise(c.exercise())));
    }

    @Override
    public String exerciseChanged(ExerciseChanged c) {
      return at(
          where(group, after),
          words.say(
              "diff.exercise-changed", "setup", setup(c), "change", measures.values(group, c)));
    }
  }

  /** Returns how much earlier or later something is, as in {@code 2 weeks later}. */
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

  /** Returns the days and the session, as in {@code every fingers session from week 2 on}. */
  private String where(ChangeGroup group, CompiledPlan after) {
    DatedSession first = PlanChange.session(group.first()).orElseThrow();
    DatedSession last = PlanChange.session(group.last()).orElseThrow();
    List<DatedSession> similar =
        after.sessions().stream().filter(s -> s.name().equals(first.name())).toList();
    long between =
        similar.stream().filter(s -> s.week() >= first.week() && s.week() <= last.week()).count();
    if (group.changes().size() == 1 || between != group.changes().size()) {
      return words.say("diff.on-session", "days", days(group), "session", first.name());
    }
    int end = similar.get(similar.size() - 1).week();
    boolean oneWeek = first.week() == last.week();
    String key;
    if (last.week() == end && similar.get(0).week() == first.week()) {
      key = "diff.every-session";
    } else if (oneWeek) {
      key = "diff.every-session-of-week";
    } else {
      key = last.week() == end ? "diff.every-session-from" : "diff.every-session-of-weeks";
    }
    return words.say(key, "session", first.name(), "from", first.week(), "to", last.week());
  }

  /** Returns the days, as in {@code week 3 Tue 26 Jan}. */
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

  private String moved(ChangeGroup group, SessionChange.SessionMoved one) {
    DatedSession after = one.after();
    DatedSession before = one.before();
    return group.changes().size() == 1
        ? words.say(
            "diff.session-moved",
            "session",
            one.after().name(),
            "after",
            moment(words.day(after.date()), after),
            "before",
            moment(words.day(before.date()), before))
        : words.say(
            "diff.sessions-moved",
            "session",
            one.after().name(),
            "days",
            days(group),
            "after",
            moment(words.weekday(after.date()), after),
            "before",
            moment(words.weekday(before.date()), before));
  }

  private String moment(String day, DatedSession session) {
    String timed =
        session
            .time()
            .map(time -> words.say("diff.at", "day", day, "time", time.toString()))
            .orElse(day);
    return session
        .place()
        .map(place -> words.say("diff.at-place", "what", timed, "place", place))
        .orElse(timed);
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
    return words.semicolons(tests.stream().map(this::test).toList());
  }

  private String test(DatedRetest test) {
    String setups = words.commas(test.setups().stream().map(words::setup).toList());
    String what =
        test.isPlain()
            ? words.say("diff.test", "setups", setups, "time", ExerciseTable.time(test.hold()))
            : words.say(
                "diff.test-other", "setups", setups, "what", new TestWords(words).what(test));
    if (test.warmUp().minutes().isPresent()) {
      String time = TestWords.minutes(test.warmUp());
      what = words.say("diff.test-warm-up", "test", what, "time", time);
    }
    return test.exercises().isEmpty()
        ? what
        : words.say("diff.test-exercises", "test", what, "exercises", warmUps(test));
  }

  private String warmUps(DatedRetest test) {
    return words.commas(
        test.exercises().stream()
            .map(
                exercise ->
                    words.say(
                        "diff.test-exercise",
                        "protocol",
                        exercise.protocol(),
                        "setup",
                        setup(exercise),
                        "load",
                        exercise.totalLoad()))
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
}
