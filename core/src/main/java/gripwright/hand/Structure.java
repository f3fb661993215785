package gripwright.hand;

import gripwright.finding.Message;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** A structure of a finger that can be hurt. */
public enum Structure implements Message {
  /** First annular pulley. */
  A1,
  /** Second annular pulley. */
  A2,
  /** Third annular pulley. */
  A3,
  /** Fourth annular pulley. */
  A4,
  /** Fifth annular pulley. */
  A5,
  /** Flexor digitorum profundus, tendon or muscle. */
  FDP,
  /** Flexor digitorum superficialis, tendon or muscle. */
  FDS,
  /** Extensor apparatus. */
  EXTENSOR,
  /** Lumbrical muscle. */
  LUMBRICAL,
  /** Collateral ligament. */
  COLLATERAL,
  /** Volar plate. */
  VOLAR_PLATE,
  /** Metacarpophalangeal joint. */
  MCP,
  /** Proximal interphalangeal joint. */
  PIP,
  /** Distal interphalangeal joint. */
  DIP,
  /** Growth plate. */
  GROWTH_PLATE,
  /** Skin. */
  SKIN;

  /** Returns the word written in a plan. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Finds what a word stands for. */
  public static Optional<Structure> parse(String word) {
    Objects.requireNonNull(word, "word");
    for (Structure value : values()) {
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

  @Override
  public String key() {
    return "common.structure-" + word();
  }
}
