package gripwright.planning.load;

import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.protocol.Scheme;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.List;

/** Loads that failed in recent tests. */
final class RecentFailures {

  /** For how many days a failure in a test limits a load; the library's own choice. */
  static final int DAYS = 90;

  private RecentFailures() {}

  /** Returns recent failures in tests of exactly this setup, if a level depends on failure. */
  static List<StrengthTest.ToFailure> of(Log log, Setup setup, Dose dose, LocalDate day) {
    if (!dependsOnFailure(dose.scheme())) {
      return List.of();
    }
    return log.tests().stream()
        .filter(test -> !test.date().isAfter(day))
        .filter(test -> test.date().isAfter(day.minusDays(DAYS)))
        .filter(test -> test.setup().equals(setup))
        .map(StrengthTest::result)
        .filter(StrengthTest.ToFailure.class::isInstance)
        .map(StrengthTest.ToFailure.class::cast)
        .toList();
  }

  private static boolean dependsOnFailure(Scheme scheme) {
    for (Scheme.Hold hold : scheme.written()) {
      if (hold.level().byTime()) {
        return true;
      }
    }
    return false;
  }
}
