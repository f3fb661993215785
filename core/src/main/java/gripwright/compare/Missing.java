package gripwright.compare;

import gripwright.finding.Message;
import java.util.Locale;

/** Why a value can't be given. */
public enum Missing implements Message {
  /** Critical force isn't known. */
  NO_CRITICAL_FORCE,
  /** Body mass isn't known. */
  NO_BODY_MASS,
  /** No test gives the maximum of this grip, edge and hands. */
  NO_MAXIMUM,
  /** A load lies outside the range for which the fatigue model was fitted. */
  OUTSIDE_FATIGUE_MODEL,
  /** The hand does not take the grip on the edge. */
  GRIP_OUT_OF_REACH,
  /** One of the arms has no training. */
  NOTHING_DONE,
  /** The difference of this measure has no size: only the order of failures is compared. */
  ORDER_ONLY;

  /** Returns the word for it, such as {@code no-body-mass}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public String key() {
    return "compared.missing-" + word();
  }
}
