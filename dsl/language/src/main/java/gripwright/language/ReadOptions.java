package gripwright.language;

import gripwright.budget.Budget;
import gripwright.language.resolve.SourceLoader;
import gripwright.language.syntax.Limits;
import gripwright.wording.Wording;
import java.nio.file.Path;
import java.util.Optional;

/**
 * How files are read. Immutable.
 *
 * @param root the folder that {@code use} may not leave; empty means the folder of the main file
 * @param files the source of files instead of a folder, for hosts that store them elsewhere
 * @param limits how much of a file is read
 * @param budget how much work reading and compiling may take
 * @param maxFindingsPerFile how many findings of one file are shown, 1 or more
 * @param maxFindings how many findings are shown in all, 1 or more
 * @param wording the words of findings
 */
public record ReadOptions(
    Optional<Path> root,
    Optional<SourceLoader> files,
    Limits limits,
    Budget budget,
    int maxFindingsPerFile,
    int maxFindings,
    Wording wording) {

  /** The default number of findings shown for one file. */
  public static final int STANDARD_FINDINGS_PER_FILE = 30;

  /** The default number of findings shown for one run. */
  public static final int STANDARD_FINDINGS = 100;

  private static final ReadOptions STANDARD =
      new ReadOptions(
          Optional.empty(),
          Optional.empty(),
          Limits.standard(),
          Budget.standard(),
          STANDARD_FINDINGS_PER_FILE,
          STANDARD_FINDINGS,
          Wording.english());

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if a number of findings is less than 1
   */
  public ReadOptions {
    if (maxFindingsPerFile < 1 || maxFindings < 1) {
      throw new IllegalArgumentException("at least one finding is shown");
    }
  }

  /** Returns the options for files on disk: 4 MiB a file, 30 findings a file, 100 in all. */
  public static ReadOptions standard() {
    return STANDARD;
  }

  /** Returns these options with a folder that {@code use} may not leave. */
  public ReadOptions withRoot(Path folder) {
    return new ReadOptions(
        Optional.of(folder), files, limits, budget, maxFindingsPerFile, maxFindings, wording);
  }

  /** Returns these options with files from a loader instead of a folder. */
  public ReadOptions withFiles(SourceLoader loader) {
    return new ReadOptions(
        root, Optional.of(loader), limits, budget, maxFindingsPerFile, maxFindings, wording);
  }

  /** Returns these options with file limits that differ from those of the budget. */
  public ReadOptions withLimits(Limits other) {
    return new ReadOptions(root, files, other, budget, maxFindingsPerFile, maxFindings, wording);
  }

  /**
   * Returns these options with a budget. It applies to reading and compiling, and its file limits
   * replace {@link #limits()}.
   */
  public ReadOptions withBudget(Budget other) {
    return new ReadOptions(
        root, files, Limits.of(other), other, maxFindingsPerFile, maxFindings, wording);
  }

  /** Returns these options with other numbers of findings shown. */
  public ReadOptions withFindings(int perFile, int inAll) {
    return new ReadOptions(root, files, limits, budget, perFile, inAll, wording);
  }

  /** Returns these options with another wording of findings. */
  public ReadOptions withWording(Wording other) {
    return new ReadOptions(root, files, limits, budget, maxFindingsPerFile, maxFindings, other);
  }

  /** Returns these options with every finding shown. */
  public ReadOptions withAllFindings() {
    return withFindings(Integer.MAX_VALUE, Integer.MAX_VALUE);
  }
}
