package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.survey.GripSurvey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Merges the rows of the left and right hand where they would print the same, to the last digit.
 */
final class EqualRows {

  private final boolean newtons;
  private final Words words;

  EqualRows(boolean newtons, Words words) {
    this.newtons = newtons;
    this.words = words;
  }

  GripSurvey of(GripSurvey survey) {
    List<GripSurvey.Row> rows = new ArrayList<>();
    for (GripSurvey.Row row : survey.rows()) {
      int last = rows.size() - 1;
      if (last >= 0 && areEqual(survey, rows.get(last), row)) {
        rows.set(last, bothSides(row));
      } else {
        rows.add(row);
      }
    }
    return survey.withRows(rows);
  }

  private boolean areEqual(GripSurvey survey, GripSurvey.Row one, GripSurvey.Row other) {
    return one.grip().equals(other.grip())
        && one.side().isPresent()
        && other.side().isPresent()
        && printed(survey, one).equals(printed(survey, other));
  }

  private List<String> printed(GripSurvey survey, GripSurvey.Row row) {
    GripSurvey.Row nameless = bothSides(row);
    GripWords grips = new GripWords(words);
    List<String> printed = new ArrayList<>();
    printed.add(new GripOverview(survey, words).line(nameless));
    printed.add(new RangeTable(List.of(nameless), 0, words).line(nameless));
    printed.addAll(grips.misses(row));
    printed.addAll(grips.advice(row));
    if (row.fit().reachable()) {
      printed.add(ForceTable.body(survey, row, newtons, words));
    }
    return printed;
  }

  private static GripSurvey.Row bothSides(GripSurvey.Row row) {
    return new GripSurvey.Row(
        Optional.empty(),
        row.fit(),
        row.load(),
        row.relative(),
        row.slips(),
        row.lumbrical(),
        row.lumbricalPulledLow(),
        row.gates(),
        row.limits(),
        row.maximum());
  }
}
