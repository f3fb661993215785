package gripwright.protocol;

import gripwright.finding.WrittenReason;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * A fact about how training is delivered that can't be derived from a plan. Reports of exercise
 * trials ask for it (Slade SC et al. 2016, Br J Sports Med 50(23):1428-1437, CERT; Hoffmann TC et
 * al. 2014, BMJ 348:g1687, TIDieR). It changes no session and no finding.
 *
 * @param item what the fact is about
 * @param text the fact, as written; it has a letter or a digit
 */
public record Report(Item item, String text) {

  /**
   * Checks the text.
   *
   * @throws IllegalArgumentException if it has no letter and no digit
   */
  public Report {
    Objects.requireNonNull(item, "item");
    Objects.requireNonNull(text, "text");
    WrittenReason.check(text, "a report");
  }

  /** What a report is about. */
  public enum Item {
    /** Who instructs, with what qualification. */
    PROVIDER,
    /** Where it takes place. */
    SETTING,
    /** How it is delivered: alone or in groups, in person or not. */
    DELIVERY,
    /** How participants are motivated. */
    MOTIVATION,
    /** How it is checked whether the training was done as planned. */
    FIDELITY,
    /** How adverse events are recorded. */
    ADVERSE_EVENTS;

    /** Returns the word written in a plan. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns the item for a word. */
    public static Optional<Item> parse(String word) {
      Objects.requireNonNull(word, "word");
      for (Item value : values()) {
        if (value.word().equals(word)) {
          return Optional.of(value);
        }
      }
      return Optional.empty();
    }

    /** Returns the word. */
    @Override
    public String toString() {
      return word();
    }
  }
}
