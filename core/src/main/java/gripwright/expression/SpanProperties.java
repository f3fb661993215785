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
    week.count("number", "Which week of the plan, from 1.")
        .count("block-week", "Which week of the block, from 1.")
        .number("from", Type.Plain.DATE, "The first day.")
        .truth("eased", "The block or the plan's taper eases this week.")
        .truth("away", "The athlete is away on every day that could be trained.")
        .quantity("load", Dimension.LOAD_TIME, "Sum of load times time over all holds.")
        .time("time-under-load", "All holds together.")
        .time("minutes", "All sessions together.")
        .one(
            "previous",
            Kind.WEEK,
            "The nearest earlier week of the plan with a session; missing in the first.")
        .quantity(
            "recent-load",
            Dimension.LOAD_TIME,
            "Highest load of the last three uneased weeks of the block that have a session; missing"
                + " if there is none.")
        .many("sessions", Kind.SESSION, "Its sessions by date.")
        .many("exercises", Kind.EXERCISE, "The exercises of its sessions.")
        .many("fingers", Kind.FINGER, FingerProperties.DOC)
        .many("days", Kind.DAY, "Its days that have something on them.")
        .one("block", Kind.BLOCK, "The block it is in.")
        .one("plan", Kind.PLAN, "The plan.")
        .one("athlete", Kind.ATHLETE, "The athlete on its first day.");
  }

  private static void addBlock(PropertyCatalogue.Of block) {
    block
        .word("name", Vocabulary.BLOCKS, "Its name.")
        .time("length", "How long it is.")
        .quantity("load", Dimension.LOAD_TIME, "Sum of load times time over all holds.")
        .time("time-under-load", "All holds together.")
        .many("weeks", Kind.WEEK, "Its weeks in order.")
        .many("sessions", Kind.SESSION, "Its sessions by date.")
        .many("exercises", Kind.EXERCISE, "The exercises of its sessions.")
        .many("fingers", Kind.FINGER, FingerProperties.DOC)
        .one("plan", Kind.PLAN, "The plan.")
        .one("athlete", Kind.ATHLETE, "The athlete on its first day.");
  }

  private static void addPlan(PropertyCatalogue.Of plan) {
    plan.word("name", Vocabulary.PLANS, "Its name.")
        .number("from", Type.Plain.DATE, "The first day.")
        .number("towards", Type.Plain.DATE, "The day it works towards; missing if it says none.")
        .time("length", "How long it is.")
        .count(
            "weekly-rise",
            "How much more a week's load may be than before: as the plan says, or else 10 %.")
        .quantity("load", Dimension.LOAD_TIME, "Sum of load times time over all holds.")
        .time("time-under-load", "All holds together.")
        .many("blocks", Kind.BLOCK, "Its blocks in order.")
        .many("weeks", Kind.WEEK, "Its weeks in order.")
        .many("days", Kind.DAY, "Its days that have something on them.")
        .many("sessions", Kind.SESSION, "Its sessions by date.")
        .many("exercises", Kind.EXERCISE, "The exercises of its sessions.")
        .many("fingers", Kind.FINGER, FingerProperties.DOC)
        .one("athlete", Kind.ATHLETE, "The athlete on the first day.");
  }
}
