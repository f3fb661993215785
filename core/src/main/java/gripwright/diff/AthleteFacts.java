package gripwright.diff;

import gripwright.athlete.Athlete;
import gripwright.athlete.Equipment;
import gripwright.athlete.Injury;
import gripwright.diff.FactChange.Fact;
import gripwright.hand.Hand;
import gripwright.log.LogEntry;
import gripwright.quantity.Numbers;
import gripwright.strength.StrengthTest;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** What is known of athletes, in words, and what of it is another. */
final class AthleteFacts {

  private static final int FEW = 3;

  private AthleteFacts() {}

  /** Returns what is another, by athlete and fact, of athletes that are there before and after. */
  static List<FactChange> changes(Edition before, Edition after) {
    List<FactChange> changes = new ArrayList<>();
    SortedSet<String> names = new TreeSet<>(before.athletes().keySet());
    names.retainAll(after.athletes().keySet());
    for (String name : names) {
      Map<Fact, List<String>> was = facts(before.athletes().getOrDefault(name, Set.of()));
      Map<Fact, List<String>> is = facts(after.athletes().getOrDefault(name, Set.of()));
      before.logs().getOrDefault(name, Set.of()).forEach(entry -> add(was, entry));
      after.logs().getOrDefault(name, Set.of()).forEach(entry -> add(is, entry));
      for (Fact fact : Fact.values()) {
        List<String> old = was.getOrDefault(fact, List.of());
        List<String> now = is.getOrDefault(fact, List.of());
        List<String> gone = old.stream().filter(w -> !now.contains(w)).toList();
        List<String> fresh = now.stream().filter(w -> !old.contains(w)).toList();
        if (!gone.isEmpty() || !fresh.isEmpty()) {
          changes.add(new FactChange(name, fact, words(gone), words(fresh)));
        }
      }
    }
    return changes;
  }

  private static String words(List<String> facts) {
    int more = facts.size() - FEW;
    return more <= 1
        ? String.join("; ", facts)
        : String.join("; ", facts.subList(0, FEW)) + "; and " + more + " more";
  }

  private static Map<Fact, List<String>> facts(Set<Athlete> athletes) {
    Map<Fact, List<String>> facts = new EnumMap<>(Fact.class);
    for (Athlete a : athletes) {
      add(facts, Fact.NAME, a.title());
      add(facts, Fact.BORN, a.born().toString());
      add(facts, Fact.BODY_MASS, a.bodyMass().toString());
      add(facts, Fact.TRAINED, experience(a.trained()));
      add(facts, Fact.ABILITY, a.ability().toString());
      a.sex().ifPresent(sex -> add(facts, Fact.SEX, sex.name().toLowerCase(Locale.ROOT)));
      hand(a.left()).forEach(measure -> add(facts, Fact.LEFT_HAND, measure));
      hand(a.right()).forEach(measure -> add(facts, Fact.RIGHT_HAND, measure));
      a.familiar()
          .forEach(f -> add(facts, Fact.FAMILIAR, f.grip() + " " + experience(f.experience())));
      a.injuries().forEach(injury -> add(facts, Fact.INJURIES, injury(injury)));
      a.available()
          .forEach((day, time) -> add(facts, Fact.AVAILABLE, day(day) + " " + minutes(time)));
      a.climbing()
          .forEach(
              c ->
                  add(
                      facts,
                      Fact.CLIMBING,
                      day(c.day())
                          + " "
                          + (c.hard() && !c.how().equals("hard") ? "hard " : "")
                          + c.how()
                          + " "
                          + minutes(c.time())));
      a.away()
          .forEach(
              d ->
                  add(
                      facts,
                      Fact.AWAY,
                      d.from() + " to " + d.to() + d.note().map(n -> " " + n).orElse("")));
      a.equipment().edges().forEach(edge -> add(facts, Fact.EQUIPMENT, "edge " + edge));
      a.equipment().added().ifPresent(s -> add(facts, Fact.EQUIPMENT, "added " + steps(s)));
      a.equipment().assist().ifPresent(s -> add(facts, Fact.EQUIPMENT, "assistance " + steps(s)));
    }
    return facts;
  }

  private static void add(Map<Fact, List<String>> facts, Fact fact, String words) {
    facts.computeIfAbsent(fact, k -> new ArrayList<>()).add(words);
  }

  private static String experience(Athlete.Experience experience) {
    return Numbers.plain(experience.months(), 3)
        + " months"
        + experience.asOf().map(day -> " as of " + day).orElse("");
  }

