package gripwright.tools.command;

/** Thrown when a command is called with wrong arguments; the sentence explains why. */
public final class UsageException extends Exception {

  private static final long serialVersionUID = 1L;

  private final String sentence;

  UsageException(String sentence) {
    super(sentence);
    this.sentence = sentence;
  }

  /** Returns the error message for the caller. */
  public String sentence() {
    return sentence;
  }
}
