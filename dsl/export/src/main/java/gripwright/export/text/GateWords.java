package gripwright.export.text;

import gripwright.survey.Gate;
import gripwright.survey.GripSurvey;
import gripwright.wording.Wording;
import java.util.List;
import java.util.stream.Collectors;

/** The rules that stand against a grip, in words, with what the athlete brings. */
final class GateWords {

  private GateWords() {}

  /** Returns why the grip is closed, one sentence a rule; none if it is open. */
  static List<String> closed(GripSurvey.Row row) {
    return row.gates().stream().filter(Gate::closes).map(GateWords::sentence).toList();
  }

  /** Returns what stays closed of a grip that is open, one sentence a rule. */
  static List<String> limits(GripSurvey.Row row) {
    return row.limited()
        ? row.limits().stream().filter(Gate::closes).map(Gate::message).toList()
        : List.of();
  }

  /** Returns what a coach should know of a grip that is not closed by it. */
  static List<String> notes(GripSurvey.Row row) {
    return row.gates().stream().filter(g -> !g.closes()).map(GateWords::sentence).toList();
  }

  private static String sentence(Gate gate) {
    return gate.message()
        + switch (gate.rule()) {
          case "split-grip-gate", "single-finger-gate" ->
              "; has "
                  + gate.missing().stream()
                      .map(m -> Wording.english().say(m.has()))
                      .collect(Collectors.joining(" and "));
          case "grip-needs-gate" ->
              ": "
                  + gate.missing().stream()
                      .map(GateWords::needed)
                      .collect(Collectors.joining(", "));
          case "injured-finger" ->
              ": "
                  + gate.missing().stream()
                      .map(m -> m.what() + ", " + Wording.english().say(m.has()))
                      .collect(Collectors.joining("; "));
          default -> "";
        };
  }

  private static String needed(Gate.Missing missing) {
    return Wording.english().say(missing.asked())
        + switch (missing.what()) {
          case "ability" -> "";
          case "training" -> " of training";
          default -> " with " + missing.what();
        }
        + " (has "
        + Wording.english().say(missing.has())
        + ")";
  }

  /** Writes whole months that have passed. */
  static String months(double months) {
    return Page.count((long) Math.floor(months + 1e-9), "month");
  }
}
