package gripwright.planning.load;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Level;
import gripwright.quantity.Load;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.wording.Words;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How a load comes back that a log held down. */
class HeldLoadTest {

  private static final HeldLoad HELD =
      new HeldLoad(MONDAY.plusDays(8), 2, EDGE, Load.ofKilograms(50), 51, true);

  @Test
  void nextWeekItComesBackByTheRiseOfThePlan() {
    Dose.Ceiling next = HELD.next(0.1, false, false);
    assertEquals(56.1, next.most().kilograms(), 1e-9);
    assertEquals(
        "the load returns by at most 10 % a week, from 50 kg on 2027-03-09", Words.say(next.why()));
  }

  @Test
  void inTheSameWeekAndInAnEasedOneItStays() {
    Dose.Ceiling same = HELD.next(0.1, true, false);
    assertEquals(51, same.most().kilograms(), 1e-9);
    assertEquals("no more than 50 kg on 2027-03-09", Words.say(same.why()));
    Dose.Ceiling eased = HELD.next(0.1, false, true);
    assertEquals(51, eased.most().kilograms(), 1e-9);
    assertEquals(
        "no more than 50 kg on 2027-03-09: the load returns after the deload week",
        Words.say(eased.why()));
  }

  @Test
  void itsWeekBeginsOnADayOfThePlan() {
    assertEquals(MONDAY.plusDays(7), HELD.monday(MONDAY));
  }

  @Test
  void aLineOfThePlanIsTheSameInEveryWeek() {
    ModelPath line = ModelPath.of("plan", "spring").then("block", "base").then("session", "power");
    assertEquals(
        line.then("exercise", 1),
        HeldLoad.line(
            ModelPath.of("plan", "spring")
                .then("block", "base")
                .then("week", 2)
                .then("session", "power")
                .then("date", "2027-03-09")
                .then("exercise", 1)));
  }

  /** Two lines of the same work, the second lighter, and one of another grip. */
  private static CompiledPlan compiled(LogEntry... entries) {
    Exercise heavy = Exercise.of(HOLDS, HALF_CRIMP, EDGE);
    Exercise light = heavy.with("level", Level.ofMax(70));
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                Block.named("base", 4)
                    .session(
                        SessionPlan.of("strength", 2, light, heavy, Exercise.of(HOLDS, DRAG, EDGE)))
                    .build())
            .build();
    Log log = Skarvdal.tested();
    for (LogEntry entry : entries) {
      log = log.with(entry);
    }
    return Planner.compile(plan, Skarvdal.ylva().build(), log, List.of());
  }

  private static LogEntry trained(int day, Grip grip, int sets, double kilograms) {
    LogEntry.Done done =
        LogEntry.Done.builder("single-holds", Setup.of(grip, EDGE))
            .sets(sets)
            .setsPlanned(5)
            .load(Load.ofKilograms(kilograms))
            .effort(7)
            .build();
    return new LogEntry.Trained(
        MONDAY.plusDays(day), "strength", List.of(done, done), Optional.empty());
  }

  private static Optional<HeldLoad> last(CompiledPlan plan, int day, Optional<ModelPath> line) {
    return HeldLoad.last(
        plan.sessions(), MONDAY.plusDays(day), e -> e.setup().grip().equals(HALF_CRIMP), line);
  }

  private static Optional<ModelPath> line(int exercise) {
    return Optional.of(
        HeldLoad.line(compiled().sessions().get(0).exercises().get(0).path())
            .without("exercise")
            .then("exercise", exercise));
  }

  private static double load(CompiledPlan plan, int session, int exercise) {
    return plan.sessions().get(session).exercises().get(exercise).totalLoad().kilograms();
  }

  @Test
  void ofOneDayTheGreatestLoadCountsUnlessALineIsAskedFor() {
    CompiledPlan plan = compiled();
    HeldLoad greatest = last(plan, 14, Optional.empty()).orElseThrow();
    assertEquals(MONDAY.plusDays(12), greatest.date());
    assertEquals(2, greatest.week());
    assertEquals(load(plan, 3, 1), greatest.load().kilograms());
    assertEquals(false, greatest.byLog());
    HeldLoad ofLine = last(plan, 14, line(1)).orElseThrow();
    assertEquals(MONDAY.plusDays(12), ofLine.date());
    assertEquals(load(plan, 3, 0), ofLine.load().kilograms());
    HeldLoad other = last(plan, 14, line(9)).orElseThrow();
    assertEquals(load(plan, 3, 1), other.load().kilograms(), "no week has this line");
  }

  @Test
  void onlyDaysBeforeCountAndTheLatestWeekAlone() {
    CompiledPlan plan = compiled();
    assertEquals(MONDAY.plusDays(8), last(plan, 12, line(2)).orElseThrow().date());
    assertEquals(MONDAY.plusDays(5), last(plan, 8, line(2)).orElseThrow().date());
    assertEquals(Optional.empty(), last(plan, 1, line(2)));
    assertEquals(1, last(plan, 7, Optional.empty()).orElseThrow().week());
  }

  /** Trouble on Tuesday limits Saturday to a load that the plates can't build exactly. */
  @Test
  void aLimitFromTheLogCountsEvenWhereThePlatesBuildLess() {
    CompiledPlan plan = compiled(trained(1, HALF_CRIMP, 3, 60.7));
    HeldLoad saturday = last(plan, 7, line(2)).orElseThrow();
    assertEquals(MONDAY.plusDays(5), saturday.date());
    assertEquals(true, saturday.byLog());
    assertEquals(60, saturday.load().kilograms(), 1e-9);
    assertEquals(60.7, saturday.most(), 1e-9);
  }

  @Test
  void whoLoadsLessThanTheLimitComesBackFromThat() {
    CompiledPlan asked = compiled(trained(1, HALF_CRIMP, 3, 60.7), trained(5, HALF_CRIMP, 5, 60));
    assertEquals(60.7, last(asked, 7, line(2)).orElseThrow().most(), 1e-9);
    CompiledPlan less = compiled(trained(1, HALF_CRIMP, 3, 60.7), trained(5, HALF_CRIMP, 5, 55));
    HeldLoad held = last(less, 7, line(2)).orElseThrow();
    assertEquals(55, held.load().kilograms(), 1e-9);
    assertEquals(55, held.most(), 1e-9);
    assertEquals(true, held.byLog());
  }
}
