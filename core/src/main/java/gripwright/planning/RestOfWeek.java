package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.planning.placement.Placement;
import gripwright.planning.placement.PlacementReasons;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlacementReason;
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
   * @param spot the day and slot
   * @param because the reason for the day
   */
  record Dated(SessionExpansion.Draft draft, Placement.Spot spot, PlacementReason because) {}

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
        DatedSession session = ahead.get(i);
        kept.add(
            new Dated(
                wanted.get(i),
                spot(session, wanted.get(i).request()).orElseThrow(),
                session.placedBecause()));
      }
      return new Placed(kept, List.of());
    }
    Placement.Week week =
        new Placement.Week(
            first,
            day -> day.isAfter(until) ? athlete.slotsOn(day) : List.of(),
            hardDays,
            lastOfName);
    List<Placement.Request> requests =
        wanted.stream().map(SessionExpansion.Draft::request).toList();
    Placement.Days days =
        Placement.place(new Placement.WeekDemand(week, requests, List.of()), name -> 1, List::of)
            .first();
    PlacementReasons reasons = new PlacementReasons(week, athlete, 0);
    List<Dated> placed = new ArrayList<>();
    List<DatedSession> dropped = new ArrayList<>();
    for (int i = 0; i < wanted.size(); i++) {
      Placement.Request request = requests.get(i);
      SessionExpansion.Draft draft = wanted.get(i);
      days.spot(i)
          .ifPresentOrElse(
              spot -> placed.add(new Dated(draft, spot, reasons.because(request, spot).whenDone())),
              () ->
                  ahead.stream()
                      .filter(s -> s.name().equals(request.name()))
                      .filter(s -> !dropped.contains(s))
                      .reduce((one, other) -> other)
                      .ifPresent(dropped::add));
    }
    return new Placed(placed, dropped);
  }

  /** Returns the day and slot of a session that was placed. */
  private Optional<Placement.Spot> spot(DatedSession session, Placement.Request request) {
    return athlete.slotsOn(session.date()).stream()
        .filter(
            slot ->
                slot.at().equals(session.time())
                    && slot.place().equals(session.place())
                    && request.fits(slot))
        .findFirst()
        .map(slot -> new Placement.Spot(session.date(), slot));
  }

  private boolean keepsItsDays(List<DatedSession> ahead, List<SessionExpansion.Draft> wanted) {
    Map<String, LocalDate> last = new HashMap<>(lastOfName);
    Placement.Week week = new Placement.Week(first, athlete::slotsOn, hardDays, Map.of());
    for (int i = 0; i < ahead.size(); i++) {
      Placement.Request request = wanted.get(i).request();
      LocalDate day = ahead.get(i).date();
      LocalDate before = last.get(request.name());
      boolean tooSoon = before != null && ChronoUnit.DAYS.between(before, day) < request.gapDays();
      if (tooSoon
          || !Placement.isOpen(week, request, day)
          || spot(ahead.get(i), request).isEmpty()) {
        return false;
      }
      last.put(request.name(), day);
    }
    return true;
  }
}
