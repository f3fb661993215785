package gripwright.history;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.grip.Setup;
import gripwright.log.LogEntry;
import gripwright.quantity.Load;
import gripwright.wording.Words;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What counts as trouble in a line of a log. */
class LoggedWorkTest {

  private static LoggedWork work(int sets, int asked, double effort) {
    LogEntry.Done done =
        LogEntry.Done.builder("single-holds", Setup.of(HALF_CRIMP, EDGE))
            .sets(sets)
            .effort(effort)
            .build();
    return new LoggedWork(
        MONDAY, Optional.of(done), OptionalInt.of(asked), Optional.empty(), Optional.empty());
  }

  private static LoggedWork loaded(double load, double asked) {
    return new LoggedWork(
        MONDAY,
        Optional.empty(),
        OptionalInt.empty(),
        Optional.of(Load.ofKilograms(load)),
        Optional.of(Load.ofKilograms(asked)));
  }

  private static final double USUAL = 9;

  @Test
  void fewerSetsThanPlannedAreTrouble() {
    assertEquals(
        Optional.of("4 of 5 sets on 2027-03-01"), work(4, 5, 7).trouble(USUAL).map(Words::say));
    assertEquals(Optional.empty(), work(5, 5, 7).trouble(USUAL));
    assertEquals(Optional.empty(), work(6, 5, 7).trouble(USUAL));
  }

  @Test
  void unloggedNumberOfSetsCountsAsAllSets() {
    LoggedWork unknown = work(1, 5, 7);
    assertEquals(
        false,
        new LoggedWork(
                MONDAY, unknown.done(), OptionalInt.empty(), Optional.empty(), Optional.empty())
            .missedSets());
    assertEquals(
        false,
        new LoggedWork(
                MONDAY, Optional.empty(), OptionalInt.of(5), Optional.empty(), Optional.empty())
            .missedSets());
  }

  @Test
  void effortAboveTheLimitIsTrouble() {
    assertEquals(Optional.empty(), work(5, 5, 9).trouble(USUAL));
    assertEquals(
        Optional.of("effort 9.5 on 2027-03-01, above 9"),
        work(5, 5, 9.5).trouble(USUAL).map(Words::say));
    assertEquals(
        Optional.of("effort 9 on 2027-03-01, above 8"), work(5, 5, 9).trouble(8).map(Words::say));
    assertEquals(Optional.empty(), work(5, 5, 9.5).trouble(9.5));
    assertEquals(
        Optional.of("effort 9.6 on 2027-03-01, above 9.5"),
        work(5, 5, 9.6).trouble(9.5).map(Words::say));
  }

  @Test
  void twoPerCentBelowThePlannedLoadIsNotLighter() {
    assertEquals(false, loaded(100, 100).lighter());
    assertEquals(false, loaded(98, 100).lighter());
    assertEquals(true, loaded(97.9, 100).lighter());
    assertEquals(false, work(5, 5, 7).lighter(), "no load is known");
  }

  @Test
  void moreThanFivePerCentAndHalfAKilogramAboveThePlannedLoadIsHeavier() {
    assertEquals(false, loaded(105, 100).heavier());
    assertEquals(true, loaded(105.1, 100).heavier());
    assertEquals(false, loaded(5.5, 5).heavier(), "one small step of a small load");
    assertEquals(true, loaded(5.6, 5).heavier());
    assertEquals(false, work(5, 5, 7).heavier(), "no load is known");
  }
}
