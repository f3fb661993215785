package gripwright.season;

import gripwright.finding.Finding;
import gripwright.finding.Listing;
import gripwright.finding.ModelPath;
import gripwright.finding.Topic;
import gripwright.finding.WrittenText;
import gripwright.history.LogTimeline;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Adjusts findings about past days, which can no longer be changed. */
final class PastBreaches {

  private static final int DATES_SAID = 6;

  private PastBreaches() {}

  private static Listing dates(List<LocalDate> days) {
    return Listing.first(DATES_SAID, Listing.Style.COMMAS, days);
  }

  /**
   * Returns findings of rules so that the past blocks nothing: an error about past days becomes
   * advice, or a warning about youth and open injuries, and stays an error for the days ahead.
   */
  static List<Finding> downgraded(List<Finding> findings, Schedule schedule, LogTimeline timeline) {
    if (timeline.lastKnownDay().isEmpty()) {
      return findings;
    }
    List<Finding> settled = new ArrayList<>();
    for (Finding finding : findings) {
      List<ModelPath> places =
          finding.places().isEmpty() ? List.of(finding.place()) : finding.places();
      List<ModelPath> past =
          places.stream().filter(p -> timeline.isPast(p, schedule.weeks())).toList();
      if (!finding.blocks() || past.isEmpty()) {
        settled.add(finding);
        continue;
      }
      List<ModelPath> ahead = places.stream().filter(p -> !past.contains(p)).toList();
      if (!ahead.isEmpty()) {
        settled.add(
            finding.withPlaces(ahead.get(0), finding.places().isEmpty() ? List.of() : ahead));
      }
      settled.add(breach(finding, past, schedule));
    }
    return settled;
  }

  private static Finding breach(Finding finding, List<ModelPath> past, Schedule schedule) {
    boolean grave = finding.isAbout(Topic.YOUTH) || finding.isAbout(Topic.INJURY);
    Finding breach =
        (grave
                ? Finding.warning("plan.past-breach", past.get(0))
                : Finding.advice("plan.past-breach", past.get(0)))
            .with("rule", finding.rule().orElse(finding.code()))
            .with(
                "message",
                new WrittenText(String.valueOf(finding.arguments().getOrDefault("message", ""))))
            .with(
                "dates", dates(past.stream().flatMap(p -> days(p, schedule)).distinct().toList()));
    for (ModelPath place : past) {
      breach = breach.alsoAt(place);
    }
    return breach;
  }

  /** Returns the day of a place, or the days with a session if it is a week. */
  private static Stream<LocalDate> days(ModelPath place, Schedule schedule) {
    Optional<LocalDate> day = date(place);
    return day.isPresent()
        ? day.stream()
        : schedule.sessions().stream()
            .filter(session -> place.contains(session.path()))
            .map(DatedSession::date)
            .sorted();
  }

  private static Optional<LocalDate> date(ModelPath place) {
    return place.steps().stream()
        .filter(s -> s.kind().equals("date"))
        .map(s -> LocalDate.parse(s.name()))
        .findFirst();
  }
}
