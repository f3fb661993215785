package gripwright.rule.view;

import gripwright.expression.Named;
import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.tissue.FingerWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * A finger of one hand in an exercise, session, day, week, block or plan, as read by rules.
 *
 * @param work its work there
 * @param recent its work in the last three uneased weeks of the block in which it held in a
 *     session; empty unless this is the finger of a week
 */
public record FingerView(FingerWork work, List<FingerWork> recent) implements Named {

  /** Returns the highest value of the recent weeks; NaN if there is none or any is unknown. */
  double recently(ToDoubleFunction<FingerWork> measure) {
    double highest = Double.NaN;
    for (FingerWork week : recent) {
      double value = measure.applyAsDouble(week);
      highest = Double.isNaN(highest) ? value : Math.max(highest, value);
    }
    return highest;
  }

  static List<FingerView> of(List<FingerWork> work) {
    return work.stream().map(each -> new FingerView(each, List.of())).toList();
  }

  /** Adds up the work of each finger over parts, such as the exercises of a session. */
  static List<FingerWork> together(List<List<FingerView>> parts) {
    List<FingerWork> all = new ArrayList<>();
    parts.forEach(part -> part.forEach(finger -> all.add(finger.work)));
    return FingerWork.together(all);
  }

  /** Returns the fingers of a week with their work in other weeks. */
  static List<FingerView> besides(List<FingerWork> week, List<List<FingerWork>> others) {
    return week.stream()
        .map(
            work ->
                new FingerView(
                    work,
                    others.stream()
                        .flatMap(List::stream)
                        .filter(o -> o.finger() == work.finger() && o.side() == work.side())
                        .toList()))
        .toList();
  }

  @Override
  public Message called() {
    return new Clause(
        "breach.finger",
        Map.of("side", work.side().toString(), "finger", work.finger().toString()));
  }
}
