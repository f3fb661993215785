package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ability.Ability;
import gripwright.athlete.Athlete;
import gripwright.change.PlanChange;
import gripwright.diff.EditionDiff;
import gripwright.export.text.DayText;
import gripwright.export.text.DiffText;
import gripwright.export.text.GripText;
import gripwright.export.text.ReviewText;
import gripwright.export.text.SeasonText;
import gripwright.export.text.StrengthText;
import gripwright.finding.Finding;
import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import gripwright.language.EditionReading;
import gripwright.language.Gripwright;
import gripwright.language.ReadOptions;
import gripwright.language.Reading;
import gripwright.language.finding.FindingText;
import gripwright.language.finding.LocatedFinding;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.quantity.Length;
import gripwright.review.Review;
import gripwright.season.CompiledPlan;
import gripwright.survey.GripSurvey;
import gripwright.survey.StrengthSurvey;
import gripwright.wording.Messages;
import gripwright.wording.Wording;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * All texts in a made-up language whose letters are all outside ASCII: what is left in ASCII
 * letters either was written by a person, or was forgotten when sentences moved into the bundle of
 * messages.
 */
final class PseudoLocaleTest {

  /**
   * What core still says in English instead of as data, by the things that say it. Take a line out
   * when its sentences have messages.
   */
  private static final Map<String, Function<Object, Stream<String>>> STILL_ENGLISH =
      Map.of(
          "facts of athletes that changed",
          said(
              EditionDiff.class,
              diff ->
                  diff.facts().stream().flatMap(fact -> Stream.of(fact.before(), fact.after()))),
          "parts of plans that changed",
          said(
              EditionDiff.class,
              diff ->
                  diff.plans().stream()
                      .flatMap(plan -> plan.changes().stream())
                      .flatMap(PseudoLocaleTest::parts)),
          "facts of findings that are texts",
          said(
              Finding.class,
              finding ->
                  Stream.concat(
                      new Data().add(finding.arguments()).phrases(),
                      // What a place in a file is called, such as "the depth of an edge".
                      finding.arguments().values().stream()
                          .filter(fact -> fact instanceof Enum && !(fact instanceof Message))
                          .map(String::valueOf))));

  /** Codes and files, which no sentence is part of. */
  private static final Pattern CODE =
      Pattern.compile("\\[[a-z]+\\.[a-z0-9-]+\\]|[\\w./~-]+\\.grip(:[0-9:]+)?");

  /** What is not a word: units, signs of tables, what is in backticks, dates. */
  private static final Pattern NO_WORD =
      Pattern.compile(
          "`[^`]*`"
              + "|\\b[0-9]{4}-[0-9]{2}-[0-9]{2}\\b"
              + "|\\b(kg s|kN s|kN|kg|lb|mm|cm|inch|min|h|N|deg)\\b"
              + "|(?<=[0-9]) s\\b"
              + "|(?<![A-Za-z])x(?![A-Za-z])"
              + "|(?<![A-Za-z])-*o-*(?![A-Za-z])"
              + "|\\bA[1-5]\\b"
              + "|\\bIRCRA [0-9]+");

