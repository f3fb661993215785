package gripwright.survey;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.log.Log;
import gripwright.quantity.Length;
import gripwright.strength.CompletedHold;
import gripwright.strength.CriticalForce;
import gripwright.strength.EdgeDepth;
import gripwright.strength.Effort;
import gripwright.strength.ForceTime;
import gripwright.strength.KnownLight;
import gripwright.strength.Posture;
import gripwright.strength.StrengthCourse;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import gripwright.strength.UsableTests;
import gripwright.survey.StrengthSurvey.Critical;
import gripwright.survey.StrengthSurvey.Curve;
import gripwright.survey.StrengthSurvey.Reason;
import gripwright.survey.StrengthSurvey.Row;
import gripwright.survey.StrengthSurvey.Section;
import gripwright.survey.StrengthSurvey.Unused;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Calculates one survey of strength. Not reusable. */
final class StrengthSurveyor {

  private static final Comparator<Way> ORDER =
      Comparator.comparing(Way::hands).thenComparing(Way::lifting);

  private final Athlete athlete;
  private final Optional<Length> only;
  private final LocalDate day;
  private final List<StrengthTest> tests;
  private final List<Unused> unused = new ArrayList<>();
  private final List<StrengthTest> lowered = new ArrayList<>();
  private final HandFits fits;
  private final StrengthMap map;
  private final StrengthCourse course;

  private record Way(Hands hands, boolean lifting) {
    static Way of(Setup setup) {
      return new Way(setup.hands(), setup.lifting());
    }
  }

  StrengthSurveyor(
      Athlete athlete,
      Log log,
      Optional<Length> only,
      LocalDate day,
      Collection<CompletedHold> holds) {
    this.athlete = athlete;
    this.only = only;
    this.fits = new HandFits(athlete.shape(Side.LEFT), athlete.shape(Side.RIGHT));
    this.day = day;
    UsableTests usable =
        new UsableTests(
            log.tests(),
            this::posture,
            date -> log.bodyMassOn(date).orElse(athlete.bodyMass()),
            date -> KnownLight.isUnder16(athlete, date));
    List<StrengthTest> used = new ArrayList<>();
    for (UsableTests.Judged test : usable.judged(day)) {
      Optional<Reason> why = why(test);
      if (why.isPresent()) {
        unused.add(new Unused(test.logged(), why.get()));
      } else {
        used.add(test.counts());
        if (test.worth() == UsableTests.Worth.LOWERED) {
          lowered.add(test.logged());
        }
      }
    }
    this.tests = List.copyOf(used);
    this.map = StrengthMap.of(tests, this::posture, day);
    this.course = StrengthCourse.of(tests, holds, this::posture, day);
  }

  private Posture posture(Setup setup) {
    return Posture.of(fits.of(setup).values());
  }

  StrengthSurvey survey(List<Grip> grips) {
    List<Section> sections =
        tests.stream()
            .map(test -> Way.of(test.setup()))
            .distinct()
            .sorted(ORDER)
            .map(way -> section(way, grips))
            .toList();
    return new StrengthSurvey(
        new StrengthSurvey.Parts(
            athlete, Optional.of(day), tests, unused, lowered, sections, criticalForces()));
  }

  /** Returns why a test is not used; empty if it is. */
  private static Optional<Reason> why(UsableTests.Judged test) {
    if (!test.used()) {
      return Optional.of(
          switch (test.worth()) {
            case DOUBTED -> Reason.DOUBTED;
            case ODD -> Reason.ODD;
            default -> Reason.TOO_OLD;
          });
    }
    Optional<Effort> effort = test.logged().effort();
    if (effort.isEmpty()) {
      return Optional.of(Reason.NO_LOAD);
    }
    double seconds = effort.get().seconds();
    return ForceTime.inRange(seconds)
        ? Optional.empty()
        : Optional.of(seconds < ForceTime.SHORTEST_SECONDS ? Reason.TOO_SHORT : Reason.TOO_LONG);
  }

  private Section section(Way way, List<Grip> grips) {
    List<Length> edges = edges(way);
    return new Section(
        way.hands(),
        way.lifting(),
        rows(way, edges, grips),
        edges.stream().filter(edge -> !canEstimate(way, edge)).toList(),
        curves(way),
        times(way) > 1);
  }

  private List<StrengthTest> of(Way way) {
    return tests.stream().filter(test -> Way.of(test.setup()).equals(way)).toList();
  }

  private long times(Way way) {
    return of(way).stream()
        .flatMap(test -> test.effort().stream())
        .map(Effort::seconds)
        .distinct()
        .count();
  }

  private List<StrengthTest> of(Setup setup) {
    return tests.stream().filter(test -> same(test.setup(), setup)).toList();
  }

  private static boolean same(Setup one, Setup other) {
    return Way.of(one).equals(Way.of(other))
        && one.grip().name().equals(other.grip().name())
        && EdgeDepth.same(one.edge(), other.edge());
  }

