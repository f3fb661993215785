package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.diff.EditionDiff;
import gripwright.export.calendar.AthleteCalendar;
import gripwright.export.study.Methods;
import gripwright.export.study.Pseudonyms;
import gripwright.export.text.DayText;
import gripwright.export.text.DiffText;
import gripwright.export.text.GripText;
import gripwright.export.text.ReviewText;
import gripwright.export.text.SeasonText;
import gripwright.export.text.StrengthText;
import gripwright.finding.Finding;
import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import gripwright.language.Compilation;
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
import java.lang.reflect.Field;
import java.lang.reflect.Method;
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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * All texts in a made-up language whose letters are all outside ASCII: what is left in ASCII
 * letters either was written by a person, or was forgotten when sentences moved into the bundle of
 * messages.
 */
final class PseudoLocaleTest {

  /**
   * Arguments of findings that are words of the language itself, which no bundle contains: lists of
   * what can be written, examples, conditions of rules; and citations.
   */
  private static final Set<String> CODE_FACTS =
      Set.of("known", "example", "missing", "source", "unit");

  /** Codes and files, which are not part of sentences. */
  private static final Pattern CODE =
      Pattern.compile("(?<=[( ])[a-z]+\\.[a-z0-9-]+(?=[):, ])|[\\w./~-]+\\.grip(:[0-9:]+)?");

  /** Texts that are not words: units, signs of tables, what is in backticks, dates. */
  private static final Pattern NO_WORD =
      Pattern.compile(
          "`[^`]*`"
              + "|\\b[0-9]{4}-[0-9]{2}-[0-9]{2}\\b"
              + "|\\b(kg s|kN s|kN|kg|lb|mm|cm|inch|min|h|N|deg)\\b"
              + "|(?<=[0-9]) s\\b"
              + "|(?<![A-Za-z])x(?![A-Za-z])"
              + "|(?<![A-Za-z])-*o-*(?![A-Za-z])"
              + "|(?<=[0-9] )(days|weeks|months)\\b" // units as they are written in a file
              + "|\\bA[1-5]\\b"
              + "|\\b[0-9]+[ab]\\b" // numbers of items of a guideline
              + "|\\bIRCRA [0-9]+");

