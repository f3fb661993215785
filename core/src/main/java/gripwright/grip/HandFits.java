package gripwright.grip;

import gripwright.hand.HandShape;
import gripwright.hand.Side;
import gripwright.quantity.Length;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How two hands take grips on edges. A grip on an edge is fitted once for each hand, once for both
 * where they are equal. Not thread-safe.
 */
public final class HandFits {

  private final HandShape left;
  private final HandShape right;
  private final Map<Grip, SortedMap<Length, GripFit>> ofLeft = new HashMap<>();
  private final Map<Grip, SortedMap<Length, GripFit>> ofRight;

  /** Prepares to fit grips to two hands. */
  public HandFits(HandShape left, HandShape right) {
    this.left = Objects.requireNonNull(left, "left");
    this.right = Objects.requireNonNull(right, "right");
    this.ofRight = left.equals(right) ? ofLeft : new HashMap<>();
  }

  /** Returns the fits of the hands that hold, by side; equal hands share one. */
  public Map<Side, GripFit> of(Setup setup) {
    Map<Side, GripFit> fits = new EnumMap<>(Side.class);
    for (Side side : setup.hands().sides()) {
      fits.put(side, of(setup, side));
    }
    return fits;
  }

  /** Returns the fit of one hand, whether or not the setup has it hold. */
  public GripFit of(Setup setup, Side side) {
    return (side == Side.LEFT ? ofLeft : ofRight)
        .computeIfAbsent(setup.grip(), grip -> new TreeMap<>())
        .computeIfAbsent(
            setup.edge(), edge -> GripFit.of(setup.grip(), side == Side.LEFT ? left : right, edge));
  }

  /** Returns whether every hand that holds takes the grip on the edge. */
  public boolean takes(Setup setup) {
    for (Side side : setup.hands().sides()) {
      if (!of(setup, side).reachable()) {
        return false;
      }
    }
    return true;
  }
}
