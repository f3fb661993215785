package gripwright.language.check;

import gripwright.grip.Grip;
import gripwright.protocol.Protocol;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The catalogue as core objects: what every file may use without declaring it.
 *
 * @param grips grips by name
 * @param protocols protocols by name
 */
public record Standard(SortedMap<String, Grip> grips, SortedMap<String, Protocol> protocols) {

  /** No catalogue: how the catalogue's own files are read. */
  public static final Standard NONE =
      new Standard(Collections.emptySortedMap(), Collections.emptySortedMap());

  /** Copies the maps. */
  public Standard {
    grips = Collections.unmodifiableSortedMap(new TreeMap<>(grips));
    protocols = Collections.unmodifiableSortedMap(new TreeMap<>(protocols));
  }
}
