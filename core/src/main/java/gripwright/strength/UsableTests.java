package gripwright.strength;

import gripwright.grip.Setup;
import gripwright.quantity.Load;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Selects the tests that determine loads on a day, and how they count: missing or doubtful data
 * makes loads lower and never higher.
 *
 * <p>Later tests are ignored, and tests older than {@value #MOST_MONTHS} months no longer count. A
 * single test that is too high for the others is left out ({@link OutlierTests}), and one above the
 * plausible limit counts as the limit ({@link PlausibleTests}), or not at all under 16, where an
 * unknown level gives lighter loads. Immutable if its inputs are.
 */
public final class UsableTests {

  /** A test older than this, in months, determines no load; the library's own choice. */
  public static final int MOST_MONTHS = 24;

  /**
   * If a test is older than this, in months, when a plan begins, a new one is advised, because the
   * wider uncertainty lowers loads by 8 % by then; the library's own choice.
   */
  public static final int OLD_MONTHS = 6;

  private final List<StrengthTest> tests;
  private final Function<Setup, Posture> postures;
  private final Function<LocalDate, Load> bodyMass;
  private final Predicate<LocalDate> young;

  /**
   * Creates a selection for one athlete.
   *
   * @param tests all of them, in any order
   * @param postures the posture of the athlete's own fingers in a setup, see {@link Posture#of}
   * @param bodyMass returns the athlete's known body mass on a day
   * @param young returns whether the athlete is under 16 on a day
   */
  public UsableTests(
      List<StrengthTest> tests,
      Function<Setup, Posture> postures,
      Function<LocalDate, Load> bodyMass,
      Predicate<LocalDate> young) {
    Objects.requireNonNull(young, "young");
    Objects.requireNonNull(tests, "tests");
    Objects.requireNonNull(postures, "postures");
    Objects.requireNonNull(bodyMass, "bodyMass");
    this.tests = List.copyOf(tests);
    this.postures = postures;
    this.bodyMass = bodyMass;
    this.young = young;
  }

  /** Returns whether a test is too old on a day to determine a load. */
  public static boolean tooOld(StrengthTest test, LocalDate day) {
    Objects.requireNonNull(test, "test");
    Objects.requireNonNull(day, "day");
    return test.date().isBefore(day.minusMonths(MOST_MONTHS));
  }

  /** How a test counts. */
  public enum Worth {
    /** It counts as logged. */
    WHOLE,
    /** It is above the plausible limit and counts as that limit. */
    LOWERED,
    /** It is above the plausible limit and does not count, because the athlete is under 16. */
    DOUBTED,
    /** It is too high compared with the others, and none confirms it. */
    ODD,
    /** It is older than {@value #MOST_MONTHS} months. */
    TOO_OLD
  }

  /**
   * A test and how it counts.
   *
   * @param logged the test as logged
   * @param worth how it counts
   * @param counts the test as it counts, which is the logged one unless it is lowered
   */
  public record Judged(StrengthTest logged, Worth worth, StrengthTest counts) {
    /** Refuses null. */
    public Judged {
      Objects.requireNonNull(logged, "logged");
      Objects.requireNonNull(worth, "worth");
      Objects.requireNonNull(counts, "counts");
    }

    /** Returns whether it determines loads. */
    public boolean used() {
      return worth == Worth.WHOLE || worth == Worth.LOWERED;
    }
  }

  /** Returns the tests that determine loads on a day, as they count. */
  public List<StrengthTest> on(LocalDate day) {
    return judged(day).stream().filter(Judged::used).map(Judged::counts).toList();
  }

  /** Returns every test up to a day and how it counts on that day. */
  public List<Judged> judged(LocalDate day) {
    Objects.requireNonNull(day, "day");
    List<StrengthTest> known = tests.stream().filter(test -> !test.date().isAfter(day)).toList();
    PlausibleTests plausible = new PlausibleTests(known, bodyMass);
    List<StrengthTest> odd = new ArrayList<>(known);
    new OutlierTests(postures).supported(known).forEach(odd::remove);
    List<Judged> judged = new ArrayList<>();
    for (StrengthTest test : known) {
      Worth worth = Worth.WHOLE;
      if (odd.remove(test)) {
        worth = Worth.ODD;
      } else if (tooOld(test, day)) {
        worth = Worth.TOO_OLD;
      } else if (plausible.doubtful(test)) {
        worth = young.test(day) ? Worth.DOUBTED : Worth.LOWERED;
      }
      judged.add(new Judged(test, worth, plausible.counted(test)));
    }
    return judged;
  }
}
