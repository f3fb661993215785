package gripwright.planning;

import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.Topic;
import gripwright.history.LogTimeline;
import gripwright.planning.placement.LoggedRetests;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.PlacementReason;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds which tests of a logged week were done. */
final class TestsAsDone {

  private TestsAsDone() {}

  /**
   * Returns the tests of a week: on the day on which one of their setups was tested, else as
   * planned if that is still ahead; tests that were left out are removed and reported.
   *
   * @param first first day of the week
   * @param planned its tests on their planned days
   * @param before tests of the weeks before it
   * @param found receives findings about tests that were left out
   */
  static List<DatedRetest> of(
      LogTimeline timeline,
      LocalDate first,
      List<DatedRetest> planned,
      List<DatedRetest> before,
      FindingList found) {
    LoggedRetests logged = new LoggedRetests(timeline.plan(), timeline.log());
    List<DatedRetest> tests = new ArrayList<>();
    for (DatedRetest test : planned) {
      Optional<LocalDate> done = logged.dayOf(test, first, before);
      if (done.isPresent()) {
        tests.add(
            test.toBuilder()
                .date(done.get())
                .place(test.place().filter(place -> test.date().equals(done.get())))
                .time(test.time().filter(time -> test.date().equals(done.get())))
                .placedBecause(new PlacementReason.TestedOnDay())
                .at(test.path().without("date").then("date", done.get().toString()))
                .build());
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
}