  private List<Length> edges(Way way) {
    TreeSet<Length> edges = new TreeSet<>(Comparator.reverseOrder());
    only.ifPresentOrElse(
        edges::add,
        () -> {
          athlete.allEquipment().forEach(each -> edges.addAll(each.edges()));
          of(way).forEach(test -> edges.add(test.setup().edge()));
        });
    return List.copyOf(edges);
  }

  private boolean canEstimate(Way way, Length edge) {
    return of(way).stream().anyMatch(test -> EdgeDepth.canEstimate(test.setup().edge(), edge));
  }

  private List<Row> rows(Way way, List<Length> edges, List<Grip> grips) {
    List<Row> rows = new ArrayList<>();
    for (Length edge : edges) {
      for (Grip grip : grips) {
        Setup setup = new Setup(grip, edge, way.hands(), way.lifting());
        map.maximum(setup).map(estimate -> row(setup, estimate)).ifPresent(rows::add);
      }
    }
    return rows;
  }

  private Row row(Setup setup, StrengthMap.Estimate estimate) {
    List<LocalDate> days = of(setup).stream().map(StrengthTest::date).distinct().sorted().toList();
    return new Row(
        setup,
        fits.takes(setup),
        estimate,
        of(setup).size(),
        days.size() < 2
            ? Optional.empty()
            : course.change(setup, days.get(0), days.get(days.size() - 1)),
        days.isEmpty() && course.hasHolds(setup) ? course.maximum(setup) : Optional.empty());
  }

  private List<Curve> curves(Way way) {
    Setup most = mostTested(way);
    List<Curve> curves = new ArrayList<>();
    map.curve(most).ifPresent(curve -> curves.add(new Curve(most, curve)));
    for (ForceTime.Form form : ForceTime.Form.values()) {
      if (form != ForceTime.Form.ROHMERT) {
        ForceTime.fit(form, holds(most)).ifPresent(curve -> curves.add(new Curve(most, curve)));
      }
    }
    return curves;
  }

  /** Returns the setup with the most tests, on the given edge if there is one. */
  private Setup mostTested(Way way) {
    List<Setup> tested = of(way).stream().map(StrengthTest::setup).toList();
    List<Setup> there =
        tested.stream()
            .filter(setup -> only.filter(edge -> EdgeDepth.same(edge, setup.edge())).isPresent())
            .toList();
    Setup most =
        (there.isEmpty() ? tested : there)
            .stream()
                .max(
                    Comparator.comparingInt((Setup setup) -> of(setup).size())
                        .thenComparing(this::lastTest)
                        .thenComparing(setup -> setup.grip().name(), Comparator.reverseOrder())
                        .thenComparing(Setup::edge))
                .orElseThrow();
    return only.map(most::withEdge).orElse(most);
  }

  private LocalDate lastTest(Setup setup) {
    List<StrengthTest> own = of(setup);
    return own.get(own.size() - 1).date();
  }

  /** Returns unbroken holds, without series, as they count on the day. */
  private List<Effort> holds(Setup setup) {
    return holdTests(setup).flatMap(this::aged).toList();
  }

  private Stream<StrengthTest> holdTests(Setup setup) {
    return of(setup).stream().filter(test -> !(test.result() instanceof StrengthTest.Series));
  }

  private Stream<Effort> aged(StrengthTest test) {
    return test.effort().stream().map(effort -> effort.aged(drift(test)));
  }

  private double drift(StrengthTest test) {
    return StrengthMap.drift(test.date(), day);
  }

  private List<Critical> criticalForces() {
    List<Critical> found = new ArrayList<>();
    for (StrengthTest test : tests) {
      if (test.result() instanceof StrengthTest.Series series) {
        for (CriticalForce.Definition definition :
            List.of(
                CriticalForce.Definition.MEAN_OF_LAST_THREE, CriticalForce.Definition.ASYMPTOTE)) {
          CriticalForce.ofSeries(series, definition)
              .map(force -> force.aged(drift(test)))
              .ifPresent(
                  force -> found.add(new Critical(test.setup(), test.date(), test.date(), force)));
        }
      }
    }
    tests.stream()
        .map(StrengthTest::setup)
        .distinct()
        .forEach(
            setup ->
                CriticalForce.ofHolds(holds(setup)).ifPresent(f -> found.add(ofHolds(setup, f))));
    found.sort(
        Comparator.comparing((Critical critical) -> Way.of(critical.setup()), ORDER)
            .thenComparingDouble(critical -> critical.force().force().spread())
            .thenComparing(Critical::date, Comparator.reverseOrder())
            .thenComparing(critical -> critical.force().definition()));
    return found;
  }

  private Critical ofHolds(Setup setup, CriticalForce force) {
    List<LocalDate> dates =
        holdTests(setup)
            .filter(
                test ->
                    test.effort().orElseThrow().seconds() >= CriticalForce.SHORTEST_HOLD_SECONDS)
            .map(StrengthTest::date)
            .toList();
    return new Critical(setup, dates.get(0), dates.get(dates.size() - 1), force);
  }
}
