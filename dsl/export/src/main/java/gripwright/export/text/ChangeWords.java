package gripwright.export.text;

import gripwright.change.PlanChange;
import gripwright.change.PlanChange.ExerciseChanged;
import gripwright.change.PlanChange.Measure;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.plan.Plan;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Says in a coach's words how a plan differs from another. */
final class ChangeWords {

  private ChangeWords() {}

  /**
   * Returns a sentence for changes that are one.
   *
   * @param after the plan as it is now
   */
  static String sentence(ChangeGroup group, CompiledPlan after) {
    PlanChange change = group.first();
    if (change instanceof ExerciseChanged c) {
      return where(group, after) + ": " + setup(c) + ", " + values(group, c);
    }
    if (change instanceof PlanChange.ExerciseAdded c) {
      return where(group, after) + ": " + exercise(c.exercise()) + " is new";
    }
    if (change instanceof PlanChange.ExerciseDropped c) {
      return where(group, after) + ": " + exercise(c.exercise()) + " falls away";
    }
    if (change instanceof PlanChange.SessionTimed c) {
      return where(group, after)
          + ": "
          + c.after().minutes()
          + " min instead of "
          + c.before().minutes()
          + " min";
    }
    if (change instanceof PlanChange.SessionAdded c) {
      return days(group) + ": " + c.session().name() + " is new";
    }
    if (change instanceof PlanChange.SessionDropped c) {
      return days(group) + ": " + c.session().name() + " falls away";
    }
    if (change instanceof PlanChange.SessionMoved c) {
      return moved(group, c);
    }
    if (change instanceof PlanChange.RetestChanged c) {
      return tests(group, c);
    }
    return ofPlan(change);
  }

  /** Says what is about no one session. */
  private static String ofPlan(PlanChange change) {
    if (change instanceof PlanChange.PlanMoved c) {
      return "the plan begins on "
          + Page.dayAndYear(c.after())
          + " instead of "
          + Page.dayAndYear(c.before())
          + shift(ChronoUnit.DAYS.between(c.before(), c.after()));
    }
    if (change instanceof PlanChange.GoalChanged c) {
      return instead("goal", c.before(), c.after());
    }
    if (change instanceof PlanChange.PartChanged c) {
      return instead(part(c.part()), c.before(), c.after());
    }
    if (change instanceof PlanChange.BlockAdded c) {
      return "block "
          + c.block()
          + " is new, "
          + Page.count(c.weeks(), "week")
          + " from "
          + Page.day(c.date());
    }
    if (change instanceof PlanChange.BlockDropped c) {
      return "block "
          + c.block()
          + " falls away, "
          + Page.count(c.weeks(), "week")
          + " from "
          + Page.day(c.date());
    }
    if (change instanceof PlanChange.BlockMoved c) {
      return "block " + c.block() + " begins on " + Page.day(c.date()) + shift(c.days());
    }
    if (change instanceof PlanChange.BlockResized c) {
      return "block "
          + c.block()
          + " has "
          + Page.count(c.after(), "week")
          + " instead of "
          + c.before();
    }
    if (change instanceof PlanChange.BlockRewritten c) {
      return "block " + c.block() + " is written otherwise and gives the same sessions";
    }
    if (change instanceof PlanChange.WeekEased c) {
      return "week "
          + c.week().number()
          + ", from "
          + Page.day(c.week().from())
          + ", is "
          + (c.week().eased() ? "eased" : "no longer eased");
    }
    if (change instanceof PlanChange.GripStarts c) {
      return c.grip().name()
          + " is introduced"
          + shift(ChronoUnit.DAYS.between(c.before(), c.after())).replaceFirst(",", "")
          + ", on "
          + Page.day(c.after())
          + " instead of "
          + Page.day(c.before());
    }
    if (change instanceof PlanChange.WaiverAdded c) {
      return waiver(c.waiver()) + " is waived, because: " + c.waiver().because();
    }
    if (change instanceof PlanChange.WaiverDropped c) {
      return "the waiver of " + waiver(c.waiver()) + " is gone; it said: " + c.waiver().because();
    }
    return "another plan from " + Page.day(change.date());
  }

