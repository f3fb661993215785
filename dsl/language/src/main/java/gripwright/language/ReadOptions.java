package gripwright.language;

import gripwright.budget.Budget;
import gripwright.language.source.Limits;
import gripwright.language.source.SourceLoader;
import gripwright.wording.Wording;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How files are read. Immutable. */
public final class ReadOptions {

  /** The default number of findings shown for one file. */
  public static final int STANDARD_FINDINGS_PER_FILE = 30;

  /** The default number of findings shown for one run. */
  public static final int STANDARD_FINDINGS = 100;

  private static final ReadOptions STANDARD =
      new ReadOptions(
          new Parts(
              Optional.empty(),
              Optional.empty(),
              Limits.standard(),
              Budget.standard(),
              STANDARD_FINDINGS_PER_FILE,
              STANDARD_FINDINGS,
              Wording.english()));

  /** The components, checked. */
  private record Parts(
      Optional<Path> root,
      Optional<SourceLoader> files,
      Limits limits,
      Budget budget,
      int maxFindingsPerFile,
      int maxFindings,
      Wording wording) {
    Parts {
      if (maxFindingsPerFile < 1 || maxFindings < 1) {
        throw new IllegalArgumentException("at least one finding is shown");
      }
    }
  }

  private final Parts parts;

  private ReadOptions(Parts parts) {
    this.parts = parts;
  }

  /** Returns the folder that {@code use} may not leave; empty means the folder of the main file. */
  public Optional<Path> root() {
    return parts.root;
  }

  /** Returns the source of files instead of a folder, for hosts that store them elsewhere. */
  public Optional<SourceLoader> files() {
    return parts.files;
  }

  /** Returns how much of a file is read. */
  public Limits limits() {
    return parts.limits;
  }

  /** Returns how much work reading and compiling may take. */
  public Budget budget() {
    return parts.budget;
  }

  /** Returns how many findings of one file are shown, 1 or more. */
  public int maxFindingsPerFile() {
    return parts.maxFindingsPerFile;
  }

  /** Returns how many findings are shown in all, 1 or more. */
  public int maxFindings() {
    return parts.maxFindings;
  }

  /** Returns the words of findings. */
  public Wording wording() {
    return parts.wording;
  }

  /** Returns the options for files on disk: 4 MiB a file, 30 findings a file, 100 in all. */
  public static ReadOptions standard() {
    return STANDARD;
  }

  /** Returns these options with a folder that {@code use} may not leave. */
  public ReadOptions withRoot(Path folder) {
    return new ReadOptions(
        new Parts(
            Optional.of(folder),
            parts.files,
            parts.limits,
            parts.budget,
            parts.maxFindingsPerFile,
            parts.maxFindings,
            parts.wording));
  }

  /** Returns these options with files from a loader instead of a folder. */
  public ReadOptions withFiles(SourceLoader loader) {
    return new ReadOptions(
        new Parts(
            parts.root,
            Optional.of(loader),
            parts.limits,
            parts.budget,
            parts.maxFindingsPerFile,
            parts.maxFindings,
            parts.wording));
  }

  /** Returns these options with file limits that differ from those of the budget. */
  public ReadOptions withLimits(Limits other) {
    return new ReadOptions(
        new Parts(
            parts.root,
            parts.files,
            other,
            parts.budget,
            parts.maxFindingsPerFile,
            parts.maxFindings,
            parts.wording));
  }

  /**
   * Returns these options with a budget. It applies to reading and compiling, and its file limits
   * replace {@link #limits()}.
   */
  public ReadOptions withBudget(Budget other) {
    return new ReadOptions(
        new Parts(
            parts.root,
            parts.files,
            Limits.of(other),
            other,
            parts.maxFindingsPerFile,
            parts.maxFindings,
            parts.wording));
  }

  /** Returns these options with other numbers of findings shown. */
  public ReadOptions withFindings(int perFile, int inAll) {
    return new ReadOptions(
        new Parts(
            parts.root, parts.files, parts.limits, parts.budget, perFile, inAll, parts.wording));
  }

  /** Returns these options with another wording of findings. */
  public ReadOptions withWording(Wording other) {
    return new ReadOptions(
        new Parts(
            parts.root,
            parts.files,
            parts.limits,
            parts.budget,
            parts.maxFindingsPerFile,
            parts.maxFindings,
            other));
  }

  /** Returns these options with every finding shown. */
  public ReadOptions withAllFindings() {
    return withFindings(Integer.MAX_VALUE, Integer.MAX_VALUE);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ReadOptions that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "ReadOptions" + parts.toString().substring("Parts".length());
  }
}
