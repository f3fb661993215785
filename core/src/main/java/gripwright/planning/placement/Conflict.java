package gripwright.planning.placement;

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

/**
 * Finds the fewest facts that together keep a kind of session from all the days it wants.
 *
 * <p>By a deletion filter: each fact in turn is thought away, and stays away if the sessions still
 * don't fit. Of what remains, nothing can be spared: without any one of them all would fit. Facts
 * that a coach can change least are thought away first, so that time and gaps remain rather than
 * other sessions, if either would do as a reason.
 */
public final class Conflict {

  /** Something that stands against a day. */
  public sealed interface Fact {}

  /**
   * Another kind of session wants days too.
   *
   * @param name its name
   */
  record Other(String name) implements Fact {}

  /** The session is hard. */
  record Hard() implements Fact {}

  /**
   * Something of a day is hard, whatever is planned.
   *
   * @param day what and when
   */
  public record HardOn(Placement.HardDay day) implements Fact {}

  /**
   * One of its name was before the week.
   *
   * @param last when
   */
  record Since(LocalDate last) implements Fact {}

  /** The session keeps more than a day's gap. */
  record Gap() implements Fact {}

  /**
   * A day has no more time than it has.
   *
   * @param day which
   */
  record TimeOn(LocalDate day) implements Fact {}

  private static final Duration ALL_DAY = Duration.ofDays(1);

  private final Placement.Week week;
  private final Placement.Request request;
  private final int wanted;
  private final Map<String, List<Placement.Request>> others = new TreeMap<>();

  /**
   * Asks about a session.
   *
   * @param request the session
   * @param wanted how many of it are wanted in the week
   * @param others the sessions of other names that have a day, which they may change
   */
  public Conflict(
      Placement.Week week, Placement.Request request, int wanted, List<Placement.Request> others) {
    this.week = week;
    this.request = request;
    this.wanted = wanted;
    others.forEach(o -> this.others.computeIfAbsent(o.name(), n -> new ArrayList<>()).add(o));
  }

  /**
   * Returns the fewest facts; empty if all would fit, so that only later weeks stand against it.
   */
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
    if (request.hardFingers().isPresent()) {
      facts.add(new Hard());
      week.hardDays().forEach(hard -> facts.add(new HardOn(hard)));
    }
    LocalDate last = week.lastOfName().get(request.name());
    if (last != null) {
      facts.add(new Since(last));
    }
    if (request.gapDays() > 1) {
      facts.add(new Gap());
    }
    for (int d = 0; d < 7; d++) {
      facts.add(new TimeOn(week.first().plusDays(d)));
    }
    return facts;
  }

  /** Tells whether all sessions fit if only these facts hold. */
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
            day -> facts.contains(new TimeOn(day)) ? week.available().apply(day) : ALL_DAY,
            week.hardDays().stream().filter(h -> facts.contains(new HardOn(h))).toList(),
            last);
    Placement.Request milder =
        new Placement.Request(
            request.name(),
            request.minutes(),
            facts.contains(new Gap()) ? request.gap() : Duration.ofDays(1),
            facts.contains(new Hard()) ? request.hardFingers() : Optional.empty(),
            List.of());
    List<Placement.Request> requests = new ArrayList<>(Collections.nCopies(wanted, milder));
    others.forEach(
        (name, sessions) -> {
          if (facts.contains(new Other(name))) {
            requests.addAll(sessions);
          }
        });
    return new PlacementSearch(List.of(new Placement.Asked(relaxed, requests, List.of())))
        .search(meter)
        .first()
        .complete();
  }
}
