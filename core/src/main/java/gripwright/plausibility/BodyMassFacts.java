package gripwright.plausibility;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Severity;
import gripwright.log.LogEntry;
import gripwright.plan.Plan;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Checks written and logged body mass for implausible values and fast loss. All limits are the
 * library's own choice. Of several weighings on a day the last counts, as for loads.
 */
final class BodyMassFacts {

  /** Age from which adult limits apply, in months. */
  private static final int SIXTEEN = 16 * 12;

  private static final double LEAST = 25;
  private static final double MOST = 200;
  private static final double LEAST_FROM_SIXTEEN = 35;
  private static final double IMPOSSIBLE_FROM_SIXTEEN = 30;

  /** Maximum weekly loss without a finding, as a share of body mass. */
  private static final double WEEKLY_FALL = 0.01;

  private static final int FALL_WEIGHINGS = 3;
  private static final int FALL_DAYS = 21;

  /** Maximum difference within two weeks without a finding, as a share of body mass. */
  private static final double JUMP = 0.04;

  private static final int JUMP_DAYS = 14;
  private static final double TOLERANCE = 1e-9;

  private final Known known;
  private final List<Finding> findings = new ArrayList<>();

  /** A weighing and its position in the log. */
  private record Weighing(int entry, LocalDate date, Load mass) {
    double kilograms() {
      return mass.kilograms();
    }
  }

  BodyMassFacts(Known known) {
    this.known = known;
  }

  List<Finding> findings() {
    unusual(
        known.athlete().bodyMass(), known.writtenOn(), known.athlete().path().then("body-mass", 1));
    List<Weighing> weighings = weighings();
    for (Weighing each : weighings) {
      unusual(each.mass(), Optional.of(each.date()), entry(each.entry()));
    }
    fall(weighings.stream().filter(each -> !known.athlete().isAway(each.date())).toList());
    jumps(weighings);
    weighings.stream().findFirst().ifPresent(this::declared);
    return findings;
  }

  private ModelPath entry(int entry) {
    return ModelPath.of("log", known.athlete().name()).then("entry", entry + 1);
  }

  private List<Weighing> weighings() {
    Map<LocalDate, Weighing> byDay = new TreeMap<>();
    List<LogEntry> entries = known.log().entries();
    for (int i = 0; i < entries.size(); i++) {
      if (entries.get(i) instanceof LogEntry.BodyMass body) {
        byDay.put(body.date(), new Weighing(i, body.date(), body.mass()));
      }
    }
    return List.copyOf(byDay.values());
  }

  private void unusual(Load mass, Optional<LocalDate> day, ModelPath place) {
    double kilograms = mass.kilograms();
    boolean sixteen = day.filter(date -> known.athlete().ageInMonths(date) >= SIXTEEN).isPresent();
    if (sixteen && kilograms < IMPOSSIBLE_FROM_SIXTEEN - TOLERANCE) {
      findings.add(
          known
              .ofAthlete("athlete.body-mass-error", Severity.ERROR, place)
              .with("mass", mass)
              .with("low", Numbers.plain(IMPOSSIBLE_FROM_SIXTEEN, 0) + " kg"));
      return;
    }
    double low = sixteen ? LEAST_FROM_SIXTEEN : LEAST;
    if (kilograms < low - TOLERANCE || kilograms > MOST + TOLERANCE) {
      findings.add(
          known
              .ofAthlete("athlete.body-mass", Severity.WARNING, place)
              .with("mass", mass)
              .with("low", Numbers.plain(low, 0) + " kg")
              .with("high", Numbers.plain(MOST, 0) + " kg"));
    }
  }

