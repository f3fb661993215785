package gripwright.log;

import gripwright.athlete.Athlete;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Training, tests, pain and body mass of an athlete, oldest first. Entries of one day are sorted by
 * kind and content, so that their written order does not matter; of two body masses on one day the
 * lower is the last, and counts. Immutable.
 */
public final class Log {

  private final String athlete;
  private final List<LogEntry> entries;
  private final Map<Class<?>, List<LogEntry>> byKind = new HashMap<>();
  private final List<StrengthTest> tests = new ArrayList<>();

  /**
   * Creates a log and sorts its entries.
   *
   * @param athlete name of the athlete
   * @param entries all entries, in any order
   */
  public Log(String athlete, Collection<? extends LogEntry> entries) {
    this.athlete = Objects.requireNonNull(athlete, "athlete");
    this.entries = inOrder(Objects.requireNonNull(entries, "entries"), Function.identity());
    for (LogEntry entry : this.entries) {
      byKind.computeIfAbsent(entry.getClass(), kind -> new ArrayList<>()).add(entry);
      if (entry instanceof LogEntry.Tested tested) {
        tests.add(tested.test());
      }
    }
  }

  /** Returns the name of the athlete. */
  public String athlete() {
    return athlete;
  }

  /** Returns all entries, oldest first. */
  public List<LogEntry> entries() {
    return entries;
  }

  /** Something with an entry; the entry's text is created only for equal days, and once. */
  private static final class Keyed<T> {

    private final T thing;
    private final LogEntry entry;
    private @Nullable String text;

    Keyed(T thing, LogEntry entry) {
      this.thing = thing;
      this.entry = entry;
    }

    double mass() {
      return entry instanceof LogEntry.BodyMass body ? -body.mass().kilograms() : 0;
    }

    String text() {
      String known = text == null ? entry.toString() : text;
      text = known;
      return known;
    }
  }

  /**
   * Returns things in the order in which a log has their entries.
   *
   * @param entry gives the entry of a thing
   */
  public static <T> List<T> inOrder(
      Collection<? extends T> things, Function<? super T, ? extends LogEntry> entry) {
    Objects.requireNonNull(things, "things");
    Objects.requireNonNull(entry, "entry");
    List<Keyed<T>> sorted = new ArrayList<>();
    things.forEach(thing -> sorted.add(new Keyed<>(thing, entry.apply(thing))));
    sorted.sort(
        Comparator.comparing((Keyed<T> keyed) -> keyed.entry.date())
            .thenComparingDouble(Keyed::mass)
            .thenComparing(Keyed::text));
    return sorted.stream().map(keyed -> keyed.thing).toList();
  }

  /** Returns an empty log. */
  public static Log empty(String athlete) {
    return new Log(athlete, List.of());
  }

  /** Returns this log with a further entry. */
  public Log with(LogEntry entry) {
    List<LogEntry> more = new ArrayList<>(entries);
    more.add(entry);
    return new Log(athlete, more);
  }

  /** Returns this log with a test that has no note. */
  public Log with(StrengthTest test) {
    return with(new LogEntry.Tested(test, Optional.empty()));
  }

  /**
   * Checks that this is the log of an athlete.
   *
   * @throws IllegalArgumentException if it is not the athlete's log
   */
  public void requireOf(Athlete other) {
    if (!athlete.equals(other.name())) {
      throw new IllegalArgumentException(
          "the log of " + athlete + " is not the log of " + other.name());
    }
  }

  /**
   * Returns this log with the entries of another.
   *
   * @throws IllegalArgumentException if it is the log of another athlete
   */
  public Log and(Log other) {
    if (!other.athlete.equals(athlete)) {
      throw new IllegalArgumentException(
          "the log of " + other.athlete + " is not the log of " + athlete);
    }
    List<LogEntry> both = new ArrayList<>(entries);
    both.addAll(other.entries);
    return new Log(athlete, both);
  }

  /** Returns the entries of one kind, oldest first. */
  @SuppressWarnings("unchecked") // each list holds entries of its key's class alone
  public <T extends LogEntry> List<T> of(Class<T> kind) {
    return kind.isInterface()
        ? entries.stream().filter(kind::isInstance).map(kind::cast).toList()
        : (List<T>) Collections.unmodifiableList(byKind.getOrDefault(kind, List.of()));
  }

  /** Returns the tests, oldest first. */
  public List<StrengthTest> tests() {
    return Collections.unmodifiableList(tests);
  }

  /** Returns the last body mass logged on or before a day. */
  public Optional<Load> bodyMassOn(LocalDate day) {
    List<LogEntry.BodyMass> masses = of(LogEntry.BodyMass.class);
    for (int i = masses.size() - 1; i >= 0; i--) {
      if (!masses.get(i).date().isAfter(day)) {
        return Optional.of(masses.get(i).mass());
      }
    }
    return Optional.empty();
  }

  /** Returns whether another log is of the same athlete and has the same entries. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Log that
        && athlete.equals(that.athlete)
        && entries.equals(that.entries);
  }

  @Override
  public int hashCode() {
    return Objects.hash(athlete, entries);
  }

  @Override
  public String toString() {
    return "Log[athlete=" + athlete + ", entries=" + entries + "]";
  }
}
