package gripwright.tools.command;

import java.io.IOException;
import java.util.Locale;

/** A result or a message that could not be written to where the caller wanted it. */
public final class LostOutput extends RuntimeException {

  private static final long serialVersionUID = 1L;

  LostOutput(IOException cause) {
    super(cause.getMessage(), cause);
  }

  /** Returns whether the reader closed the pipe on purpose, as `head` does. */
  public boolean isUnwanted() {
    String reason = getMessage();
    return reason != null && reason.toLowerCase(Locale.ROOT).contains("broken pipe");
  }

  /** Returns the error message for the caller. */
  public String sentence() {
    String reason = getMessage();
    return "the output could not be written"
        + (reason == null ? "" : ": " + reason.toLowerCase(Locale.ROOT));
  }
}
