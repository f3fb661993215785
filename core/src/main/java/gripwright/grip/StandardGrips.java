package gripwright.grip;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The grips of the catalogue. */
public final class StandardGrips {

  private StandardGrips() {}

  /** Returns every grip of the catalogue, in the order of the catalogue. */
  public static List<Grip> all() {
    return List.of();
  }

  /** Returns every grip of the catalogue by name. */
  public static SortedMap<String, Grip> byName() {
    TreeMap<String, Grip> byName = new TreeMap<>();
    all().forEach(grip -> byName.put(grip.name(), grip));
    return Collections.unmodifiableSortedMap(byName);
  }
}
