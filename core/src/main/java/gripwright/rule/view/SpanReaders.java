package gripwright.rule.view;

import gripwright.expression.Kind;
import gripwright.quantity.Unit;

/** Readers of the properties of weeks, blocks and plans. */
final class SpanReaders {

  private SpanReaders() {}

  static void addTo(Readers all) {
    addWeek(all.of(Kind.WEEK));
    addBlock(all.of(Kind.BLOCK));
    addPlan(all.of(Kind.PLAN));
  }

  private static void addWeek(Readers.Of<WeekView> week) {
    week.number("number", WeekView::number)
        .number("block-week", w -> w.week.blockWeek())
        .number("from", w -> w.week.from().toEpochDay())
        .truth("eased", w -> w.week.eased())
        .truth("away", w -> w.week.away())
        .number("load", w -> w.load)
        .number("time-under-load", w -> w.timeUnderLoad)
        .number("minutes", w -> Unit.MINUTE.toBase(w.minutes))
        .object("previous", w -> w.previous)
        .number("recent-load", w -> w.plan.loadRise().recentLoad(w))
        .truth("one-step", w -> w.plan.loadRise().isOneStep(w))
        .number("load-before", w -> w.plan.loadRise().loadBefore(w))
        .number(
            "starting-load",
            w -> w.plan.loadRise().loadBefore(w) * (1 + w.plan.loadRise().joinRise(w)))
        .number("more-sessions", w -> w.plan.loadRise().moreSessions(w))
        .number(
            "other-sessions",
            w -> w.plan.sessionsOfOtherPlans(w.week.from(), w.week.from().plusDays(6)))
        .object("sessions", w -> w.sessions)
        .object("exercises", w -> w.exercises)
        .object("fingers", WeekView::fingers)
        .object("days", w -> w.days)
        .object("block", w -> w.block)
        .object("plan", w -> w.plan)
        .object("athlete", WeekView::athlete);
  }

  private static void addBlock(Readers.Of<BlockView> block) {
    block
        .object("name", BlockView::name)
        .number("length", b -> Unit.WEEK.toBase(b.length()))
        .number("load", b -> b.load)
        .number("time-under-load", b -> b.timeUnderLoad)
        .object("weeks", b -> b.weeks)
        .object("sessions", b -> b.sessions)
        .object("exercises", b -> b.exercises)
        .object("fingers", BlockView::fingers)
        .object("plan", b -> b.plan)
        .object("athlete", BlockView::athlete);
  }

  private static void addPlan(Readers.Of<PlanView> plan) {
    plan.object("name", p -> p.schedule.plan().name())
        .number("from", p -> p.schedule.plan().from().toEpochDay())
        .number(
            "towards",
            p ->
                p.schedule
                    .plan()
                    .towards()
                    .map(goal -> (double) goal.date().toEpochDay())
                    .orElse(Double.NaN))
        .number("length", p -> Unit.WEEK.toBase(p.schedule.plan().weeks()))
        .number("weekly-rise", PlanView::weeklyRise)
        .number("tests-under-16", PlanView::testsUnder16)
        .number("hard-work-under-16", PlanView::hardWorkUnder16)
        .number("weeks-without-ease", p -> Unit.WEEK.toBase(p.loadRise().longestRow()))
        .number("longest-climbing", p -> p.athleteDays().longestClimbing())
        .number("hard-climbing-days", p -> p.athleteDays().loggedHardDays())
        .number("hard-on-injury", p -> p.history.loggedOnInjury())
        .number("load", p -> p.load)
        .number("time-under-load", p -> p.timeUnderLoad)
        .object("blocks", p -> p.blocks)
        .object("weeks", p -> p.weeks)
        .object("days", p -> p.days)
        .object("sessions", p -> p.sessions)
        .object("exercises", p -> p.exercises)
        .object("fingers", PlanView::fingers)
        .object("athlete", p -> p.athlete);
  }
}
