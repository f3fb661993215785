package gripwright.export.text;

import gripwright.grip.Band;
import gripwright.grip.FingerLoss;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
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
import gripwright.tissue.Slip;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The forces of each grip, finger by finger, all tables with the same columns. */
final class ForceTable {

  private static final String[] HEAD = {"", "share", "FDP", "FDS", "A2", "A4"};
  private static final String INDENT = "  ";

  private final GripSurvey survey;
  private final int[] widths = new int[HEAD.length];

  ForceTable(GripSurvey survey, List<GripSurvey.Row> rows) {
    this.survey = survey;
    for (int i = 0; i < widths.length; i++) {
      widths[i] = HEAD[i].length();
    }
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
    page.line(GripWords.name(row).toUpperCase(Locale.ROOT) + (row.open() ? "" : "  closed"));
    addBody(page, row);
  }

  /** Adds what is said of a grip below its name. */
  private void addBody(Page page, GripSurvey.Row row) {
    page.line(line(HEAD));
    for (FingerLoad load : row.load().fingers()) {
      page.line(line(cells(load)));
    }
    held(row).ifPresent(held -> page.wrapped(INDENT, held));
    if (row.slips().isEmpty()) {
      page.wrapped(INDENT, ModelCaveat.SINGLE_FINGER.text());
    } else {
      page.wrapped(INDENT, use(row));
      page.wrapped(INDENT + "slips: ", slips(row));
    }
    page.wrapped(INDENT, ownBands(row));
    if (row.grip().family() == GripFamily.SPLIT) {
      page.wrapped(INDENT, lumbrical(row));
    }
    if (row.open()) {
      for (String caution : row.grip().cautions()) {
        page.wrapped(INDENT + "* ", Page.clean(caution));
      }
    }
  }

  /** Returns what is printed of a grip below its name. */
  static String body(GripSurvey survey, GripSurvey.Row row) {
    Page page = new Page();
    new ForceTable(survey, List.of(row)).addBody(page, row);
    return page.toString();
  }

  /** What the athlete holds by the tests; without them what fewer fingers hold of four. */
  private Optional<String> held(GripSurvey.Row row) {
    if (row.maximum().isPresent()) {
      LoadEstimate load = row.maximum().get().load();
      return Optional.of(
          "holds about "
              + load(load.best())
              + " ("
              + load(load.low())
              + "-"
              + load(load.high())
              + ") kg for 7 s by the tests"
              + (survey.aboveMaximum(row).orElse(false)
                  ? ": THE STATED LOAD IS MORE, these forces are not reached"
                  : ""));
    }
    FingerSet fingers = row.grip().fingers();
    return fingers.equals(FingerSet.FOUR)
        ? Optional.empty()
        : Optional.of(
            "holds "
                + percent(FingerLoss.EXCLUSION.capacity(fingers))
                + " to "
                + percent(FingerLoss.FORCE_DEFICIT.capacity(fingers))
                + " % of what four fingers hold, by two published views");
  }

  private static String load(Load load) {
    return Numbers.plain(load.kilograms(), 1);
  }

  /** The athlete's own bands of the middle joints. */
  private static String ownBands(GripSurvey.Row row) {
    return "own bands: "
        + row.load().fingers().stream()
            .map(FingerLoad::finger)
            .map(finger -> finger + " " + ownBand(row, finger))
            .collect(Collectors.joining(", "))
        + " deg";
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

  private static String[] cells(FingerLoad load) {
    return new String[] {
      load.finger().word(),
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

  /** The pulley that comes nearest to its breaking load. */
  private static String use(GripSurvey.Row row) {
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
    return "most used: "
        + most.finger()
        + " "
        + pulley
        + ", "
        + percent(use.value())
        + " % ("
        + percent(use.low())
        + "-"
        + percent(use.high())
        + ") of its breaking load";
  }

  private static String slips(GripSurvey.Row row) {
    return row.slips().stream()
        .map(slip -> words(slip) + (slip.momentKept() ? "" : " (tilts)"))
        .collect(Collectors.joining("; "));
  }

  private static String words(Slip slip) {
    Finger most = most(slip);
    return slip.leaving() + " off: " + most + " x" + Numbers.plain(slip.ratio(most), 1);
  }

  private static Finger most(Slip slip) {
    return slip.after().keySet().stream()
        .max(Comparator.comparingDouble(slip::ratio))
        .orElseThrow();
  }

  static boolean tilts(GripSurvey.Row row) {
    return row.slips().stream().anyMatch(slip -> !slip.momentKept());
  }

  /** Returns the range of that slip's ratio, as in {@code x1.5-2}. */
  static Optional<String> worstSlipRange(GripSurvey.Row row) {
    return row.slips().stream()
        .max(Comparator.comparingDouble(slip -> slip.ratio(most(slip))))
        .flatMap(slip -> Optional.ofNullable(row.load().ratios(slip).get(most(slip))))
        .map(ratio -> "x" + Numbers.plain(ratio.low(), 1) + "-" + Numbers.plain(ratio.high(), 1));
  }

  /** Returns the slip that loads one finger most, as in {@code little off: ring x1.7}. */
  static Optional<String> worstSlip(GripSurvey.Row row) {
    return row.slips().stream()
        .max(Comparator.comparingDouble(slip -> slip.ratio(most(slip))))
        .map(ForceTable::words);
  }

  private static String lumbrical(GripSurvey.Row row) {
    return "lumbrical index "
        + force(row.lumbrical())
        + " mm, "
        + force(row.lumbricalPulledLow())
        + " mm with idle fingers pulled low";
  }
}
