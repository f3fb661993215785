package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.Joint;
import gripwright.hand.Side;
import gripwright.quantity.Numbers;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Writes the joint angles of the athlete's fingers in each grip on each edge of a plan: one row for
 * each grip and edge, two where the hands differ.
 */
final class HandTable {

  /**
   * A row.
   *
   * @param grip name of the grip
   * @param edge depth and, where the hands differ, the side
   * @param angles whole degrees by finger
   */
  private record Row(String grip, String edge, Map<Finger, String> angles) {}

  private final List<Row> rows = new ArrayList<>();
  private final boolean estimated;
  private final Words words;
  private double farthest;

  HandTable(CompiledPlan plan, Words words) {
    this.words = words;
    estimated =
        plan.athlete().shape(Side.LEFT).bonesEstimated()
            || plan.athlete().shape(Side.RIGHT).bonesEstimated();
    boolean equal = plan.athlete().shape(Side.LEFT).equals(plan.athlete().shape(Side.RIGHT));
    Map<String, Map<Side, GripFit>> bySetup = new LinkedHashMap<>();
    Stream.concat(
            plan.sessions().stream().flatMap(session -> session.exercises().stream()),
            plan.retests().stream().flatMap(test -> test.exercises().stream()))
        .forEach(
            exercise ->
                bySetup
                    .computeIfAbsent(key(exercise), key -> new EnumMap<>(Side.class))
                    .putAll(exercise.fits()));
    for (Map<Side, GripFit> fits : bySetup.values()) {
      for (GripFit fit : fits.values()) {
        farthest = Math.max(farthest, fit.spread().largestDeviation(Joint.PIP).degrees());
      }
      if (equal || (fits.size() > 1 && haveEqualAngles(fits.values()))) {
        fits.values().stream().findFirst().ifPresent(fit -> rows.add(row(fit, Optional.empty())));
      } else {
        fits.forEach((side, fit) -> rows.add(row(fit, Optional.of(side))));
      }
    }
  }

  private static boolean haveEqualAngles(Collection<GripFit> fits) {
    return fits.stream().map(HandTable::angles).distinct().count() == 1;
  }

  private static String key(PlannedExercise exercise) {
    return exercise.setup().grip().name() + " " + exercise.setup().edge();
  }

  private Row row(GripFit fit, Optional<Side> side) {
    return new Row(fit.grip().name(), words.edge(fit.edge(), side), angles(fit));
  }

  private static Map<Finger, String> angles(GripFit fit) {
    Map<Finger, String> angles = new EnumMap<>(Finger.class);
    for (FingerPose finger : fit.pose().fingers()) {
      angles.put(finger.finger(), Numbers.plain(finger.pip().degrees(), 0));
    }
    return angles;
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** Adds the rows to a page, in the order in which the plan uses them. */
  void add(Page page) {
    page.wrapped(
        "",
        words.say(
            estimated ? "season.hand-estimated" : "season.hand",
            "degrees",
            Numbers.plain(farthest, 0)));
    int grips = rows.stream().mapToInt(row -> row.grip().length()).max().orElse(0);
    int edges = rows.stream().mapToInt(row -> row.edge().length()).max().orElse(0);
    for (Row row : rows) {
      StringBuilder line = new StringBuilder("  ");
      line.append(Page.padRight(row.grip(), grips))
          .append(' ')
          .append(Page.padRight(row.edge(), edges));
      for (Finger finger : Finger.values()) {
        if (rows.stream().anyMatch(other -> other.angles().containsKey(finger))) {
          line.append("  ").append(cell(row, finger));
        }
      }
      page.line(line.toString());
    }
  }

  private String cell(Row row, Finger finger) {
    String name = words.of(finger);
    String angle = row.angles().get(finger);
    return angle == null ? " ".repeat(name.length() + 4) : name + " " + Page.padLeft(angle, 3);
  }
}
