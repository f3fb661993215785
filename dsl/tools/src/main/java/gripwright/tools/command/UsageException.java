package gripwright.tools.command;

/** A command was called in a way that makes no sense; the sentence says so to the caller. */
public final class UsageException extends Exception {

  private static final long serialVersionUID = 1L;

  private final String sentence;

  UsageException(String sentence) {
    super(sentence);
    this.sentence = sentence;
  }

  /** Returns what was wrong with the call, for the caller. */
  public String sentence() {
    return sentence;
  }
}
