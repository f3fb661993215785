package gripwright.grip;

import gripwright.finding.Message;
import gripwright.hand.Hands;
import gripwright.quantity.Length;
import gripwright.quantity.Range;
import java.util.Map;
import java.util.Objects;

/**
 * A grip on an edge: what is tested and trained. Each setup has a maximum of its own; nothing is
 * halved or doubled between one hand and two.
 *
 * @param grip the grip
 * @param edge depth of the edge
 * @param hands which hands hold
 * @param lifting true if a weight is lifted from the floor, so that body mass plays no part
 */
public record Setup(Grip grip, Length edge, Hands hands, boolean lifting) implements Message {
  /**
   * Checks the edge.
   *
   * @throws IllegalArgumentException if its depth is outside 1 to 200 mm
   */
  public Setup {
    Objects.requireNonNull(grip, "grip");
    Objects.requireNonNull(edge, "edge");
    Objects.requireNonNull(hands, "hands");
    Range.EDGE.check(edge);
  }

  /** Returns a grip on an edge with both hands, hanging. */
  public static Setup of(Grip grip, Length edge) {
    return new Setup(grip, edge, Hands.BOTH, false);
  }

  /** Returns this setup on another edge. */
  public Setup withEdge(Length depth) {
    return new Setup(grip, depth, hands, lifting);
  }

  /** Returns this setup with other hands. */
  public Setup withHands(Hands which) {
    return new Setup(grip, edge, which, lifting);
  }

  /** Returns the setup as it is written, such as {@code half-crimp edge 20 mm left hand}. */
  @Override
  public String toString() {
    return grip.name()
        + " edge "
        + edge
        + (hands == Hands.BOTH ? "" : " " + hands.word() + " hand")
        + (lifting ? " lifting" : "");
  }

  @Override
  public String key() {
    return "common.setup"
        + (hands == Hands.BOTH ? "" : "-" + hands.word())
        + (lifting ? "-lifting" : "");
  }

  @Override
  public Map<String, Object> arguments() {
    return Map.of("grip", grip.name(), "edge", edge);
  }
}
