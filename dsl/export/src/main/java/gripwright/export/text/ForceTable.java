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
import gripwright.strength.StrengthMap;
import gripwright.survey.GripSurvey;
import gripwright.tissue.Estimate;
import gripwright.tissue.FingerLoad;
import gripwright.tissue.OwnHang;
import gripwright.tissue.Pulley;
import gripwright.tissue.RelativeLoad;
import gripwright.tissue.Slip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Writes the forces of each grip by finger, all tables with the same columns: in times the
 * athlete's own hang, or in newtons.
 */
final class ForceTable {

  private static final String INDENT = "  ";

  private final GripSurvey survey;
  private final boolean newtons;
  private final Words words;
  private final String[] head;
  private final int[] widths;

  ForceTable(GripSurvey survey, List<GripSurvey.Row> rows, boolean newtons, Words words) {
    this.survey = survey;
    this.newtons = newtons;
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
      for (String[] cells : cells(row)) {
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
    for (String[] cells : cells(row)) {
      page.line(line(cells));
    }
    held(row).ifPresent(held -> page.wrapped(INDENT, held));
    highest(row).ifPresent(highest -> page.wrapped(INDENT, highest));
    SlipWords slips = new SlipWords(words);
    for (Slip.View view : row.slips().isEmpty() ? new Slip.View[0] : Slip.View.values()) {
      page.wrapped(INDENT + words.of("grips.slips", view) + " ", slips.all(row, view));
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
  static String body(GripSurvey survey, GripSurvey.Row row, boolean newtons, Words words) {
    Page page = new Page();
    new ForceTable(survey, List.of(row), newtons, words).addBody(page, row);
    return page.toString();
  }

  /**
   * Returns what the athlete can hold according to the tests; without tests, the share of a
   * four-finger hold. Nothing for a closed grip, because a load reads as permission.
   */
  private Optional<String> held(GripSurvey.Row row) {
    if (!row.open()) {
      return Optional.empty();
    }
    if (row.maximum().isPresent()) {
      String held = held(row.maximum().get());
      return Optional.of(
          survey.aboveMaximum(row).orElse(false)
              ? words.say("grips.holds-less", "holds", held)
              : held);
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

  private String held(StrengthMap.Estimate maximum) {
    LoadEstimate load = maximum.load();
    return words.say(
        maximum.tested() ? "grips.holds" : "grips.holds-untested",
        "best",
        load(load.best()),
        "low",
        load(load.low()),
        "high",
        load(load.high()));
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

  private List<String[]> cells(GripSurvey.Row row) {
    List<String[]> all = new ArrayList<>();
    for (RelativeLoad relative : row.relative()) {
      FingerLoad load = row.load().finger(relative.finger()).orElseThrow();
      all.add(
          new String[] {
            words.of(load.finger()),
            percent(load.share().value()) + " %",
            newtons ? whole(load.fdp()) : times(relative.fdp()),
            newtons ? whole(load.fds()) : times(relative.fds()),
            newtons ? whole(load.a2()) : times(relative.a2()),
            newtons ? whole(load.a4()) : times(relative.a4())
          });
    }
    return all;
  }

  private static String whole(Estimate estimate) {
    return ranged(whole(estimate.value()), whole(estimate.low()), whole(estimate.high()));
  }

  /** Returns times the own hang; an interval to a tenth is as good as the model knows it. */
  private static String times(Estimate estimate) {
    return ranged(
        below10(estimate.value(), 2), below10(estimate.low(), 1), below10(estimate.high(), 1));
  }

  private static String below10(double times, int decimals) {
    return Numbers.plain(times, times < 9.95 ? decimals : 0);
  }

  private static String ranged(String value, String low, String high) {
    return value + " (" + low + "-" + high + ")";
  }

  private static String whole(double newtons) {
    return Numbers.plain(newtons, 0);
  }

  private static String percent(double share) {
    return Numbers.plain(share * 100, 0);
  }

  /**
   * Returns the pulley with the highest load relative to the own hang, of those that the hang loads
   * enough to compare with.
   */
  private Optional<String> highest(GripSurvey.Row row) {
    OwnHang hang = survey.hang(row);
    RelativeLoad most = null;
    Pulley pulley = Pulley.A2;
    for (RelativeLoad load : row.relative()) {
      for (Pulley each : Pulley.values()) {
        if (hang.loads(load.finger(), each)
            && (most == null || load.of(each).value() > most.of(pulley).value())) {
          most = load;
          pulley = each;
        }
      }
    }
    return most == null
        ? Optional.empty()
        : Optional.of(
            words.say(
                "grips.highest",
                "finger",
                most.finger(),
                "pulley",
                pulley,
                "times",
                times(most.of(pulley))));
  }

  private String lumbrical(GripSurvey.Row row) {
    return words.say(
        "grips.lumbrical",
        "excursion",
        whole(row.lumbrical()),
        "pulled-low",
        whole(row.lumbricalPulledLow()));
  }
}
