package gripwright.athlete;

import gripwright.ability.Ability;
import gripwright.finding.ModelPath;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.hand.Sex;
import gripwright.hand.Side;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Who a plan is for. Immutable. */
public final class Athlete {

  /**
   * Time in training, as of a day.
   *
   * @param months 0 to 1200
   * @param asOf the day; empty means the first day of the plan that is compiled
   */
  public record Experience(double months, Optional<LocalDate> asOf) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the months are outside 0 to 1200, or the year of the day
     *     is outside 1900 to 2199
     */
    public Experience {
      Objects.requireNonNull(asOf, "asOf");
      Range.TRAINED.checkIn(Unit.MONTH, months);
      asOf.ifPresent(Range.YEAR::check);
    }

    /** Months in a day, by a year of 365.25 days. */
    private static final double MONTHS_PER_DAY = 12 / 365.25;

    /**
     * Returns the months on another day, growing with the calendar; never below 0.
     *
     * @param day the day
     * @param planFrom the first day of the plan, used if no day is written
     */
    public double monthsOn(LocalDate day, LocalDate planFrom) {
      long days = day.toEpochDay() - asOf.orElse(planFrom).toEpochDay();
      return Math.max(0, months + days * MONTHS_PER_DAY);
    }
  }

  /**
   * A grip already used in training.
   *
   * @param grip name of the grip
   * @param experience for how long
   */
  public record Familiarity(String grip, Experience experience) {
    /** Refuses null. */
    public Familiarity {
      Objects.requireNonNull(grip, "grip");
      Objects.requireNonNull(experience, "experience");
    }
  }

  /**
   * Regular climbing on a weekday.
   *
   * @param day the weekday
   * @param hard true if it counts as a hard day for the fingers
   * @param how the coach's word for it, such as {@code easy}
   * @param time how long
   */
  public record ClimbingDay(DayOfWeek day, boolean hard, String how, Duration time) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the time is not above 0 and up to 16 h
     */
    public ClimbingDay {
      Objects.requireNonNull(day, "day");
      Objects.requireNonNull(how, "how");
      Objects.requireNonNull(time, "time");
      Range.CLIMBING.check(time);
    }
  }

  /**
   * Days away, both ends included.
   *
   * @param from first day
   * @param to last day, not before {@code from}
   * @param note why, in the coach's words
   */
  public record Absence(LocalDate from, LocalDate to, Optional<String> note) {
    /**
     * Checks the days.
     *
     * @throws IllegalArgumentException if it ends before it begins, or a year is outside 1900 to
     *     2199
     */
    public Absence {
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(to, "to");
      Objects.requireNonNull(note, "note");
      Range.YEAR.check(from);
      Range.YEAR.check(to);
      if (to.isBefore(from)) {
        throw new IllegalArgumentException("away to " + to + " before " + from);
      }
    }

    /** Returns whether a day is one of them. */
    public boolean covers(LocalDate day) {
      return !day.isBefore(from) && !day.isAfter(to);
    }
  }

  /** The components, checked. */
  private record Parts(
      String name,
      String title,
      LocalDate born,
      Load bodyMass,
      Experience trained,
      Ability ability,
      Optional<Sex> sex,
      Hand left,
      Hand right,
      List<Familiarity> familiar,
      List<Injury> injuries,
      List<Slot> available,
      List<ClimbingDay> climbing,
      List<Absence> away,
      Optional<Equipment> equipment,
      SortedMap<String, Equipment> equipmentAt) {
    Parts {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(born, "born");
      Objects.requireNonNull(bodyMass, "bodyMass");
      Objects.requireNonNull(trained, "trained");
      Objects.requireNonNull(ability, "ability");
      Objects.requireNonNull(sex, "sex");
      Objects.requireNonNull(left, "left");
      Objects.requireNonNull(right, "right");
      Objects.requireNonNull(familiar, "familiar");
      Objects.requireNonNull(injuries, "injuries");
      Objects.requireNonNull(available, "available");
      Objects.requireNonNull(climbing, "climbing");
      Objects.requireNonNull(away, "away");
      Objects.requireNonNull(equipment, "equipment");
      equipmentAt = Collections.unmodifiableSortedMap(new TreeMap<>(equipmentAt));
      for (Slot slot : available) {
        if (slot.place().isPresent() && !equipmentAt.containsKey(slot.place().get())) {
          throw new IllegalArgumentException(
              "athlete " + name + ": there is no equipment at " + slot.place().get());
        }
      }
      familiar = List.copyOf(familiar);
      injuries = List.copyOf(injuries);
      available = inOrder(available);
      climbing = List.copyOf(climbing);
      away = List.copyOf(away);
      Range.BIRTH.check(born);
      Range.BODY_MASS.check(bodyMass);
      if (available.isEmpty()) {
        throw new IllegalArgumentException("athlete " + name + " has no available day");
      }
      apart(name, available);
      Set<String> grips = new HashSet<>();
      for (Familiarity each : familiar) {
        if (!grips.add(each.grip())) {
          throw new IllegalArgumentException(
              "athlete " + name + ": " + each.grip() + " is familiar twice");
        }
        each.experience().asOf().ifPresent(day -> notBefore(born, day, "time with " + each.grip()));
      }
      trained.asOf().ifPresent(day -> notBefore(born, day, "training"));
      injuries.forEach(injury -> notBefore(born, injury.from(), "injury"));
      away.forEach(absence -> notBefore(born, absence.from(), "away"));
    }
  }

  private static final Comparator<Slot> CALENDAR_ORDER =
      Comparator.comparing((Slot slot) -> slot.on().date(), Athlete::earlier)
          .thenComparing(slot -> slot.on().span().map(Span::from), Athlete::earlier)
          .thenComparing(slot -> slot.on().weekday())
          .thenComparing(Slot::startMinute);

  private static int earlier(Optional<LocalDate> one, Optional<LocalDate> other) {
    return one.orElse(LocalDate.MIN).compareTo(other.orElse(LocalDate.MIN));
  }

  /** Returns plain slots, then those in force for some time, then single days, each in order. */
  private static List<Slot> inOrder(List<Slot> slots) {
    return slots.stream().sorted(CALENDAR_ORDER).toList();
  }

  private static void apart(String name, List<Slot> slots) {
    for (int i = 0; i < slots.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (slots.get(i).clashes(slots.get(j))) {
          throw new IllegalArgumentException(
              "athlete " + name + ": " + slots.get(j) + " overlaps " + slots.get(i));
        }
      }
    }
  }

  private final Parts parts;

  /** The times of each weekday that are always in force, in order of day. */
  private final Map<DayOfWeek, List<Slot>> usual = new EnumMap<>(DayOfWeek.class);

  /** The times of single days, and those in force for a while. */
  private final List<Slot> changing;

  private Athlete(Parts parts) {
    this.parts = parts;
    this.changing =
        parts.available.stream()
            .filter(slot -> slot.on().date().isPresent() || slot.on().span().isPresent())
            .toList();
    for (DayOfWeek day : DayOfWeek.values()) {
      List<Slot> ofDay =
          parts.available.stream()
              .filter(slot -> !changing.contains(slot) && slot.on().weekday() == day)
              .toList();
      if (!ofDay.isEmpty()) {
        usual.put(day, ofDay);
      }
    }
  }

  /** Returns the name: kebab-case, unique in a project. */
  public String name() {
    return parts.name;
  }

  /** Returns the displayed name. */
  public String title() {
    return parts.title;
  }

  /** Returns the date of birth. */
  public LocalDate born() {
    return parts.born;
  }

  /**
   * Returns the body mass as last weighed when this was written, 15 to 300 kg; the log may have
   * newer values.
   */
  public Load bodyMass() {
    return parts.bodyMass;
  }

  /** Returns the structured finger training so far. */
  public Experience trained() {
    return parts.trained;
  }

  /** Returns the level on a published scale. */
  public Ability ability() {
    return parts.ability;
  }

  /** Returns the sex as published norms report it, if given. */
  public Optional<Sex> sex() {
    return parts.sex;
  }

  /** Returns the left hand. */
  public Hand left() {
    return parts.left;
  }

  /** Returns the right hand. */
  public Hand right() {
    return parts.right;
  }

  /** Returns the grips already used in training. */
  public List<Familiarity> familiar() {
    return parts.familiar;
  }

  /** Returns the injuries, past and present, in the order written. */
  public List<Injury> injuries() {
    return parts.injuries;
  }

  /**
   * Returns the times to train: those of weekdays, then those in force for some time, then single
   * days; other days are not available.
   */
  public List<Slot> available() {
    return parts.available;
  }

  /** Returns the regular climbing, by weekday. */
  public List<ClimbingDay> climbing() {
    return parts.climbing;
  }

  /** Returns the times without training. */
  public List<Absence> away() {
    return parts.away;
  }

  /** Returns the training equipment that is at no place; else that of the first place by name. */
  public Equipment equipment() {
    return parts.equipment.orElseGet(() -> parts.equipmentAt.get(parts.equipmentAt.firstKey()));
  }

  /** Returns the training equipment that is at no place; needed only if a time is at none. */
  public Optional<Equipment> plainEquipment() {
    return parts.equipment;
  }

  /** Returns the training equipment at each place, by name. */
  public SortedMap<String, Equipment> equipmentAt() {
    return parts.equipmentAt;
  }

  /** Returns the training equipment at a place, or at none. */
  public Equipment equipmentAt(Optional<String> place) {
    return place
        .flatMap(name -> Optional.ofNullable(parts.equipmentAt.get(name)))
        .orElseGet(this::equipment);
  }

  /** Returns the equipment of all places: first that at none, then by name. */
  public List<Equipment> allEquipment() {
    return Stream.concat(parts.equipment.stream(), parts.equipmentAt.values().stream()).toList();
  }

  /** Returns the first equipment that has an edge, or the first of all if none has. */
  public Equipment equipmentWith(Length edge) {
    return allEquipment().stream()
        .filter(each -> each.has(edge))
        .findFirst()
        .orElseGet(this::equipment);
  }

  private static void notBefore(LocalDate born, LocalDate day, String what) {
    if (day.isBefore(born)) {
      throw new IllegalArgumentException(
          what + " on " + day + " is before the date of birth " + born);
    }
  }

  /** Returns the path of this athlete. */
  public ModelPath path() {
    return ModelPath.of("athlete", parts.name);
  }

  /** Returns the age on a day in completed months; 192 is the sixteenth birthday. */
  public long ageInMonths(LocalDate day) {
    return java.time.temporal.ChronoUnit.MONTHS.between(parts.born, day);
  }

  /**
   * Returns the times to train on a day, in order of day: those of a line that names the date; or
   * else, unless away, of the lines in force for some time those that begin last; or else those of
   * the weekday.
   */
  public List<Slot> slotsOn(LocalDate day) {
    boolean named = false;
    for (Slot slot : changing) {
      named |= slot.on().date().filter(day::equals).isPresent();
    }
    return named || !isAway(day) ? slotsUnlessAway(day) : List.of();
  }

  private List<Slot> slotsUnlessAway(LocalDate day) {
    return changing.isEmpty()
        ? usual.getOrDefault(day.getDayOfWeek(), List.of())
        : SlotDay.counting(parts.available, Slot::on, day);
  }

  /** Returns whether a day has time to train but for time away. */
  public boolean losesDayAway(LocalDate day) {
    return isAway(day) && slotsOn(day).isEmpty() && !slotsUnlessAway(day).isEmpty();
  }

  /** Returns the longest time to train on a day, zero if there is none. */
  public Duration availableOn(LocalDate day) {
    return slotsOn(day).stream()
        .map(Slot::time)
        .max(Comparator.naturalOrder())
        .orElse(Duration.ZERO);
  }

  /** Returns whether a day is spent away. */
  public boolean isAway(LocalDate day) {
    for (Absence each : parts.away) {
      if (each.covers(day)) {
        return true;
      }
    }
    return false;
  }

  /** Returns the hand of a side. */
  public Hand hand(Side side) {
    return side == Side.LEFT ? parts.left : parts.right;
  }

  /**
   * Returns the shape of a side's hand; a breadth that was not measured is estimated from the sex.
   */
  public HandShape shape(Side side) {
    return HandShape.of(hand(side), parts.sex);
  }

  /** Returns the injuries of a finger. */
  public List<Injury> injuriesOf(Finger finger) {
    return parts.injuries.stream().filter(i -> i.finger() == finger).toList();
  }

  /** Returns a builder with all parts of this athlete; parts added later follow them. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /**
   * Returns a builder for an athlete.
   *
   * @param name kebab-case, unique in a project
   */
  public static Builder named(String name) {
    Objects.requireNonNull(name, "name");
    return new Builder(name);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Athlete that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "Athlete" + parts.toString().substring("Parts".length());
  }

  /** Collects the parts of an athlete. Not thread-safe. */
  public static final class Builder {
    private String name;
    private String title;
    private Optional<LocalDate> born = Optional.empty();
    private Optional<Load> bodyMass = Optional.empty();
    private Optional<Experience> trained = Optional.empty();
    private Optional<Ability> ability = Optional.empty();
    private Optional<Sex> sex = Optional.empty();
    private Optional<Hand> left = Optional.empty();
    private Optional<Hand> right = Optional.empty();
    private final List<Familiarity> familiar = new ArrayList<>();
    private final List<Injury> injuries = new ArrayList<>();
    private final List<Slot> available = new ArrayList<>();
    private final List<ClimbingDay> climbing = new ArrayList<>();
    private final List<Absence> away = new ArrayList<>();
    private final List<Length> edges = new ArrayList<>();
    private Optional<Equipment.Steps> added = Optional.empty();
    private Optional<Equipment.Steps> assist = Optional.empty();
    private final SortedMap<String, Equipment> equipmentAt = new TreeMap<>();

    private Builder(String name) {
      this.name = name;
      this.title = name;
    }

    private Builder(Parts copied) {
      this(copied.name);
      title = copied.title;
      born = Optional.of(copied.born);
      bodyMass = Optional.of(copied.bodyMass);
      trained = Optional.of(copied.trained);
      ability = Optional.of(copied.ability);
      sex = copied.sex;
      left = Optional.of(copied.left);
      right = Optional.of(copied.right);
      familiar.addAll(copied.familiar);
      injuries.addAll(copied.injuries);
      available.addAll(copied.available);
      climbing.addAll(copied.climbing);
      away.addAll(copied.away);
      copied.equipment.ifPresent(
          plain -> {
            edges.addAll(plain.edges());
            added = plain.added();
            assist = plain.assist();
          });
      equipmentAt.putAll(copied.equipmentAt);
    }

    /** Sets the name, such as to plan for somebody as if they were another athlete. */
    public Builder name(String value) {
      name = Objects.requireNonNull(value, "value");
      return this;
    }

    /** Sets the displayed name. */
    public Builder title(String text) {
      Objects.requireNonNull(text, "text");
      title = text;
      return this;
    }

    /** Sets the date of birth. */
    public Builder born(LocalDate date) {
      Objects.requireNonNull(date, "date");
      born = Optional.of(date);
      return this;
    }

    /** Sets the body mass. */
    public Builder bodyMass(Load mass) {
      Objects.requireNonNull(mass, "mass");
      bodyMass = Optional.of(mass);
      return this;
    }

    /** Sets the months of structured finger training at the beginning of a plan. */
    public Builder trained(double months) {
      return trained(new Experience(months, Optional.empty()));
    }

    /** Sets the structured finger training so far. */
    public Builder trained(Experience experience) {
      Objects.requireNonNull(experience, "experience");
      trained = Optional.of(experience);
      return this;
    }

    /** Sets the level. */
    public Builder ability(Ability level) {
      Objects.requireNonNull(level, "level");
      ability = Optional.of(level);
      return this;
    }

    /** Sets the sex, for the norms that differ by it. */
    public Builder sex(Sex value) {
      Objects.requireNonNull(value, "value");
      return sex(Optional.of(value));
    }

    /** Sets the sex, for the norms that differ by it, or none. */
    public Builder sex(Optional<Sex> value) {
      Objects.requireNonNull(value, "value");
      sex = value;
      return this;
    }

    /** Sets both hands to the same measures. */
    public Builder hand(Hand both) {
      Objects.requireNonNull(both, "both");
      left = Optional.of(both);
      right = Optional.of(both);
      return this;
    }

    /** Sets one hand; set both hands first. */
    public Builder hand(Side side, Hand hand) {
      Objects.requireNonNull(side, "side");
      Objects.requireNonNull(hand, "hand");
      if (side == Side.LEFT) {
        left = Optional.of(hand);
      } else {
        right = Optional.of(hand);
      }
      return this;
    }

    /** Adds a grip already used in training. */
    public Builder familiar(String grip, double months) {
      Objects.requireNonNull(grip, "grip");
      return familiar(new Familiarity(grip, new Experience(months, Optional.empty())));
    }

    /** Adds a grip already used in training. */
    public Builder familiar(Familiarity grip) {
      Objects.requireNonNull(grip, "grip");
      familiar.add(grip);
      return this;
    }

    /** Adds an injury. */
    public Builder injury(Injury injury) {
      Objects.requireNonNull(injury, "injury");
      injuries.add(injury);
      return this;
    }

    /** Sets all grips already used in training, in place of those already there. */
    public Builder familiar(List<Familiarity> all) {
      Objects.requireNonNull(all, "all");
      familiar.clear();
      familiar.addAll(all);
      return this;
    }

    /** Sets all injuries, in place of those already there. */
    public Builder injuries(List<Injury> all) {
      Objects.requireNonNull(all, "all");
      injuries.clear();
      injuries.addAll(all);
      return this;
    }

    /** Sets all regular climbing, in place of those already there. */
    public Builder climbing(List<ClimbingDay> all) {
      Objects.requireNonNull(all, "all");
      climbing.clear();
      climbing.addAll(all);
      return this;
    }

    /** Sets all days away, in place of those already there. */
    public Builder away(List<Absence> all) {
      Objects.requireNonNull(all, "all");
      away.clear();
      away.addAll(all);
      return this;
    }

    /** Sets all times to train, in place of those already there. */
    public Builder available(List<Slot> all) {
      Objects.requireNonNull(all, "all");
      available.clear();
      available.addAll(all);
      return this;
    }

    /** Sets the time available on a weekday, in place of others that it always has. */
    public Builder available(DayOfWeek day, Duration time) {
      Objects.requireNonNull(day, "day");
      Objects.requireNonNull(time, "time");
      SlotDay weekday = new SlotDay.Weekly(day, Optional.empty());
      available.removeIf(slot -> slot.on().equals(weekday));
      return available(Slot.on(day, time));
    }

    /** Adds time to train. */
    public Builder available(Slot slot) {
      Objects.requireNonNull(slot, "slot");
      available.add(slot);
      return this;
    }

    /** Adds regular climbing. */
    public Builder climbing(ClimbingDay day) {
      Objects.requireNonNull(day, "day");
      climbing.add(day);
      return this;
    }

    /** Adds days away. */
    public Builder away(Absence absence) {
      Objects.requireNonNull(absence, "absence");
      away.add(absence);
      return this;
    }

    /** Sets the equipment at a place. */
    public Builder equipmentAt(String place, Equipment equipment) {
      Objects.requireNonNull(place, "place");
      Objects.requireNonNull(equipment, "equipment");
      equipmentAt.put(place, equipment);
      return this;
    }

    /** Adds an edge. */
    public Builder edge(Length depth) {
      Objects.requireNonNull(depth, "depth");
      edges.add(depth);
      return this;
    }

    /** Sets all edges, in place of those already there. */
    public Builder edges(Collection<Length> all) {
      Objects.requireNonNull(all, "all");
      List<Length> copy = List.copyOf(all);
      edges.clear();
      edges.addAll(copy);
      return this;
    }

    /**
     * Sets how load is added.
     *
     * @param step smallest step, above 0 kg and up to 200 kg
     * @param limit greatest load added, above 0 kg and up to 1000 kg
     */
    public Builder added(Load step, Load limit) {
      Objects.requireNonNull(step, "step");
      Objects.requireNonNull(limit, "limit");
      return added(Optional.of(new Equipment.Steps(step, limit)));
    }

    /** Sets how load is added; empty if it can't be. */
    public Builder added(Optional<Equipment.Steps> steps) {
      Objects.requireNonNull(steps, "steps");
      added = steps;
      return this;
    }

    /**
     * Sets how load is removed.
     *
     * @param step smallest step, above 0 kg and up to 200 kg
     * @param limit greatest load removed, above 0 kg and up to 1000 kg
     */
    public Builder assist(Load step, Load limit) {
      Objects.requireNonNull(step, "step");
      Objects.requireNonNull(limit, "limit");
      return assist(Optional.of(new Equipment.Steps(step, limit)));
    }

    /** Sets how load is removed; empty if it can't be. */
    public Builder assist(Optional<Equipment.Steps> steps) {
      Objects.requireNonNull(steps, "steps");
      assist = steps;
      return this;
    }

    /**
     * Returns the athlete.
     *
     * @throws IllegalStateException if date of birth, body mass, training, ability, a hand, an
     *     available day or an edge is missing
     * @throws IllegalArgumentException if body mass, a time or a year is outside its {@link Range},
     *     a grip is familiar twice, two times to train overlap, a time is at a place without
     *     equipment, or an event is before the date of birth
     */
    public Athlete build() {
      boolean plain = available.stream().anyMatch(slot -> slot.place().isEmpty());
      if (available.isEmpty() || (edges.isEmpty() && (plain || equipmentAt.isEmpty()))) {
        throw new IllegalStateException(
            "athlete " + name + " has no " + (available.isEmpty() ? "available day" : "edge"));
      }
      return new Athlete(
          new Parts(
              name,
              title,
              required(born, "date of birth"),
              required(bodyMass, "body mass"),
              required(trained, "training"),
              required(ability, "ability"),
              sex,
              required(left, "left hand"),
              required(right, "right hand"),
              familiar,
              injuries,
              available,
              climbing,
              away,
              edges.isEmpty() ? Optional.empty() : Optional.of(new Equipment(edges, added, assist)),
              equipmentAt));
    }

    private <T> T required(Optional<T> value, String what) {
      return value.orElseThrow(
          () -> new IllegalStateException("athlete " + name + " has no " + what));
    }
  }
}
