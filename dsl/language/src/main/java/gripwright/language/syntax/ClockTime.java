package gripwright.language.syntax;

/**
 * {@code 18:00}: a time of day.
 *
 * @param hours the digits before the colon
 * @param minutes those after it
 */
public record ClockTime(int id, String hours, String minutes) implements Syntax {
  /** Returns the time as written, without spaces. */
  public String text() {
    return hours + ":" + minutes;
  }
}
