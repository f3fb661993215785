package gripwright.plausibility;

import gripwright.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Checks an athlete's data and log for implausible values, independently of the plan's rules. */
public final class Plausibility {

  private Plausibility() {}

  /** Returns findings about impossible, implausible and unusual data. */
  public static List<Finding> of(Known known) {
    Objects.requireNonNull(known, "known");
    List<Finding> findings = new ArrayList<>();
    findings.addAll(new AthleteFacts(known).findings());
    findings.addAll(new BodyMassFacts(known).findings());
    findings.addAll(new TestFacts(known).findings());
    findings.addAll(new LogFacts(known).findings());
    return List.copyOf(findings);
  }
}
