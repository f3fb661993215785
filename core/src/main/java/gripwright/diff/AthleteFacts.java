package gripwright.diff;

import gripwright.athlete.Athlete;
import gripwright.athlete.Equipment;
import gripwright.athlete.Injury;
import gripwright.athlete.Slot;
import gripwright.athlete.SlotDay;
import gripwright.athlete.Span;
import gripwright.diff.FactChange.Fact;
import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import gripwright.hand.Hand;
import gripwright.log.LogEntry;
import gripwright.quantity.Numbers;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The data of athletes as messages, and its changes. Two facts are the same if their data is equal;
 * numbers are rounded to the precision people write.
 */
final class AthleteFacts {

  private final Map<Fact, List<Message>> facts = new EnumMap<>(Fact.class);

  private AthleteFacts(Set<Athlete> athletes, Set<LogEntry> log) {
    athletes.forEach(this::add);
    log.forEach(this::add);
  }

  /** Returns the changes by athlete and fact, for athletes in both editions. */
  static List<FactChange> changes(Edition before, Edition after) {
    List<FactChange> changes = new ArrayList<>();
    SortedSet<String> names = new TreeSet<>(before.athletes().keySet());
    names.retainAll(after.athletes().keySet());
    for (String name : names) {
      AthleteFacts was = of(before, name);
      AthleteFacts is = of(after, name);
      for (Fact fact : Fact.values()) {
        List<Message> gone = was.without(is, fact);
        List<Message> fresh = is.without(was, fact);
        if (!gone.isEmpty() || !fresh.isEmpty()) {
          changes.add(new FactChange(name, fact, gone, fresh));
        }
      }
    }
    return changes;
  }

  private static AthleteFacts of(Edition edition, String name) {
    return new AthleteFacts(
        edition.athletes().getOrDefault(name, Set.of()),
        edition.logs().getOrDefault(name, Set.of()));
  }

  private List<Message> without(AthleteFacts other, Fact fact) {
    Set<Message> there = new HashSet<>(other.facts.getOrDefault(fact, List.of()));
    return facts.getOrDefault(fact, List.of()).stream().filter(f -> !there.contains(f)).toList();
  }

  private void add(Fact fact, Message message) {
    facts.computeIfAbsent(fact, k -> new ArrayList<>()).add(message);
  }

  private void add(Athlete a) {
    add(Fact.NAME, new WrittenText(a.title()));
    add(Fact.BORN, value(a.born()));
    add(Fact.BODY_MASS, value(a.bodyMass()));
    add(Fact.TRAINED, experience(a.trained()));
    add(Fact.ABILITY, value(a.ability().toString()));
    a.sex().ifPresent(sex -> add(Fact.SEX, Clause.of("diff.sex-" + sex.word())));
    hand(a.left()).forEach(measure -> add(Fact.LEFT_HAND, measure));
    hand(a.right()).forEach(measure -> add(Fact.RIGHT_HAND, measure));
    a.familiar()
        .forEach(
            f ->
                add(
                    Fact.FAMILIAR,
                    Clause.of("diff.familiar", "grip", f.grip())
                        .with("time", experience(f.experience()))));
    a.injuries().forEach(injury -> add(Fact.INJURIES, injury(injury)));
    a.available().forEach(slot -> add(Fact.AVAILABLE, slot(slot)));
    a.climbing().forEach(climbing -> add(Fact.CLIMBING, climbing(climbing)));
    a.away()
        .forEach(
            d ->
                add(
                    Fact.AWAY,
                    noted(Clause.of("diff.away", "from", d.from()).with("to", d.to()), d.note())));
    a.plainEquipment().ifPresent(equipment -> add(equipment, Optional.empty()));
    a.equipmentAt().forEach((place, equipment) -> add(equipment, Optional.of(place)));
  }

  private void add(Equipment equipment, Optional<String> place) {
    equipment
        .edges()
        .forEach(e -> add(Fact.EQUIPMENT, at(place, Clause.of("diff.edge", "edge", e))));
    equipment.added().ifPresent(s -> add(Fact.EQUIPMENT, at(place, steps("diff.added", s))));
    equipment.assist().ifPresent(s -> add(Fact.EQUIPMENT, at(place, steps("diff.assistance", s))));
  }

  private static Clause steps(String key, Equipment.Steps steps) {
    return Clause.of(key, "step", steps.step()).with("limit", steps.limit());
  }

  private static Message value(Object value) {
    return Clause.of("diff.value", "value", value);
  }

  /** Adds a note, which has a sentence of its own. */
  private static Message noted(Clause fact, Optional<String> note) {
    return note.map(n -> new Clause(fact.key() + "-noted", fact.arguments()).with("note", n))
        .orElse(fact);
  }

