package gripwright.planning;

import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.TestKind;
import java.time.Duration;

/** Reports tests that ask for more than is usual. */
final class TestDoses {

  /** Attempts above this are reported; the library's own number. */
  private static final int MOST_ATTEMPTS = 5;

  /** A rest between attempts below this is reported; common practice. */
  private static final Duration LEAST_REST = Duration.ofMinutes(2);

  /** Holds of an all-out series above this are reported; the library's own number. */
  private static final int MOST_HOLDS = 40;

  private final Plan plan;
  private final ModelPath root;
  private final FindingList found = new FindingList();

  TestDoses(Plan plan, ModelPath root) {
    this.plan = plan;
    this.root = root;
  }

  FindingList findings() {
    for (int n = 1; n <= plan.retests().size(); n++) {
      PlannedTest test = plan.retests().get(n - 1);
      ModelPath place = root.then("retest", n);
      if (test.attempts() > MOST_ATTEMPTS) {
        found.add(
            Finding.warning("plan.test-attempts", place)
                .with("attempts", test.attempts())
                .with("most", MOST_ATTEMPTS));
      }
      if (test.attempts() > 1 && test.resting().compareTo(LEAST_REST) < 0) {
        found.add(
            Finding.warning("plan.test-resting", place)
                .with("time", test.resting())
                .with("least", LEAST_REST));
      }
      if (test.kind() instanceof TestKind.Series series && series.holds() > MOST_HOLDS) {
        found.add(
            Finding.warning("plan.test-series", place)
                .with("holds", series.holds())
                .with("most", MOST_HOLDS));
      }
    }
    return found;
  }
}
