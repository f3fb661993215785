package gripwright.export.text;

import gripwright.finding.Finding;
import gripwright.planning.GripSurvey;
import gripwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The rules that stand against a grip, in words, with what the athlete brings. */
final class GateWords {

  private final GripSurvey survey;
  private final GripSurvey.Row row;

  GateWords(GripSurvey survey, GripSurvey.Row row) {
    this.survey = survey;
    this.row = row;
  }

  /** Returns why the grip is closed, one sentence a rule; none if it is open. */
  List<String> closed() {
    return row.gates().stream().filter(Finding::blocks).map(this::sentence).toList();
  }

  /** Returns what a coach should know of a grip that is not closed by it. */
  List<String> notes() {
    return row.gates().stream().filter(f -> !f.blocks()).map(this::sentence).toList();
  }

  static String message(Finding finding) {
    return String.valueOf(finding.arguments().getOrDefault("message", finding.code()));
  }

  private String sentence(Finding finding) {
    return message(finding)
        + switch (finding.rule().orElse("")) {
          case "split-grip-gate", "single-finger-gate" ->
              "; has "
                  + months(survey.trainedMonths())
                  + " and IRCRA "
                  + survey.athlete().ability().ircra();
          case "grip-needs-gate" -> ": " + needs();
          case "injured-finger" -> ": " + injuries();
          default -> "";
        };
  }

  private String injuries() {
    return survey.athlete().injuries().stream()
        .filter(injury -> injury.openOn(survey.day()))
        .filter(injury -> row.grip().fingers().has(injury.finger()))
        .map(injury -> injury + ", since " + Page.dayAndYear(injury.from()))
        .collect(Collectors.joining("; "));
  }

  /** Returns what the grip's declaration asks for and what the athlete has of it. */
  private String needs() {
    List<String> asked = new ArrayList<>();
    if (row.grip().needs().trainedMonths() > 0) {
      asked.add(
          months(row.grip().needs().trainedMonths())
              + " of training (has "
              + Numbers.plain(Math.floor(survey.trainedMonths()), 0)
              + ")");
    }
    row.grip()
        .needs()
        .ability()
        .ifPresent(a -> asked.add(a + " (has " + survey.athlete().ability() + ")"));
    for (Map.Entry<String, Double> grip : row.grip().needs().familiar().entrySet()) {
      asked.add(
          months(grip.getValue())
              + " with "
              + grip.getKey()
              + " (has "
              + Numbers.plain(Math.floor(survey.familiarMonths(grip.getKey())), 0)
              + ")");
    }
    return String.join(", ", asked);
  }

  /** Writes whole months that have passed. */
  static String months(double months) {
    return Page.count((long) Math.floor(months + 1e-9), "month");
  }
}
