package gripwright.log;

import gripwright.athlete.Injury;
import gripwright.grip.FingerSet;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.LogEntry.Pain;
import gripwright.log.LogEntry.Pain.Kind;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A pain score of a log, from any kind of entry, and its consequences. Only this class decides
 * whether and until when pain stops training. Immutable.
 *
 * <p>Up to 2 of 10, training continues. Above 2 and up to 5 the next two sessions stay the same or
 * get lighter. Training with the finger stops above 5, with sharp or sudden pain, and if a score
 * above 2 is the second rise in a row from week to week, see {@link RisingPain}. The stop ends with
 * scores of 2 or less on two days at least 48 h apart without a higher one in between, or on the
 * day an injury of the finger is cleared; time alone never ends it. Pain of the skin holds
 * progression but never stops training. Sources: Thomee R 1997, Phys Ther 77(12):1690-1703;
 * Silbernagel KG et al. 2007, Am J Sports Med 35(6):897-906; the end of a stop is the library's own
 * choice.
 */
public final class FeltPain {

  /** The components, checked. */
  private record Parts(
      LogEntry line,
      Optional<LogEntry.Done> done,
      FingerSet fingers,
      Hands hands,
      double score,
      boolean rising,
      Map<Side, LocalDate> ends) {
    Parts {
      Objects.requireNonNull(line, "line");
      Objects.requireNonNull(done, "done");
      Objects.requireNonNull(fingers, "fingers");
      Objects.requireNonNull(hands, "hands");
      Objects.requireNonNull(ends, "ends");
      ends = Map.copyOf(ends);
    }
  }

  private final Parts parts;

  private FeltPain(Parts parts) {
    this.parts = parts;
  }

  /** Returns pain of which only the score is known so far. */
  static FeltPain undecided(
      LogEntry line, Optional<LogEntry.Done> done, FingerSet fingers, Hands hands, double score) {
    return new FeltPain(new Parts(line, done, fingers, hands, score, false, Map.of()));
  }

  /** Returns the log entry. */
  public LogEntry line() {
    return parts.line;
  }

  /** Returns the exercise, if the entry is a session. */
  public Optional<LogEntry.Done> done() {
    return parts.done;
  }

  /** Returns the fingers that may hurt: the one named, those of the grip, or all while climbing. */
  public FingerSet fingers() {
    return parts.fingers;
  }

  /** Returns the hands that may hurt. */
  public Hands hands() {
    return parts.hands;
  }

  /** Returns the score, 0 to 10. */
  public double score() {
    return parts.score;
  }

  /** Returns whether it rises for the second week in a row, to above 2. */
  public boolean rising() {
    return parts.rising;
  }

  /**
   * Returns for each hand whose training the pain stops, the first day on which it may continue, if
   * known.
   */
  public Map<Side, LocalDate> ends() {
    return parts.ends;
  }

  /**
   * Returns all pain of a log, in the order of its entries.
   *
   * @param injuries the athlete's injuries, whose clearance ends the stop of their finger
   */
  public static List<FeltPain> of(Log log, List<Injury> injuries) {
    Objects.requireNonNull(log, "log");
    Objects.requireNonNull(injuries, "injuries");
    return new PainSeries(log, injuries).all();
  }

  /**
   * Returns the first day on which training may continue with every hand that may hurt; empty if
   * unknown.
   */
  public Optional<LocalDate> until() {
    return until(parts.hands);
  }

  /** Returns the first day on which training with some hands may continue; empty if unknown. */
  public Optional<LocalDate> until(Hands by) {
    List<Side> hurt = parts.hands.sides().stream().filter(by.sides()::contains).toList();
    return parts.ends.keySet().containsAll(hurt)
        ? hurt.stream()
            .flatMap(side -> Stream.ofNullable(parts.ends.get(side)))
            .max(LocalDate::compareTo)
        : Optional.empty();
  }

  /** Returns the day. */
  public LocalDate date() {
    return parts.line.date();
  }

  /** Returns the painful structure, if the entry names it. */
  public Optional<Structure> structure() {
    return parts.line instanceof Pain pain ? pain.structure() : Optional.empty();
  }

  /** Returns the painful finger, if the entry names it. */
  public Optional<Finger> finger() {
    return parts.line instanceof Pain pain ? Optional.of(pain.finger()) : Optional.empty();
  }

  /** Returns whether the pain was sharp, sudden or neither. */
  public Kind kind() {
    return parts.line instanceof Pain pain ? pain.kind() : Kind.DULL;
  }

  /** Returns whether it was felt while climbing, in an unspecified finger. */
  public boolean whileClimbing() {
    return parts.line instanceof LogEntry.Climbed;
  }

  /** Returns whether it is of the skin. */
  public boolean ofSkin() {
    return structure().filter(Structure.SKIN::equals).isPresent();
  }

  /** Returns whether it stops training by itself: above 5, sharp or sudden, and not of the skin. */
  public boolean isStrong() {
    return !ofSkin() && (parts.score > Pain.LIMIT || kind() != Kind.DULL);
  }

  /** Returns whether it stops training. */
  public boolean stops() {
    return isStrong() || parts.rising;
  }

  /**
   * Returns whether it stops training on a day between its own day and its end. If an open injury
   * explains the pain, the injury itself stops training instead.
   */
  public boolean stopsOn(LocalDate day, List<Injury> injuries) {
    return stops()
        && !day.isBefore(date())
        && parts.hands.sides().stream()
            .filter(side -> injuries.stream().noneMatch(i -> i.openOn(day) && explains(i, side)))
            .anyMatch(
                side ->
                    Optional.ofNullable(parts.ends.get(side))
                        .filter(e -> !day.isBefore(e))
                        .isEmpty());
  }

  /**
   * Returns whether an injury explains pain in a hand, because it is of a finger and hand that may
   * hurt. If the entry names a finger without a hand, an injury of that finger in either hand
   * explains it; if it names no finger, an injury of the other hand does not. An injury of the skin
   * only explains pain of the skin.
   */
  public boolean explains(Injury injury, Side side) {
    return injury.structure() != Structure.SKIN
        && parts.fingers.has(injury.finger())
        && injury.side().filter(hurt -> hurt != side && !isOfEither(hurt)).isEmpty();
  }

  private boolean isOfEither(Side hurt) {
    return finger().isPresent() && parts.hands.sides().contains(hurt);
  }

  /**
   * Returns whether any of these fingers of these hands may hurt; with both hands, either one
   * counts.
   */
  public boolean touches(FingerSet used, Hands by) {
    return parts.fingers.overlaps(used) && !Collections.disjoint(parts.hands.sides(), by.sides());
  }

  /** Returns whether this finger may hurt. */
  boolean mayBeOf(Finger finger, Side side) {
    return parts.fingers.has(finger) && parts.hands.sides().contains(side);
  }

  FeltPain decided(boolean rises, Map<Side, LocalDate> known) {
    return new FeltPain(
        new Parts(parts.line, parts.done, parts.fingers, parts.hands, parts.score, rises, known));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FeltPain that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "FeltPain" + parts.toString().substring("Parts".length());
  }
}
