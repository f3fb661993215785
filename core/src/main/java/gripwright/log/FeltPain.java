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

/**
 * A pain score of a log, from any kind of line, and its consequences. Only this class decides
 * whether pain stops training and until when. Immutable.
 *
 * <p>Up to 2 of 10 training continues. Above 2 and up to 5 the next two sessions stay the same or
 * get lighter. Training with the finger stops above 5, with sharp or sudden pain, and where a score
 * above 2 is the second rise in a row from week to week, see {@link RisingPain}. The stop ends with
 * scores of 2 or less on two days at least 48 h apart without a higher one in between, or with the
 * day on which an injury of the finger is cleared; it never lapses by itself. Pain of the skin
 * holds progress but never stops training. Sources: Thomee R 1997, Phys Ther 77(12):1690-1703;
 * Silbernagel KG et al. 2007, Am J Sports Med 35(6):897-906; the end of a stop is the library's own
 * choice.
 *
 * @param line the line of the log
 * @param done the exercise of the line, if it is one of a session
 * @param fingers the fingers that may hurt: the one named, those of the grip, or all while climbing
 * @param hands the hands that may hurt
 * @param score 0 to 10
 * @param rising true if it rises for the second week in a row, to above 2
 * @param ends of each hand that may hurt the first day on which training may go on, where the pain
 *     stops it and that is known
 */
public record FeltPain(
    LogEntry line,
    Optional<LogEntry.Done> done,
    FingerSet fingers,
    Hands hands,
    double score,
    boolean rising,
    Map<Side, LocalDate> ends) {

  /** Refuses null. */
  public FeltPain {
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(done, "done");
    Objects.requireNonNull(fingers, "fingers");
    Objects.requireNonNull(hands, "hands");
    Objects.requireNonNull(ends, "ends");
    ends = Map.copyOf(ends);
  }

  /**
   * Returns all pain of a log, in the order of its lines.
   *
   * @param injuries of the athlete: a clearance ends the stop of its finger
   */
  public static List<FeltPain> of(Log log, List<Injury> injuries) {
    Objects.requireNonNull(log, "log");
    Objects.requireNonNull(injuries, "injuries");
    return new PainSeries(log, injuries).all();
  }

  /** Returns the first day on which training may go on with every hand that may hurt. */
  public Optional<LocalDate> until() {
    return until(hands);
  }

  /** Returns the first day on which training with some hands may go on, if it is known. */
  public Optional<LocalDate> until(Hands by) {
    List<Side> hurt = hands.sides().stream().filter(by.sides()::contains).toList();
    return ends.keySet().containsAll(hurt)
        ? hurt.stream().flatMap(side -> Stream.ofNullable(ends.get(side))).max(LocalDate::compareTo)
        : Optional.empty();
  }

  /** Returns the day. */
  public LocalDate date() {
    return line.date();
  }

  /** Returns the structure that hurts, if the line names it. */
  public Optional<Structure> structure() {
    return line instanceof Pain pain ? pain.structure() : Optional.empty();
  }

  /** Returns the finger that the line names, if it does. */
  public Optional<Finger> finger() {
    return line instanceof Pain pain ? Optional.of(pain.finger()) : Optional.empty();
  }

  /** Returns whether it was sharp, sudden or neither. */
  public Kind kind() {
    return line instanceof Pain pain ? pain.kind() : Kind.DULL;
  }

  /** Tells whether it was felt while climbing, in an unknown finger. */
  public boolean whileClimbing() {
    return line instanceof LogEntry.Climbed;
  }

  /** Tells whether it is of the skin. */
  public boolean ofSkin() {
    return structure().filter(Structure.SKIN::equals).isPresent();
  }

  /** Tells whether it stops training by itself: above 5, sharp or sudden, and not of the skin. */
  public boolean isStrong() {
    return !ofSkin() && (score > Pain.LIMIT || kind() != Kind.DULL);
  }

  /** Tells whether it stops training. */
  public boolean stops() {
    return isStrong() || rising;
  }

  /**
   * Tells whether it stops training of a hand on a day: from its own day until its end. An injury
   * that is open on the day and explains the pain is a reason of its own, and takes its place.
   */
  public boolean stopsOn(LocalDate day, List<Injury> injuries) {
    return stops()
        && !day.isBefore(date())
        && hands.sides().stream()
            .filter(side -> injuries.stream().noneMatch(i -> i.openOn(day) && explains(i, side)))
            .anyMatch(
                side ->
                    Optional.ofNullable(ends.get(side)).filter(e -> !day.isBefore(e)).isEmpty());
  }

  /**
   * Tells whether an injury explains the pain of a hand: it is of a finger that may hurt, and of
   * that hand. Where a line names a finger and no hand, an injury of the finger in either hand
   * does; where it names none, the other hand may hurt for itself. Skin explains nothing but
   * itself.
   */
  public boolean explains(Injury injury, Side side) {
    return injury.structure() != Structure.SKIN
        && fingers.has(injury.finger())
        && injury.side().filter(hurt -> hurt != side && !isOfEither(hurt)).isEmpty();
  }

  private boolean isOfEither(Side hurt) {
    return finger().isPresent() && hands.sides().contains(hurt);
  }

  /**
   * Tells whether fingers of given hands are among those that may hurt; in a two-handed hold either
   * hand counts.
   */
  public boolean touches(FingerSet used, Hands by) {
    return fingers.overlaps(used) && !Collections.disjoint(hands.sides(), by.sides());
  }

  /** Tells whether it may be of a finger of a hand. */
  boolean mayBeOf(Finger finger, Side side) {
    return fingers.has(finger) && hands.sides().contains(side);
  }

  FeltPain decided(boolean rises, Map<Side, LocalDate> known) {
    return new FeltPain(line, done, fingers, hands, score, rises, known);
  }
}
