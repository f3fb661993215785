package gripwright.survey;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.HandFits;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.log.Log;
import gripwright.quantity.Length;
import gripwright.quantity.Range;
import gripwright.strength.CriticalForce;
import gripwright.strength.EdgeDepth;
import gripwright.strength.Effort;
import gripwright.strength.ForceTime;
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What one athlete's tests say of strength on a day: the greatest load in every grip on every edge
 * that the athlete owns or was tested on, the greatest load by time, and critical force. Immutable.
 *
 * @param athlete whose strength
 * @param day the day; later tests are not known yet; empty if nothing is logged and none was asked
 *     for
 * @param tests what it rests on, oldest first
 * @param unused tests up to the day that tell nothing, oldest first
 * @param sections one for each way of holding that was tested: two hands first, hanging before
 *     lifting
 * @param criticalForces what tells critical force, by way of holding as the sections are; of one
 *     way the most certain first, as far as its spread and the time since tell
 */
public record StrengthSurvey(
    Athlete athlete,
    Optional<LocalDate> day,
    List<StrengthTest> tests,
    List<Unused> unused,
    List<Section> sections,
    List<Critical> criticalForces) {

  /**
   * One way of holding; none is reckoned from another.
   *
   * @param hands which hands hold
   * @param lifting true if a weight is lifted from the floor
   * @param rows by edge, the deepest first, then by grip in the order of the grips
   * @param unreckoned edges, the deepest first, that no test tells of: at or below 4.3 mm nothing
   *     is reckoned from another edge
   * @param curves greatest load by time in the setup that was tested most, on the only edge if one
   *     was asked for, by each form that its tests serve: Rohmert's, which plans use, first; empty
   *     if that edge is unreckoned
   * @param testedAtSeveralTimes true if the tests tell how this athlete fades beside the population
   */
  public record Section(
      Hands hands,
      boolean lifting,
      List<Row> rows,
      List<Length> unreckoned,
      List<Curve> curves,
      boolean testedAtSeveralTimes) {
    /** Copies the lists. */
    public Section {
      rows = List.copyOf(rows);
      unreckoned = List.copyOf(unreckoned);
      curves = List.copyOf(curves);
    }
  }

  /**
   * A grip on an edge.
   *
   * @param setup grip, edge and hands
   * @param reachable true if every hand that holds takes the grip on the edge
   * @param estimate the reference maximum
   * @param tests how many tests there are of this very setup
   */
  public record Row(Setup setup, boolean reachable, StrengthMap.Estimate estimate, int tests) {}

  /**
   * A curve of one setup.
   *
   * @param setup grip, edge and hands
   * @param forceTime greatest load by time
   */
  public record Curve(Setup setup, ForceTime forceTime) {}

  /**
   * A critical force and where it comes from.
   *
   * @param setup grip, edge and hands
   * @param first day of the test, or of the earliest one of several
   * @param date day of the test, or of the latest one of several
   * @param force critical force and impulse, as uncertain as the time since leaves them
   */
  public record Critical(Setup setup, LocalDate first, LocalDate date, CriticalForce force) {}

  /**
   * A test that tells nothing.
   *
   * @param test the test
   * @param reason why not
   */
  public record Unused(StrengthTest test, Reason reason) {}

  /** Why a test tells nothing. */
  public enum Reason {
    /** It was held for less than 2 s. */
    TOO_SHORT,
    /** It was held for more than 10 min. */
    TOO_LONG,
    /** No load was held. */
    NO_LOAD
  }

  /** Copies the lists. */
  public StrengthSurvey {
    tests = List.copyOf(tests);
    unused = List.copyOf(unused);
    sections = List.copyOf(sections);
    criticalForces = List.copyOf(criticalForces);
  }

  /**
   * Surveys an athlete's strength.
   *
   * @param athlete whose strength
   * @param log the tests
   * @param grips the grips to reckon with, in any order
   * @param edge the only edge to reckon; if empty, those that were tested and those the athlete
   *     owns
   * @param day the day
   * @throws IllegalArgumentException if the edge is outside 1 to 200 mm, or the log is not the
   *     athlete's
   */
  public static StrengthSurvey of(
      Athlete athlete, Log log, Collection<Grip> grips, Optional<Length> edge, LocalDate day) {
    log.requireOf(athlete);
    edge.ifPresent(Range.EDGE::check);
    return new Surveyor(athlete, log, edge, day)
        .survey(grips.stream().sorted(GripSurvey.order()).toList());
  }

  /** Returns what is known of an athlete without a log, on whatever day: nothing. */
  public static StrengthSurvey untested(Athlete athlete) {
    return new StrengthSurvey(
        athlete, Optional.empty(), List.of(), List.of(), List.of(), List.of());
  }

  /** Collects the parts of one survey. */
  private static final class Surveyor {

    private static final Comparator<Way> ORDER =
        Comparator.comparing(Way::hands).thenComparing(Way::lifting);

    private final Athlete athlete;
    private final Optional<Length> only;
    private final LocalDate day;
    private final List<StrengthTest> tests;
    private final List<Unused> unused = new ArrayList<>();
    private final HandFits fits;
    private final StrengthMap map;

    private record Way(Hands hands, boolean lifting) {
      static Way of(Setup setup) {
        return new Way(setup.hands(), setup.lifting());
      }
    }

    Surveyor(Athlete athlete, Log log, Optional<Length> only, LocalDate day) {
      this.athlete = athlete;
      this.only = only;
      this.fits = new HandFits(athlete.shape(Side.LEFT), athlete.shape(Side.RIGHT));
      this.day = day;
      List<StrengthTest> used = new ArrayList<>();
      for (StrengthTest test : log.tests()) {
        if (!test.date().isAfter(day)) {
          why(test)
              .ifPresentOrElse(
                  reason -> unused.add(new Unused(test, reason)), () -> used.add(test));
        }
      }
      this.tests = List.copyOf(used);
      this.map = StrengthMap.of(tests, setup -> Posture.of(fits.of(setup).values()), day);
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
          athlete, Optional.of(day), tests, unused, sections, criticalForces());
    }

    /** Returns why a test tells nothing; empty if it tells something. */
    private static Optional<Reason> why(StrengthTest test) {
      Optional<Effort> effort = test.effort();
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
          edges.stream().filter(edge -> !reckons(way, edge)).toList(),
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
            edges.addAll(athlete.equipment().edges());
            of(way).forEach(test -> edges.add(test.setup().edge()));
          });
      return List.copyOf(edges);
    }

    private boolean reckons(Way way, Length edge) {
      return of(way).stream().anyMatch(test -> EdgeDepth.reckons(test.setup().edge(), edge));
    }

    private List<Row> rows(Way way, List<Length> edges, List<Grip> grips) {
      List<Row> rows = new ArrayList<>();
      for (Length edge : edges) {
        for (Grip grip : grips) {
          Setup setup = new Setup(grip, edge, way.hands(), way.lifting());
          map.maximum(setup)
              .map(estimate -> new Row(setup, fits.takes(setup), estimate, of(setup).size()))
              .ifPresent(rows::add);
        }
      }
      return rows;
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

    /** The setup that was tested most, on the only edge if there is one. */
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

    /** Unbroken holds, without the series, as they count on the day. */
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
                  CriticalForce.Definition.MEAN_OF_LAST_THREE,
                  CriticalForce.Definition.ASYMPTOTE)) {
            CriticalForce.ofSeries(series, definition)
                .map(force -> force.aged(drift(test)))
                .ifPresent(
                    force ->
                        found.add(new Critical(test.setup(), test.date(), test.date(), force)));
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
}