  private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z-]*");

  private static final Wording PSEUDO = Wording.of(messages());

  private static final ReadOptions OPTIONS =
      ReadOptions.standard().withAllFindings().withWording(PSEUDO);

  private static final Length EDGE = Length.ofMillimetres(20);

  private final Map<String, String> left = new TreeMap<>();
  private final Set<Athlete> surveyed = new HashSet<>();

  /** Takes English apart: letters become full-width ones, of which no word of a plan is made. */
  private static Messages messages() {
    Map<String, String> templates = new TreeMap<>();
    Messages.english()
        .templates()
        .forEach(
            (key, template) ->
                templates.put(key, key.endsWith("-format") ? template : pseudo(template)));
    // The days and months of Greek have no ASCII letter either.
    return Messages.of(Locale.forLanguageTag("el"), templates);
  }

  private static String pseudo(String template) {
    StringBuilder out = new StringBuilder();
    boolean code = false;
    boolean name = false;
    for (char c : template.toCharArray()) {
      code ^= c == '`';
      name = c == '{' || (name && c != '}');
      boolean letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
      out.append(letter && !code && !name ? (char) (c + '\uFF41' - 'a') : c);
    }
    return out.toString();
  }

  private static <T> Function<Object, Stream<String>> said(
      Class<T> by, Function<T, Stream<String>> what) {
    return said -> by.isInstance(said) ? what.apply(by.cast(said)) : Stream.empty();
  }

  private static Stream<String> parts(PlanChange change) {
    if (change instanceof PlanChange.PartChanged part) {
      return Stream.of(part.before(), part.after());
    }
    return change instanceof PlanChange.GoalChanged goal
        ? Stream.of(goal.before(), goal.after())
        : Stream.empty();
  }

  private static List<Path> files(String folder) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(folder))) {
      return files.filter(file -> file.toString().endsWith(".grip")).sorted().toList();
    }
  }

  @Test
  void noWordOfTheExamplesIsLeftInEnglish() throws IOException {
    everyText(files("../../examples/plans"));
  }

  @Test
  void noWordOfTheCorpusIsLeftInEnglish() throws IOException {
    everyText(files("../language/src/test/resources/corpus"));
  }

  @Test
  void aForgottenWordIsFound() {
    check("a text", "ｗｅｅｋ 3: Forgotten 7 s `half-crimp` 20 mm", List.of());
    assertEquals(Map.of("Forgotten", "a text: ｗｅｅｋ 3: Forgotten 7 s `half-crimp` 20 mm"), left);
  }

  private void everyText(List<Path> files) {
    Path before = null;
    int texts = 0;
    for (Path file : files) {
      Reading reading = Gripwright.read(file, OPTIONS);
      findings(file, reading);
      if (reading.usable()) {
        plans(file, reading);
        athletes(file, reading);
        texts++;
      }
      if (before != null) {
        diff(before, file);
      }
      before = file;
    }
    assertTrue(texts > 0);
    assertEquals(Map.of(), left);
  }

  private void findings(Path file, Reading reading) {
    List<LocatedFinding> located = new ArrayList<>(reading.located());
    if (reading.usable()) {
      located.addAll(reading.compile().located());
    }
    List<String> data = new Data().add(reading).phrases().toList();
    for (LocatedFinding each : located) {
      String text = FindingText.plain().with(PSEUDO).render(List.of(each));
      String withoutSource =
          text.lines()
              .filter(line -> !line.matches("\\s*[0-9]+ \\|.*"))
              .reduce("", (all, line) -> all + line + "\n");
      check(
          file + " finding " + each.finding().code(),
          withoutSource,
          phrases(List.of(each.finding(), data, each.finding().place().toString())));
    }
  }

  private void plans(Path file, Reading reading) {
    List<String> data = new Data().add(reading).phrases().toList();
    for (CompiledPlan plan : reading.compile().plans()) {
      List<Object> of = new ArrayList<>(List.of(data, plan));
      of.addAll(plan.findings());
      plan.findings().forEach(finding -> of.add(finding.place().toString()));
      List<String> phrases = phrases(of);
      check(file + " season", SeasonText.of(plan, PSEUDO, finding -> Optional.empty()), phrases);
      for (LocalDate day = plan.plan().from();
          !day.isAfter(plan.plan().to());
          day = day.plusDays(1)) {
        check(file + " day", DayText.of(plan, day, PSEUDO), phrases);
      }
    }
  }

  private void athletes(Path file, Reading reading) {
    List<String> data = new Data().add(reading).phrases().toList();
    for (Athlete athlete : reading.athletes().values()) {
      Log log = reading.logs().getOrDefault(athlete.name(), Log.empty(athlete.name()));
      List<LogEntry> entries = log.entries();
      LocalDate day =
          entries.isEmpty() ? LocalDate.of(2027, 1, 1) : entries.get(entries.size() - 1).date();
      if (!entries.isEmpty() || surveyed.add(athlete)) {
        StrengthSurvey strength =
            entries.isEmpty()
                ? StrengthSurvey.untested(athlete)
                : StrengthSurvey.of(athlete, log, reading.grips().values(), Optional.of(EDGE), day);
        check(
            file + " strength",
            StrengthText.of(strength, PSEUDO),
            phrases(List.of(data, strength)));
      }
      if (surveyed.add(athlete) || file.toString().contains("examples")) {
        GripSurvey grips =
            GripSurvey.of(athlete, log, reading.grips().values(), EDGE, athlete.bodyMass(), day);
        check(file + " grips", GripText.of(grips, PSEUDO), phrases(List.of(data, grips)));
      }
      List<CompiledPlan> plans =
          reading.compile().plans().stream()
              .filter(plan -> plan.athlete().equals(athlete))
              .toList();
      Review review =
          entries.isEmpty()
              ? Review.unlogged(athlete)
              : Review.of(athlete, log, plans, reading.protocols(), day);
      List<Object> of = new ArrayList<>(List.of(data, review));
      of.addAll(review.next());
      check(file + " review", ReviewText.of(review, PSEUDO), phrases(of));
    }
  }

  private void diff(Path before, Path after) {
    try {
      EditionReading one = EditionReading.of(before, OPTIONS);
      EditionReading other = EditionReading.of(after, OPTIONS);
      if (!one.usable() || !other.usable()) {
        return;
      }
      EditionDiff diff = EditionDiff.between(one.edition(), other.edition());
      List<Object> of = new ArrayList<>();
      of.add(diff);
      for (Path side : List.of(before, after)) {
        Reading reading = Gripwright.read(side, OPTIONS);
        of.add(new Data().add(reading).phrases().toList());
        reading.compile().located().stream()
            .map(LocatedFinding::finding)
            .forEach(
                finding -> {
                  of.add(finding);
                  of.add(List.of(finding.place().toString()));
                });
      }
      diff.definitions().forEach(definition -> of.add(List.of(definition.name())));
      check(before + " and " + after, DiffText.of(diff, PSEUDO), phrases(of));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Notes what is left in ASCII letters once all that is data is taken out. */
  private void check(String name, String text, List<String> phrases) {
    String flat = plain(text);
    String rest = flat;
    for (String phrase : phrases) {
      rest = without(phrase, rest);
    }
    rest = NO_WORD.matcher(rest).replaceAll(" ");
    Matcher words = WORD.matcher(rest);
    while (words.find()) {
      String around =
          rest.substring(
              Math.max(0, words.start() - 60), Math.min(rest.length(), words.end() + 60));
      left.putIfAbsent(words.group(), name + ": " + (rest.length() < 80 ? flat : around));
    }
  }

  /**
   * Returns what was written by people and what is known to be English still, the longest first.
   */
  private static List<String> phrases(List<?> of) {
    Set<String> all = new HashSet<>();
    for (Object each : of) {
      if (each instanceof Collection<?> data) {
        data.forEach(phrase -> all.add((String) phrase));
      } else if (each instanceof String path) {
        all.add(path);
      } else {
        STILL_ENGLISH.values().forEach(said -> said.apply(each).forEach(all::add));
      }
    }
    return all.stream()
        .map(phrase -> plain(phrase).strip())
        .filter(phrase -> WORD.matcher(phrase).find())
        .distinct()
        .sorted(Comparator.comparingInt(String::length).reversed())
        .toList();
  }

  private static String plain(String text) {
    return CODE.matcher(text.replaceAll("\\s+", " ")).replaceAll(" ").replaceAll(" +", " ");
  }

  /** Takes a phrase out where it stands by itself, in its own letters or in capitals. */
  private static String without(String phrase, String text) {
    String rest = text;
    for (String form :
        List.of(
            phrase,
            phrase.toUpperCase(Locale.ROOT),
            phrase.toUpperCase(Locale.ROOT).replace('-', ' '))) {
      if (rest.contains(form)) {
        rest =
            Pattern.compile("(?<![A-Za-z0-9-])" + Pattern.quote(form) + "(?![A-Za-z0-9-])")
                .matcher(rest)
                .replaceAll(" ");
      }
    }
    return rest;
  }

  /** Every text inside of what was read: names, titles, notes, reasons. */
  private static final class Data {

    private final Set<String> phrases = new HashSet<>();
    private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    Data add(Reading reading) {
      add(reading.athletes());
      add(reading.grips());
      add(reading.protocols());
      add(reading.ruleSets());
      add(reading.plans());
      add(reading.comparisons());
      add(reading.logs());
      phrases.add("even"); // the name of a sheath, given by whoever made the model
      return this;
    }

    Data add(Object value) {
      if (value instanceof String text) {
        phrases.add(text);
      } else if (value instanceof Ability ability) {
        phrases.add(ability.toString());
      } else if (value instanceof Optional<?> optional) {
        optional.ifPresent(this::add);
      } else if (value instanceof Collection<?> many) {
        many.forEach(this::add);
      } else if (value instanceof Map<?, ?> map) {
        map.forEach(
            (key, each) -> {
              add(key);
              add(each);
            });
      } else if (value instanceof WrittenText written) {
        phrases.add(written.text());
      } else if (value instanceof Message message) {
        add(message.arguments());
      } else if (value instanceof Record && seen.add(value)) {
        for (RecordComponent component : value.getClass().getRecordComponents()) {
          try {
            Object part = component.getAccessor().invoke(value);
            if (part != null) {
              add(part);
            }
          } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
          }
        }
      }
      return this;
    }

    Stream<String> phrases() {
      return phrases.stream();
    }
  }
}
