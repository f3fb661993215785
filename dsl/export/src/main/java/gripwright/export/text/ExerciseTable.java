package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.DatedSession;
import gripwright.schedule.HandsInTurn;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.EndReserve;
import gripwright.schedule.PlannedExercise.LoadedStep;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Writes the exercises of all sessions of one name as rows of one table, so that columns are
 * aligned across weeks. Where a row would be wider than a terminal, each exercise takes two lines.
 */
final class ExerciseTable {

  private static final String INDENT = "    ";
  private static final String BETWEEN = "  ";

  /** Which columns hold numbers and are aligned right. */
  private static final boolean[] RIGHT = {false, true, false, false, true, true, true};

  /** The first columns describe one setup, a grip on an edge, and have less space between them. */
  private static final int SETUP = 2;

  private final int[] widths = new int[RIGHT.length];
  private final boolean oneLine;
  private final Words words;

  /** Creates a table wide enough for the exercises of these sessions. */
  ExerciseTable(List<DatedSession> sessions, Words words) {
    this(words, sessions.stream().map(DatedSession::exercises));
  }

  /**
   * Creates a table wide enough for these exercises.
   *
   * @param exercises those of each session or test
   */
  ExerciseTable(Words words, Stream<List<PlannedExercise>> exercises) {
    this.words = words;
    exercises
        .flatMap(some -> HandsInTurn.together(some).stream())
        .map(this::cells)
        .forEach(
            cells -> {
              for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], cells[i].length());
              }
            });
    int width = INDENT.length();
    for (int i = 0; i < widths.length; i++) {
      width += widths[i] + (widths[i] == 0 ? 0 : before(i).length());
    }
    oneLine = width <= Page.WIDTH;
  }

  /** Adds exercises of one session or test to a page; those of alternating hands are one entry. */
  void addAll(Page page, List<PlannedExercise> exercises) {
    HandsInTurn.together(exercises).forEach(entry -> add(page, entry));
  }

  /** Adds an exercise to a page. */
  void add(Page page, PlannedExercise exercise) {
    add(page, List.of(exercise));
  }

  private void add(Page page, List<PlannedExercise> entry) {
    String[] cells = cells(entry);
    PlannedExercise exercise = entry.get(0);
    if (oneLine) {
      page.line(INDENT + row(cells, 0));
    } else {
      page.line(INDENT + cells[0] + " " + cells[1]);
      page.line(INDENT + BETWEEN + row(cells, SETUP));
    }
    if (exercise.alternating()) {
      page.wrapped(INDENT + BETWEEN, alternating(entry));
    }
    entry.stream()
        .flatMap(each -> each.endReserve().stream())
        .min(Comparator.comparing(EndReserve::mean))
        .filter(reserve -> reserve.mean() < EndReserve.LITTLE)
        .ifPresent(reserve -> page.wrapped(INDENT + BETWEEN, left(reserve)));
    exercise
        .rehabilitation()
        .ifPresent(
            plan ->
                page.wrapped(
                    INDENT + BETWEEN,
                    words.say("season.rehabilitation", "plan", Page.clean(plan))));
    addWords(page, exercise);
  }

  /** Returns that hands alternate, with the loads of both where they differ. */
  private String alternating(List<PlannedExercise> entry) {
    if (entry.size() == 1) {
      return words.say("season.alternating");
    }
    String left = total(entry.get(0));
    String right = total(entry.get(1));
    return left.equals(right)
        ? words.say("season.alternating-both", "load", left)
        : words.say("season.alternating-loads", "left", left, "right", right);
  }

  /** Adds what is to be known of an exercise that is not in its row. */
  private void addWords(Page page, PlannedExercise exercise) {
    String indent = INDENT + BETWEEN;
    if (exercise.warmUp()) {
      page.wrapped(indent, words.say("season.warm-up"));
    }
    for (Scheme.Rest rest : exercise.scheme().restsWithText()) {
      page.wrapped(
          indent,
          words.say(
              "season.rest",
              "time",
              time(rest.time()),
              "text",
              Page.clean(rest.text().orElse(""))));
    }
    exercise
        .note()
        .ifPresent(
            note -> page.wrapped(indent, words.say("season.note", "note", Page.clean(note))));
  }

  private String left(EndReserve reserve) {
    return words.say(
        "season.ends-with",
        "percent",
        percent(reserve.mean()),
        "low",
        percent(reserve.low()),
        "high",
        percent(reserve.high()));
  }

  private static String percent(double share) {
    return Numbers.plain(share * 100, 0);
  }

  private String row(String[] cells, int from) {
    StringBuilder row = new StringBuilder();
    for (int i = from; i < cells.length; i++) {
      if (widths[i] > 0) {
        row.append(row.length() == 0 ? "" : before(i))
            .append(
                RIGHT[i] ? Page.padLeft(cells[i], widths[i]) : Page.padRight(cells[i], widths[i]));
      }
    }
    return row.toString();
  }

  private static String before(int column) {
    return column == 0 ? "" : column < SETUP ? " " : BETWEEN;
  }

  /** Returns the cells of an entry; where two hands differ, both values, left first. */
  private String[] cells(List<PlannedExercise> entry) {
    Setup setup = entry.get(0).setup();
    String[] cells =
        cells(
            entry.get(0),
            entry.size() == 1
                ? setup
                : new Setup(setup.grip(), setup.edge(), Hands.BOTH, setup.lifting()));
    if (entry.size() > 1) {
      String[] right = cells(entry.get(1), setup);
      for (int i = SETUP; i < cells.length; i++) {
        cells[i] = cells[i].equals(right[i]) ? cells[i] : orNone(cells[i]) + "/" + orNone(right[i]);
      }
    }
    return cells;
  }

  private static String orNone(String cell) {
    return cell.isEmpty() ? "-" : cell;
  }

  private String[] cells(PlannedExercise exercise, Setup setup) {
    return new String[] {
      setup.grip().name(),
      words.edge(setup),
      new WorkWords(words).of(exercise.scheme()),
      rest(exercise.scheme()),
      total(exercise),
      setup.lifting() ? words.say("season.lifted") : signed(exercise.added()),
      level(exercise)
    };
  }

  private static String seconds(Duration time) {
    return Numbers.plain(time.getSeconds() + time.getNano() / 1e9, 1);
  }

  /** Returns the rest between holds and between sets, as in {@code 3 s/3 min}. */
  private static String rest(Scheme scheme) {
    List<Duration> rests =
        List.of(scheme.restBetweenHolds(), scheme.restBetweenSets()).stream()
            .filter(r -> !r.isZero())
            .toList();
    return rests.stream().map(ExerciseTable::time).collect(Collectors.joining("/"));
  }

  /** Returns a time in the unit a coach would use. */
  static String time(Duration time) {
    return time.getSeconds() >= 60 && time.getNano() == 0 && time.getSeconds() % 60 == 0
        ? time.getSeconds() / 60 + " min"
        : seconds(time) + " s";
  }

  /** Returns the load, with the force where a test in N gave it. */
  private String total(PlannedExercise exercise) {
    return exercise.inForce()
        ? words.say(
            "season.in-force",
            "load",
            load(exercise),
            "newtons",
            Numbers.plain(exercise.totalLoad().newtons(), 0))
        : load(exercise);
  }

  private static String load(PlannedExercise exercise) {
    List<Load> loads =
        exercise.steps().stream()
            .filter(LoadedStep::isHold)
            .flatMap(s -> s.load().stream())
            .distinct()
            .sorted()
            .toList();
    return loads.size() < 2
        ? exercise.totalLoad().toString()
        : Numbers.plain(loads.get(0).kilograms(), 2) + "-" + exercise.totalLoad();
  }

  private static String signed(Load added) {
    return (added.kilograms() < 0 ? "" : "+") + added;
  }

  /**
   * Returns the level: a share of the maximum, or the words for another kind of level. If the load
   * that can be built is well below the planned share, returns the share of that load.
   */
  private String level(PlannedExercise exercise) {
    if (exercise.builtWellBelowLevel()) {
      return Numbers.plain(exercise.builtPercentOfMax().orElseThrow(), 1) + " %";
    }
    if (exercise.percentOfMax().isPresent()) {
      return Numbers.plain(exercise.percentOfMax().getAsDouble(), 1) + " %";
    }
    List<Level> levels = exercise.scheme().levels();
    boolean inWords = levels.size() == 1 && levels.get(0).byTime();
    return inWords ? words.of(levels.get(0)) : "";
  }
}
