package gripwright.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.finding.Topic;
import gripwright.grip.StandardGrips;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.StandardProtocols;
import gripwright.season.Season;
import gripwright.wording.Wording;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The warning for minors names who supervises, and remains. */
final class SupervisionTest {

  private static SessionPlan session(String name) {
    return SessionPlan.of(
        name,
        1,
        Exercise.of(StandardProtocols.all().get(0), StandardGrips.HALF_CRIMP, Skarvdal.EDGE));
  }

  private static Plan.Builder plan(SessionPlan... sessions) {
    Block.Builder block = Block.named("base", 1);
    List.of(sessions).forEach(block::session);
    return Plan.named("p").athlete("ylva").from(Skarvdal.MONDAY).block(block.build());
  }

  /** Returns the hints of the warnings that a plan has for an athlete of an age. */
  private static List<String> said(int years, Plan.Builder plan) {
    LocalDate born = Skarvdal.MONDAY.minusYears(years).minusDays(60);
    List<Finding> warnings =
        Season.of(
                List.of(plan.build()),
                List.of(Skarvdal.ylva().born(born).build()),
                List.of(),
                List.of())
            .compile()
            .findings()
            .stream()
            .filter(finding -> finding.isAbout(Topic.SUPERVISION))
            .toList();
    warnings.forEach(finding -> assertEquals(Severity.WARNING, finding.severity()));
    return warnings.stream().map(f -> Wording.english().advice(f).orElseThrow()).toList();
  }

  @Test
  void theWarningNamesNobodyIfNobodySupervises() {
    String nobody =
        "nothing in the plan has to change; to show who supervises, write `supervised by \"...\"` in it";
    assertEquals(List.of(nobody), said(15, plan(session("s"))));
    assertEquals(List.of(nobody), said(17, plan(session("s"))));
    assertEquals(List.of(), said(18, plan(session("s")).supervisedBy("Åse")));
  }

  @Test
  void theSupervisorOfThePlanIsNamedForAllSessions() {
    for (int years : new int[] {15, 17}) {
      assertEquals(
          List.of("nothing in the plan has to change; it names who supervises: Åse"),
          said(years, plan(session("s"), session("t")).supervisedBy("Åse")));
    }
  }

  @Test
  void theSupervisorOfSomeSessionsIsNamedWithThem() {
    assertEquals(
        List.of("nothing in the plan has to change; it names who supervises: Tor (t)"),
        said(15, plan(session("s"), session("t").supervisedBy("Tor"))));
    assertEquals(
        List.of("nothing in the plan has to change; it names who supervises: Åse (s), Tor (t)"),
        said(17, plan(session("s"), session("t").supervisedBy("Tor")).supervisedBy("Åse")));
  }
}
