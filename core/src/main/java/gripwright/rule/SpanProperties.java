package gripwright.rule;

import gripwright.quantity.Dimension;
import gripwright.quantity.Unit;
import java.util.List;

/** The properties of weeks, blocks and plans. */
final class SpanProperties {

  private SpanProperties() {}

  static void addTo(List<PropertyTable.Entry> all) {
    addWeek(new PropertyTable.Of<>(Kind.WEEK, WeekView.class, all));
    addBlock(new PropertyTable.Of<>(Kind.BLOCK, BlockView.class, all));
    addPlan(new PropertyTable.Of<>(Kind.PLAN, PlanView.class, all));
  }

  private static void addWeek(PropertyTable.Of<WeekView> week) {
    week.count("number", "Which week of the plan, from 1.", WeekView::number)
        .count("block-week", "Which week of the block, from 1.", w -> w.week.blockWeek())
        .number("from", Type.Plain.DATE, "The first day.", w -> w.week.from().toEpochDay())
        .truth("eased", "The block or the plan's taper eases this week.", w -> w.week.eased())
        .truth(
            "away", "The athlete is away on every day that could be trained.", w -> w.week.away())
        .quantity(
            "load", Dimension.LOAD_TIME, "Sum of load times time over all holds.", w -> w.load)
        .time("time-under-load", "All holds together.", w -> w.timeUnderLoad)
        .time("minutes", "All sessions together.", w -> Unit.MINUTE.toBase(w.minutes))
        .one(
            "previous",
            Kind.WEEK,
            "The nearest earlier week of the plan with a session; missing in the first.",
            w -> w.previous)
        .quantity(
            "recent-load",
            Dimension.LOAD_TIME,
            "Highest load of the last three uneased weeks of the block that have a session; missing"
                + " if there is none.",
            w -> w.recentLoad)
        .many("sessions", Kind.SESSION, "Its sessions by date.", w -> w.sessions)
        .many("exercises", Kind.EXERCISE, "The exercises of its sessions.", w -> w.exercises)
        .many("fingers", Kind.FINGER, FingerProperties.DOC, WeekView::fingers)
        .many("days", Kind.DAY, "Its days that have something on them.", w -> w.days)
        .one("block", Kind.BLOCK, "The block it is in.", w -> w.block)
        .one("plan", Kind.PLAN, "The plan.", w -> w.plan)
        .one("athlete", Kind.ATHLETE, "The athlete on its first day.", WeekView::athlete);
  }

  private static void addBlock(PropertyTable.Of<BlockView> block) {
    block
        .word("name", Vocabulary.BLOCKS, "Its name.", BlockView::name)
        .time("length", "How long it is.", b -> Unit.WEEK.toBase(b.length()))
        .quantity(
            "load", Dimension.LOAD_TIME, "Sum of load times time over all holds.", b -> b.load)
        .time("time-under-load", "All holds together.", b -> b.timeUnderLoad)
        .many("weeks", Kind.WEEK, "Its weeks in order.", b -> b.weeks)
        .many("sessions", Kind.SESSION, "Its sessions by date.", b -> b.sessions)
        .many("exercises", Kind.EXERCISE, "The exercises of its sessions.", b -> b.exercises)
        .many("fingers", Kind.FINGER, FingerProperties.DOC, BlockView::fingers)
        .one("plan", Kind.PLAN, "The plan.", b -> b.plan)
        .one("athlete", Kind.ATHLETE, "The athlete on its first day.", BlockView::athlete);
  }

  private static void addPlan(PropertyTable.Of<PlanView> plan) {
    plan.word("name", Vocabulary.PLANS, "Its name.", p -> p.compiled.plan().name())
        .number(
            "from", Type.Plain.DATE, "The first day.", p -> p.compiled.plan().from().toEpochDay())
        .number(
            "towards",
            Type.Plain.DATE,
            "The day it works towards; missing if it says none.",
            p ->
                p.compiled
                    .plan()
                    .towards()
                    .map(goal -> (double) goal.date().toEpochDay())
                    .orElse(Double.NaN))
        .time("length", "How long it is.", p -> Unit.WEEK.toBase(p.compiled.plan().weeks()))
        .count(
            "weekly-rise",
            "How much more a week's load may be than before: as the plan says, or else 10 %.",
            PlanView::weeklyRise)
        .quantity(
            "load", Dimension.LOAD_TIME, "Sum of load times time over all holds.", p -> p.load)
        .time("time-under-load", "All holds together.", p -> p.timeUnderLoad)
        .many("blocks", Kind.BLOCK, "Its blocks in order.", p -> p.blocks)
        .many("weeks", Kind.WEEK, "Its weeks in order.", p -> p.weeks)
        .many("days", Kind.DAY, "Its days that have something on them.", p -> p.days)
        .many("sessions", Kind.SESSION, "Its sessions by date.", p -> p.sessions)
        .many("exercises", Kind.EXERCISE, "The exercises of its sessions.", p -> p.exercises)
        .many("fingers", Kind.FINGER, FingerProperties.DOC, PlanView::fingers)
        .one("athlete", Kind.ATHLETE, "The athlete on the first day.", p -> p.athlete);
  }
}
