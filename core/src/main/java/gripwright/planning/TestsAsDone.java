package gripwright.planning;

import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.Topic;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.PlacementReason;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What became of the tests of a logged week. */
final class TestsAsDone {

  private TestsAsDone() {}

  /**
   * Returns the tests of a week: on the day on which the first of their grips was tested, else as
   * planned if that still lies ahead; those that were left out are gone, with a finding.
   */
  static List<DatedRetest> of(
      LogTimeline timeline, LocalDate first, List<DatedRetest> planned, FindingList found) {
    List<DatedRetest> tests = new ArrayList<>();
    for (DatedRetest test : planned) {
      Optional<LocalDate> done = done(timeline.log(), first, test);
      if (done.isPresent()) {
        tests.add(
            new DatedRetest(
                done.get(),
                test.week(),
                test.block(),
                test.setups(),
                test.hold(),
                test.insteadOf(),
                new PlacementReason.TestedOnDay(),
                test.path().without("date").then("date", done.get().toString())));
      } else if (!timeline.isPast(test.date())) {
        tests.add(test);
      } else {
        found.add(
            Finding.advice("plan.test-not-logged", test.path())
                .about(Topic.TEST_NOT_LOGGED)
                .with("week", test.week())
                .with("dates", test.date())
                .with("until", timeline.lastKnownDay().orElseThrow()));
      }
    }
    return tests;
  }

  private static Optional<LocalDate> done(Log log, LocalDate first, DatedRetest test) {
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
