package gripwright.protocol;

/**
 * What the time of a hold means. Sums, minutes and rules use the written time in each case.
 *
 * @since 1.0
 */
public enum Extent {
  /** The hold lasts for the whole time. */
  WHOLE,
  /** The hold lasts for at most this time; a shorter one is not missed. */
  UP_TO,
  /** The hold lasts until the load can't be held any more, for at most this time; always hard. */
  TO_FAILURE;

  /** Returns whether the time is the greatest one, so that a shorter hold is not missed. */
  public boolean isBound() {
    return this != WHOLE;
  }
}
