package gripwright.expression;

import gripwright.quantity.Dimension;
import java.util.List;

/** The properties of weeks, blocks and plans. */
final class SpanProperties {

  private SpanProperties() {}

  static void addTo(List<Property> all) {
    addWeek(new PropertyCatalogue.Of(Kind.WEEK, all));
    addBlock(new PropertyCatalogue.Of(Kind.BLOCK, all));
    addPlan(new PropertyCatalogue.Of(Kind.PLAN, all));
  }

  private static void addWeek(PropertyCatalogue.Of week) {
    week.count("number", "Number of the week in the plan, from 1.")
        .count("block-week", "Number of the week in the block, from 1.")
        .number("from", Type.Plain.DATE, "The first day.")
        .truth("eased", "The block or the plan's taper eases this week (a deload week).")
        .truth("away", "The athlete is away on every available day.")
        .quantity("load", Dimension.LOAD_TIME, "Load-time: sum of load times time over all holds.")
        .time("time-under-load", "Time under tension: the sum of all holds.")
        .time("minutes", "Total time of all sessions.")
        .one(
            "previous",
            Kind.WEEK,
            "The last earlier week of the plan with a session; missing in the first" + " week.")
        .quantity(
            "recent-load",
            Dimension.LOAD_TIME,
            "Highest load-time, of the exercises that this week trains, in the"
                + " athlete's last three weeks that were not eased and in which no session"
                + " was missed or lost its day to the log. Blocks and plans that follow each"
                + " other count, and up to 12 logged weeks before them. If a test lies"
                + " between, loads are recalculated with the current maximum. An exercise of"
                + " which less was done than planned counts as planned. Missing if none of"
                + " these weeks is in this block.")
        .truth(
            "one-step",
            "The week differs from those of recent-load by one smallest step of one"
                + " exercise: one set, one hold, one second or one step of the equipment, at"
                + " most 35 % of the week. Exercises that are known to be light or below 40 %"
                + " max may each differ by one step.")
        .quantity(
            "load-before",
            Dimension.LOAD_TIME,
            "In the first week of a block: the highest load-time of the weeks before"
                + " it. Missing in other weeks.")
        .quantity(
            "starting-load",
            Dimension.LOAD_TIME,
            "In the first week of a block: load-before, multiplied by the block's rise."
                + " The rise is the greatest rise of the load-time per session of a protocol"
                + " on a grip; one smallest step may come on top of the plan's weekly rise"
                + " and is left out. For new exercises it is the smaller of the rises of the"
                + " highest level and of the week's load-time. Rehabilitation is left out,"
                + " and so are exercises that are known to be light or below 40 % max before"
                + " and after. If a test lies between, loads are shares of the maximum."
                + " Missing in other weeks.")
        .count(
            "more-sessions",
            "In the first week of a block: the number of additional sessions a week of"
                + " a protocol on a grip, compared with the weeks before. Exercises that are"
                + " known to be light or below 40 % max before and after are left out."
                + " Missing in other weeks.")
        .count(
            "other-sessions",
            "Number of sessions on its days in the athlete's plans that began before"
                + " this one.")
        .many("sessions", Kind.SESSION, "Its sessions, by date.")
        .many("exercises", Kind.EXERCISE, "The exercises of its sessions.")
        .many("fingers", Kind.FINGER, FingerProperties.DOC)
        .many("days", Kind.DAY, "Its days with a session, a retest or climbing.")
        .one("block", Kind.BLOCK, "The block it is in.")
        .one("plan", Kind.PLAN, "The plan.")
        .one("athlete", Kind.ATHLETE, "The athlete on its first day.");
  }

  private static void addBlock(PropertyCatalogue.Of block) {
    block
        .word("name", Vocabulary.BLOCKS, "Its name.")
        .time("length", "Duration.")
        .quantity("load", Dimension.LOAD_TIME, "Load-time: sum of load times time over all holds.")
        .time("time-under-load", "Time under tension: the sum of all holds.")
        .many("weeks", Kind.WEEK, "Its weeks, in order.")
        .many("sessions", Kind.SESSION, "Its sessions, by date.")
        .many("exercises", Kind.EXERCISE, "The exercises of its sessions.")
        .many("fingers", Kind.FINGER, FingerProperties.DOC)
        .one("plan", Kind.PLAN, "The plan.")
        .one("athlete", Kind.ATHLETE, "The athlete on its first day.");
  }

  private static void addPlan(PropertyCatalogue.Of plan) {
    plan.word("name", Vocabulary.PLANS, "Its name.")
        .number("from", Type.Plain.DATE, "The first day.")
        .number(
            "towards",
            Type.Plain.DATE,
            "The day that the plan works towards; missing if there is none.")
        .time("length", "Duration.")
        .count(
            "weekly-rise",
            "Allowed rise of a week's load-time: as written in the plan, otherwise 10" + " %.")
        .count(
            "tests-under-16",
            "Number of tests logged before the sixteenth birthday, from half a year"
                + " before the plan onwards.")
        .count(
            "hard-work-under-16",
            "Number of sessions logged before the sixteenth birthday, from half a year"
                + " before the plan to its end, with an effort of 8 or more, full crimp, a"
                + " split grip or a single finger.")
        .time(
            "weeks-without-ease",
            "Longest run of weeks with work at 60 % max or more on two days and no"
                + " deload week. A deload week has at most 70 % of the load-time of the last"
                + " three, or no session. This plan, earlier plans and logged weeks count.")
        .time("longest-climbing", "Longest climbing on a day, usual or logged during the plan.")
        .count(
            "hard-climbing-days",
            "Most days with hard climbing in seven consecutive days, as logged during"
                + " the plan.")
        .count(
            "hard-on-injury",
            "Number of lines of the log with hard work of a finger whose injury was not"
                + " cleared: tests from half a year before the plan to its end and, before"
                + " the plan, exercises with an effort of 8 or more and hard climbing. The"
                + " day of the injury doesn't count.")
        .quantity("load", Dimension.LOAD_TIME, "Load-time: sum of load times time over all holds.")
        .time("time-under-load", "Time under tension: the sum of all holds.")
        .many("blocks", Kind.BLOCK, "Its blocks, in order.")
        .many("weeks", Kind.WEEK, "Its weeks, in order.")
        .many("days", Kind.DAY, "Its days with a session, a retest or climbing.")
        .many("sessions", Kind.SESSION, "Its sessions, by date.")
        .many("exercises", Kind.EXERCISE, "The exercises of its sessions.")
        .many("fingers", Kind.FINGER, FingerProperties.DOC)
        .one("athlete", Kind.ATHLETE, "The athlete on the first day.");
  }
}
