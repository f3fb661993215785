package gripwright.export.words;

import gripwright.finding.Finding;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.finding.ReportedFinding;
import gripwright.finding.WrittenText;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.plan.Exercise;
import gripwright.schedule.Derivation;
import gripwright.wording.Wording;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A message bundle with the formats of dates, counts and lists. Immutable. */
public final class Words {

  /** A leap year, in which every possible width of a printed day occurs. */
  private static final LocalDate A_YEAR = LocalDate.of(2024, 1, 1);

  private static final int DAYS = 366;

  private static final int FEW = 3;

  private final Wording wording;
  private final Locale locale;
  private final DateTimeFormatter day;
  private final DateTimeFormatter dayAndYear;
  private final DateTimeFormatter weekday;

  /** Creates the words of a bundle. */
  public Words(Wording wording) {
    this.wording = wording;
    locale = wording.messages().locale();
    day = format("common.day-format");
    dayAndYear = format("common.day-and-year-format");
    weekday = format("common.weekday-format");
  }

  private DateTimeFormatter format(String key) {
    return DateTimeFormatter.ofPattern(wording.say(key), locale);
  }

  /**
   * Puts a message into words.
   *
   * @param facts name and value of each fact in turn
   */
  public String say(String key, Object... facts) {
    Map<String, Object> arguments = new LinkedHashMap<>();
    for (int i = 0; i < facts.length; i += 2) {
      arguments.put((String) facts[i], facts[i + 1]);
    }
    return wording.say(key, arguments);
  }

  /**
   * Puts a message into words that has one form for the number one and another for other numbers.
   */
  public String count(String key, long number, Object... facts) {
    Object[] all = Stream.concat(Stream.of("count", number), Stream.of(facts)).toArray();
    return say(key + (number == 1 ? "-one" : "-many"), all);
  }

  /** Returns the words for an enumeration constant, such as {@code reviewed.outcome-done}. */
  public String of(String key, Enum<?> constant) {
    return say(key(key, constant));
  }

  /** Returns the key of an enumeration constant, such as {@code reviewed.outcome-done}. */
  public static String key(String key, Enum<?> constant) {
    return key + "-" + constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns a message in words, such as the name of a finger. */
  public String of(Message message) {
    return wording.say(message);
  }

  /**
   * Returns a text as written, or the bundle's translation if it is a sentence of the catalogue.
   */
  public String written(String text) {
    return wording.say(new WrittenText(text));
  }

  /** Returns what a link of a derivation did. */
  public String step(Derivation link) {
    return wording.step(link);
  }

  /** Returns the unit of a link of a derivation; empty if it has none. */
  public String unit(Derivation link) {
    return wording.unit(link);
  }

  /** Returns how to correct a finding, if there is advice. */
  public Optional<String> advice(Finding finding) {
    return wording.advice(finding);
  }

  /** Returns a finding with its sentences for a model without text. */
  public ReportedFinding report(Finding finding) {
    return wording.report(finding);
  }

  /** Returns the sentence of a finding. */
  public String sentence(Finding finding) {
    return wording.sentence(finding);
  }

  /** Writes a day as in {@code Tue 26 Jan}. */
  public String day(LocalDate date) {
    return day.format(date);
  }

  /** Writes a day as in {@code Tue 26 Jan 2027}. */
  public String dayAndYear(LocalDate date) {
    return dayAndYear.format(date);
  }

  /** Writes the day of the week as in {@code Tuesday}. */
  public String weekday(LocalDate date) {
    return weekday.format(date);
  }

  /** Returns the greatest width of a day without its year, in characters. */
  public int dayWidth() {
    return Stream.iterate(A_YEAR, date -> date.plusDays(1))
        .limit(DAYS)
        .mapToInt(date -> day(date).length())
        .max()
        .orElse(0);
  }

  /** Joins parts with commas. */
  public String commas(List<String> parts) {
    return wording.say(Listing.of(Listing.Style.COMMAS, parts));
  }

  /** Joins parts with semicolons. */
  public String semicolons(List<String> parts) {
    return wording.say(Listing.of(Listing.Style.CLAUSES, parts));
  }

  /** Joins the first few messages with semicolons and adds how many more there are. */
  public String few(List<? extends Message> parts) {
    return wording.say(Listing.few(FEW, Listing.Style.CLAUSES, parts));
  }

  /** Joins parts with the word for "and". */
  public String and(List<String> parts) {
    return parts.stream()
        .reduce((one, other) -> say("page.and", "one", one, "other", other))
        .orElse("");
  }

  /** Returns a text in capitals. */
  public String capitals(String text) {
    return text.toUpperCase(locale);
  }

  /** Returns a sentence with a capital first letter. */
  public String capital(String sentence) {
    if (sentence.isEmpty()) {
      return sentence;
    }
    int first = sentence.offsetByCodePoints(0, 1);
    return sentence.substring(0, first).toUpperCase(locale) + sentence.substring(first);
  }

  /** Writes a grip on an edge, as in {@code half-crimp 20 mm left}. */
  public String setup(Setup setup) {
    return say(
        setup.lifting() ? "page.setup-lifting" : "page.setup",
        "grip",
        setup.grip().name(),
        "edge",
        edge(setup));
  }

  /** Writes an edge, with the hand if only one holds it, as in {@code 20 mm left}. */
  public String edge(Setup setup) {
    List<Side> sides = setup.hands().sides();
    return edge(setup.edge(), sides.size() == 1 ? Optional.of(sides.get(0)) : Optional.empty());
  }

  /** Writes an edge, with a hand if there is one. */
  public String edge(Object edge, Optional<Side> hand) {
    return hand.map(side -> say("page.edge-one-hand", "edge", edge, "hand", side))
        .orElseGet(edge::toString);
  }

  /** Writes a way of holding, as in {@code left hand lifting}. */
  public String hands(Hands hands, boolean lifting) {
    String which = of("page.hands", hands);
    return lifting ? say("page.hands-lifting", "hands", which) : which;
  }

  /** Writes a way of holding, as in {@code alternating hands, left first, lifting}. */
  public String hands(Exercise exercise) {
    if (!exercise.alternating()) {
      return hands(exercise.hands(), exercise.lifting());
    }
    String which = say("page.hands-alternating");
    return exercise.lifting() ? say("page.hands-lifting", "hands", which) : which;
  }

  /** Writes a range, as in {@code 10 to 20}. */
  public String range(Object from, Object to) {
    return say("common.range", "from", from, "to", to);
  }
}
