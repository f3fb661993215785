package gripwright.fatigue;

import java.util.ArrayList;
import java.util.List;

/** Sessions as trials describe them. */
public final class Drills {

  private Drills() {}

  /** Returns holds of the same load with rests between them. */
  public static List<Bout> repeated(int times, double work, double rest, double ofMvc) {
    return sets(1, 0, times, work, rest, ofMvc);
  }

  /** Returns sets of such holds with a pause between sets. */
  public static List<Bout> sets(
      int sets, double pause, int times, double work, double rest, double ofMvc) {
    List<Bout> bouts = new ArrayList<>();
    for (int set = 0; set < sets; set++) {
      for (int i = 0; i < times; i++) {
        if (!bouts.isEmpty()) {
          bouts.add(Bout.rest(i == 0 ? pause : rest));
        }
        bouts.add(Bout.hold(work, ofMvc));
      }
    }
    return bouts;
  }
}
