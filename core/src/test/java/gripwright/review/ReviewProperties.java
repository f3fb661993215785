package gripwright.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.tissue.Estimate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Properties of the review of any log. */
class ReviewProperties {

  private static final LocalDate DAY = Logs.MONDAY.plusDays(40);

  @Provide
  Arbitrary<List<LogEntry>> logs() {
    return Logs.entries().list().ofMaxSize(25);
  }

  @Property
  void theOrderOfLinesDoesNotMatter(@ForAll("logs") List<LogEntry> entries, @ForAll Random order) {
    List<LogEntry> otherwise = new ArrayList<>(entries);
    Collections.shuffle(otherwise, order);
    assertEquals(Logs.review(DAY, entries), Logs.review(DAY, otherwise));
  }

  @Property
  void theLastLineTakenOutAndAddedAgainChangesNothing(@ForAll("logs") List<LogEntry> entries) {
    Log log = new Log("signe", entries);
    if (!log.entries().isEmpty()) {
      List<LogEntry> all = log.entries();
      Log without = new Log("signe", all.subList(0, all.size() - 1));
      assertEquals(log, without.with(all.get(all.size() - 1)));
    }
  }

  @Property
  void allNumbersAreFiniteAndNoWorkIsLost(@ForAll("logs") List<LogEntry> entries) {
    Review review = Logs.review(DAY, entries);
    assertEquals(entries.size(), review.log().entries().size());
    for (TrainingLoad.Day day : review.load().days()) {
      assertTrue(Double.isFinite(day.load() + day.acute() + day.chronic()));
      assertTrue(Double.isFinite(day.response().balance()));
      assertTrue(day.acute() >= 0 && day.chronic() >= 0);
    }
    for (TrainingLoad.Week week : review.load().weeks()) {
      assertTrue(Double.isFinite(week.monotony().orElse(0) + week.strain().orElse(0)));
      assertEquals(week.monotony().isPresent(), week.strain().isPresent());
    }
    double days = review.load().days().stream().mapToDouble(TrainingLoad.Day::load).sum();
    double weeks = review.load().weeks().stream().mapToDouble(TrainingLoad.Week::load).sum();
    assertEquals(days, weeks, 1e-6 * (1 + days));
    for (Exposure.OfFinger finger : review.exposure().fingers()) {
      for (Estimate each : List.of(finger.impulse(), finger.a2(), finger.a4())) {
        assertTrue(Double.isFinite(each.low() + each.high()) && each.low() >= 0);
      }
    }
    assertTrue(review.next().size() <= Review.MOST_STEPS && !review.next().isEmpty());
    assertTrue(Double.isFinite(review.progress().stream().mapToDouble(this::trend).sum()));
  }

  private double trend(Progress progress) {
    return progress.trend().orElse(0) + progress.sinceFirst().map(c -> c.change()).orElse(0.0);
  }

  /** The sum of the forces on the finger pads is the load held. */
  @Property(tries = 20)
  void theForcesOnThePadsSumToTheLoad(@ForAll("logs") List<LogEntry> entries) {
    Review review = Logs.review(DAY, entries);
    for (Exposure.Week week : review.exposure().weeks()) {
      double grips = week.grips().stream().mapToDouble(Exposure.OfGrip::impulse).sum();
      double pads = week.fingers().stream().mapToDouble(f -> f.impulse().value()).sum();
      assertEquals(grips, pads, 1e-6 * (1 + grips));
    }
  }

  /** Weeks of mild and moderate pain, with a session now and then. */
  @Provide
  Arbitrary<List<LogEntry>> pains() {
    Arbitrary<Integer> days = Arbitraries.integers().between(20, 40);
    Arbitrary<LogEntry> pain =
        Combinators.combine(days, Arbitraries.integers().between(0, 10))
            .as((day, twice) -> Logs.pain(day, twice / 2.0, LogEntry.Pain.Kind.DULL));
    Arbitrary<LogEntry> session = days.map(day -> Logs.trained(day, "half-crimp", 6, 0));
    return Arbitraries.oneOf(pain, pain, session).list().ofMaxSize(8);
  }

  @Property
  void moreOfTheLastPainNeverGivesAMilderRule(
      @ForAll("pains") List<LogEntry> entries, @ForAll LogEntry.Pain.Kind kind) {
    PainCourse.Rule before = PainCourse.Rule.GO_ON;
    for (int twice = 0; twice <= 20; twice++) {
      PainCourse.Rule dull = last(entries, twice / 2.0, LogEntry.Pain.Kind.DULL);
      assertTrue(dull.compareTo(before) >= 0, before + " then " + dull + " at " + twice / 2.0);
      assertTrue(last(entries, twice / 2.0, kind).compareTo(dull) >= 0);
      before = dull;
    }
  }

  private static PainCourse.Rule last(
      List<LogEntry> entries, double score, LogEntry.Pain.Kind kind) {
    List<LogEntry> all = new ArrayList<>(entries);
    all.add(Logs.pain(40, score, kind));
    return PainCourse.of(new Log("signe", all), List.of(), DAY).stream()
        .filter(course -> course.place() instanceof PainCourse.InFinger)
        .findFirst()
        .orElseThrow()
        .rule();
  }

  /**
   * Strong pain stops training whatever else is logged, until two days of little pain two days
   * apart.
   */
  @Property
  void strongPainOfTheLastDaysStopsWhateverElseIsLogged(
      @ForAll("logs") List<LogEntry> entries,
      @ForAll @DoubleRange(min = 5.1, max = 10) double score,
      @ForAll @IntRange(min = 38, max = 40) int day) {
    List<LogEntry> all = new ArrayList<>(entries);
    all.add(Logs.pain(day, score, LogEntry.Pain.Kind.DULL));
    assertEquals(PainCourse.Rule.STOP, Logs.review(DAY, all).pain().get(0).rule());
  }

  @Property
  void laterLinesAreIgnored(
      @ForAll("logs") List<LogEntry> entries, @ForAll @IntRange(max = 40) int day) {
    LocalDate on = Logs.MONDAY.plusDays(day);
    List<LogEntry> known = entries.stream().filter(e -> !e.date().isAfter(on)).toList();
    Review one = Logs.review(on, entries);
    Review other = Logs.review(on, known);
    assertEquals(other.next(), one.next());
    assertEquals(other.load(), one.load());
    assertEquals(other.progress(), one.progress());
  }
}
