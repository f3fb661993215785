package gripwright.rule.view;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The sums of a week, as trained or as planned. */
final class TrainedWeek {
  final WeekView view;

  /** One line for each exercise of each kind of session. */
  final List<TrainedLine> lines;

  /** One line for each protocol on a grip, without rehabilitation. */
  final List<TrainedLine> together;

  final double load;
  final double level;

  /**
   * Computes the sums of a week.
   *
   * @param exercises returns the exercises of a session that count
   */
  TrainedWeek(WeekView view, Function<SessionView, List<ExerciseView>> exercises) {
    this.view = view;
    Map<Nth, TrainedLine> byKey = new LinkedHashMap<>();
    Map<Line, TrainedLine> all = new LinkedHashMap<>();
    double greatest = 0;
    for (SessionView session : view.sessions) {
      Map<ByHands, Integer> count = new HashMap<>();
      for (ExerciseView exercise : exercises.apply(session)) {
        Line line = new Line(exercise.protocol, exercise.grip().name(), exercise.setup.lifting());
        int nth = count.merge(new ByHands(line, exercise.hands), 1, Integer::sum);
        double share = exercise.returnShare();
        byKey
            .computeIfAbsent(new Nth(line, session.name, nth), key -> new TrainedLine(exercise))
            .add(exercise, share);
        if (!exercise.rehabilitation) { // the practitioner's plan decides its load
          all.computeIfAbsent(line, key -> new TrainedLine(exercise)).add(exercise, share);
          greatest = Math.max(greatest, exercise.work().greatest());
        }
      }
    }
    lines = List.copyOf(byKey.values());
    together = List.copyOf(all.values());
    load = lines.stream().mapToDouble(TrainedLine::load).sum();
    level = greatest;
  }

  private record Line(String protocol, String grip, boolean lifting) {}

  private record ByHands(Line line, Object hands) {}

  private record Nth(Line line, String session, int number) {}
}
