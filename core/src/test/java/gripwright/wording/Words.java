package gripwright.wording;

import gripwright.finding.Message;
import gripwright.schedule.Derivation;
import java.util.List;

/** Puts data of core into English, for tests that compare sentences. */
public final class Words {

  private Words() {}

  /** Puts a message into words. */
  public static String say(Message message) {
    return Wording.english().say(message);
  }

  /** Puts messages into words. */
  public static List<String> say(List<? extends Message> messages) {
    return messages.stream().map(Words::say).toList();
  }

  /** Returns the step of a link. */
  public static String step(Derivation link) {
    return Wording.english().step(link);
  }

  /** Returns the unit of a link. */
  public static String unit(Derivation link) {
    return Wording.english().unit(link);
  }

  /** Returns an argument as text. */
  public static String fact(Object fact) {
    return Wording.english().fact(fact);
  }
}