  private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z-]*");

  private static final Wording PSEUDO = Wording.of(messages());

  private static final ReadOptions OPTIONS =
      ReadOptions.standard().withAllFindings().withWording(PSEUDO);

  private static final Length EDGE = Length.ofMillimetres(20);

  private final Map<String, String> left = new TreeMap<>();
  private final Set<Object> surveyed = new HashSet<>();

  /** Replaces English letters by full-width ones, which no word of a plan contains. */
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

  /**
   * A file that was read and compiled once for all its outputs.
   *
   * @param data what people wrote in it
   */
  private record Read(Path file, Reading reading, Compilation compilation, List<String> data) {

    static Read of(Path file) {
      Reading reading = Gripwright.read(file, OPTIONS);
      return new Read(file, reading, reading.compile(), new Data().add(reading).phrases().toList());
    }
  }

  private void everyText(List<Path> files) {
    Read before = null;
    int texts = 0;
    for (Path file : files) {
      Read read = Read.of(file);
      findings(read);
      if (read.reading().usable()) {
        plans(read);
        athletes(read);
        texts++;
      }
      if (before != null) {
        diff(before, read);
      }
      before = read;
    }
    assertTrue(texts > 0);
    assertEquals(Map.of(), left);
  }

  private void findings(Read read) {
    List<LocatedFinding> located = new ArrayList<>(read.reading().located());
    if (read.reading().usable()) {
      located.addAll(read.compilation().located());
    }
    for (LocatedFinding each : located) {
      String text = FindingText.plain().with(PSEUDO).render(List.of(each));
      String withoutSource =
          text.lines()
              .filter(line -> !line.matches("\\s*[0-9]+:.*"))
              .reduce("", (all, line) -> all + line + "\n");
      check(
          read.file() + " finding " + each.finding().code(),
          withoutSource,
          phrases(
              List.of(
                  each.finding(),
                  read.data(),
                  each.finding().place().toString(),
                  each.finding().athletes())));
    }
  }

  private void plans(Read read) {
    Path file = read.file();
    for (CompiledPlan plan : read.compilation().plans()) {
      List<Object> of = new ArrayList<>(List.of(read.data(), plan));
      of.addAll(plan.findings());
      plan.findings().forEach(finding -> of.add(finding.place().toString()));
      List<String> phrases = phrases(of);
      check(
          file + " methods",
          Methods.of(List.of(plan.plan()), Pseudonyms.none(), PSEUDO, place -> Optional.empty()),
          phrases);
      check(file + " calendar", calendar(plan), phrases);
      check(file + " season", SeasonText.of(plan, PSEUDO, finding -> Optional.empty()), phrases);
      for (LocalDate day = plan.plan().from();
          !day.isAfter(plan.plan().to());
          day = day.plusDays(1)) {
        check(file + " day", DayText.of(plan, day, PSEUDO), phrases);
      }
    }
  }

  /** Returns what an athlete reads of a calendar. */
  private static String calendar(CompiledPlan plan) {
    return AthleteCalendar.of(List.of(plan), PSEUDO)
        .text()
        .replace("\r\n ", "")
        .lines()
        .filter(line -> line.matches("(NAME|SUMMARY|DESCRIPTION):.*"))
        .map(line -> line.substring(line.indexOf(':') + 1))
        .map(line -> line.replace("\\n", "\n").replaceAll("\\\\(.)", "$1"))
        .reduce("", (all, line) -> all + line + "\n");
  }

  private void athletes(Read read) {
    Path file = read.file();
    Reading reading = read.reading();
    List<String> data = read.data();
    for (Athlete athlete : reading.athletes().values()) {
      Log log = reading.logs().getOrDefault(athlete.name(), Log.empty(athlete.name()));
      List<LogEntry> entries = log.entries();
      LocalDate day =
          entries.isEmpty() ? LocalDate.of(2027, 1, 1) : entries.get(entries.size() - 1).date();
      boolean first = surveyed.add(athlete);
      boolean other = surveyed.add(List.of(athlete, log, reading.grips())); // files share athletes
      if (!entries.isEmpty() || first) {
        StrengthSurvey strength =
            entries.isEmpty()
                ? StrengthSurvey.untested(athlete)
                : StrengthSurvey.of(athlete, log, reading.grips().values(), Optional.of(EDGE), day);
        check(
            file + " strength",
            StrengthText.of(strength, PSEUDO),
            phrases(List.of(data, strength)));
      }
      if (file.toString().contains("examples") ? other : first && !entries.isEmpty()) {
        GripSurvey grips =
            GripSurvey.of(athlete, log, reading.grips().values(), EDGE, athlete.bodyMass(), day);
        check(file + " grips", GripText.of(grips, PSEUDO), phrases(List.of(data, grips)));
      }
      List<CompiledPlan> plans =
          read.compilation().plans().stream()
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

  private void diff(Read before, Read after) {
    try {
      EditionReading one = EditionReading.of(before.file(), OPTIONS);
      EditionReading other = EditionReading.of(after.file(), OPTIONS);
      if (!one.usable() || !other.usable()) {
        return;
      }
      EditionDiff diff = EditionDiff.between(one.edition(), other.edition());
      List<Object> of = new ArrayList<>();
      of.add(diff);
      for (Read side : List.of(before, after)) {
        of.add(side.data());
        side.compilation().located().stream()
            .map(LocatedFinding::finding)
            .forEach(
                finding -> {
                  of.add(finding);
                  of.add(List.of(finding.place().toString()));
                });
      }
      diff.definitions().forEach(definition -> of.add(List.of(definition.name())));
      check(before.file() + " and " + after.file(), DiffText.of(diff, PSEUDO), phrases(of));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Records text in ASCII letters that remains after all data is removed. */
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

  /** Returns texts written by people, the longest first. */
  private static List<String> phrases(List<?> of) {
    Set<String> all = new HashSet<>();
    for (Object each : of) {
      if (each instanceof Collection<?> data) {
        data.forEach(phrase -> all.add((String) phrase));
      } else if (each instanceof String path) {
        all.add(path);
      } else if (each instanceof Finding finding) {
        Data code = new Data();
        CODE_FACTS.forEach(name -> code.add(finding.arguments().get(name)));
        code.phrases().forEach(all::add);
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

  /** Removes a phrase where it is a separate word, in its own letters or in capitals. */
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

  /** Every text in the input: names, titles, notes, reasons. */
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
      for (GradeScale scale : GradeScale.values()) {
        phrases.add(scale.word());
      }
      return this;
    }

    Data add(@Nullable Object value) {
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
      } else if (value instanceof Log log) {
        add(log.athlete());
        add(log.entries());
      } else if (value != null && hasBuilder(value.getClass())) {
        add(parts(value));
      } else if (value instanceof Record && seen.add(value)) {
        for (RecordComponent component : value.getClass().getRecordComponents()) {
          try {
            Method accessor = component.getAccessor();
            accessor.setAccessible(true);
            Object part = accessor.invoke(value);
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

    /** Returns whether a type keeps its components in a record of its own, behind a builder. */
    private static boolean hasBuilder(Class<?> type) {
      return Stream.of(type.getDeclaredFields()).anyMatch(field -> field.getName().equals("parts"))
          && type.getName().startsWith("gripwright.");
    }

    private static Object parts(Object value) {
      try {
        Field parts = value.getClass().getDeclaredField("parts");
        parts.setAccessible(true);
        return parts.get(value);
      } catch (ReflectiveOperationException e) {
        throw new AssertionError(e);
      }
    }

    Stream<String> phrases() {
      return phrases.stream();
    }
  }
}
