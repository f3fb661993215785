package gripwright.log;

import gripwright.athlete.Injury;
import gripwright.grip.FingerSet;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Compares the scores of a log: which rise, and when a stop ends. A score counts for a place: a
 * finger of a hand, with the structure if one is named; the fingers of a grip, if an exercise hurt;
 * or climbing. Not thread-safe.
 */
final class PainSeries {

  /** Two scores of 2 or less on days this far apart end a stop. */
  private static final int DAYS_APART = 2;

  /** The score that sharp or sudden pain counts as. */
  private static final double SHARP = 10;

  /** Where it hurts; the finger is empty for climbing and for a grip. */
  private record Place(
      Optional<Finger> finger, Optional<Structure> structure, FingerSet fingers, Hands hands) {}

  private final List<FeltPain> felt = new ArrayList<>();
  private final List<Injury> injuries;
  private final Map<Place, SortedMap<LocalDate, Double>> worst = new HashMap<>();
  private final Map<Place, NavigableMap<LocalDate, LocalDate>> ends = new HashMap<>();

  PainSeries(Log log, List<Injury> injuries) {
    this.injuries = List.copyOf(injuries);
    Reader reader = new Reader(felt);
    log.entries().forEach(entry -> entry.pain(reader));
  }

  private record Reader(List<FeltPain> felt) implements LogEntry.PainReader {
    @Override
    public void ofFinger(LogEntry.Pain pain) {
      Hands hands = pain.side().map(PainSeries::hand).orElse(Hands.BOTH);
      add(pain, Optional.empty(), FingerSet.of(pain.finger()), hands, pain.score());
    }

    @Override
    public void whileClimbing(LogEntry.Climbed climbed, double score) {
      add(climbed, Optional.empty(), FingerSet.FOUR, Hands.BOTH, score);
    }

    @Override
    public void inTraining(LogEntry.Trained trained, LogEntry.Done done, double score) {
      add(trained, Optional.of(done), done.setup().grip().fingers(), done.setup().hands(), score);
    }

    private void add(
        LogEntry line, Optional<LogEntry.Done> done, FingerSet fingers, Hands hands, double score) {
      felt.add(FeltPain.undecided(line, done, fingers, hands, score));
    }
  }

  private static Hands hand(Side side) {
    return side == Side.LEFT ? Hands.LEFT : Hands.RIGHT;
  }

  List<FeltPain> all() {
    return felt.stream().map(this::decided).toList();
  }

  private FeltPain decided(FeltPain pain) {
    boolean rises =
        !pain.ofSkin()
            && pain.score() > RisingPain.MILD
            && fingersOf(pain).stream()
                .anyMatch(place -> RisingPain.to(pain.score(), pain.date(), worstOf(place)));
    FeltPain risen = pain.decided(rises, Map.of());
    return risen.stops() ? risen.decided(rises, ends(risen)) : risen;
  }

  /** Returns the places in which a score may have risen: each of its fingers, or climbing. */
  private static List<Place> fingersOf(FeltPain pain) {
    if (pain.whileClimbing()) {
      return List.of(whole(pain));
    }
    List<Place> places = new ArrayList<>();
    for (Finger finger : pain.fingers().fingers()) {
      for (Side side : pain.hands().sides()) {
        places.add(
            new Place(Optional.of(finger), pain.structure(), FingerSet.of(finger), hand(side)));
      }
    }
    return places;
  }

  private static Place whole(FeltPain pain) {
    return new Place(Optional.empty(), Optional.empty(), pain.fingers(), pain.hands());
  }

  private SortedMap<LocalDate, Double> worstOf(Place place) {
    return worst.computeIfAbsent(
        place,
        p -> {
          SortedMap<LocalDate, Double> days = new TreeMap<>();
          boolean climbing = p.finger().isEmpty();
          felt.stream()
              .filter(other -> climbing ? other.whileClimbing() : isOf(other, p))
              .forEach(other -> days.merge(other.date(), other.score(), Math::max));
          return days;
        });
  }