  private static List<String> hand(Hand hand) {
    List<String> measures = new ArrayList<>();
    measures.add("length " + hand.length());
    hand.breadth().ifPresent(breadth -> measures.add("breadth " + breadth));
    hand.bones().entrySet().stream()
        .map(b -> b.getKey().finger() + " " + b.getKey().segment() + " " + b.getValue())
        .sorted()
        .forEach(measures::add);
    hand.knuckles().entrySet().stream()
        .map(k -> k.getKey() + " knuckle " + k.getValue() + " behind")
        .sorted()
        .forEach(measures::add);
    List<String> limits = new ArrayList<>();
    hand.limits()
        .ranges()
        .forEach(
            (finger, joints) ->
                joints.forEach(
                    (joint, range) ->
                        limits.add(
                            finger
                                + " "
                                + joint.name().toLowerCase(Locale.ROOT)
                                + " "
                                + Numbers.plain(range.low().degrees(), 2)
                                + " to "
                                + Numbers.plain(range.high().degrees(), 2)
                                + " deg")));
    limits.stream().sorted().forEach(measures::add);
    return measures;
  }

  private static String injury(Injury injury) {
    return injury
        + " from "
        + injury.from()
        + injury.cleared().map(day -> ", cleared " + day).orElse(", not cleared")
        + injury.note().map(n -> ", " + n).orElse("");
  }

  private static String day(DayOfWeek day) {
    return day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
  }

  private static String minutes(Duration time) {
    return Numbers.plain(time.toNanos() / 60e9, 3) + " min";
  }

  private static String steps(Equipment.Steps steps) {
    return "in steps of " + steps.step() + " to " + steps.limit();
  }

  private static void add(Map<Fact, List<String>> facts, LogEntry entry) {
    if (entry instanceof LogEntry.Tested tested) {
      add(facts, Fact.TESTS, test(tested.test()));
    } else if (entry instanceof LogEntry.BodyMass mass) {
      add(facts, Fact.WEIGHED, mass.mass() + " on " + mass.date());
    } else if (entry instanceof LogEntry.Pain pain) {
      add(facts, Fact.PAIN, pain(pain));
    } else if (entry instanceof LogEntry.Trained trained) {
      add(facts, Fact.TRAINING, trained.session() + " on " + trained.date() + done(trained));
    } else if (entry instanceof LogEntry.Skipped skipped) {
      add(facts, Fact.TRAINING, skipped.session() + " skipped on " + skipped.date());
    } else if (entry instanceof LogEntry.Climbed climbed) {
      add(
          facts,
          Fact.TRAINING,
          "climbing "
              + climbed.how()
              + " "
              + minutes(climbed.time())
              + (climbed.effort().isPresent()
                  ? " effort " + Numbers.plain(climbed.effort().getAsDouble(), 2)
                  : "")
              + " on "
              + climbed.date());
    }
  }

  private static String test(StrengthTest test) {
    String result;
    if (test.result() instanceof StrengthTest.Held held) {
      result = held.load() + " for " + seconds(held.hold());
    } else if (test.result() instanceof StrengthTest.ToFailure failure) {
      result = failure.load() + " to failure in " + seconds(failure.lasting());
    } else {
      StrengthTest.Series series = (StrengthTest.Series) test.result();
      result =
          series.means().size()
              + " x "
              + seconds(series.work())
              + " / "
              + seconds(series.rest())
              + " mean "
              + String.join(", ", series.means().stream().map(Object::toString).toList());
    }
    return test.setup() + ": " + result + " on " + test.date();
  }

  private static String seconds(Duration time) {
    return Numbers.plain(time.toNanos() / 1e9, 3) + " s";
  }

  private static String pain(LogEntry.Pain pain) {
    return pain.finger()
        + pain.structure().map(s -> " " + s).orElse("")
        + pain.side().map(s -> " " + s).orElse("")
        + " "
        + Numbers.plain(pain.score(), 2)
        + (pain.kind() == LogEntry.Pain.Kind.DULL
            ? ""
            : " " + pain.kind().name().toLowerCase(Locale.ROOT))
        + " on "
        + pain.date();
  }

  /** What was done of a session, by exercise; enough to tell two lines of a log apart. */
  private static String done(LogEntry.Trained trained) {
    List<String> done = new ArrayList<>();
    for (LogEntry.Done d : trained.done()) {
      List<String> words = new ArrayList<>();
      d.sets().ifPresent(sets -> words.add(sets + " sets"));
      d.setsAsked().ifPresent(asked -> words.add("of " + asked));
      d.load().ifPresent(load -> words.add(load.toString()));
      d.effort().ifPresent(effort -> words.add("effort " + Numbers.plain(effort, 2)));
      d.pain().ifPresent(pain -> words.add("pain " + Numbers.plain(pain, 2)));
      done.add(d.setup() + (words.isEmpty() ? "" : " " + String.join(" ", words)));
    }
    return done.isEmpty() ? "" : " (" + String.join(", ", done) + ")";
  }
}