  /**
   * Reports the fastest loss over at least three weighings and three weeks, not counting time away.
   */
  private void fall(List<Weighing> weighings) {
    double worst = WEEKLY_FALL + TOLERANCE;
    Optional<Finding> finding = Optional.empty();
    int first = 0;
    for (int last = FALL_WEIGHINGS - 1; last < weighings.size(); last++) {
      Weighing to = weighings.get(last);
      // Only the latest weighing that is far enough back, so that an old loss is not reported
      // forever.
      while (first + FALL_WEIGHINGS <= last && farEnough(weighings.get(first + 1), to)) {
        first++;
      }
      Weighing from = weighings.get(first);
      if (last - first < FALL_WEIGHINGS - 1 || !farEnough(from, to)) {
        continue;
      }
      double weeks = ChronoUnit.DAYS.between(from.date(), to.date()) / 7.0;
      double weekly = (1 - to.kilograms() / from.kilograms()) / weeks;
      if (weekly > worst) {
        worst = weekly;
        finding =
            Optional.of(
                known
                    .ofLine("athlete.body-mass-falling", Severity.WARNING, to.entry())
                    .with("from", from.mass())
                    .with("since", from.date())
                    .with("to", to.mass())
                    .with("date", to.date())
                    .with("percent", Numbers.plain(weekly * 100, 2) + " %"));
      }
    }
    finding.ifPresent(findings::add);
  }

  /** Returns whether two weighings are at least {@link #FALL_DAYS} apart, without days away. */
  private boolean farEnough(Weighing from, Weighing to) {
    long days = ChronoUnit.DAYS.between(from.date(), to.date());
    if (days >= FALL_DAYS && known.athlete().away().isEmpty()) {
      return true;
    }
    long atHome = 0;
    for (LocalDate day = from.date();
        atHome < FALL_DAYS && day.isBefore(to.date());
        day = day.plusDays(1)) {
      atHome += known.athlete().isAway(day) ? 0 : 1;
    }
    return atHome >= FALL_DAYS;
  }

  /**
   * Reports each weighing that is far from one in the two weeks before it, unless that one was
   * reported itself.
   */
  private void jumps(List<Weighing> weighings) {
    Set<Weighing> reported = new HashSet<>();
    for (int i = 1; i < weighings.size(); i++) {
      Weighing to = weighings.get(i);
      Optional<Weighing> from = Optional.empty();
      for (int j = i - 1; j >= 0; j--) {
        Weighing before = weighings.get(j);
        if (before.date().isBefore(to.date().minusDays(JUMP_DAYS))) {
          break;
        }
        if (difference(before, to) > JUMP + TOLERANCE
            && !reported.contains(before)
            && (from.isEmpty() || difference(before, to) > difference(from.get(), to))) {
          from = Optional.of(before);
        }
      }
      if (from.isPresent()) {
        reported.add(to);
        findings.add(
            known
                .ofLine("athlete.body-mass-jump", Severity.WARNING, to.entry())
                .with("from", from.get().mass())
                .with("since", from.get().date())
                .with("to", to.mass())
                .with("date", to.date())
                .with("percent", Numbers.plain(difference(from.get(), to) * 100, 2) + " %"));
      }
    }
  }

  /**
   * Reports a first weighing in the first two weeks of a plan that is far from the written body
   * mass, which the plan uses until then.
   */
  private void declared(Weighing first) {
    Load written = known.athlete().bodyMass();
    double difference = Math.abs(first.kilograms() / written.kilograms() - 1);
    if (difference <= JUMP + TOLERANCE) {
      return;
    }
    known.plans().stream()
        .filter(plan -> plan.from().isBefore(first.date()))
        .filter(plan -> !first.date().isAfter(plan.from().plusDays(JUMP_DAYS)))
        .min(Comparator.comparing(Plan::from).thenComparing(Plan::name))
        .ifPresent(
            plan ->
                findings.add(
                    known
                        .ofLine("athlete.body-mass-written", Severity.WARNING, first.entry())
                        .with("written", written)
                        .with("mass", first.mass())
                        .with("date", first.date())
                        .with("plan", plan.name())
                        .with("percent", Numbers.plain(difference * 100, 2) + " %")));
  }

  private static double difference(Weighing from, Weighing to) {
    return Math.abs(to.kilograms() / from.kilograms() - 1);
  }
}
