package gripwright.tools.command;

/** Exit codes. */
public final class Exit {

  /** No errors; warnings and waived findings are allowed. */
  public static final int FINE = 0;

  /** Errors in the files. */
  public static final int ERRORS = 1;

  /** Wrong usage, or a file that cannot be read or written. */
  public static final int USAGE = 2;

  private Exit() {}
}
