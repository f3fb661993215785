package gripwright.schedule;

import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * What a coach wrote for people about a part of a plan. It changes no load and no rule. Immutable.
 *
 * @param about the kind of part
 * @param name name of the part
 * @param text as written
 */
public record Note(About about, String name, String text) implements Message {

  /** What a note is about. */
  public enum About {
    /** The whole plan. */
    PLAN,
    /** A block of the plan. */
    BLOCK,
    /** A protocol that is used in the plan. */
    PROTOCOL,
    /** A grip that is used in the plan. */
    GRIP;

    /** Returns the word of the language for it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Refuses null. */
  public Note {
    Objects.requireNonNull(about, "about");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(text, "text");
  }

  @Override
  public String key() {
    return about == About.PLAN ? "season.note-of-plan" : "season.note-of-part";
  }

  @Override
  public Map<String, Object> arguments() {
    return Map.of("name", name, "note", new WrittenText(text));
  }
}
