package gripwright.language.write.internal;

import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.plan.Exercise;
import gripwright.protocol.Report;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;

/** Writes values exactly, so that they read back the same. */
final class Written {

  private static final long MINUTE = 60_000_000_000L;
  private static final long HOUR = 60 * MINUTE;

  private Written() {}

  static String number(double value) {
    return plain(BigDecimal.valueOf(value));
  }

  private static String plain(BigDecimal value) {
    BigDecimal shortest = value.stripTrailingZeros();
    return (shortest.scale() < 0 ? shortest.setScale(0) : shortest).toPlainString();
  }

  static String load(Load load) {
    return number(load.kilograms()) + " kg";
  }

  static String length(Length length) {
    return number(length.millimetres()) + " mm";
  }

  static String angle(Angle angle) {
    return number(angle.degrees()) + " deg";
  }

  static String months(double months) {
    return number(months) + (months == 1 ? " month" : " months");
  }

  static String weeks(int weeks) {
    return weeks + (weeks == 1 ? " week" : " weeks");
  }

  /** Returns a time in whole minutes if possible, else in seconds. */
  static String time(Duration time) {
    long nanos = time.toNanos();
    return nanos != 0 && nanos % MINUTE == 0
        ? nanos / MINUTE + " min"
        : plain(BigDecimal.valueOf(nanos, 9)) + " s";
  }

  /** Returns a time in whole hours if possible, else in minutes or seconds. */
  static String gap(Duration time) {
    long nanos = time.toNanos();
    return nanos != 0 && nanos % HOUR == 0 ? nanos / HOUR + " h" : time(time);
  }

  /** Returns a time in seconds, the unit of holds. */
  static String seconds(Duration time) {
    return plain(BigDecimal.valueOf(time.toNanos(), 9)) + " s";
  }

  /** Returns the percentage that reads as a fraction. */
  static String percent(double fraction) {
    double near = BigDecimal.valueOf(fraction).movePointRight(2).doubleValue();
    for (double percent : new double[] {near, Math.nextUp(near), Math.nextDown(near)}) {
      if (percent / 100 == fraction) {
        return number(percent) + " %";
      }
    }
    return number(near) + " %";
  }

  static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  /** Returns a quoted text with a space before it; nothing if there is none. */
  static String quotedIfPresent(Optional<String> text) {
    return text.map(t -> " " + quoted(t)).orElse("");
  }

  static String weekday(DayOfWeek day) {
    return day.name().substring(0, 3).toLowerCase(Locale.ROOT);
  }

  /** Returns a line with a note. */
  static String note(String text) {
    return "note " + quoted(text);
  }

  /** Returns a fact about the delivery of training. */
  static String report(Report report) {
    return "report " + report.item().word() + " " + quoted(report.text());
  }

  /** Returns edge and hands, as they follow the name of a grip. */
  static String place(Length edge, Hands hands, boolean lifting) {
    return "edge "
        + length(edge)
        + (hands == Hands.BOTH ? "" : " " + hands.word() + " hand")
        + (lifting ? " lifting" : "");
  }

  /** Returns where an exercise is done, and with which hands. */
  static String place(Exercise exercise) {
    return exercise.alternating()
        ? place(exercise.edge(), Hands.BOTH, false)
            + " alternating hands"
            + (exercise.lifting() ? " lifting" : "")
        : place(exercise.edge(), exercise.hands(), exercise.lifting());
  }

  static String setup(Setup setup) {
    return setup.grip().name() + " " + place(setup.edge(), setup.hands(), setup.lifting());
  }
}
