package gripwright.schedule;

import gripwright.finding.Message;
import java.util.Map;

/** Hard work for the fingers on a day, from which hard sessions keep 48 h. */
public sealed interface HardThing extends Message {

  @Override
  default Map<String, Object> arguments() {
    return Map.of();
  }

  /** Hard climbing, regular or logged. */
  record Climbing() implements HardThing {
    @Override
    public String key() {
      return "placement.hard-climbing";
    }
  }

  /** The goal of the plan. */
  record Goal() implements HardThing {
    @Override
    public String key() {
      return "placement.the-goal";
    }
  }

  /** A test that was logged. */
  record LoggedTest() implements HardThing {
    @Override
    public String key() {
      return "placement.logged-test";
    }
  }

  /** Tests of the plan. */
  record Tests() implements HardThing {
    @Override
    public String key() {
      return "placement.tests";
    }
  }

  /**
   * A session.
   *
   * @param name its name
   */
  record Session(String name) implements HardThing {
    @Override
    public String key() {
      return "placement.session";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("name", name);
    }
  }
}
