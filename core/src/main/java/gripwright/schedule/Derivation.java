package gripwright.schedule;

import gripwright.finding.Message;
import java.util.List;

/**
 * One link of the chain behind a number of an exercise: the step, the resulting number, and its
 * inputs. Its key and arguments describe the inputs; the same key followed by {@code .step}
 * describes the step.
 */
public sealed interface Derivation extends Message
    permits StrengthLink, LoadLink, ProgressLink, MixLink, DoneLink {

  /** Returns the number of the link. */
  double value();

  /**
   * Returns the unit of the number, as a symbol such as {@code kg}; empty for a pure number, and
   * for one with a unit in words.
   */
  String unit();

  /** Returns the causes that limited the exercise, if the link has any. */
  default List<Cause> causes() {
    return List.of();
  }
}
