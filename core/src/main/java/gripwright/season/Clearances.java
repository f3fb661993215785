package gripwright.season;

import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** Finds injuries that were cleared recently before days of a plan. */
final class Clearances {

  private Clearances() {}

  /**
   * Returns advice on each injury without the name of the person who cleared it, if a day of the
   * plan is in its weeks of return. The place is the athlete's injury, numbered from 1.
   */
  static List<Finding> byNobody(Plan plan, Athlete athlete) {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < athlete.injuries().size(); i++) {
      Injury injury = athlete.injuries().get(i);
      if (injury.clearedBy().isEmpty() && injury.isReturning(plan.from(), plan.to())) {
        ModelPath place = ModelPath.of("athlete", athlete.name()).then("injury", i + 1);
        findings.add(finding(athlete, injury, place));
      }
    }
    return findings;
  }

  private static Finding finding(Athlete athlete, Injury injury, ModelPath place) {
    return Finding.advice("plan.cleared-by-nobody", place)
        .with("athlete", athlete.name())
        .with("injury", injury.place())
        .with("date", injury.cleared().orElseThrow())
        .with("weeks", Injury.WEEKS_OF_RETURN);
  }
}
