package gripwright.export;

import gripwright.change.BlockChange;
import gripwright.change.PlanChange;
import gripwright.change.SessionChange;
import gripwright.diff.EditionDiff;
import gripwright.diff.FactChange;
import gripwright.diff.PlanDiff;
import gripwright.diff.Redefinition;
import gripwright.finding.Finding;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.finding.ReportedFinding;
import gripwright.finding.WrittenText;
import gripwright.plan.Plan;
import gripwright.schedule.Caution;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A comparison with a change of every kind, built by hand. */
public final class Changes {

  private static final LocalDate FROM = Season.FROM;

  private Changes() {}

  /** Nothing changed. */
  public static EditionDiff none() {
    return EditionDiff.builder().build();
  }

  /** Everything changed. */
  public static EditionDiff all() {
    CompiledPlan plan = Season.thaw();
    ReportedFinding finding =
        Season.worded(Finding.advice("plan.load-modelled", ModelPath.of("plan", "thaw")));
    return EditionDiff.builder()
        .definitions(
            List.of(
                new Redefinition(Redefinition.Kind.GRIP, "two-and-two", Redefinition.State.NEW),
                new Redefinition(Redefinition.Kind.RULE, "early-edge", Redefinition.State.CHANGED),
                new Redefinition(Redefinition.Kind.PROTOCOL, "tens", Redefinition.State.GONE)))
        .facts(
            List.of(
                new FactChange(
                    "sunniva", FactChange.Fact.BODY_MASS, written("58 kg"), written("57 kg")),
                new FactChange(
                    "sunniva",
                    FactChange.Fact.AWAY,
                    List.of(),
                    written("2027-02-01 to 2027-02-07"))))
        .added(List.of(plan))
        .dropped(List.of(Season.empty()))
        .plans(
            List.of(
                new PlanDiff(
                    plan,
                    plan,
                    of(plan),
                    List.of(new Caution.OfGrip("half-crimp", "new")),
                    List.of(new Caution.OfGrip("half-crimp", "old")))))
        .findingsNew(List.of(finding))
        .findingsGone(List.of(finding))
        .build();
  }

  private static List<Message> written(String text) {
    return List.of(new WrittenText(text));
  }

  private static List<PlanChange> of(CompiledPlan plan) {
    DatedSession session = plan.sessions().get(0);
    PlannedExercise exercise = session.exercises().get(0);
    DatedRetest tests = plan.retests().get(0);
    Plan.Waiver waiver =
        new Plan.Waiver(
            "week-load-rise",
            Optional.of("base"),
            OptionalInt.of(2),
            Optional.empty(),
            OptionalInt.empty(),
            "a short trip");
    List<PlanChange> changes =
        new ArrayList<>(
            List.of(
                new PlanChange.PlanMoved(FROM, FROM.plusDays(14)),
                new PlanChange.GoalChanged(
                    FROM, Optional.empty(), Optional.of(new WrittenText("2027-05-01 the wall"))),
                new PlanChange.PartChanged(
                    FROM,
                    PlanChange.Part.DEMAND,
                    Optional.of(new WrittenText("a 100 %")),
                    Optional.empty()),
                new BlockChange.BlockAdded("peak", FROM, 2),
                new BlockChange.BlockDropped("rest", FROM, 1),
                new BlockChange.BlockMoved("build", -1, FROM),
                new BlockChange.BlockResized("base", FROM, 4, 5),
                new BlockChange.BlockRewritten("base", FROM),
                new BlockChange.WeekEased(plan.weeks().get(0)),
                new PlanChange.GripStarts(Season.HALF, FROM, FROM.plusDays(7)),
                new SessionChange.SessionAdded(session),
                new SessionChange.SessionDropped(session),
                new SessionChange.SessionMoved(session, session),
                new SessionChange.SessionTimed(session, session),
                new SessionChange.ExerciseAdded(session, exercise),
                new SessionChange.ExerciseDropped(session, exercise),
                new PlanChange.RetestChanged(FROM, List.of(), List.of(tests)),
                new PlanChange.RetestChanged(FROM, List.of(tests), List.of()),
                new PlanChange.RetestChanged(tests.date(), List.of(tests), List.of(tests)),
                new PlanChange.WaiverAdded(FROM, waiver),
                new PlanChange.WaiverDropped(FROM, waiver)));
    for (SessionChange.Measure measure : SessionChange.Measure.values()) {
      changes.add(new SessionChange.ExerciseChanged(session, exercise, exercise, measure));
    }
    return changes;
  }
}
