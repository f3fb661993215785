package gripwright.export.text;

import gripwright.athlete.Athlete;
import gripwright.grip.FitSpread;
import gripwright.quantity.Numbers;
import gripwright.schedule.Caution;
import gripwright.survey.GripSurvey;
import gripwright.survey.ModelCaveat;
import gripwright.tissue.TissueModel;
import gripwright.wording.Wording;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Every grip on one athlete's hand as a coach reads it: one table with a line a grip, then why a
 * grip is not taken or closed and which finger not to force, then the estimated forces grip by
 * grip, and the cautions at the foot.
 *
 * <p>Plain characters only, at most 80 columns where names are of ordinary length, the same in
 * every locale. Stateless and thread-safe.
 */
public final class GripText {

  private static final String FORCES =
      "Share of the load, good to about 8 points; tension of the flexor tendons FDP and FDS and force on the pulleys A2 and"
          + " A4, in N, each with the range that holds 90 % of the model's own spread. Most used:"
          + " the pulley that comes nearest to its mean breaking load in cadavers.";

  private static final String SLIPS =
      "Slips: the finger that leaves, the one that takes over most, and by what its load is"
          + " multiplied in that instant.";

  private static final String UNDER_SIXTEEN =
      "under 16 no finger training is intensive: light, under supervision, and never into pain;"
          + " pain at a growth plate goes to a physician";

  private static final String EVERY_OPEN = "every open grip";

  private static final String TILTS =
      "Where it tilts, the others can't keep the hand level and the nearest one takes all.";

  private final GripSurvey survey;
  private final Page page = new Page();

  private GripText(GripSurvey survey) {
    this.survey = survey;
  }

  /** Returns the survey as text. */
  public static String of(GripSurvey survey) {
    return new GripText(AlikeRows.of(survey)).write();
  }

  private String write() {
    head();
    page.gap();
    GripOverview overview = new GripOverview(survey);
    overview.add(page);
    group("NOT TAKEN BY THIS HAND", reasons(GripWords::misses));
    group("CLOSED TO THIS ATHLETE", reasons(GateWords::closed));
    group("LIMITED: THIS STAYS CLOSED", limits());
    group("WORTH KNOWING", notes());
    group("NOT TO BE FORCED AT HIGH INTENSITY", reasons(GripWords::advice));
    overview.ranges().add(page);
    forces();
    page.gap();
    for (ModelCaveat reservation : survey.reservations()) {
      page.wrapped("* ", reservation.text());
    }
    for (Caution caution : Caution.general()) {
      page.wrapped("* ", Wording.english().say(caution));
    }
    return page.toString();
  }

  private void head() {
    Athlete athlete = survey.athlete();
    page.wrapped("", "GRIPS OF " + Page.clean(athlete.title()).toUpperCase(Locale.ROOT));
    page.wrapped(
        "",
        Page.dayAndYear(survey.day())
            + ": age "
            + athlete.ageInMonths(survey.day()) / 12
            + ", "
            + GateWords.months(survey.trainedMonths())
            + " of finger training, "
            + athlete.ability()
            + " (IRCRA "
            + athlete.ability().ircra()
            + ")");
    if (survey.alike()) {
      page.wrapped("hand  ", HandWords.of(athlete.left(), survey.left()));
    } else {
      page.wrapped("left  ", HandWords.of(athlete.left(), survey.left()));
      page.wrapped("right ", HandWords.of(athlete.right(), survey.right()));
    }
    page.wrapped("edge  ", survey.edge().toString());
    page.wrapped(
        "load  ",
        survey.total()
            + " on both hands, "
            + Numbers.plain(survey.newtonsPerHand(), 0)
            + " N on each");
  }

  /** What there is to say, each sentence with the grips that it is said of. */
  private Map<String, Set<String>> reasons(Function<GripSurvey.Row, List<String>> sentences) {
    Map<String, Set<String>> grips = new LinkedHashMap<>();
    for (GripSurvey.Row row : survey.rows()) {
      for (String sentence : sentences.apply(row)) {
        grips.computeIfAbsent(sentence, s -> new LinkedHashSet<>()).add(GripWords.name(row));
      }
    }
    return grips;
  }

  private Map<String, Set<String>> notes() {
    Map<String, Set<String>> notes = new LinkedHashMap<>();
    if (survey.underSixteen()) {
      notes.put(UNDER_SIXTEEN, Set.of("every grip"));
    }
    survey.notes().forEach(note -> notes.put(note.message(), Set.of("every grip")));
    notes.putAll(reasons(GateWords::notes));
    return notes;
  }

  /** What stays closed; what does so of every open grip is said of all at once. */
  private Map<String, Set<String>> limits() {
    Map<String, Set<String>> limits = reasons(GateWords::limits);
    Set<String> open = new LinkedHashSet<>();
    survey.rows().stream().filter(GripSurvey.Row::open).map(GripWords::name).forEach(open::add);
    limits.replaceAll(
        (limit, grips) -> grips.size() > 1 && grips.equals(open) ? Set.of(EVERY_OPEN) : grips);
    return limits;
  }

  private void group(String title, Map<String, Set<String>> reasons) {
    if (reasons.isEmpty()) {
      return;
    }
    page.gap();
    page.line(title);
    reasons.forEach(
        (sentence, grips) -> page.hanging(String.join(", ", grips) + ": " + Page.clean(sentence)));
  }

  /** The named parameters, in one sentence. */
  private static String model() {
    TissueModel model = GripSurvey.MODEL;
    return "Model: moment arms "
        + model.arms().name().toLowerCase(Locale.ROOT).replace('_', ' ')
        + ", sheath "
        + model.sheath().name()
        + "; "
        + TissueModel.draws()
        + " draws, seed "
        + model.seed()
        + ", of "
        + FitSpread.DRAWS
        + " hands, seed "
        + FitSpread.SEED
        + ".";
  }

  private void forces() {
    List<GripSurvey.Row> taken = survey.rows().stream().filter(r -> r.fit().reachable()).toList();
    if (taken.isEmpty()) {
      return;
    }
    page.gap();
    page.line("FORCES ON ONE HAND, AN ESTIMATE");
    page.wrapped("", FORCES);
    page.wrapped("", model());
    if (taken.stream().anyMatch(r -> !r.slips().isEmpty())) {
      page.wrapped("", SLIPS);
      if (taken.stream().anyMatch(ForceTable::tilts)) {
        page.wrapped("", TILTS);
      }
    }
    ForceTable table = new ForceTable(survey, taken);
    for (GripSurvey.Row row : taken) {
      page.gap();
      table.add(page, row);
    }
  }
}
