package gripwright.schedule;

import gripwright.finding.Message;

/**
 * One link of the chain behind a number of an exercise: what was done, the number it gave, and what
 * that was made from. Its key and facts say from what; the same key followed by {@code .step} says
 * what was done.
 */
public sealed interface Derivation extends Message
    permits StrengthLink, LoadLink, ProgressLink, MixLink, DoneLink {

  /** Returns the number that the link gave. */
  double value();

  /**
   * Returns the unit of the number, as a symbol such as {@code kg}; empty for a pure number, and
   * for one that is counted in words.
   */
  String unit();
}
