package gripwright.export.text;

import gripwright.ability.Ability;
import gripwright.finding.Finding;
import gripwright.grip.Prerequisites;
import gripwright.planning.GripSurvey;
import gripwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
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

  /** Returns what is missing of what the grip's declaration asks for, and what there is of it. */
  private String needs() {
    Prerequisites needs = row.grip().needs();
    List<String> missing = new ArrayList<>();
    double trained = survey.trainedMonths();
    if (trained < needs.trainedMonths()) {
      missing.add(months(needs.trainedMonths()) + " of training (has " + whole(trained) + ")");
    }
    Ability ability = survey.athlete().ability();
    needs
        .ability()
        .filter(asked -> ability.compareTo(asked) < 0)
        .ifPresent(asked -> missing.add(graded(asked) + " (has " + graded(ability) + ")"));
    needs
        .familiar()
        .forEach(
            (grip, asked) -> {
              double has = survey.familiarMonths(grip);
              if (has < asked) {
                missing.add(months(asked) + " with " + grip + " (has " + whole(has) + ")");
              }
            });
    return String.join(", ", missing);
  }

  private static String graded(Ability ability) {
    return ability + ", IRCRA " + ability.ircra();
  }

  private static String whole(double months) {
    return Numbers.plain(Math.floor(months + 1e-9), 0);
  }

  /** Writes whole months that have passed. */
  static String months(double months) {
    return Page.count((long) Math.floor(months + 1e-9), "month");
  }
}
