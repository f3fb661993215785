package gripwright.plausibility;

import gripwright.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Looks at what is written of an athlete, whatever the plan makes of it. */
public final class Plausibility {

  private Plausibility() {}

  /** Returns what can't be, what hardly can, and what is worth a look. */
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
