package gripwright.plausibility;

import gripwright.finding.Finding;
import gripwright.finding.Listing;
import gripwright.finding.Severity;
import gripwright.history.ExerciseMatch;
import gripwright.log.LogEntry;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import gripwright.strength.PlausibleTests;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Checks logged loads, dates and edges that are far from the plan and may be typing errors. */
final class LogFacts {

  /** Loads above this share of the planned load are reported. */
  private static final double FAR = 1.5;

  /** Smaller differences between loads are not reported, in kg; the library's own choice. */
  private static final double CLOSE = 5;

  /** Loads from this share of the planned load on count as planned; the library's own choice. */
  private static final double AS_PLANNED = 0.8;

  /** Sessions more days after the last plan are reported. */
  private static final int FAR_DAYS = 60;

  /**
   * Tolerance when edges are compared, in mm, because inches are rounded; the library's own choice.
   */
  private static final double SAME_EDGE = 0.5;

  private static final double TOLERANCE = 1e-9;
  private static final int DATES_SAID = 6;

  private final Known known;
  private final TotalOrAdded total;
  private final Map<Integer, DatedSession> planned = new HashMap<>();

  /** Factor by which the athlete's confirmed tests exceed the plausible limit; at least 1. */
  private final double believed;

  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, List<Integer>> strangeEdges = new LinkedHashMap<>();

  LogFacts(Known known) {
    this.known = known;
    this.total = new TotalOrAdded(known);
    for (Schedule schedule : known.schedules()) {
      for (DatedSession session : schedule.sessions()) {
        session
            .happened()
            .ifPresent(
                happened ->
                    happened
                        .planned()
                        .ifPresent(was -> planned.putIfAbsent(happened.entry(), was)));
      }
    }
    PlausibleTests plausible = new PlausibleTests(known.log().tests(), known::bodyMassOn);
    this.believed =
        known.log().tests().stream()
            .filter(test -> !plausible.doubtful(test))
            .mapToDouble(plausible::share)
            .reduce(1, Math::max);
  }

  List<Finding> findings() {
    List<LogEntry> entries = known.log().entries();
    for (int i = 0; i < entries.size(); i++) {
      LogEntry entry = entries.get(i);
      if (entry instanceof LogEntry.Tested) {
        continue;
      }
      if (entry.date().isBefore(known.athlete().born())) {
        findings.add(
            known
                .ofLine("log.before-birth", Severity.WARNING, i)
                .with("date", entry.date())
                .with("born", known.athlete().born()));
      }
      if (entry instanceof LogEntry.Trained trained) {
        sets(i, trained);
      }
    }
    sessionsAfter();
    strangeEdges.forEach(
        (edge, lines) ->
            findings.add(
                known
                    .ofLine("log.edge-missing", Severity.ADVICE, lines.get(0))
                    .with("edge", edge)
                    .with("dates", dates(lines))
                    .with(
                        "owned",
                        Listing.of(Listing.Style.COMMAS, known.athlete().equipment().edges()))));
    return findings;
  }

  private Listing dates(List<Integer> lines) {
    List<LocalDate> days =
        lines.stream().map(line -> known.log().entries().get(line).date()).distinct().toList();
    return Listing.few(DATES_SAID, Listing.Style.COMMAS, days);
  }

  private void sets(int entry, LogEntry.Trained trained) {
    IdentityHashMap<LogEntry.Done, Load> plannedLoads = plannedLoads(entry, trained);
    for (LogEntry.Done done : trained.done()) {
      Length edge = done.setup().edge();
      if (!owns(edge)) {
        strangeEdges.computeIfAbsent(edge.toString(), e -> new ArrayList<>()).add(entry);
      }
      done.load()
          .flatMap(
              load ->
                  doubt(done, load, Optional.ofNullable(plannedLoads.get(done)), trained.date()))
          .ifPresent(
              doubt ->
                  findings.add(
                      doubt.apply(entry).with("setup", done.setup()).with("date", trained.date())));
    }
  }

  /** Creates a finding for a log entry. */
  private interface Doubt {
    Finding apply(int entry);
  }

  private Optional<Doubt> doubt(
      LogEntry.Done done, Load load, Optional<Load> plannedLoad, LocalDate day) {
    Load mass = known.bodyMassOn(day);
    Load most = PlausibleTests.most(done.setup(), mass).times(believed);
    if (plannedLoad.filter(each -> isFar(load, each)).isPresent()) {
      return Optional.of(
          entry ->
              known
                  .ofLine("log.load-far", Severity.WARNING, entry)
                  .with("load", Known.rounded(load))
                  .with("planned", Known.rounded(plannedLoad.get())));
    }
    if (load.kilograms() > most.kilograms() + TOLERANCE) {
      return Optional.of(
          entry ->
              known
                  .ofLine("log.load-far", Severity.WARNING, entry)
                  .with("load", Known.rounded(load))
                  .with("most", Known.rounded(most))
                  .with("mass", Known.rounded(mass)));
    }
    boolean asPlanned =
        plannedLoad.filter(p -> load.kilograms() >= p.kilograms() * AS_PLANNED).isPresent();
    return !asPlanned && total.inDoubt(done.setup(), load, day)
        ? Optional.of(
            entry ->
                known
                    .ofLine("log.total-or-added", Severity.WARNING, entry)
                    .with("load", Known.rounded(load))
                    .with("mass", Known.rounded(mass)))
        : Optional.empty();
  }

  private static boolean isFar(Load load, Load planned) {
    return load.kilograms() > planned.kilograms() * FAR + TOLERANCE
        && load.kilograms() > planned.kilograms() + CLOSE + TOLERANCE;
  }

  /** Returns the planned loads of the exercises of an entry, if done on the planned edge. */
  private IdentityHashMap<LogEntry.Done, Load> plannedLoads(int entry, LogEntry.Trained trained) {
    IdentityHashMap<LogEntry.Done, Load> plannedLoads = new IdentityHashMap<>();
    DatedSession session = planned.get(entry);
    if (session != null) {
      for (ExerciseMatch match : ExerciseMatch.of(session, trained)) {
        Optional<PlannedExercise> exercise =
            match
                .planned()
                .filter(
                    e ->
                        match
                            .done()
                            .filter(d -> same(d.setup().edge(), e.setup().edge()))
                            .isPresent());
        exercise.ifPresent(e -> plannedLoads.put(match.done().orElseThrow(), e.totalLoad()));
      }
    }
    return plannedLoads;
  }

  private boolean owns(Length edge) {
    return known.athlete().equipment().edges().stream().anyMatch(owned -> same(owned, edge));
  }

  private static boolean same(Length one, Length other) {
    return Math.abs(one.millimetres() - other.millimetres()) < SAME_EDGE;
  }

  private void sessionsAfter() {
    Optional<LocalDate> last = known.lastDay();
    if (last.isEmpty()) {
      return;
    }
    LocalDate limit = last.get().plusDays(FAR_DAYS);
    List<Integer> far = new ArrayList<>();
    List<LogEntry> entries = known.log().entries();
    for (int i = 0; i < entries.size(); i++) {
      if (entries.get(i) instanceof LogEntry.OfSession && entries.get(i).date().isAfter(limit)) {
        far.add(i);
      }
    }
    if (!far.isEmpty()) {
      findings.add(
          known
              .ofLine("log.session-far", Severity.WARNING, far.get(0))
              .with("dates", dates(far))
              .with("days", FAR_DAYS)
              .with("last", last.get()));
    }
  }
}
