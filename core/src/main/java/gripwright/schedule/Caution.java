package gripwright.schedule;

import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A caution at the end of every output that an athlete may read. */
public sealed interface Caution extends Message {

  /** Returns the cautions for every plan. */
  static List<Caution> general() {
    return List.of(General.values());
  }

  /** Cautions for every plan. */
  enum General implements Caution {
    /** The numbers are estimates. */
    ESTIMATES,
    /** Warming up. */
    WARM_UP,
    /** Pain. */
    PAIN,
    /** Youth. */
    YOUTH,
    /** Who decides. */
    GUIDANCE;

    @Override
    public String key() {
      return "caution." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * A caution of a grip.
   *
   * @param grip its name
   * @param text as written with the grip
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
