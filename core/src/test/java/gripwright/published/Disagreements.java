package gripwright.published;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The listed disagreements, {@code disagreements.csv}: model by published, and a line that explains
 * it. Each is held to its ratio, so that none can appear, vanish or grow unseen.
 */
final class Disagreements {

  /** How far a ratio may move, as a share of itself. */
  static final double HELD_WITHIN = 0.02;

  private static final String FILE = "disagreements.csv";

  /**
   * A disagreement.
   *
   * @param ratio model by published, infinite where the model has no end
   * @param why one line
   */
  record Disagreement(double ratio, String why) {

    boolean holds(double now) {
      return ratio == now || Math.abs(now / ratio - 1) <= HELD_WITHIN;
    }
  }

  private Disagreements() {}

  /** Returns the listed ones by id. */
  static Map<String, Disagreement> listed() {
    Map<String, Disagreement> listed = new LinkedHashMap<>();
    for (List<String> cells : PublishedValue.rows(FILE)) {
      listed.put(
          cells.get(0), new Disagreement(Double.parseDouble(cells.get(1)), cells.get(2).strip()));
    }
    return listed;
  }

  /** Writes the ratios of today; a new one has no explanation yet, so that the test still fails. */
  static void write(Map<String, Double> ratios) throws IOException {
    Map<String, Disagreement> listed = listed();
    StringBuilder text = new StringBuilder("id,ratio,why\n");
    ratios.forEach(
        (id, ratio) -> {
          Disagreement known = listed.get(id);
          boolean keep = known != null && known.holds(ratio);
          text.append(id).append(',');
          text.append(keep ? plain(known.ratio()) : plain(ratio)).append(",\"");
          text.append(known == null ? "" : known.why()).append("\"\n");
        });
    Path file =
        Path.of(System.getProperty("basedir", "."), "src", "test", "resources", "gripwright")
            .resolve("published")
            .resolve(FILE);
    Files.writeString(file, text.toString());
  }

  private static String plain(double ratio) {
    return Double.isInfinite(ratio)
        ? Double.toString(ratio)
        : String.format(Locale.ROOT, "%.4f", ratio);
  }
}
