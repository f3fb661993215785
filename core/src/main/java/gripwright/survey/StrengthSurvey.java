package gripwright.survey;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.log.Log;
import gripwright.quantity.Length;
import gripwright.quantity.Range;
import gripwright.strength.CompletedHold;
import gripwright.strength.CriticalForce;
import gripwright.strength.ForceTime;
import gripwright.strength.LoadEstimate;
import gripwright.strength.PlausibleTests;
import gripwright.strength.StrengthChange;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import gripwright.strength.UsableTests;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One athlete's strength on a day, estimated from tests: the greatest load in every grip on every
 * edge that the athlete owns or was tested on, the greatest load by time, and critical force.
 * Immutable.
 */
public final class StrengthSurvey {

  /**
   * One way of holding, which is never estimated from another.
   *
   * @param hands the hands that hold
   * @param lifting true if a weight is lifted from the floor
   * @param rows estimates by edge, the deepest first, then by grip in the order of the grips
   * @param withoutEstimate edges without an estimate, the deepest first, because at or below 4.3 mm
   *     nothing is estimated from another edge
   * @param curves greatest load by time in the most tested setup, on the given edge if there is
   *     one; one curve for each form that its tests allow, Rohmert's, which plans use, first; empty
   *     if that edge has no estimate
   * @param testedAtSeveralTimes true if the tests show how this athlete fades relative to the
   *     population
   */
  public record Section(
      Hands hands,
      boolean lifting,
      List<Row> rows,
      List<Length> withoutEstimate,
      List<Curve> curves,
      boolean testedAtSeveralTimes) {
    /** Copies the lists. */
    public Section {
      rows = List.copyOf(rows);
      withoutEstimate = List.copyOf(withoutEstimate);
      curves = List.copyOf(curves);
    }
  }

  /**
   * A grip on an edge.
   *
   * @param setup grip, edge and hands
   * @param reachable true if every hand in use can take the grip on the edge
   * @param estimate the reference maximum
   * @param tests number of tests of exactly this setup
   * @param change from the first to the last of them, by all tests and completed holds; empty
   *     unless they are of two days
   * @param withHolds the reference maximum if completed holds of training count as well, for a
   *     setup that was not tested; empty if none counts. Loads are never prescribed from it
   */
  public record Row(
      Setup setup,
      boolean reachable,
      StrengthMap.Estimate estimate,
      int tests,
      Optional<StrengthChange> change,
      Optional<LoadEstimate> withHolds) {}

  /**
   * A curve of one setup.
   *
   * @param setup grip, edge and hands
   * @param forceTime greatest load by time
   */
  public record Curve(Setup setup, ForceTime forceTime) {}

  /**
   * A critical force and its tests.
   *
   * @param setup grip, edge and hands
   * @param first day of the test, or of the earliest one of several
   * @param date day of the test, or of the latest one of several
   * @param force critical force and impulse, with the uncertainty added by the time since
   */
  public record Critical(Setup setup, LocalDate first, LocalDate date, CriticalForce force) {}

  /**
   * A test that can't be used.
   *
   * @param test the test
   * @param reason the reason
   */
  public record Unused(StrengthTest test, Reason reason) {}

  /** Why a test can't be used. */
  public enum Reason {
    /** It was held for less than 2 s. */
    TOO_SHORT,
    /** It was held for more than 10 min. */
    TOO_LONG,
    /** No load was held. */
    NO_LOAD,
    /** It is older than {@value UsableTests#MOST_MONTHS} months. */
    TOO_OLD,
    /** It is too high compared with the others, and no second test confirms it. */
    ODD,
    /** It is above the plausible limit and does not count, because the athlete is under 16. */
    DOUBTED
  }

  /** The components; lists are copied. */
  record Parts(
      Athlete athlete,
      Optional<LocalDate> day,
      List<StrengthTest> tests,
      List<Unused> unused,
      List<StrengthTest> lowered,
      List<Section> sections,
      List<Critical> criticalForces) {
    Parts {
      tests = List.copyOf(tests);
      unused = List.copyOf(unused);
      lowered = List.copyOf(lowered);
      sections = List.copyOf(sections);
      criticalForces = List.copyOf(criticalForces);
    }
  }

  private final Parts parts;

  StrengthSurvey(Parts parts) {
    this.parts = parts;
  }

  /** Returns the athlete. */
  public Athlete athlete() {
    return parts.athlete;
  }

  /**
   * Returns the day, after which tests are ignored; empty if there is no log and no day was given.
   */
  public Optional<LocalDate> day() {
    return parts.day;
  }

  /** Returns the tests used, as they count ({@link PlausibleTests}), oldest first. */
  public List<StrengthTest> tests() {
    return parts.tests;
  }

  /** Returns the tests up to the day that were not used, oldest first. */
  public List<Unused> unused() {
    return parts.unused;
  }

  /**
   * Returns the tests above the plausible limit, as logged, oldest first; they count as that limit.
   */
  public List<StrengthTest> lowered() {
    return parts.lowered;
  }

  /**
   * Returns one section for each tested way of holding, two hands first and hanging before lifting.
   */
  public List<Section> sections() {
    return parts.sections;
  }

  /**
   * Returns the critical forces in the order of the sections; within one section the most certain
   * first, by spread and age.
   */
  public List<Critical> criticalForces() {
    return parts.criticalForces;
  }

  /**
   * Surveys an athlete's strength by tests alone.
   *
   * @param athlete the athlete
   * @param log the tests
   * @param grips the grips to estimate, in any order
   * @param edge the only edge to estimate; if empty, the edges tested and those the athlete owns
   * @param day the day
   * @throws IllegalArgumentException if the edge is outside 1 to 200 mm, or the log is not the
   *     athlete's
   */
  public static StrengthSurvey of(
      Athlete athlete, Log log, Collection<Grip> grips, Optional<Length> edge, LocalDate day) {
    return of(athlete, log, grips, edge, day, List.of());
  }

  /**
   * Surveys an athlete's strength.
   *
   * @param athlete whose strength
   * @param log the tests
   * @param grips the grips to estimate, in any order
   * @param edge the only edge to estimate; if empty, the edges tested and those the athlete owns
   * @param day the day
   * @param holds completed holds of training, see {@link gripwright.history.CompletedHolds}
   * @throws IllegalArgumentException if the edge is outside 1 to 200 mm, or the log is not the
   *     athlete's
   */
  public static StrengthSurvey of(
      Athlete athlete,
      Log log,
      Collection<Grip> grips,
      Optional<Length> edge,
      LocalDate day,
      Collection<CompletedHold> holds) {
    log.requireOf(athlete);
    edge.ifPresent(Range.EDGE::check);
    return new StrengthSurveyor(athlete, log, edge, day, holds)
        .survey(grips.stream().sorted(GripSurvey.order()).toList());
  }

  /** Returns the empty survey of an athlete without a log. */
  public static StrengthSurvey untested(Athlete athlete) {
    return new StrengthSurvey(
        new Parts(
            athlete, Optional.empty(), List.of(), List.of(), List.of(), List.of(), List.of()));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof StrengthSurvey that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "StrengthSurvey" + parts.toString().substring("Parts".length());
  }
}
