package gripwright.schedule;

import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What every output that an athlete may read says at its foot. */
public sealed interface Caution extends Message {

  /** Returns what holds for every plan. */
  static List<Caution> general() {
    return List.of(General.values());
  }

  /** What holds for every plan. */
  enum General implements Caution {
    /** What the numbers are. */
    ESTIMATES,
    /** Warming up. */
    WARM_UP,
    /** Pain. */
    PAIN,
    /** Youth. */
    YOUTH,
    /** Who has the last word. */
    GUIDANCE;

    @Override
    public String key() {
      return "caution." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * What a grip calls for.
   *
   * @param grip its name
   * @param text as it is written with the grip
   */
  record OfGrip(String grip, String text) implements Caution {
    @Override
    public String key() {
      return "caution.of-grip";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("grip", grip, "caution", new WrittenText(text));
    }
  }
}
