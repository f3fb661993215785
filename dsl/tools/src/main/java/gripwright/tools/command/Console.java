package gripwright.tools.command;

import gripwright.budget.Progress;
import gripwright.export.json.JsonDocuments;
import gripwright.export.json.Provenance;
import gripwright.export.study.Pseudonyms;
import gripwright.language.source.SourceFile;
import gripwright.wording.Wording;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

/**
 * The output of a command, and the folder it was called from. Everything is UTF-8, whatever the
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
   * @param folder base of relative paths
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
   * @param folder base of relative paths
   * @param colour true if results may have the colours of an ANSI terminal
   * @param terminal tells whether a terminal shows the messages, so that progress can be shown too
   * @param nanoTime a monotonic clock, to detect long work
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
   * Returns the wording of all results; no other place decides on it. It is English, as are usage
   * texts and the pages of codes.
   */
  static Wording wording() {
    return Wording.english();
  }

  /**
   * Returns the writer of JSON documents.
   *
   * @param files the files that a document comes from, one list or several
   */
  @SafeVarargs
  public static JsonDocuments documents(List<SourceFile>... files) {
    List<SourceFile> all = new ArrayList<>();
    for (List<SourceFile> each : files) {
      all.addAll(each);
    }
    return new JsonDocuments(provenance(all, Pseudonyms.none()), wording());
  }

  /** Returns the provenance of what comes from files, whose names may be replaced by codes. */
  static Provenance provenance(List<SourceFile> files, Pseudonyms names) {
    List<Provenance.Source> sources = new ArrayList<>();
    files.forEach(
        file ->
            sources.add(
                new Provenance.Source(names.hide(file.name()), Provenance.sha256(file.text()))));
    return new Provenance(Version.text(), sources);
  }

  /** Returns the listener for progress; its line is erased before anything else is written. */
  Progress progress() {
    return progress;
  }

  /**
   * Writes a result.
   *
   * @throws LostOutput if it can't be written
   */
  public void out(String text) {
    progress.clear();
    write(out, text);
  }

  /**
   * Writes a message about the run.
   *
   * @throws LostOutput if it can't be written
   */
  public void err(String text) {
    progress.clear();
    write(err, text);
  }

  private static void write(OutputStream stream, String text) {
    try {
      stream.write(text.getBytes(StandardCharsets.UTF_8));
      stream.flush();
    } catch (IOException e) {
      throw new LostOutput(e);
    }
  }

  boolean colour() {
    return colour;
  }

  Path folder() {
    return folder;
  }
}
