package gripwright.export.text;

import gripwright.athlete.Athlete;
import gripwright.export.words.MissingWords;
import gripwright.export.words.Words;
import gripwright.grip.FitSpread;
import gripwright.grip.GripStructure;
import gripwright.hand.Side;
import gripwright.quantity.Numbers;
import gripwright.schedule.Caution;
import gripwright.survey.GripSurvey;
import gripwright.survey.ModelCaveat;
import gripwright.tissue.OwnHang;
import gripwright.tissue.TissueModel;
import gripwright.wording.Wording;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Describes every grip on one athlete's hand for a coach: a table with one line a grip, then why
 * the hand can't take a grip or a rule closes it and which finger not to force, then the estimated
 * forces grip by grip, and the cautions at the end.
 *
 * <p>Plain text only, at most 80 columns if names are of ordinary length; words and date formats
 * come from a message bundle. Stateless and thread-safe.
 */
public final class GripText {

  private final GripSurvey survey;
  private final boolean newtons;
  private final Words words;
  private final GripWords grips;
  private final GateWords gates;
  private final Page page = new Page();

  private GripText(GripSurvey survey, boolean newtons, Words words) {
    this.survey = survey;
    this.newtons = newtons;
    this.words = words;
    grips = new GripWords(words);
    gates = new GateWords(words);
  }

  /** Returns the survey as text, in the words of a bundle; forces in times the own hang. */
  public static String of(GripSurvey survey, Wording wording) {
    return of(survey, false, wording);
  }

  /** Returns the survey as text, in the words of a bundle; forces in newtons. */
  public static String withNewtons(GripSurvey survey, Wording wording) {
    return of(survey, true, wording);
  }

  private static String of(GripSurvey survey, boolean newtons, Wording wording) {
    Words words = new Words(wording);
    return new GripText(new EqualRows(newtons, words).of(survey), newtons, words).write();
  }

  private String write() {
    head();
    page.gap();
    GripOverview overview = new GripOverview(survey, words);
    overview.add(page);
    group("grips.not-taken", reasons(grips::misses));
    group("grips.closed-to-athlete", reasons(gates::closed));
    group("grips.stays-closed", limits());
    group("grips.worth-knowing", notes());
    group("grips.not-forced", reasons(grips::advice));
    overview.ranges().add(page);
    forces();
    page.gap();
    for (ModelCaveat reservation : survey.reservations()) {
      page.wrapped("* ", words.of("grips.caveat", reservation));
    }
    for (Caution caution : Caution.general()) {
      page.wrapped("* ", words.of(caution));
    }
    return page.toString();
  }

  private void head() {
    Athlete athlete = survey.athlete();
    page.wrapped(
        "", words.say("grips.title", "athlete", words.capitals(Page.clean(athlete.title()))));
    page.wrapped(
        "",
        words.say(
            "grips.who",
            "date",
            words.dayAndYear(survey.day()),
            "age",
            athlete.ageInMonths(survey.day()) / 12,
            "trained",
            MissingWords.months(survey.trainedMonths(), words),
            "ability",
            athlete.ability(),
            "ircra",
            athlete.ability().ircra()));
    HandWords hands = new HandWords(words);
    if (survey.handsAreEqual()) {
      labelled(words.say("grips.hand"), hands.of(athlete.left(), survey.left()));
    } else {
      labelled(words.of(Side.LEFT), hands.of(athlete.left(), survey.left()));
      labelled(words.of(Side.RIGHT), hands.of(athlete.right(), survey.right()));
    }
    labelled(words.say("grips.edge"), survey.edge().toString());
    labelled(
        words.say("grips.load"),
        newtons
            ? words.say(
                "grips.total-newtons",
                "total",
                survey.total(),
                "newtons",
                Numbers.plain(survey.newtonsPerHand(), 0))
            : words.say("grips.total", "total", survey.total()));
  }

