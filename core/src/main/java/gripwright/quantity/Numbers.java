package gripwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes numbers for people and for files: without exponent, locale or trailing zeros. */
public final class Numbers {

  private Numbers() {}

  /**
   * Writes a number with at most the given count of decimals, half up, without trailing zeros.
   *
   * @param value a finite number
   * @param decimals most digits after the point, 0 or more
   * @throws NumberFormatException if the value is not finite
   */
  public static String plain(double value, int decimals) {
    return rounded(value, decimals).toPlainString();
  }

  /** Rounds half up to the given count of decimals, without trailing zeros; never minus zero. */
  public static BigDecimal rounded(double value, int decimals) {
    if (value == (int) value) {
      return BigDecimal.valueOf((int) value);
    }
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }
}