  private static Message experience(Athlete.Experience experience) {
    BigDecimal months = Numbers.rounded(experience.months(), LogFact.DECIMALS);
    return experience
        .asOf()
        .map(day -> Clause.of("diff.months-as-of", "months", months).with("day", day))
        .orElseGet(() -> Clause.of("diff.months", "months", months));
  }

  private static Message slot(Slot slot) {
    Message day =
        slot.on()
            .accept(
                new SlotDay.Visitor<>() {
                  @Override
                  public Message weekly(SlotDay.Weekly weekly) {
                    return day(weekly.day());
                  }

                  @Override
                  public Message dated(SlotDay.Dated dated) {
                    return value(dated.day());
                  }
                });
    Clause fact =
        slot.at()
            .map(at -> Clause.of("diff.available-at", "day", day).with("time", at.toString()))
            .orElseGet(() -> Clause.of("diff.available", "day", day))
            .with("minutes", LogFact.minutes(slot.time()));
    Clause there = at(slot.place(), fact);
    return slot.on().span().<Message>map(span -> inForce(there, span)).orElse(there);
  }

  private static Clause at(Optional<String> place, Clause what) {
    return place
        .map(name -> Clause.of("diff.at-place", "what", what).with("place", name))
        .orElse(what);
  }

  private static Clause inForce(Clause what, Span span) {
    String key = span.to().isPresent() ? "diff.from-to" : "diff.from";
    Clause fact =
        Clause.of(span.everyWeeks() > 1 ? key + "-every" : key, "what", what)
            .with("from", span.from());
    fact = span.to().isPresent() ? fact.with("to", span.to().get()) : fact;
    return span.everyWeeks() > 1 ? fact.with("weeks", span.everyWeeks()) : fact;
  }

  private static Message climbing(Athlete.ClimbingDay climbing) {
    boolean said = climbing.how().equals("hard"); // the word itself says that it is hard
    return Clause.of(
            climbing.hard() && !said ? "diff.climbing-hard" : "diff.climbing",
            "day",
            day(climbing.day()))
        .with("how", climbing.how())
        .with("minutes", LogFact.minutes(climbing.time()));
  }

  private static List<Message> hand(Hand hand) {
    List<Message> measures = new ArrayList<>();
    measures.add(Clause.of("diff.hand-length", "length", hand.length()));
    hand.breadth().ifPresent(b -> measures.add(Clause.of("diff.hand-breadth", "breadth", b)));
    SortedMap<String, Message> bones = new TreeMap<>();
    hand.bones()
        .forEach(
            (bone, length) ->
                bones.put(
                    bone.finger() + " " + bone.segment(),
                    Clause.of("diff.bone", "finger", bone.finger())
                        .with("bone", Clause.of("common.bone-" + bone.segment().word()))
                        .with("length", length)));
    SortedMap<String, Message> knuckles = new TreeMap<>();
    hand.knuckles()
        .forEach(
            (finger, behind) ->
                knuckles.put(
                    finger.word(),
                    Clause.of("diff.knuckle", "finger", finger).with("behind", behind)));
    SortedMap<String, Message> limits = new TreeMap<>();
    hand.limits()
        .ranges()
        .forEach(
            (finger, joints) ->
                joints.forEach(
                    (joint, range) ->
                        limits.put(
                            finger + " " + joint,
                            Clause.of("diff.joint", "finger", finger)
                                .with("joint", Clause.of("common.joint-" + joint.word()))
                                .with("low", Numbers.rounded(range.low().degrees(), 2))
                                .with("high", Numbers.rounded(range.high().degrees(), 2)))));
    measures.addAll(bones.values());
    measures.addAll(knuckles.values());
    measures.addAll(limits.values());
    return measures;
  }

  private static Message injury(Injury injury) {
    Message place = LogFact.place(injury.finger(), Optional.of(injury.structure()), injury.side());
    return noted(
        injury
            .cleared()
            .map(day -> cleared(injury, place).with("cleared", day))
            .orElseGet(() -> Clause.of("diff.injury", "place", place))
            .with("from", injury.from()),
        injury.note());
  }

  private static Clause cleared(Injury injury, Message place) {
    return injury
        .clearedBy()
        .map(who -> Clause.of("diff.injury-cleared-by", "place", place).with("by", who))
        .orElseGet(() -> Clause.of("diff.injury-cleared", "place", place));
  }

  private static Message day(DayOfWeek day) {
    return Clause.of("diff." + day.name().substring(0, 3).toLowerCase(Locale.ROOT));
  }

  private void add(LogEntry entry) {
    LogFact line = entry.accept(LogFact.OF_LINE);
    add(line.fact(), line.message());
  }
}
