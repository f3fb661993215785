package gripwright.schedule;

import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The reason why something in a schedule is not harder, or differs from a schedule without the log.
 */
public sealed interface Cause extends Message {

  /**
   * Pain that was logged.
   *
   * @param date the day
   * @param score 0 to 10
   * @param rising true if it rises in its place from week to week
   * @param where place and kind of the pain
   */
  record Pain(LocalDate date, double score, boolean rising, Message where) implements Cause {
    @Override
    public String key() {
      return rising ? "cause.pain-rising" : "cause.pain";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("where", where, "date", date);
    }
  }

  /**
   * Less was lifted than planned.
   *
   * @param load the greatest total load that was lifted
   * @param planned what was planned
   * @param date when
   */
  record LessLifted(Load load, Load planned, LocalDate date) implements Cause {
    @Override
    public String key() {
      return "cause.less-lifted";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("load", load, "planned", planned, "date", date);
    }
  }

  /**
   * Sets were missed.
   *
   * @param done how many were done
   * @param planned how many were planned
   * @param date the day
   */
  record MissedSets(int done, int planned, LocalDate date) implements Cause {
    @Override
    public String key() {
      return "cause.missed-sets";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("done", done, "planned", planned, "date", date);
    }
  }

  /**
   * Less than half of a bound was done in two sessions running.
   *
   * @param done how many sets were done in the later one
   * @param bound the greatest number of sets
   * @param date the day of the later one
   */
  record FarBelowBound(int done, int bound, LocalDate date) implements Cause {
    @Override
    public String key() {
      return "cause.far-below-bound";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("done", done, "bound", bound, "date", date);
    }
  }

  /**
   * It took more effort than it should.
   *
   * @param effort 0 to 10
   * @param most the highest acceptable effort
   * @param date the day
   */
  record TooMuchEffort(double effort, double most, LocalDate date) implements Cause {
    @Override
    public String key() {
      return "cause.effort";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of(
          "effort", Numbers.plain(effort, 1), "most", Numbers.plain(most, 1), "date", date);
    }
  }

  /**
   * An exercise was left out.
   *
   * @param date the day
   */
  record LeftOut(LocalDate date) implements Cause {
    @Override
    public String key() {
      return "cause.left-out";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("date", date);
    }
  }

  /**
   * A load limited by the log returns before anything gets harder.
   *
   * @param load the last load
   * @param date its day
   */
  record LoadReturnsFirst(Load load, LocalDate date) implements Cause {
    @Override
    public String key() {
      return "cause.load-returns-first";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("load", load, "date", date);
    }
  }

  /**
   * The load follows a higher test before anything gets harder.
   *
   * @param week first day of the week that waits
   */
  record FollowsTestFirst(LocalDate week) implements Cause {
    @Override
    public String key() {
      return "cause.follows-test-first";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("date", week);
    }
  }

  /**
   * An exercise was not trained.
   *
   * @param from first day
   * @param to last day
   */
  record NotTrained(LocalDate from, LocalDate to) implements Cause {
    @Override
    public String key() {
      return "cause.not-trained";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("from", from, "to", to);
    }
  }

  /**
   * Nothing of a week was trained.
   *
   * @param week its number in the plan
   */
  record WeekNotTrained(int week) implements Cause {
    @Override
    public String key() {
      return "cause.week-not-trained";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("week", week);
    }
  }

  /**
   * After a problem the load stays the same.
   *
   * @param date day of the last load
   * @param trouble the problem
   */
  record NoMoreThanOn(LocalDate date, Cause trouble) implements Cause {
    @Override
    public String key() {
      return "cause.no-more-than-on";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("date", date, "trouble", trouble);
    }
  }

  /**
   * A limited load stays the same for now.
   *
   * @param load the last load
   * @param date its day
   * @param eased true if it returns after an eased week
   */
  record NoMoreThan(Load load, LocalDate date, boolean eased) implements Cause {
    @Override
    public String key() {
      return eased ? "cause.no-more-while-eased" : "cause.no-more";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("load", load, "date", date);
    }
  }

  /**
   * A limited load returns step by step.
   *
   * @param rise greatest rise in a week, as a share
   * @param load the last load
   * @param date its day
   */
  record LoadReturns(double rise, Load load, LocalDate date) implements Cause {
    @Override
    public String key() {
      return "cause.load-returns";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("percent", Numbers.plain(rise * 100, 1), "load", load, "date", date);
    }
  }

  /** Pain stopped training. */
  record AfterPain() implements Cause {
    @Override
    public String key() {
      return "cause.after-pain";
    }
  }

  /**
   * The athlete was away.
   *
   * @param days number of days in a row, at least
   */
  record AfterAbsence(int days) implements Cause {
    @Override
    public String key() {
      return "cause.after-absence";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("days", days);
    }
  }

  /**
   * Nothing was trained for weeks.
   *
   * @param weeks how many, two or more
   */
  record AfterWeeksOff(int weeks) implements Cause {
    @Override
    public String key() {
      return "cause.after-weeks-off";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("weeks", weeks);
    }
  }

  /**
   * Nothing was trained in one week.
   *
   * @param from its first day
   * @param to its last day
   */
  record AfterWeekOff(LocalDate from, LocalDate to) implements Cause {
    @Override
    public String key() {
      return "cause.after-week-off";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("from", from, "to", to);
    }
  }

  /**
   * A test was logged.
   *
   * @param date the day
   */
  record Tested(LocalDate date) implements Cause {
    @Override
    public String key() {
      return "cause.tested";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("date", date);
    }
  }

  /**
   * Body mass changed.
   *
   * @param mass the new body mass
   */
  record BodyMass(Load mass) implements Cause {
    @Override
    public String key() {
      return "cause.body-mass";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("mass", mass);
    }
  }

  /**
   * Hard climbing was logged.
   *
   * @param date the day
   */
  record HardClimbing(LocalDate date) implements Cause {
    @Override
    public String key() {
      return "cause.hard-climbing";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("date", date);
    }
  }

  /**
   * A session was trained on another day, or one that was not planned.
   *
   * @param session its name
   * @param date the day
   */
  record Trained(String session, LocalDate date) implements Cause {
    @Override
    public String key() {
      return "cause.trained";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("session", session, "date", date);
    }
  }

  /**
   * A step that was earned in training.
   *
   * @param step the step
   */
  record Earned(ProgressLink.Advanced step) implements Cause {
    @Override
    public String key() {
      return "cause.earned";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("step", new Clause(step.key(), step.arguments()));
    }
  }

  /**
   * It follows from the training done, without a more specific cause.
   *
   * @param lastKnownDay the last known day, if there is one
   */
  record FollowsFromLog(Optional<LocalDate> lastKnownDay) implements Cause {
    @Override
    public String key() {
      return lastKnownDay.isPresent() ? "cause.follows-until" : "cause.follows";
    }

    @Override
    public Map<String, Object> arguments() {
      Map<String, Object> facts = new LinkedHashMap<>();
      lastKnownDay.ifPresent(day -> facts.put("date", day));
      return facts;
    }
  }
}
