package gripwright.tools.command;

import gripwright.budget.Progress;
import gripwright.budget.Stage;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * A line on a terminal that shows the progress of long work and is erased at the end. Short work
 * shows nothing. Not thread-safe.
 */
final class ProgressLine implements Progress {

  /** Work that takes less shows nothing. */
  static final long LONG_NANOS = 2_000_000_000L;

  /** Time before a line is written again. */
  static final long STEADY_NANOS = 200_000_000L;

  private static final double SECOND = 1e9;
  private static final long MINUTE = 60;
  private static final String ERASE = "\r\u001b[K";

  private final BooleanSupplier terminal;
  private final LongSupplier nanoTime;
  private final Consumer<String> write;
  private boolean begun;
  private boolean quiet;
  private boolean shown;
  private long next;
  private @Nullable Stage stage;
  private long since;

  /**
   * Makes a line.
   *
   * @param terminal tells whether output goes to a terminal; called once, if work is long
   * @param nanoTime a monotonic clock
   * @param write writes to the terminal
   */
  ProgressLine(BooleanSupplier terminal, LongSupplier nanoTime, Consumer<String> write) {
    this.terminal = terminal;
    this.nanoTime = nanoTime;
    this.write = write;
  }

  @Override
  public void report(Stage stage, long done, long of) {
    if (quiet) {
      return;
    }
    long now = nanoTime.getAsLong();
    if (stage != this.stage || done == 0) {
      this.stage = stage;
      since = now;
    }
    if (!begun) {
      begun = true;
      next = now + LONG_NANOS;
      return;
    }
    if (now - next < 0) {
      return;
    }
    if (!shown && !terminal.getAsBoolean()) {
      quiet = true;
      return;
    }
    next = now + STEADY_NANOS;
    shown = true;
    write.accept(ERASE + words(stage, done, of) + left(done, of, now - since));
  }

  private static String words(Stage stage, long done, long of) {
    return switch (stage) {
      case READING -> "reading: " + done + " files";
      case CHECKING -> "checking: " + done + " of " + of + " declarations";
      case PLANNING -> "planning: " + done + " of " + of + " weeks";
      case COMPARING -> "comparing: " + done + " of " + of + " draws or athletes";
    };
  }

  /** Returns about how long it still takes, once that can be estimated. */
  private static String left(long done, long of, long nanos) {
    if (done <= 0 || nanos < STEADY_NANOS || of <= done) {
      return "";
    }
    long seconds = Math.round((double) nanos / done * (of - done) / SECOND);
    return ", about " + (seconds < MINUTE ? seconds + " s" : seconds / MINUTE + " min") + " left";
  }

  /** Erases the line, so that something else can be written. */
  void clear() {
    if (shown) {
      shown = false;
      write.accept(ERASE);
    }
  }
}