  /** Says by how much something is earlier or later, as in {@code , 2 weeks later}. */
  private static String shift(long days) {
    if (days == 0) {
      return "";
    }
    long size = Math.abs(days);
    return ", "
        + (size % 7 == 0
            ? (size == 7 ? "a week" : size / 7 + " weeks")
            : (size == 1 ? "a day" : size + " days"))
        + (days > 0 ? " later" : " earlier");
  }

  private static String instead(String what, String before, String after) {
    return before.isEmpty()
        ? "new: " + what + " " + after
        : after.isEmpty()
            ? "no longer: " + what + " " + before
            : what + " " + after + " instead of " + before;
  }

  private static String part(PlanChange.Part part) {
    return switch (part) {
      case TITLE -> "title";
      case DEMAND -> "climbing ahead";
      case RULES -> "rules";
      case WEEKLY_RISE -> "weekly rise at most";
      case WEIGHTS -> "grips chosen by";
    };
  }

  private static String waiver(Plan.Waiver waiver) {
    List<String> place = new ArrayList<>();
    waiver.block().ifPresent(block -> place.add("block " + block));
    waiver.week().ifPresent(week -> place.add("week " + week));
    waiver.session().ifPresent(session -> place.add(session));
    waiver.exercise().ifPresent(exercise -> place.add("exercise " + exercise));
    return waiver.rule() + (place.isEmpty() ? "" : " in " + String.join(" ", place));
  }

  /**
   * Says on which days and in which session, as in {@code every fingers session from week 2 on}.
   */
  private static String where(ChangeGroup group, CompiledPlan after) {
    DatedSession first = PlanChange.session(group.first()).orElseThrow();
    DatedSession last = PlanChange.session(group.last()).orElseThrow();
    List<DatedSession> alike =
        after.sessions().stream().filter(s -> s.name().equals(first.name())).toList();
    long between =
        alike.stream().filter(s -> s.week() >= first.week() && s.week() <= last.week()).count();
    if (group.changes().size() == 1 || between != group.changes().size()) {
      return days(group) + ", " + first.name();
    }
    int end = alike.get(alike.size() - 1).week();
    boolean fromStart = alike.get(0).week() == first.week();
    String weeks =
        last.week() == end
            ? fromStart
                ? ""
                : first.week() == end ? " of week " + end : " from week " + first.week() + " on"
            : " of "
                + (first.week() == last.week()
                    ? "week " + first.week()
                    : "weeks " + first.week() + " to " + last.week());
    return "every " + first.name() + " session" + weeks;
  }

  /** Says on which days, as in {@code week 3 Tue 26 Jan}. */
  private static String days(ChangeGroup group) {
    DatedSession first = PlanChange.session(group.first()).orElseThrow();
    DatedSession last = PlanChange.session(group.last()).orElseThrow();
    int number = group.changes().size();
    if (number == 1) {
      return "week " + first.week() + " " + Page.day(first.date());
    }
    return (first.week() == last.week()
            ? "week " + first.week() + " "
            : "weeks " + first.week() + " to " + last.week() + ", ")
        + Page.day(first.date())
        + (number == 2 ? " and " : " to ")
        + Page.day(last.date())
        + (number == 2 ? "" : ", " + Page.count(number, "session"));
  }

  private static String moved(ChangeGroup group, PlanChange.SessionMoved one) {
    return group.changes().size() == 1
        ? one.after().name()
            + " on "
            + Page.day(one.after().date())
            + " instead of "
            + Page.day(one.before().date())
        : one.after().name()
            + " "
            + days(group)
            + ": on "
            + weekday(one.after().date())
            + " instead of "
            + weekday(one.before().date());
  }

