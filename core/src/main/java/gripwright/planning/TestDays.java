package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.plan.Block;
import gripwright.plan.DatedRetest;
import gripwright.plan.DatedSession;
import gripwright.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Puts the tests that are due in a week on their days. */
final class TestDays {

  private final Plan plan;
  private final Athlete athlete;
  private final ModelPath root;
  private final HandFits fits;
  private final LookAhead lookAhead;
  private final FindingList findings;

  TestDays(
      Plan plan,
      Athlete athlete,
      ModelPath root,
      HandFits fits,
      LookAhead lookAhead,
      FindingList findings) {
    this.plan = plan;
    this.athlete = athlete;
    this.root = root;
    this.fits = fits;
    this.lookAhead = lookAhead;
    this.findings = findings;
  }

  /**
   * Returns the tests of a week.
   *
   * @param kept the week's sessions; one whose place a test takes is removed
   * @param hardDays what is hard near the week, with some of its tests placed
   */
  List<DatedRetest> of(
      Block block,
      PlanRun.WeekOfBlock week,
      List<DatedSession> kept,
      Function<List<DatedRetest>, List<Placement.HardDay>> hardDays) {
    List<DatedRetest> tests = new ArrayList<>();
    for (int n = 1; n <= plan.retests().size(); n++) {
      Plan.Retest retest = plan.retests().get(n - 1);
      ModelPath place = root.then("retest", n).then("week", week.number());
      boolean due = week.number() % retest.everyWeeks() == 0;
      if (due && lookAhead.tapers(week.number())) {
        findings.add(Finding.advice("plan.retest-tapered", place).with("week", week.number()));
      } else if (due) {
        noteSetups(retest, place);
        new RetestDay(retest, lookAhead.minutes(retest))
            .find(week.first(), athlete, hardDays.apply(tests), kept)
            .ifPresentOrElse(
                found -> {
                  found.displaced().ifPresent(kept::remove);
                  tests.add(dated(block, week, retest, place, found));
                  retest.setups().stream() // tests are hard
                      .flatMap(s -> fits.notForced(s, place).stream())
                      .forEach(findings::add);
                  found.displaced().ifPresent(s -> noteDisplaced(place, week, s));
                },
                () ->
                    findings.add(
                        Finding.warning("plan.retest-no-day", place).with("week", week.number())));
      }
    }
    return tests;
  }

  /** A test needs an edge that is there and a hand that takes the grip. */
  private void noteSetups(Plan.Retest retest, ModelPath place) {
    retest.setups().stream()
        .filter(s -> !athlete.equipment().has(s.edge()))
        .findFirst()
        .ifPresent(
            s ->
                findings.add(
                    Finding.error("plan.edge-missing", place)
                        .with("edge", s.edge())
                        .with("owned", String.join(", ", edges()))));
    retest.setups().stream()
        .filter(s -> athlete.equipment().has(s.edge()))
        .flatMap(s -> fits.outOfReach(s, place).stream())
        .forEach(findings::add);
  }

  private List<String> edges() {
    return athlete.equipment().edges().stream().map(Object::toString).toList();
  }

  private void noteDisplaced(ModelPath place, PlanRun.WeekOfBlock week, DatedSession session) {
    findings.add(
        Finding.advice("plan.retest-displaces", place)
            .with("week", week.number())
            .with("session", session.name()));
  }

  private DatedRetest dated(
      Block block,
      PlanRun.WeekOfBlock week,
      Plan.Retest retest,
      ModelPath place,
      RetestDay.Found found) {
    return new DatedRetest(
        found.day(),
        week.number(),
        block.name(),
        retest.setups(),
        retest.hold(),
        found.displaced().map(DatedSession::name).orElse(""),
        found.because(),
        place.then("date", found.day().toString()));
  }
}
