package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.planning.placement.Placement;
import gripwright.planning.placement.PlacementReasons;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlacementReason;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds days for the remaining sessions of a week after those already done. A session keeps its day
 * if gaps allow; otherwise all remaining sessions are placed again, after the last known day.
 */
final class RestOfWeek {

  private final Athlete athlete;
  private final LocalDate until;
  private final LocalDate first;
  private final List<Placement.HardDay> hardDays;
  private final Map<String, LocalDate> lastOfName;

  /**
   * Prepares to place the remaining sessions.
   *
   * @param until the last known day
   * @param first first day of the week
   * @param hardDays hard work near the week, including what was done in it
   * @param lastOfName the last day of each session's name, including what was done in the week
   */
  RestOfWeek(
      Athlete athlete,
      LocalDate until,
      LocalDate first,
      List<Placement.HardDay> hardDays,
      Map<String, LocalDate> lastOfName) {
    this.athlete = athlete;
    this.until = until;
    this.first = first;
    this.hardDays = List.copyOf(hardDays);
    this.lastOfName = Map.copyOf(lastOfName);
  }

  /**
   * A session and its day.
   *
   * @param draft its draft
   * @param day the day
   * @param because the reason for the day
   */
  record Dated(SessionExpansion.Draft draft, LocalDate day, PlacementReason because) {}

  /**
   * The remaining sessions.
   *
   * @param dated those with a day
   * @param dropped those without one
   */
  record Placed(List<Dated> dated, List<DatedSession> dropped) {}

  /** Returns the days of the remaining sessions. */
  Placed place(List<DatedSession> ahead, List<SessionExpansion.Draft> drafts) {
    List<SessionExpansion.Draft> wanted = new ArrayList<>();
    for (DatedSession session : ahead) {
      drafts.stream()
          .filter(d -> d.session().name().equals(session.name()))
          .findFirst()
          .ifPresent(wanted::add);
    }
    if (wanted.size() == ahead.size() && keepsItsDays(ahead, wanted)) {
      List<Dated> kept = new ArrayList<>();
      for (int i = 0; i < ahead.size(); i++) {
        kept.add(new Dated(wanted.get(i), ahead.get(i).date(), ahead.get(i).placedBecause()));
      }
      return new Placed(kept, List.of());
    }
    Placement.Week week =
        new Placement.Week(
            first,
            day -> day.isAfter(until) ? athlete.availableOn(day) : Duration.ZERO,
            hardDays,
            lastOfName);
    List<Placement.Request> requests =
        wanted.stream().map(SessionExpansion.Draft::request).toList();
    List<Optional<LocalDate>> days =
        Placement.place(new Placement.WeekDemand(week, requests, List.of()), name -> 1, List::of)
            .first()
            .sessions();
    PlacementReasons reasons = new PlacementReasons(week, athlete, 0);
    List<Dated> placed = new ArrayList<>();
    List<DatedSession> dropped = new ArrayList<>();
    for (int i = 0; i < wanted.size(); i++) {
      Placement.Request request = requests.get(i);
      SessionExpansion.Draft draft = wanted.get(i);
      days.get(i)
          .ifPresentOrElse(
              day -> placed.add(new Dated(draft, day, reasons.because(request, day).whenDone())),
              () ->
                  ahead.stream()
                      .filter(s -> s.name().equals(request.name()))
                      .filter(s -> !dropped.contains(s))
                      .reduce((one, other) -> other)
                      .ifPresent(dropped::add));
    }
    return new Placed(placed, dropped);
  }

  private boolean keepsItsDays(List<DatedSession> ahead, List<SessionExpansion.Draft> wanted) {
    Map<String, LocalDate> last = new HashMap<>(lastOfName);
    Placement.Week week = new Placement.Week(first, athlete::availableOn, hardDays, Map.of());
    for (int i = 0; i < ahead.size(); i++) {
      Placement.Request request = wanted.get(i).request();
      LocalDate day = ahead.get(i).date();
      LocalDate before = last.get(request.name());
      boolean tooSoon = before != null && ChronoUnit.DAYS.between(before, day) < request.gapDays();
      if (tooSoon || !Placement.isOpen(week, request, day)) {
        return false;
      }
      last.put(request.name(), day);
    }
    return true;
  }
}
