package gripwright.protocol;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The protocols of the catalogue. */
public final class StandardProtocols {

  private StandardProtocols() {}

  /** Returns every protocol of the catalogue, in the order of the catalogue. */
  public static List<Protocol> all() {
    return List.of();
  }

  /** Returns every protocol of the catalogue by name. */
  public static SortedMap<String, Protocol> byName() {
    TreeMap<String, Protocol> byName = new TreeMap<>();
    all().forEach(protocol -> byName.put(protocol.name(), protocol));
    return Collections.unmodifiableSortedMap(byName);
  }
}
