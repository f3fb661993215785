package gripwright.tools.command;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * Where a command writes, and from which folder it was called. Everything is UTF-8, whatever the
 * platform's charset.
 */
public final class Console {

  private final OutputStream out;
  private final OutputStream err;
  private final Path folder;
  private final boolean colour;

  /**
   * Returns a console.
   *
   * @param out results
   * @param err messages about the run
   * @param folder what relative paths are relative to
   * @param colour true if results may have the colours of an ANSI terminal
   */
  public Console(OutputStream out, OutputStream err, Path folder, boolean colour) {
    this.out = out;
    this.err = err;
    this.folder = folder;
    this.colour = colour;
  }

  /** Writes a result. */
  public void out(String text) {
    write(out, text);
  }

  /** Writes a message about the run. */
  public void err(String text) {
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