  /** Returns whether a score counts for a finger of a hand: named by a line, or used by a grip. */
  private static boolean isOf(FeltPain pain, Place place) {
    boolean same =
        place.structure().isEmpty()
            || pain.structure().isEmpty()
            || pain.structure().equals(place.structure());
    return !pain.ofSkin()
        && !pain.whileClimbing()
        && same
        && pain.mayBeOf(place.finger().orElseThrow(), place.hands().sides().get(0));
  }

  /** Returns when a stop of each hand ends, by scores or by a clearance. */
  private Map<Side, LocalDate> ends(FeltPain pain) {
    Map<Side, LocalDate> known = new EnumMap<>(Side.class);
    for (Side side : pain.hands().sides()) {
      end(pain, side).ifPresent(day -> known.put(side, day));
    }
    return known;
  }

  private Optional<LocalDate> end(FeltPain pain, Side side) {
    Optional<LocalDate> cleared =
        injuries.stream()
            .filter(injury -> pain.explains(injury, side))
            .flatMap(injury -> injury.cleared().stream())
            .filter(on -> on.isAfter(pain.date()))
            .min(Comparator.naturalOrder());
    Optional<LocalDate> scored =
        pain.finger().isPresent() ? endOfAll(fingersOf(pain), pain) : end(whole(pain), pain);
    return cleared.isPresent() && scored.isPresent()
        ? Optional.of(cleared.get().isBefore(scored.get()) ? cleared.get() : scored.get())
        : cleared.or(() -> scored);
  }

  /**
   * Returns when a stop ends in all places: a finger without a named hand is stopped in both hands,
   * until both are free.
   */
  private Optional<LocalDate> endOfAll(List<Place> places, FeltPain pain) {
    Optional<LocalDate> last = Optional.empty();
    for (Place place : places) {
      Optional<LocalDate> its = end(place, pain);
      if (its.isEmpty()) {
        return its;
      }
      last = last.filter(its.get()::isBefore).or(() -> its);
    }
    return last;
  }

  private Optional<LocalDate> end(Place place, FeltPain pain) {
    NavigableMap<LocalDate, LocalDate> known =
        ends.computeIfAbsent(place, p -> ends(daysThatEnd(p, pain.whileClimbing())));
    return Optional.ofNullable(known.higherEntry(pain.date())).map(Map.Entry::getValue);
  }

  /**
   * Returns, for each first day of 2 or less, the second such day that is far enough from it. A day
   * with more pain, or sharp or sudden pain, starts the count again.
   */
  private static NavigableMap<LocalDate, LocalDate> ends(SortedMap<LocalDate, Double> days) {
    NavigableMap<LocalDate, LocalDate> ends = new TreeMap<>();
    List<LocalDate> row = new ArrayList<>();
    days.forEach(
        (day, score) -> {
          if (score > RisingPain.MILD) {
            row.clear();
            return;
          }
          while (!row.isEmpty() && !day.isBefore(row.get(0).plusDays(DAYS_APART))) {
            ends.put(row.remove(0), day);
          }
          row.add(day);
        });
    return ends;
  }

  /**
   * Returns the worst of each day that counts for the end of a stop. If it is unknown which of
   * several fingers hurt, a line that names one of them counts; so does a grip or climbing with the
   * same fingers.
   */
  private SortedMap<LocalDate, Double> daysThatEnd(Place place, boolean climbing) {
    SortedMap<LocalDate, Double> days = new TreeMap<>();
    for (FeltPain other : felt) {
      if (counts(other, place, climbing)) {
        double score = other.isStrong() ? SHARP : other.score();
        days.merge(other.date(), score, Math::max);
      }
    }
    return days;
  }

  private static boolean counts(FeltPain other, Place place, boolean climbing) {
    if (place.finger().isPresent()) {
      return isOf(other, place);
    }
    if (other.ofSkin() || !other.touches(place.fingers(), place.hands())) {
      return false;
    }
    if (other.whileClimbing()) {
      return climbing;
    }
    return other.finger().isPresent()
        || other.score() > RisingPain.MILD
        || ((other.fingers().bits() & place.fingers().bits()) == place.fingers().bits()
            && other.hands().sides().containsAll(place.hands().sides()));
  }
}
