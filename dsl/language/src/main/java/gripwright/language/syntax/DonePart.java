package gripwright.language.syntax;

import org.jspecify.annotations.Nullable;

/** What is noted about one exercise of a logged session. */
public sealed interface DonePart extends Syntax {

  /** {@code sets 4 of 5}. */
  record SetsDone(int id, Amount done, @Nullable Amount of) implements DonePart {}

  /** {@code load 80.25 kg}. */
  record LoadDone(int id, Amount load) implements DonePart {}

  /** {@code effort 8}, of 10. */
  record EffortDone(int id, Amount effort) implements DonePart {}

  /** {@code pain 1}, of 10. */
  record PainDone(int id, Amount pain) implements DonePart {}
}
