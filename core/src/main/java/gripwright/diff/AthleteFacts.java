package gripwright.diff;

import gripwright.athlete.Athlete;
import gripwright.athlete.Equipment;
import gripwright.athlete.Injury;
import gripwright.diff.FactChange.Fact;
import gripwright.finding.Clause;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.LogEntry;
import gripwright.quantity.Numbers;
import gripwright.strength.StrengthTest;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Duration;
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
 * What is known of athletes, as messages, and what of it changed. Two facts are the same if they
 * are equal as data; numbers in them are rounded as far as people write them.
 */
final class AthleteFacts {

  private static final int DECIMALS = 3;

  private final Map<Fact, List<Message>> facts = new EnumMap<>(Fact.class);

  private AthleteFacts(Set<Athlete> athletes, Set<LogEntry> log) {
    athletes.forEach(this::add);
    log.forEach(this::add);
  }

  /** Returns what changed, by athlete and fact, of athletes that are there before and after. */
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
                    clause("diff.familiar", "grip", f.grip(), "time", experience(f.experience()))));
    a.injuries().forEach(injury -> add(Fact.INJURIES, injury(injury)));
    a.available()
        .forEach(
            (day, time) ->
                add(
                    Fact.AVAILABLE,
                    clause("diff.available", "day", day(day), "minutes", minutes(time))));
    a.climbing().forEach(climbing -> add(Fact.CLIMBING, climbing(climbing)));
    a.away()
        .forEach(
            d ->
                add(
                    Fact.AWAY,
                    noted("diff.away", d.note(), clause("", "from", d.from(), "to", d.to()))));
    add(a.equipment());
  }

  private void add(Equipment equipment) {
    equipment.edges().forEach(e -> add(Fact.EQUIPMENT, Clause.of("diff.edge", "edge", e)));
    equipment.added().ifPresent(s -> add(Fact.EQUIPMENT, steps("diff.added", s)));
    equipment.assist().ifPresent(s -> add(Fact.EQUIPMENT, steps("diff.assistance", s)));
  }

  private static Message steps(String key, Equipment.Steps steps) {
    return clause(key, "step", steps.step(), "limit", steps.limit());
  }

  private static Message value(Object value) {
    return Clause.of("diff.value", "value", value);
  }

  private static Clause clause(String key, Object... facts) {
    Map<String, Object> arguments = new TreeMap<>();
    for (int i = 0; i < facts.length; i += 2) {
      arguments.put((String) facts[i], facts[i + 1]);
    }
    return new Clause(key, arguments);
  }

  /** Adds what somebody noted, which has a sentence of its own. */
  private static Message noted(String key, Optional<String> note, Clause of) {
    Map<String, Object> arguments = new TreeMap<>(of.arguments());
    note.ifPresent(n -> arguments.put("note", n));
    return new Clause(key + (note.isPresent() ? "-noted" : ""), arguments);
  }

  private static Message experience(Athlete.Experience experience) {
    BigDecimal months = Numbers.rounded(experience.months(), DECIMALS);
    return experience
        .asOf()
        .map(day -> clause("diff.months-as-of", "months", months, "day", day))
        .orElseGet(() -> Clause.of("diff.months", "months", months));
  }

  private static Message climbing(Athlete.ClimbingDay climbing) {
    boolean said = climbing.how().equals("hard"); // the word itself says that it is hard
    return clause(
        climbing.hard() && !said ? "diff.climbing-hard" : "diff.climbing",
        "day",
        day(climbing.day()),
        "how",
        climbing.how(),
        "minutes",
        minutes(climbing.time()));
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
                    clause(
                        "diff.bone",
                        "finger",
                        bone.finger(),
                        "bone",
                        Clause.of("common.bone-" + bone.segment().word()),
                        "length",
                        length)));
    SortedMap<String, Message> knuckles = new TreeMap<>();
    hand.knuckles()
        .forEach(
            (finger, behind) ->
                knuckles.put(
                    finger.word(), clause("diff.knuckle", "finger", finger, "behind", behind)));
    SortedMap<String, Message> limits = new TreeMap<>();
    hand.limits()
        .ranges()
        .forEach(
            (finger, joints) ->
                joints.forEach(
                    (joint, range) ->
                        limits.put(
                            finger + " " + joint,
                            clause(
                                "diff.joint",
                                "finger",
                                finger,
                                "joint",
                                Clause.of("common.joint-" + joint.word()),
                                "low",
                                Numbers.rounded(range.low().degrees(), 2),
                                "high",
                                Numbers.rounded(range.high().degrees(), 2)))));
    measures.addAll(bones.values());
    measures.addAll(knuckles.values());
    measures.addAll(limits.values());
    return measures;
  }

  private static Message injury(Injury injury) {
    Message place = place(injury.finger(), Optional.of(injury.structure()), injury.side());
    return injury
        .cleared()
        .map(
            day ->
                noted(
                    "diff.injury-cleared",
                    injury.note(),
                    clause("", "place", place, "from", injury.from(), "cleared", day)))
        .orElseGet(
            () ->
                noted(
                    "diff.injury",
                    injury.note(),
                    clause("", "place", place, "from", injury.from())));
  }

  private static Message place(Finger finger, Optional<Structure> structure, Optional<Side> side) {
    Map<String, Object> arguments = new TreeMap<>();
    arguments.put("finger", finger);
    structure.ifPresent(s -> arguments.put("structure", s));
    side.ifPresent(s -> arguments.put("side", s));
    return new Clause(
        (structure.isPresent() ? "common.place-structure" : "common.place-finger")
            + (side.isPresent() ? "-side" : ""),
        arguments);
  }

  private static Message day(DayOfWeek day) {
    return Clause.of("diff." + day.name().substring(0, 3).toLowerCase(Locale.ROOT));
  }

  private static BigDecimal minutes(Duration time) {
    return Numbers.rounded(time.toNanos() / 60e9, DECIMALS);
  }

  private static BigDecimal seconds(Duration time) {
    return Numbers.rounded(time.toNanos() / 1e9, DECIMALS);
  }

  private void add(LogEntry entry) {
    if (entry instanceof LogEntry.Tested tested) {
      add(Fact.TESTS, test(tested.test()));
    } else if (entry instanceof LogEntry.BodyMass mass) {
      add(Fact.WEIGHED, clause("diff.weighed", "mass", mass.mass(), "day", mass.date()));
    } else if (entry instanceof LogEntry.Pain pain) {
      add(Fact.PAIN, pain(pain));
    } else if (entry instanceof LogEntry.Trained trained) {
      add(Fact.TRAINING, trained(trained));
    } else if (entry instanceof LogEntry.Skipped skipped) {
      add(
          Fact.TRAINING,
          clause("diff.skipped", "session", skipped.session(), "day", skipped.date()));
    } else if (entry instanceof LogEntry.Climbed climbed) {
      add(Fact.TRAINING, climbed(climbed));
    }
  }

  private static Message climbed(LogEntry.Climbed climbed) {
    Map<String, Object> facts = new TreeMap<>();
    facts.put("how", climbed.how());
    facts.put("minutes", minutes(climbed.time()));
    facts.put("day", climbed.date());
    climbed.effort().ifPresent(effort -> facts.put("effort", rounded(effort)));
    return new Clause(climbed.effort().isPresent() ? "diff.climbed-effort" : "diff.climbed", facts);
  }

  private static Message test(StrengthTest test) {
    return clause(
        "diff.tested", "setup", setup(test.setup()), "result", result(test), "day", test.date());
  }

  private static Message result(StrengthTest test) {
    if (test.result() instanceof StrengthTest.Held held) {
      return clause("diff.held", "load", held.load(), "seconds", seconds(held.hold()));
    }
    if (test.result() instanceof StrengthTest.ToFailure failure) {
      return clause("diff.failed", "load", failure.load(), "seconds", seconds(failure.lasting()));
    }
    StrengthTest.Series series = (StrengthTest.Series) test.result();
    return clause(
        "diff.series",
        "count",
        series.means().size(),
        "work",
        seconds(series.work()),
        "rest",
        seconds(series.rest()),
        "means",
        Listing.of(Listing.Style.COMMAS, series.means()));
  }

  /** A setup without the data of its grip: a grip that is defined anew is a change of its own. */
  private static Message setup(Setup setup) {
    return new Clause(setup.key(), setup.arguments());
  }

  private static Message pain(LogEntry.Pain pain) {
    return clause(
        "diff.pain-" + pain.kind().name().toLowerCase(Locale.ROOT),
        "place",
        place(pain.finger(), pain.structure(), pain.side()),
        "score",
        rounded(pain.score()),
        "day",
        pain.date());
  }

  private static Message trained(LogEntry.Trained trained) {
    Clause facts = clause("diff.trained", "session", trained.session(), "day", trained.date());
    if (trained.done().isEmpty()) {
      return facts;
    }
    Map<String, Object> all = new TreeMap<>(facts.arguments());
    all.put(
        "done",
        Listing.of(Listing.Style.COMMAS, trained.done().stream().map(AthleteFacts::done).toList()));
    return new Clause("diff.trained-done", all);
  }

  /** What was done of an exercise; enough to distinguish two lines of a log. */
  private static Message done(LogEntry.Done d) {
    Message done = setup(d.setup());
    if (d.sets().isPresent()) {
      done = clause("diff.done-sets", "done", done, "sets", d.sets().getAsInt());
    }
    if (d.setsAsked().isPresent()) {
      done = clause("diff.done-of", "done", done, "sets", d.setsAsked().getAsInt());
    }
    if (d.load().isPresent()) {
      done = clause("diff.done-load", "done", done, "load", d.load().get());
    }
    if (d.effort().isPresent()) {
      done = clause("diff.done-effort", "done", done, "effort", rounded(d.effort().getAsDouble()));
    }
    return d.pain().isPresent()
        ? clause("diff.done-pain", "done", done, "pain", rounded(d.pain().getAsDouble()))
        : done;
  }

  private static BigDecimal rounded(double score) {
    return Numbers.rounded(score, 2);
  }
}
