package gripwright.log;

import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What an athlete did, tested and felt, oldest first. Entries of one day keep the order in which
 * they were written. Immutable.
 *
 * @param athlete name of the athlete
 * @param entries all entries
 */
public record Log(String athlete, List<LogEntry> entries) {

  /** Sorts the entries by date. */
  public Log {
    List<LogEntry> sorted = new ArrayList<>(entries);
    sorted.sort(Comparator.comparing(LogEntry::date));
    entries = List.copyOf(sorted);
  }

  /** Returns a log with nothing in it. */
  public static Log empty(String athlete) {
    return new Log(athlete, List.of());
  }

  /** Returns this log with one entry more. */
  public Log with(LogEntry entry) {
    List<LogEntry> more = new ArrayList<>(entries);
    more.add(entry);
    return new Log(athlete, more);
  }

  /** Returns the entries of one kind, oldest first. */
  public <T extends LogEntry> List<T> of(Class<T> kind) {
    return entries.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** Returns the tests, oldest first. */
  public List<StrengthTest> tests() {
    return of(LogEntry.Tested.class).stream().map(LogEntry.Tested::test).toList();
  }

  /** Returns the last body mass logged on or before a day. */
  public Optional<Load> bodyMassOn(LocalDate day) {
    return of(LogEntry.BodyMass.class).stream()
        .filter(e -> !e.date().isAfter(day))
        .reduce((first, second) -> second)
        .map(LogEntry.BodyMass::mass);
  }
}
