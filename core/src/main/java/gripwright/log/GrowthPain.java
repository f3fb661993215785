package gripwright.log;

import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.grip.FingerSet;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Pain under 18 in growing joints. Any pain of a growth plate stops a finger until an injury is
 * recorded and cleared; so does pain of the middle (PIP) joint of 3 of 10 or more, or of 1 or 2 on
 * two days. A single 1 or 2 there stops it until two scores of 0 on days at least 48 h apart. The
 * numbers are the library's own. A stop logged at 17 doesn't end with the birthday. Immutable.
 */
public final class GrowthPain {

  private static final long ADULT_MONTHS = 216;

  /** The score from which pain of the middle joint stops at once. */
  private static final double CLEAR_PAIN = 3;

  /** Two scores of 0 this many days apart end a stop after a single low score. */
  private static final int DAYS_BETWEEN_ZEROS = 2;

  private final List<Injury> injuries;
  private final List<Stop> stops;

  /** A stop of a finger of given hands from a day on, up to the first free day, if known. */
  private record Stop(Finger finger, Hands hands, LocalDate from, Optional<LocalDate> to) {}

  private GrowthPain(List<Injury> injuries, List<Stop> stops) {
    this.injuries = injuries;
    this.stops = List.copyOf(stops);
  }

  /** Reads the pain of an athlete. */
  public static GrowthPain of(Athlete athlete, Log log) {
    Objects.requireNonNull(athlete, "athlete");
    Objects.requireNonNull(log, "log");
    List<Injury> injuries =
        athlete.injuries().stream().filter(i -> i.structure() != Structure.SKIN).toList();
    List<Stop> stops = new ArrayList<>();
    Map<List<Object>, JointScores> joints = new HashMap<>();
    log.of(LogEntry.Pain.class).stream()
        .sorted(Comparator.comparing(LogEntry.Pain::date))
        .filter(pain -> athlete.ageInMonths(pain.date()) < ADULT_MONTHS)
        .forEach(
            pain -> {
              boolean ofPlate = isOf(pain, Structure.GROWTH_PLATE);
              if (ofPlate && pain.score() > 0) {
                stops.add(new Stop(pain.finger(), hands(pain), pain.date(), Optional.empty()));
              } else if (isOf(pain, Structure.PIP)
                  || (pain.structure().isEmpty() && pain.score() == 0)) {
                for (Side side : hands(pain).sides()) {
                  joints
                      .computeIfAbsent(
                          List.of(pain.finger(), side),
                          key -> new JointScores(pain.finger(), side, injuries))
                      .take(pain);
                }
              }
            });
    joints.values().forEach(joint -> stops.addAll(joint.stops()));
    return new GrowthPain(injuries, stops);
  }

  private static boolean isOf(LogEntry.Pain pain, Structure structure) {
    return pain.structure().filter(structure::equals).isPresent();
  }

  private static Hands hands(LogEntry.Pain pain) {
    return pain.side().map(s -> s == Side.LEFT ? Hands.LEFT : Hands.RIGHT).orElse(Hands.BOTH);
  }

  /** Returns whether a finger of some hands is stopped on a day. */
  public boolean stops(FingerSet used, Hands by, LocalDate day) {
    if (stops.isEmpty()) {
      return false;
    }
    return stops.stream()
        .filter(stop -> used.has(stop.finger()))
        .filter(stop -> stop.hands().sides().stream().anyMatch(by.sides()::contains))
        .filter(stop -> !day.isBefore(stop.from()))
        .filter(stop -> stop.to().filter(free -> !day.isBefore(free)).isEmpty())
        .anyMatch(stop -> injuries.stream().noneMatch(i -> takesOver(i, stop, day)));
  }

  /** Returns the fingers that are stopped on a day, of either hand, from the index finger on. */
  public List<Finger> stopped(LocalDate day) {
    return Stream.of(Finger.values())
        .filter(finger -> stops(FingerSet.of(finger), Hands.BOTH, day))
        .toList();
  }

  /** Returns how many stops there are, for a count of work. */
  public int size() {
    return stops.size();
  }

  /**
   * Returns whether an injury replaces a stop: from its date on, the injury stops the finger while
   * open and frees it when cleared.
   */
  private static boolean takesOver(Injury injury, Stop stop, LocalDate day) {
    return injury.finger() == stop.finger()
        && injury.side().map(stop.hands().sides()::contains).orElse(true)
        && !day.isBefore(injury.from())
        && injury.cleared().map(on -> on.isAfter(stop.from())).orElse(true);
  }

  /** The scores of one middle joint in order of time. Not thread-safe. */
  private static final class JointScores {

    private final Finger finger;
    private final Side side;
    private final List<Injury> injuries;
    private final List<Stop> stops = new ArrayList<>();
    private Optional<LocalDate> small = Optional.empty();
    private Optional<LocalDate> zero = Optional.empty();

    JointScores(Finger finger, Side side, List<Injury> injuries) {
      this.finger = finger;
      this.side = side;
      this.injuries = injuries;
    }

    void take(LogEntry.Pain pain) {
      LocalDate day = pain.date();
      small = small.filter(first -> clearedBetween(first, day).isEmpty());
      if (pain.score() == 0) {
        zero(day);
      } else if (pain.score() >= CLEAR_PAIN || small.filter(day::isAfter).isPresent()) {
        stop(day, Optional.empty());
      } else if (small.isEmpty()) {
        small = Optional.of(day);
        zero = Optional.empty();
      }
    }

    private void zero(LocalDate day) {
      if (small.isEmpty() || !day.isAfter(small.get())) {
        return;
      }
      if (zero.isEmpty()) {
        zero = Optional.of(day);
      } else if (!day.isBefore(zero.get().plusDays(DAYS_BETWEEN_ZEROS))) {
        stop(small.get(), Optional.of(day));
        small = Optional.empty();
      }
    }

    private void stop(LocalDate from, Optional<LocalDate> to) {
      stops.add(new Stop(finger, side == Side.LEFT ? Hands.LEFT : Hands.RIGHT, from, to));
    }

    private Optional<Injury> clearedBetween(LocalDate first, LocalDate day) {
      return injuries.stream()
          .filter(i -> i.finger() == finger)
          .filter(i -> i.side().map(side::equals).orElse(true))
          .filter(i -> i.cleared().filter(on -> on.isAfter(first) && !on.isAfter(day)).isPresent())
          .findFirst();
    }

    List<Stop> stops() {
      small.ifPresent(from -> stop(from, Optional.empty()));
      small = Optional.empty();
      return stops;
    }
  }
}
