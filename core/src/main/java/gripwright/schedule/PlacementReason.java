package gripwright.schedule;

import gripwright.finding.Clause;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** Why a session or a test is on its day. */
public sealed interface PlacementReason extends Message {

  @Override
  default Map<String, Object> arguments() {
    return Map.of();
  }

  /**
   * A day was found for it.
   *
   * @param freeMinutes time that is free on the day
   * @param neededMinutes time that it takes
   * @param preferred true if it is a preferred day
   * @param daysSinceLast days since the last session of its name, if there was one
   * @param hardBefore the last hard work before it, if it is hard itself
   * @param afterDone true if the day was found after completed sessions of the week
   */
  record Found(
      long freeMinutes,
      long neededMinutes,
      boolean preferred,
      OptionalLong daysSinceLast,
      Optional<HardBefore> hardBefore,
      boolean afterDone)
      implements PlacementReason {

    @Override
    public String key() {
      return "placement.found";
    }

    @Override
    public Map<String, Object> arguments() {
      List<Clause> parts = new ArrayList<>();
      parts.add(
          new Clause(
              preferred ? "placement.free-preferred" : "placement.free",
              Map.of("free", freeMinutes, "needed", neededMinutes)));
      daysSinceLast.ifPresent(days -> parts.add(Clause.of("placement.since-last", "days", days)));
      hardBefore.ifPresent(
          hard ->
              parts.add(
                  new Clause(
                      "placement.since-hard", Map.of("days", hard.days(), "what", hard.what()))));
      if (afterDone) {
        parts.add(Clause.of("placement.after-done"));
      }
      return Map.of("parts", Listing.of(Listing.Style.CLAUSES, parts));
    }

    /** Returns this with a day found after completed sessions of the week. */
    public Found whenDone() {
      return new Found(freeMinutes, neededMinutes, preferred, daysSinceLast, hardBefore, true);
    }
  }

  /**
   * Hard work before a day.
   *
   * @param days number of days before
   * @param what the work
   */
  record HardBefore(long days, HardThing what) {}

  /** It was trained on the day on which it was planned. */
  record AsPlanned() implements PlacementReason {
    @Override
    public String key() {
      return "placement.as-planned";
    }
  }

  /**
   * It was trained on another day.
   *
   * @param planned the day on which it was planned
   */
  record OnAnotherDay(LocalDate planned) implements PlacementReason {
    @Override
    public String key() {
      return "placement.another-day";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("planned", planned);
    }
  }

  /** It was trained without being planned. */
  record NotPlanned() implements PlacementReason {
    @Override
    public String key() {
      return "placement.not-planned";
    }
  }

  /**
   * Tests on a rested day.
   *
   * @param freeMinutes time that is free on the day
   * @param hours time without hard work before it
   */
  record Rested(long freeMinutes, long hours) implements PlacementReason {
    /** Creates the reason for a day without hard work within 48 h. */
    public Rested(long freeMinutes) {
      this(freeMinutes, 48);
    }

    @Override
    public String key() {
      return hours > 48 ? "placement.rested-longer" : "placement.rested";
    }

    @Override
    public Map<String, Object> arguments() {
      return hours > 48 ? Map.of("free", freeMinutes, "hours", hours) : Map.of("free", freeMinutes);
    }
  }

  /**
   * Tests in place of the hardest session.
   *
   * @param tests number of tests
   */
  record InsteadOfHardest(int tests) implements PlacementReason {
    @Override
    public String key() {
      return tests == 1 ? "placement.instead-one" : "placement.instead-many";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("count", tests);
    }
  }

  /** Tests on the day on which they were logged. */
  record TestedOnDay() implements PlacementReason {
    @Override
    public String key() {
      return "placement.tested";
    }
  }

  /** A session checked by itself, on no day of a plan. */
  record Unplaced() implements PlacementReason {
    @Override
    public String key() {
      return "placement.unplaced";
    }
  }
}
