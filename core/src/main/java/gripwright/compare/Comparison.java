package gripwright.compare;

import gripwright.grip.Setup;
import gripwright.protocol.Protocol;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A comparison of protocols for one athlete.
 *
 * @param name kebab-case, unique in a project
 * @param title for people
 * @param athlete name of the athlete
 * @param setup grip, edge and hands
 * @param protocols two or more
 * @param match the quantity to make equal, and the parameter solved for; empty if protocols are
 *     compared as written
 * @param perWeek sessions a week, 1 or more
 * @param weeks number of weeks, 1 or more
 * @param measures measures to compare, in order
 */
public record Comparison(
    String name,
    Optional<String> title,
    String athlete,
    Setup setup,
    List<Protocol> protocols,
    Optional<Match> match,
    int perWeek,
    int weeks,
    List<Measure> measures) {

  /**
   * The quantity to make equal.
   *
   * @param quantity the quantity that all protocols share
   * @param by the parameter that is solved for
   */
  public record Match(Measure quantity, String by) {
    /** Refuses null. */
    public Match {
      Objects.requireNonNull(quantity, "quantity");
      Objects.requireNonNull(by, "by");
    }
  }

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if there are fewer than two protocols, or sessions a week or
   *     weeks are outside their {@link Range}
   */
  public Comparison {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(athlete, "athlete");
    Objects.requireNonNull(setup, "setup");
    Objects.requireNonNull(protocols, "protocols");
    Objects.requireNonNull(match, "match");
    Objects.requireNonNull(measures, "measures");
    protocols = List.copyOf(protocols);
    measures = List.copyOf(measures);
    Range.PER_WEEK.check(perWeek);
    Range.COMPARISON.checkIn(Unit.WEEK, weeks);
    if (protocols.size() < 2) {
      throw new IllegalArgumentException("comparison " + name + " needs two protocols");
    }
  }
}
