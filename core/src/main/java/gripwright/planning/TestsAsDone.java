package gripwright.planning;

import gripwright.finding.Finding;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.CompiledPlan;
import gripwright.plan.DatedRetest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What became of the tests of a week of which a log tells. */
final class TestsAsDone {

  private final Log log;
  private final Heard heard;
  private final FindingList findings;

  TestsAsDone(Log log, Heard heard, FindingList findings) {
    this.log = log;
    this.heard = heard;
    this.findings = findings;
  }

  /**
   * Returns the tests of a week: on the day on which the first of their grips was tested, else as
   * planned if that still lies ahead; those that were left out are gone, and that is told.
   */
  List<DatedRetest> of(LocalDate first, List<DatedRetest> planned) {
    List<DatedRetest> tests = new ArrayList<>();
    for (DatedRetest test : planned) {
      Optional<LocalDate> done = done(first, test);
      if (done.isPresent()) {
        tests.add(
            new DatedRetest(
                done.get(),
                test.week(),
                test.block(),
                test.setups(),
                test.hold(),
                test.insteadOf(),
                "tested on this day, as logged",
                test.path().without("date").then("date", done.get().toString())));
      } else if (!heard.isPast(test.date())) {
        tests.add(test);
      } else {
        findings.add(
            Finding.advice(CompiledPlan.TEST_NOT_LOGGED, test.path())
                .with("week", test.week())
                .with("dates", test.date())
                .with("until", heard.until().orElseThrow()));
      }
    }
    return tests;
  }

  private Optional<LocalDate> done(LocalDate first, DatedRetest test) {
    return log.of(LogEntry.Tested.class).stream()
        .filter(t -> !t.date().isBefore(first) && t.date().isBefore(first.plusDays(7)))
        .filter(
            t ->
                test.setups().stream()
                    .anyMatch(s -> s.toString().equals(t.test().setup().toString())))
        .map(LogEntry.Tested::date)
        .findFirst();
  }
}
