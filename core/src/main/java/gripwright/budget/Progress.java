package gripwright.budget;

/**
 * Receives reports of progress. Called often, on the thread that does the work, so it should be
 * quick.
 */
@FunctionalInterface
public interface Progress {

  /** Does nothing. */
  Progress NONE = (stage, done, of) -> {};

  /**
   * Reports progress.
   *
   * @param stage the stage of the run
   * @param done amount done
   * @param of total amount as far as known; never less than {@code done}
   */
  void report(Stage stage, long done, long of);
}
