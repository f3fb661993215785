package gripwright.plausibility;

import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.log.LogEntry;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.Schedule;
import gripwright.strength.ForceTime;
import gripwright.strength.KnownLight;
import gripwright.strength.PlausibleTests;
import gripwright.strength.StrengthTest;
import gripwright.strength.UsableTests;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reports implausible tests and tests that loads can't be based on. */
final class TestFacts {

  /**
   * Number of days after the last plan in which a test still belongs to it; the library's own
   * choice.
   */
  private static final int CLOSING_DAYS = 28;

  private final Known known;
  private final PlausibleTests plausible;
  private final TotalOrAdded total;
  private final List<Finding> findings = new ArrayList<>();

  /**
   * Setups that can be estimated from each other's tests: the same hands, and either hanging or
   * lifting.
   */
  private record Way(Hands hands, boolean lifting) {
    static Way of(Setup setup) {
      return new Way(setup.hands(), setup.lifting());
    }
  }

  /** A test and its position in the log. */
  private record Line(int entry, StrengthTest test) {
    LocalDate date() {
      return test.date();
    }

    Way way() {
      return Way.of(test.setup());
    }
  }

  TestFacts(Known known) {
    this.known = known;
    this.plausible = new PlausibleTests(known.log().tests(), known::bodyMassOn);
    this.total = new TotalOrAdded(known);
  }

  List<Finding> findings() {
    List<Line> serving = new ArrayList<>();
    for (int i = 0; i < known.log().entries().size(); i++) {
      if (known.log().entries().get(i) instanceof LogEntry.Tested tested) {
        Line line = new Line(i, tested.test());
        if (line.date().isBefore(known.athlete().born())) {
          findings.add(
              finding("log.test-before-birth", Severity.ERROR, line)
                  .with("born", known.athlete().born()));
        } else {
          load(line);
          if (isValidFor(line)) {
            serving.add(line);
          }
        }
      }
    }
    old(serving);
    late(serving);
    return findings;
  }

  private Finding finding(String code, Severity severity, Line line) {
    return known
        .ofLine(code, severity, line.entry())
        .with("setup", line.test().setup())
        .with("date", line.date());
  }

  /**
   * Returns whether the hold time of a test is usable; other times are reported when the text is
   * read.
   */
  private static boolean isValidFor(Line line) {
    return line.test().effort().filter(effort -> ForceTime.inRange(effort.seconds())).isPresent();
  }

  private void load(Line line) {
    StrengthTest test = line.test();
    if (plausible.doubtful(test)) {
      Load load = test.result().greatest();
      boolean impossible = plausible.impossible(test);
      Finding finding =
          finding(
                  impossible ? "log.test-impossible" : "log.test-high",
                  impossible ? Severity.ERROR : Severity.WARNING,
                  line)
              .with("load", Known.rounded(load))
              .with("mass", Known.rounded(known.bodyMassOn(line.date())))
              .with("most", Known.rounded(plausible.counted(test).result().greatest()))
              .with("time", Numbers.plain(test.effort().orElseThrow().seconds(), 1) + " s");
      findings.add(
          KnownLight.isUnder16(known.athlete(), line.date()) ? finding.with("young", "") : finding);
    } else if (test.result() instanceof StrengthTest.Held held
        && total.inDoubt(test.setup(), held.load(), line.date())) {
      findings.add(
          finding("log.total-or-added", Severity.WARNING, line)
              .with("load", Known.rounded(held.load()))
              .with("mass", Known.rounded(known.bodyMassOn(line.date()))));
    }
  }

  /** Reports the newest test of each way of holding that a plan uses, if it is old by then. */
  private void old(List<Line> tests) {
    Map<Integer, Finding> oldest = new LinkedHashMap<>();
    for (Plan plan : known.plans()) {
      for (Way way : ways(plan)) {
        newest(tests, way, plan.to())
            .filter(line -> isOld(line.test(), plan))
            .filter(line -> !retested(way, plan))
            .ifPresent(line -> oldest.putIfAbsent(line.entry(), old(line, plan)));
      }
    }
    findings.addAll(oldest.values());
  }

  private static boolean isOld(StrengthTest test, Plan plan) {
    return test.date().isBefore(plan.from().minusMonths(UsableTests.OLD_MONTHS));
  }

  private Finding old(Line line, Plan plan) {
    Finding finding =
        finding("log.test-old", Severity.ADVICE, line)
            .with("plan", plan.name())
            .with("from", plan.from())
            .with("months", UsableTests.OLD_MONTHS);
    return UsableTests.tooOld(line.test(), plan.from())
        ? finding.with("unused", UsableTests.MOST_MONTHS)
        : finding;
  }

  /** Returns whether a planned test replaces an old one before a plan begins. */
  private boolean retested(Way way, Plan plan) {
    for (Schedule schedule : known.schedules()) {
      for (DatedRetest retest : schedule.retests()) {
        boolean near =
            !retest.date().isBefore(plan.from().minusMonths(UsableTests.OLD_MONTHS))
                && retest.date().isBefore(plan.from());
        if (near && retest.setups().stream().anyMatch(setup -> Way.of(setup).equals(way))) {
          return true;
        }
      }
    }
    return false;
  }

  private Set<Way> ways(Plan plan) {
    String name = known.athlete().name();
    Set<Way> ways = new LinkedHashSet<>();
    plan.blocks().stream()
        .flatMap(block -> block.contentFor(name).sessions().stream())
        .flatMap(session -> session.contentFor(name).exercises().stream())
        .flatMap(exercise -> exercise.sides().stream())
        .forEach((Exercise each) -> ways.add(new Way(each.hands(), each.lifting())));
    return ways;
  }

  private static Optional<Line> newest(List<Line> tests, Way way, LocalDate day) {
    return tests.stream()
        .filter(line -> line.way().equals(way) && !line.date().isAfter(day))
        .reduce((first, second) -> second);
  }

  /** Reports tests after the last plan, except the one that closes it. */
  private void late(List<Line> tests) {
    Optional<LocalDate> last = known.lastDay();
    if (last.isEmpty()) {
      return;
    }
    Set<Way> used = new LinkedHashSet<>();
    known.plans().forEach(plan -> used.addAll(ways(plan)));
    Set<Way> reported = new LinkedHashSet<>();
    for (Line line : tests) {
      if (!line.date().isAfter(last.get())) {
        continue;
      }
      boolean far = line.date().isAfter(last.get().plusDays(CLOSING_DAYS));
      boolean only = used.contains(line.way()) && newest(tests, line.way(), last.get()).isEmpty();
      if ((far || only) && reported.add(line.way())) {
        findings.add(finding("log.test-late", Severity.ADVICE, line).with("last", last.get()));
      }
    }
  }
}
