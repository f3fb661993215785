package gripwright.planning.placement;

import gripwright.athlete.Slot;
import gripwright.budget.Meter;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Finds a smallest set of facts that together prevent a kind of session from getting all its days.
 *
 * <p>Uses a deletion filter: each fact in turn is dropped, and stays dropped if the sessions still
 * don't fit. Every remaining fact is necessary: without it, all sessions would fit. Facts that a
 * coach can hardly change are dropped first, so that time and gaps remain rather than other
 * sessions, if either would explain the conflict.
 */
public final class Conflict {

  /** Something that prevents a day. */
  public sealed interface Fact {}

  /**
   * Another kind of session needs days too.
   *
   * @param name its name
   */
  record Other(String name) implements Fact {}

  /** The session is hard. */
  record Hard() implements Fact {}

  /**
   * Something on a day is hard, whatever is planned.
   *
   * @param day what and when
   */
  public record HardOn(Placement.HardDay day) implements Fact {}

  /**
   * A session of the same name took place before the week.
   *
   * @param last its day
   */
  record Since(LocalDate last) implements Fact {}

  /** The session may be on some weekdays only. */
  record OnlyOn() implements Fact {}

  /** The session may be at some places only. */
  record OnlyAt() implements Fact {}

  /** The session needs a gap of more than a day. */
  record Gap() implements Fact {}

  /** The session needs hours between it and another of the same day. */
  record Apart() implements Fact {}

  /**
   * The time on a day is limited.
   *
   * @param day which
   */
  record TimeOn(LocalDate day) implements Fact {}

  private static final Duration ALL_DAY = Duration.ofDays(1);
  private static final Duration A_MINUTE = Duration.ofMinutes(1);

  private final Placement.Week week;
  private final Placement.Request request;
  private final int wanted;
  private final Map<String, List<Placement.Request>> others = new TreeMap<>();

  /**
   * Prepares the search for a session.
   *
   * @param request the session
   * @param wanted how many of it the week should have
   * @param others the sessions of other names with a day, which may move
   */
  public Conflict(
      Placement.Week week, Placement.Request request, int wanted, List<Placement.Request> others) {
    this.week = week;
    this.request = request;
    this.wanted = wanted;
    others.forEach(o -> this.others.computeIfAbsent(o.name(), n -> new ArrayList<>()).add(o));
  }

  /** Returns the fewest facts; empty if all would fit, so that only later weeks prevent it. */
  public Set<Fact> fewest() {
    return fewest(Meter.unbounded());
  }

  /**
   * Returns the fewest facts, found within a budget.
   *
   * @param meter counts the tries
   */
  public Set<Fact> fewest(Meter meter) {
    Set<Fact> facts = new LinkedHashSet<>(all());
    if (fits(facts, meter)) {
      return Set.of();
    }
    for (Fact fact : all()) {
      facts.remove(fact);
      if (fits(facts, meter)) {
        facts.add(fact);
      }
    }
    return facts;
  }

  private List<Fact> all() {
    List<Fact> facts = new ArrayList<>();
    others.keySet().forEach(name -> facts.add(new Other(name)));
    boolean hard = request.hardFingers().isPresent();
    if (hard) {
      facts.add(new Hard());
    }
    week.hardDays().stream()
        .filter(day -> hard || day.isToBeFreshOn(day.date()))
        .forEach(day -> facts.add(new HardOn(day)));
    LocalDate last = week.lastOfName().get(request.name());
    if (last != null) {
      facts.add(new Since(last));
    }
    if (request.gapDays() > 1) {
      facts.add(new Gap());
    }
    if (request.share().isPresent()) {
      facts.add(new Apart());
    }
    for (int d = 0; d < 7; d++) {
      facts.add(new TimeOn(week.first().plusDays(d)));
    }
    if (!request.onlyOn().isEmpty()) {
      facts.add(new OnlyOn());
    }
    if (!request.places().isEmpty()) {
      facts.add(new OnlyAt());
    }
    return facts;
  }

  /** Returns a day with all its time at every place, besides its own slots that have one. */
  private List<Slot> anytime(LocalDate day) {
    Slot allDay = Slot.on(day.getDayOfWeek(), ALL_DAY);
    return Stream.of(
            week.slots().apply(day).stream().filter(slot -> slot.at().isPresent()),
            Stream.of(allDay),
            Stream.concat(Stream.of(request), others.values().stream().flatMap(List::stream))
                .flatMap(each -> each.places().stream())
                .filter(place -> !place.isEmpty())
                .distinct()
                .sorted()
                .map(allDay::atPlace))
        .flatMap(slots -> slots)
        .toList();
  }

  /** Returns whether all sessions fit if only these facts apply. */
  boolean fits(Set<Fact> facts) {
    return fits(facts, Meter.unbounded());
  }

  private boolean fits(Set<Fact> facts, Meter meter) {
    Map<String, LocalDate> last = new HashMap<>(week.lastOfName());
    if (last.containsKey(request.name())
        && !facts.contains(new Since(last.getOrDefault(request.name(), week.first())))) {
      last.remove(request.name());
    }
    Placement.Week relaxed =
        new Placement.Week(
            week.first(),
            day -> facts.contains(new TimeOn(day)) ? week.slots().apply(day) : anytime(day),
            week.hardDays().stream().filter(h -> facts.contains(new HardOn(h))).toList(),
            last);
    Placement.Request milder =
        new Placement.Request(
            request.name(),
            request.minutes(),
            facts.contains(new Gap()) ? request.gap() : Duration.ofDays(1),
            facts.contains(new Hard()) ? request.hardFingers() : Optional.empty(),
            List.of(),
            facts.contains(new OnlyOn()) ? request.onlyOn() : List.of(),
            facts.contains(new Apart()) ? request.share() : request.share().map(time -> A_MINUTE),
            facts.contains(new OnlyAt()) ? request.places() : Set.of());
    List<Placement.Request> requests = new ArrayList<>(Collections.nCopies(wanted, milder));
    others.forEach(
        (name, sessions) -> {
          if (facts.contains(new Other(name))) {
            requests.addAll(sessions);
          }
        });
    return new PlacementSearch(List.of(new Placement.WeekDemand(relaxed, requests, List.of())))
        .search(meter)
        .first()
        .complete();
  }
}