  private static String weekday(LocalDate date) {
    DayOfWeek day = date.getDayOfWeek();
    return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  private static String tests(ChangeGroup group, PlanChange.RetestChanged one) {
    String days =
        group.changes().stream().map(c -> Page.day(c.date())).collect(Collectors.joining(", "));
    boolean several = group.changes().size() > 1;
    if (one.after().isEmpty()) {
      return (several ? "the tests on " : "the test on ")
          + days
          + (several ? " fall away" : " falls away");
    }
    if (one.before().isEmpty()) {
      return (several ? "tests on " : "a test on ") + days + ": " + test(one.after());
    }
    LocalDate before = one.before().get(0).date();
    return "the test on "
        + days
        + (before.equals(one.date()) ? "" : " instead of " + Page.day(before))
        + (test(one.before()).equals(test(one.after()))
            ? ""
            : ": " + test(one.after()) + " instead of " + test(one.before()));
  }

  private static String test(List<DatedRetest> tests) {
    return tests.stream()
        .map(
            t ->
                t.setups().stream().map(ExerciseTable::setup).collect(Collectors.joining(", "))
                    + " for "
                    + ExerciseTable.time(t.hold()))
        .collect(Collectors.joining("; "));
  }

  private static String exercise(PlannedExercise exercise) {
    return exercise.protocol() + " on " + ExerciseTable.setup(exercise.setup());
  }

  private static String setup(ExerciseChanged change) {
    return ExerciseTable.setup(change.after().setup());
  }

  private static String values(ChangeGroup group, ExerciseChanged one) {
    String was = value(one.before(), one.measure());
    String is = value(one.after(), one.measure());
    return switch (one.measure()) {
      case LOAD -> "load " + range(group.loads(false)) + " instead of " + range(group.loads(true));
      case PROTOCOL, GRIP, HANDS -> is + " instead of " + was;
      case EDGE -> "edge " + is + " instead of " + was;
      case SETS -> Page.count(one.after().scheme().sets(), "set") + " instead of " + was;
      case REPETITIONS ->
          Page.count(one.after().scheme().repetitionsPerSet(), "hold") + " a set instead of " + was;
      case HOLD -> "holds of " + is + " instead of " + was;
      case REST -> "rest between holds " + is + " instead of " + was;
      case SET_REST -> "rest between sets " + is + " instead of " + was;
      case COURSE -> "other loads or times in some of its holds";
      case REHABILITATION ->
          is.isEmpty()
              ? "no longer part of a rehabilitation"
              : "part of the rehabilitation \"" + is + "\"";
      case ORDER -> "in place " + is + " instead of " + was;
      case LEVEL ->
          one.session().happened().isPresent()
              ? levels("level asked ", one) + ", and what was trained stays"
              : levels("level ", one) + ", and the load stays";
      case HARDNESS -> is + " instead of " + was;
    };
  }

  /** Writes levels with as many decimals as tell them apart. */
  private static String levels(String what, ExerciseChanged change) {
    String was = level(change.before(), 1);
    String is = level(change.after(), 1);
    return what
        + (is.equals(was) ? level(change.after(), 3) : is)
        + " instead of "
        + (is.equals(was) ? level(change.before(), 3) : was);
  }

  private static String level(PlannedExercise exercise, int decimals) {
    return exercise.percentOfMax().isPresent()
        ? Numbers.plain(exercise.percentOfMax().getAsDouble(), decimals) + " %"
        : exercise.scheme().levels().stream()
            .map(Level::toString)
            .collect(Collectors.joining(" and "));
  }

  private static String range(List<Load> loads) {
    Load least = Collections.min(loads);
    Load most = Collections.max(loads);
    return least.toString().equals(most.toString()) ? least.toString() : least + " to " + most;
  }

  /** Returns one thing about an exercise in words with its unit; empty if it has none. */
  static String value(PlannedExercise exercise, Measure measure) {
    Scheme scheme = exercise.scheme();
    Setup setup = exercise.setup();
    return switch (measure) {
      case PROTOCOL -> exercise.protocol();
      case GRIP -> setup.grip().name();
      case EDGE -> setup.edge().toString();
      case HANDS ->
          (setup.hands() == Hands.BOTH ? "both hands" : setup.hands().word() + " hand")
              + (setup.lifting() ? " lifting" : "");
      case SETS -> Integer.toString(scheme.sets());
      case REPETITIONS -> Integer.toString(scheme.repetitionsPerSet());
      case HOLD -> ExerciseTable.time(scheme.holds().get(0).time());
      case REST -> ExerciseTable.time(scheme.restBetweenHolds());
      case SET_REST -> ExerciseTable.time(scheme.restBetweenSets());
      case LOAD -> exercise.totalLoad().toString();
      case LEVEL -> level(exercise, 3);
      case REHABILITATION -> exercise.rehabilitation().orElse("");
      case ORDER -> Integer.toString(exercise.order());
      case HARDNESS -> exercise.hard() ? "counted as hard" : "not counted as hard";
      case COURSE -> "";
    };
  }
}
