package gripwright.athlete;

import gripwright.finding.Message;
import java.time.LocalDate;

/**
 * Pain on a day. Immutable.
 *
 * @param date the day
 * @param score 0 to 10
 * @param stops true if it calls for stopping
 * @param rising true if it rises in its place week on week
 * @param where what hurt, and how
 */
public record PainReport(
    LocalDate date, double score, boolean stops, boolean rising, Message where) {}
