package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.grip.Band;
import gripwright.grip.FingerLoss;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.GripStructure;
import gripwright.hand.Finger;
import gripwright.hand.Joint;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.strength.LoadEstimate;
import gripwright.survey.GripSurvey;
import gripwright.survey.ModelCaveat;
import gripwright.tissue.Estimate;
import gripwright.tissue.FingerLoad;
import gripwright.tissue.Pulley;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes the forces of each grip by finger, all tables with the same columns. */
final class ForceTable {

  private static final String INDENT = "  ";

  private final GripSurvey survey;
  private final Words words;
  private final String[] head;
  private final int[] widths;

  ForceTable(GripSurvey survey, List<GripSurvey.Row> rows, Words words) {
    this.survey = survey;
    this.words = words;
    head =
        new String[] {
          "",
          words.say("grips.share"),
          words.say("grips.fdp"),
          words.say("grips.fds"),
          words.say("grips.a2"),
          words.say("grips.a4")
        };
    widths = Stream.of(head).mapToInt(String::length).toArray();
    for (GripSurvey.Row row : rows) {
      for (FingerLoad load : row.load().fingers()) {
        String[] cells = cells(load);
        for (int i = 0; i < widths.length; i++) {
          widths[i] = Math.max(widths[i], cells[i].length());
        }
      }
    }
  }

  void add(Page page, GripSurvey.Row row) {
    String name = words.capitals(new GripWords(words).name(row));
    page.line(row.open() ? name : words.say("grips.name-closed", "grip", name));
    addBody(page, row);
  }

  /** Adds the lines below a grip's name. */
  private void addBody(Page page, GripSurvey.Row row) {
    page.line(line(head));
    for (FingerLoad load : row.load().fingers()) {
      page.line(line(cells(load)));
    }
    held(row).ifPresent(held -> page.wrapped(INDENT, held));
    if (row.slips().isEmpty()) {
      page.wrapped(INDENT, words.of("grips.caveat", ModelCaveat.SINGLE_FINGER));
    } else {
      page.wrapped(INDENT, use(row));
      page.wrapped(INDENT + words.say("grips.slips") + " ", new SlipWords(words).all(row));
    }
    page.wrapped(INDENT, ownBands(row));
    if (row.grip().structure() == GripStructure.SPLIT) {
      page.wrapped(INDENT, lumbrical(row));
    }
    if (row.open()) {
      for (String caution : row.grip().cautions()) {
        page.wrapped(INDENT + "* ", Page.clean(words.written(caution)));
      }
    }
  }

  /** Returns the lines printed below a grip's name. */
  static String body(GripSurvey survey, GripSurvey.Row row, Words words) {
    Page page = new Page();
    new ForceTable(survey, List.of(row), words).addBody(page, row);
    return page.toString();
  }

  /**
   * Returns what the athlete can hold according to the tests; without tests, the share of a
   * four-finger hold.
   */
  private Optional<String> held(GripSurvey.Row row) {
    if (row.maximum().isPresent()) {
      LoadEstimate load = row.maximum().get().load();
      return Optional.of(
          words.say(
              survey.aboveMaximum(row).orElse(false) ? "grips.holds-less" : "grips.holds",
              "best",
              load(load.best()),
              "low",
              load(load.low()),
              "high",
              load(load.high())));
    }
    FingerSet fingers = row.grip().fingers();
    return fingers.equals(FingerSet.FOUR)
        ? Optional.empty()
        : Optional.of(
            words.say(
                "grips.holds-of-four",
                "low",
                percent(FingerLoss.EXCLUSION.capacity(fingers)),
                "high",
                percent(FingerLoss.FORCE_DEFICIT.capacity(fingers))));
  }

  private static String load(Load load) {
    return Numbers.plain(load.kilograms(), 1);
  }

  /** Returns the athlete's own ranges of the middle joints. */
  private String ownBands(GripSurvey.Row row) {
    return words.say(
        "grips.own-bands",
        "bands",
        words.commas(
            row.load().fingers().stream()
                .map(FingerLoad::finger)
                .map(
                    finger ->
                        words.say("grips.own-band", "finger", finger, "band", ownBand(row, finger)))
                .toList()));
  }

  private static String ownBand(GripSurvey.Row row, Finger finger) {
    Band band = row.fit().personalBands().get(new Grip.At(finger, Joint.PIP));
    return band == null ? "-" : whole(band.low().degrees()) + "-" + whole(band.high().degrees());
  }

  private String line(String[] cells) {
    StringBuilder line = new StringBuilder(INDENT).append(Page.padRight(cells[0], widths[0]));
    for (int i = 1; i < cells.length; i++) {
      line.append("  ").append(Page.padLeft(cells[i], widths[i]));
    }
    return line.toString();
  }

  private String[] cells(FingerLoad load) {
    return new String[] {
      words.of(load.finger()),
      percent(load.share().value()) + " %",
      force(load.fdp()),
      force(load.fds()),
      force(load.a2()),
      force(load.a4())
    };
  }

  private static String force(Estimate estimate) {
    return whole(estimate.value())
        + " ("
        + whole(estimate.low())
        + "-"
        + whole(estimate.high())
        + ")";
  }

  private static String whole(double newtons) {
    return Numbers.plain(newtons, 0);
  }

  private static String percent(double share) {
    return Numbers.plain(share * 100, 0);
  }

  /** Returns the pulley closest to its breaking load. */
  private String use(GripSurvey.Row row) {
    FingerLoad most = row.load().fingers().get(0);
    Pulley pulley = Pulley.A2;
    for (FingerLoad load : row.load().fingers()) {
      for (Pulley each : Pulley.values()) {
        if (load.use(each).value() > most.use(pulley).value()) {
          most = load;
          pulley = each;
        }
      }
    }
    Estimate use = most.use(pulley);
    return words.say(
        "grips.most-used",
        "finger",
        most.finger(),
        "pulley",
        pulley,
        "percent",
        percent(use.value()),
        "low",
        percent(use.low()),
        "high",
        percent(use.high()));
  }

  private String lumbrical(GripSurvey.Row row) {
    return words.say(
        "grips.lumbrical",
        "excursion",
        force(row.lumbrical()),
        "pulled-low",
        force(row.lumbricalPulledLow()));
  }
}
