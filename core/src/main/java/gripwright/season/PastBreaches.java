package gripwright.season;

import gripwright.finding.Finding;
import gripwright.finding.Listing;
import gripwright.finding.ModelPath;
import gripwright.finding.WrittenText;
import gripwright.history.LogTimeline;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Broken rules on days that are past: nobody can keep them any more. */
final class PastBreaches {

  private static final int DATES_SAID = 6;

  private PastBreaches() {}

  private static Listing dates(List<LocalDate> days) {
    return Listing.first(DATES_SAID, Listing.Style.COMMAS, days);
  }

  /**
   * Returns findings of rules such that what has happened stops nobody: an error about days that
   * are past is advice, and stays an error for the days ahead.
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
      settled.add(breach(finding, past));
    }
    return settled;
  }

  private static Finding breach(Finding finding, List<ModelPath> past) {
    Finding breach =
        Finding.advice("plan.past-breach", past.get(0))
            .with("rule", finding.rule().orElse(finding.code()))
            .with(
                "message",
                new WrittenText(String.valueOf(finding.arguments().getOrDefault("message", ""))))
            .with("dates", dates(past.stream().flatMap(p -> date(p).stream()).distinct().toList()));
    for (ModelPath place : past) {
      breach = breach.alsoAt(place);
    }
    return breach;
  }

  private static Optional<LocalDate> date(ModelPath place) {
    return place.steps().stream()
        .filter(s -> s.kind().equals("date"))
        .map(s -> LocalDate.parse(s.name()))
        .findFirst();
  }
}
