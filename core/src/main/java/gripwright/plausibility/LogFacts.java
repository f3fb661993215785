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

/** Logged work that is far from the plan: loads, dates and edges that may be slips of the pen. */
final class LogFacts {

  /** A load above this share of what was planned is far from it. */
  private static final double FAR = 1.5;

  /** Loads closer than this, in kg, are never far apart; our own number. */
  private static final double CLOSE = 5;

  /** A load from this share of what was planned on is as planned; our own number. */
  private static final double AS_PLANNED = 0.8;

  /** A session more than so many days after the last plan is far from it. */
  private static final int FAR_DAYS = 60;

  /** Edges closer than this, in mm, are the same: inches are rounded; our own number. */
  private static final double SAME_EDGE = 0.5;

  private static final double TOLERANCE = 1e-9;
  private static final int DATES_SAID = 6;

  private final Known known;
  private final TotalOrAdded total;
  private final Map<Integer, DatedSession> planned = new HashMap<>();

  /** How far above the plausible the athlete is believed to be; 1 if not above it. */
  private final double believed;

  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, List<Integer>> strangeEdges = new LinkedHashMap<>();
  private final Map<FarKey, List<FarLoad>> farLoads = new LinkedHashMap<>();

  /** An exercise, and whether its loads are far from the plan or from what is likely. */
  private record FarKey(String protocol, String setup, boolean planned) {}

  /**
   * A logged load that is too far up to be likely.
   *
   * @param entry the line of the log
   * @param limit what was planned, or the most that is likely
   */
  private record FarLoad(int entry, LogEntry.Done done, Load load, Load limit, boolean planned) {
    double ratio() {
      return load.kilograms() / limit.kilograms();
    }
  }

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
    farLoads.values().forEach(loads -> findings.add(far(loads)));
    sessionsAfter();
    strangeEdges.forEach(
        (edge, lines) ->
            findings.add(
                known
                    .ofLine("log.edge-missing", Severity.ADVICE, lines.get(0))
                    .with("edge", edge)
                    .with("dates", dates(lines))
                    .with("owned", Listing.of(Listing.Style.COMMAS, edges()))));
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
          .ifPresent(load -> load(entry, done, load, Optional.ofNullable(plannedLoads.get(done))));
    }
  }

  private void load(int entry, LogEntry.Done done, Load load, Optional<Load> plannedLoad) {
    LocalDate day = known.log().entries().get(entry).date();
    Load mass = known.bodyMassOn(day);
    Load most = PlausibleTests.most(done.setup(), mass).times(believed);
    if (plannedLoad.filter(planned -> isFar(load, planned)).isPresent()) {
      add(new FarLoad(entry, done, load, plannedLoad.get(), true));
    } else if (load.kilograms() > most.kilograms() + TOLERANCE) {
      add(new FarLoad(entry, done, load, most, false));
    } else if (plannedLoad.filter(p -> load.kilograms() >= p.kilograms() * AS_PLANNED).isEmpty()
        && total.inDoubt(done.setup(), load, day)) {
      findings.add(
          known
              .ofLine("log.total-or-added", Severity.WARNING, entry)
              .with("load", Known.rounded(load))
              .with("mass", Known.rounded(mass))
              .with("setup", done.setup())
              .with("date", day));
    }
  }

  private void add(FarLoad far) {
    FarKey key = new FarKey(far.done().protocol(), far.done().setup().toString(), far.planned());
    farLoads.computeIfAbsent(key, k -> new ArrayList<>()).add(far);
  }

  /** Returns one finding for the loads of an exercise, at the one that is farthest off. */
  private Finding far(List<FarLoad> loads) {
    FarLoad worst =
        loads.stream()
            .reduce((one, other) -> other.ratio() > one.ratio() ? other : one)
            .orElseThrow();
    LocalDate day = known.log().entries().get(worst.entry()).date();
    List<Integer> lines = loads.stream().map(FarLoad::entry).distinct().toList();
    Finding finding = known.ofLine("log.load-far", Severity.WARNING, worst.entry());
    if (loads.size() > 1) {
      finding = finding.with(worst.planned() ? "several" : "several-most", loads.size());
      finding = finding.with("count", loads.size()).with("dates", dates(lines));
    }
    finding =
        worst.planned()
            ? finding.with("planned", Known.rounded(worst.limit()))
            : finding
                .with("most", Known.rounded(worst.limit()))
                .with("mass", Known.rounded(known.bodyMassOn(day)));
    return finding
        .with("load", Known.rounded(worst.load()))
        .with("setup", worst.done().setup())
        .with("date", day);
  }

  private static boolean isFar(Load load, Load planned) {
    return load.kilograms() > planned.kilograms() * FAR + TOLERANCE
        && load.kilograms() > planned.kilograms() + CLOSE + TOLERANCE;
  }

  /** Returns the loads that were planned for a line's exercises, on the same edge. */
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
    return edges().stream().anyMatch(owned -> same(owned, edge));
  }

  private List<Length> edges() {
    return known.athlete().allEquipment().stream()
        .flatMap(each -> each.edges().stream())
        .distinct()
        .toList();
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