  /** Adds a line after a label; all labels are as wide as the longest. */
  private void labelled(String label, String line) {
    int width =
        Stream.of(
                words.say("grips.hand"),
                words.of(Side.LEFT),
                words.of(Side.RIGHT),
                words.say("grips.edge"),
                words.say("grips.load"))
            .mapToInt(String::length)
            .max()
            .orElse(0);
    page.wrapped(Page.padRight(label, width + 1), line);
  }

  /** Returns each sentence with the grips it applies to. */
  private Map<String, Set<String>> reasons(Function<GripSurvey.Row, List<String>> sentences) {
    Map<String, Set<String>> named = new LinkedHashMap<>();
    for (GripSurvey.Row row : survey.rows()) {
      for (String sentence : sentences.apply(row)) {
        named.computeIfAbsent(sentence, s -> new LinkedHashSet<>()).add(grips.name(row));
      }
    }
    return named;
  }

  private Map<String, Set<String>> notes() {
    Map<String, Set<String>> notes = new LinkedHashMap<>();
    Set<String> everyGrip = Set.of(words.say("grips.every-grip"));
    if (survey.underSixteen()) {
      notes.put(words.say("grips.under-sixteen"), everyGrip);
    }
    survey.notes().forEach(note -> notes.put(words.written(note.message()), everyGrip));
    notes.putAll(reasons(gates::notes));
    return notes;
  }

  /** Returns the limits; one that applies to every open grip appears once for all of them. */
  private Map<String, Set<String>> limits() {
    Map<String, Set<String>> limits = reasons(gates::limits);
    Set<String> open = new LinkedHashSet<>();
    survey.rows().stream().filter(GripSurvey.Row::open).map(grips::name).forEach(open::add);
    limits.replaceAll(
        (limit, names) ->
            names.size() > 1 && names.equals(open)
                ? Set.of(words.say("grips.every-open-grip"))
                : names);
    return limits;
  }

  private void group(String key, Map<String, Set<String>> reasons) {
    if (reasons.isEmpty()) {
      return;
    }
    page.gap();
    page.line(words.say(key));
    reasons.forEach(
        (sentence, names) ->
            page.hanging(
                words.say(
                    "page.said-of",
                    "what",
                    words.commas(List.copyOf(names)),
                    "sentence",
                    Page.clean(sentence))));
  }

  /** Returns the named parameters in one sentence. */
  private String model() {
    TissueModel model = GripSurvey.MODEL;
    return words.say(
        "grips.model",
        "arms",
        words.of("grips.arms", model.arms()),
        "sheath",
        model.sheath().words(),
        "draws",
        TissueModel.draws(),
        "stream",
        model.stream(),
        "hands",
        FitSpread.DRAWS,
        "hand-stream",
        FitSpread.STREAM);
  }

  private void forces() {
    List<GripSurvey.Row> taken = survey.rows().stream().filter(r -> r.fit().reachable()).toList();
    if (taken.isEmpty()) {
      return;
    }
    page.gap();
    page.line(words.say("grips.forces"));
    page.wrapped(
        "",
        words.say(
            newtons ? "grips.forces-legend-newtons" : "grips.forces-legend",
            "hang-grip",
            OwnHang.SETUP.grip().name(),
            "hang-edge",
            OwnHang.SETUP.edge(),
            "body-mass",
            survey.bodyMass()));
    page.wrapped("", model());
    if (taken.stream().anyMatch(r -> !r.slips().isEmpty())) {
      page.wrapped("", words.say("grips.slips-legend"));
      if (taken.stream().anyMatch(SlipWords::tilts)) {
        page.wrapped("", words.say("grips.tilts-legend"));
      }
    }
    if (taken.stream().anyMatch(r -> r.grip().structure() == GripStructure.SPLIT)) {
      page.wrapped("", words.say("grips.lumbrical-legend"));
    }
    ForceTable table = new ForceTable(survey, taken, newtons, words);
    for (GripSurvey.Row row : taken) {
      page.gap();
      table.add(page, row);
    }
  }
}
