package gripwright.budget;

/** Is informed of progress. Called often, on the thread that does the work: it should be quick. */
@FunctionalInterface
public interface Progress {

  /** Does nothing. */
  Progress NONE = (stage, done, of) -> {};

  /**
   * Reports progress.
   *
   * @param stage what is being done
   * @param done how much of it is done
   * @param of how much there is, as far as is known; never less than {@code done}
   */
  void report(Stage stage, long done, long of);
}
