package gripwright.tools.command;

import gripwright.budget.Progress;
import gripwright.wording.Wording;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

/**
 * Where a command writes, and from which folder it was called. Everything is UTF-8, whatever the
 * platform's charset.
 */
public final class Console {

  private final OutputStream out;
  private final OutputStream err;
  private final Path folder;
  private final boolean colour;
  private final ProgressLine progress;

  /**
   * Returns a console that never shows progress.
   *
   * @param out results
   * @param err messages about the run
   * @param folder what relative paths are relative to
   * @param colour true if results may have the colours of an ANSI terminal
   */
  public Console(OutputStream out, OutputStream err, Path folder, boolean colour) {
    this(out, err, folder, colour, () -> false, () -> 0);
  }

  /**
   * Returns a console.
   *
   * @param out results
   * @param err messages about the run
   * @param folder what relative paths are relative to
   * @param colour true if results may have the colours of an ANSI terminal
   * @param terminal tells whether a terminal shows the messages, and with them how far long work
   *     has come
   * @param nanoTime a monotonic clock, which tells when work is long
   */
  public Console(
      OutputStream out,
      OutputStream err,
      Path folder,
      boolean colour,
      BooleanSupplier terminal,
      LongSupplier nanoTime) {
    this.progress = new ProgressLine(terminal, nanoTime, text -> write(err, text));
    this.out = out;
    this.err = err;
    this.folder = folder;
    this.colour = colour;
  }

  /**
   * Returns the words of all results, in the one place that decides on them. They are English, as
   * are usage texts and the pages of codes, which are part of the command line and of the docs.
   */
  static Wording wording() {
    return Wording.english();
  }

  /** Returns who is informed of progress; what it shows is gone before anything else is written. */
  Progress progress() {
    return progress;
  }

  /** Writes a result. */
  public void out(String text) {
    progress.clear();
    write(out, text);
  }

  /** Writes a message about the run. */
  public void err(String text) {
    progress.clear();
    write(err, text);
  }

  private static void write(OutputStream stream, String text) {
    try {
      stream.write(text.getBytes(StandardCharsets.UTF_8));
      stream.flush();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write the output", e);
    }
  }

  boolean colour() {
    return colour;
  }

  Path folder() {
    return folder;
  }
}
