package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.log.Log;
import gripwright.quantity.Length;
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

/**
 * What one athlete's tests say of strength on a day: the greatest load in every grip on every edge
 * that the athlete owns or was tested on, the greatest load by time, and critical force. Immutable.
 *
 * @param athlete whose strength
 * @param day the day; later tests are not known yet
 * @param tests what it rests on, oldest first
 * @param sections one for each way of holding that was tested: two hands first, hanging before
 *     lifting
 * @param criticalForces what tells critical force, the latest first
 */
public record StrengthSurvey(
    Athlete athlete,
    LocalDate day,
    List<StrengthTest> tests,
    List<Section> sections,
    List<Critical> criticalForces) {

  /**
   * One way of holding; none is reckoned from another.
   *
   * @param hands which hands hold
   * @param lifting true if a weight is lifted from the floor
   * @param rows by edge, the deepest first, then by grip in the order of the grips
   * @param curves greatest load by time in the setup that was tested most, by each form that its
   *     tests serve: Rohmert's, which plans use, first
   * @param testedAtSeveralTimes true if the tests tell how this athlete fades beside the population
   */
  public record Section(
      Hands hands,
      boolean lifting,
      List<Row> rows,
      List<Curve> curves,
      boolean testedAtSeveralTimes) {
    /** Copies the lists. */
    public Section {
      rows = List.copyOf(rows);
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
   * @param date day of the test, or of the latest one of several
   * @param force critical force and impulse
   */
  public record Critical(Setup setup, LocalDate date, CriticalForce force) {}

  /** Copies the lists. */
  public StrengthSurvey {
    tests = List.copyOf(tests);
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
   */
  public static StrengthSurvey of(
      Athlete athlete, Log log, Collection<Grip> grips, Optional<Length> edge, LocalDate day) {
    return new Surveyor(athlete, log, edge, day)
        .survey(grips.stream().sorted(GripSurvey.order()).toList());
  }

  /** Collects the parts of one survey. */
  private static final class Surveyor {

    private static final Comparator<Section> ORDER =
        Comparator.comparing(Section::hands).thenComparing(Section::lifting);

    private final Athlete athlete;
    private final Optional<Length> only;
    private final LocalDate day;
    private final List<StrengthTest> tests;
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
      this.fits = new HandFits(athlete);
      this.day = day;
      this.tests =
          log.tests().stream()
              .filter(test -> !test.date().isAfter(day))
              .filter(test -> test.effort().filter(e -> ForceTime.inRange(e.seconds())).isPresent())
              .toList();
      this.map = StrengthMap.of(tests, setup -> Posture.of(fits.of(setup).values()), day);
    }

    StrengthSurvey survey(List<Grip> grips) {
      List<Section> sections =
          tests.stream()
              .map(test -> Way.of(test.setup()))
              .distinct()
              .map(
                  way ->
                      new Section(
                          way.hands(),
                          way.lifting(),
                          rows(way, grips),
                          curves(way),
                          times(way) > 1))
              .sorted(ORDER)
              .toList();
      return new StrengthSurvey(athlete, day, tests, sections, criticalForces());
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

    private List<Row> rows(Way way, List<Grip> grips) {
      TreeSet<Length> edges = new TreeSet<>(Comparator.reverseOrder());
      only.ifPresentOrElse(
          edges::add,
          () -> {
            edges.addAll(athlete.equipment().edges());
            of(way).forEach(test -> edges.add(test.setup().edge()));
          });
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
      Setup most =
          of(way).stream()
              .map(StrengthTest::setup)
              .max(
                  Comparator.comparingInt((Setup setup) -> of(setup).size())
                      .thenComparing(this::lastTest)
                      .thenComparing(setup -> setup.grip().name(), Comparator.reverseOrder())
                      .thenComparing(Setup::edge))
              .orElseThrow();
      List<Curve> curves = new ArrayList<>();
      map.curve(most).ifPresent(curve -> curves.add(new Curve(most, curve)));
      for (ForceTime.Form form : ForceTime.Form.values()) {
        if (form != ForceTime.Form.ROHMERT) {
          ForceTime.fit(form, holds(most)).ifPresent(curve -> curves.add(new Curve(most, curve)));
        }
      }
      return curves;
    }

    private LocalDate lastTest(Setup setup) {
      List<StrengthTest> own = of(setup);
      return own.get(own.size() - 1).date();
    }

    /** Unbroken holds, without the series. */
    private List<Effort> holds(Setup setup) {
      return of(setup).stream()
          .filter(test -> !(test.result() instanceof StrengthTest.Series))
          .flatMap(test -> test.effort().stream())
          .toList();
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
                .ifPresent(force -> found.add(new Critical(test.setup(), test.date(), force)));
          }
        }
      }
      tests.stream()
          .map(StrengthTest::setup)
          .distinct()
          .forEach(
              setup ->
                  CriticalForce.ofHolds(holds(setup))
                      .ifPresent(force -> found.add(new Critical(setup, lastTest(setup), force))));
      found.sort(
          Comparator.comparing(
                  (Critical critical) ->
                      critical.force().definition() == CriticalForce.Definition.HOLDS_TO_FAILURE)
              .thenComparing(Critical::date, Comparator.reverseOrder())
              .thenComparing(critical -> critical.force().definition()));
      return found;
    }
  }
}
