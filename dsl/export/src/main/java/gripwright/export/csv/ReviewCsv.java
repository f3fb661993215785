package gripwright.export.csv;

import gripwright.grip.Setup;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
import gripwright.quantity.Numbers;
import gripwright.review.Review;
import gripwright.review.ReviewedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.strength.StrengthTest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A review as CSV by RFC 4180, for a spreadsheet: a header line, then a line for each exercise that
 * was planned or done and each other line of the log, by date. Fields that do not apply are empty;
 * numbers use a decimal point and no unit (the heading names it). Stateless and thread-safe.
 */
public final class ReviewCsv {

  /** The columns, in order. */
  public enum Column {
    /** The day. */
    DATE("date"),
    /** Kind of line: exercise, session, climbing, test, body-mass or pain. */
    KIND("kind"),
    /** Name of the session. */
    SESSION("session"),
    /** How the session was done. */
    OUTCOME("outcome"),
    /** The day it was planned for. */
    PLANNED_FOR("plannedFor"),
    /** Name of the protocol. */
    PROTOCOL("protocol"),
    /** Name of the grip. */
    GRIP("grip"),
    /** Depth of the edge. */
    EDGE("edgeMm"),
    /** Which hands. */
    HANDS("hands"),
    /** True for a lift. */
    LIFTING("lifting"),
    /** Planned sets. */
    SETS_PLANNED("setsAsked"),
    /** Completed sets. */
    SETS("sets"),
    /** Planned load. */
    LOAD_ASKED("loadAskedKg"),
    /** Load held or tested, or body mass. */
    LOAD("loadKg"),
    /** Hold time of a test. */
    HOLD("holdSeconds"),
    /** Effort, 0 to 10. */
    EFFORT("effort"),
    /** Pain, 0 to 10. */
    PAIN("pain"),
    /** Where it hurts, or the kind of climbing. */
    WHERE("where"),
    /** Minutes of the session, on the first line of each, or of the climbing. */
    MINUTES("minutes"),
    /** Effort times minutes, on the first line of each session. */
    SESSION_LOAD("sessionRpeLoad"),
    /** Sum of all hold times. */
    TIME_UNDER_LOAD("timeUnderLoadSeconds"),
    /** Load times hold time. */
    IMPULSE("impulseNs"),
    /** What the athlete wrote. */
    NOTE("note");

    private final String heading;

    Column(String heading) {
      this.heading = heading;
    }

    /** Returns the heading. */
    public String heading() {
      return heading;
    }
  }

  private record Row(java.time.LocalDate date, Map<Column, String> cells) {}

  private final List<Row> rows = new ArrayList<>();

  private ReviewCsv() {}

  /** Returns the review as CSV. */
  public static String of(Review review) {
    ReviewCsv csv = new ReviewCsv();
    review.sessions().forEach(csv::session);
    review.log().entries().forEach(csv::entry);
    csv.rows.sort(Comparator.comparing(Row::date));
    CsvText text = new CsvText();
    text.line(Stream.of(Column.values()).map(Column::heading).toList());
    for (Row row : csv.rows) {
      text.line(Stream.of(Column.values()).map(c -> row.cells().getOrDefault(c, "")).toList());
    }
    return text.toString();
  }

  private Map<Column, String> row(java.time.LocalDate date, String kind) {
    Map<Column, String> cells = cells(date, kind);
    rows.add(new Row(date, cells));
    return cells;
  }

  private static Map<Column, String> cells(java.time.LocalDate date, String kind) {
    Map<Column, String> cells = new EnumMap<>(Column.class);
    cells.put(Column.DATE, date.toString());
    cells.put(Column.KIND, kind);
    return cells;
  }

  private void session(ReviewedSession session) {
    boolean first = true;
    for (ReviewedSession.Work work : session.work()) {
      Map<Column, String> cells = head(session, "exercise", first);
      exercise(work, cells);
      first = false;
    }
    if (first) {
      head(session, "session", true);
    }
  }

  private Map<Column, String> head(ReviewedSession session, String kind, boolean first) {
    Map<Column, String> cells = row(session.date(), kind);
    cells.put(Column.SESSION, session.name());
    cells.put(Column.OUTCOME, session.outcome().name().toLowerCase(Locale.ROOT));
    session.planned().ifPresent(p -> cells.put(Column.PLANNED_FOR, p.date().toString()));
    if (first) {
      if (session.trained()) {
        cells.put(Column.MINUTES, Numbers.plain(session.minutes(), 3));
      }
      number(cells, Column.SESSION_LOAD, session.load(), 3);
      session
          .logged()
          .flatMap(LogEntry.OfSession::note)
          .ifPresent(text -> cells.put(Column.NOTE, text));
    }
    return cells;
  }

  private static void exercise(ReviewedSession.Work work, Map<Column, String> cells) {
    Optional<PlannedExercise> asked = work.match().planned();
    Optional<Done> done = work.match().done();
    cells.put(
        Column.PROTOCOL,
        done.map(Done::protocol).or(() -> asked.map(PlannedExercise::protocol)).orElse(""));
    setup(cells, done.map(Done::setup).or(() -> asked.map(PlannedExercise::setup)).orElseThrow());
    count(cells, Column.SETS_PLANNED, work.match().setsPlanned());
    count(cells, Column.SETS, work.match().setsDone());
    asked.ifPresent(a -> load(cells, Column.LOAD_ASKED, a.totalLoad().kilograms()));
    done.flatMap(Done::load).ifPresent(l -> load(cells, Column.LOAD, l.kilograms()));
    number(cells, Column.EFFORT, done.map(Done::effort).orElseGet(OptionalDouble::empty), 2);
    number(cells, Column.PAIN, done.map(Done::pain).orElseGet(OptionalDouble::empty), 2);
    cells.put(Column.TIME_UNDER_LOAD, Numbers.plain(work.seconds(), 3));
    number(cells, Column.IMPULSE, work.impulse(), 1);
  }

  private void entry(LogEntry entry) {
    entry.accept(new Cells()).ifPresent(cells -> rows.add(new Row(entry.date(), cells)));
  }

  /** Returns the cells of a line; a session has rows of its own. */
  private static final class Cells implements LogEntry.Visitor<Optional<Map<Column, String>>> {
    @Override
    public Optional<Map<Column, String>> tested(LogEntry.Tested tested) {
      StrengthTest test = tested.test();
      Map<Column, String> cells = cells(test.date(), "test");
      setup(cells, test.setup());
      test.effort()
          .ifPresent(
              effort -> {
                load(cells, Column.LOAD, effort.load().kilograms());
                cells.put(Column.HOLD, Numbers.plain(effort.seconds(), 3));
              });
      tested.note().ifPresent(note -> cells.put(Column.NOTE, note));
      return Optional.of(cells);
    }

    @Override
    public Optional<Map<Column, String>> trained(LogEntry.Trained trained) {
      return Optional.empty();
    }

    @Override
    public Optional<Map<Column, String>> climbed(LogEntry.Climbed climbed) {
      Map<Column, String> cells = cells(climbed.date(), "climbing");
      cells.put(Column.WHERE, climbed.how());
      cells.put(Column.MINUTES, Numbers.plain(climbed.time().toSeconds() / 60.0, 3));
      number(cells, Column.EFFORT, climbed.effort(), 2);
      number(cells, Column.PAIN, climbed.pain(), 2);
      if (climbed.effort().isPresent()) {
        cells.put(Column.SESSION_LOAD, Numbers.plain(Review.load(climbed), 3));
      }
      climbed.note().ifPresent(note -> cells.put(Column.NOTE, note));
      return Optional.of(cells);
    }

    @Override
    public Optional<Map<Column, String>> skipped(LogEntry.Skipped skipped) {
      return Optional.empty();
    }

    @Override
    public Optional<Map<Column, String>> bodyMass(LogEntry.BodyMass weighed) {
      Map<Column, String> cells = cells(weighed.date(), "body-mass");
      load(cells, Column.LOAD, weighed.mass().kilograms());
      return Optional.of(cells);
    }

    @Override
    public Optional<Map<Column, String>> pain(LogEntry.Pain pain) {
      Map<Column, String> cells = cells(pain.date(), "pain");
      cells.put(
          Column.WHERE,
          pain.finger()
              + pain.structure().map(s -> " " + s).orElse("")
              + pain.side().map(s -> " " + s).orElse("")
              + (pain.kind() == LogEntry.Pain.Kind.DULL
                  ? ""
                  : " " + pain.kind().name().toLowerCase(Locale.ROOT)));
      cells.put(Column.PAIN, Numbers.plain(pain.score(), 2));
      pain.note().ifPresent(note -> cells.put(Column.NOTE, note));
      return Optional.of(cells);
    }
  }

  private static void setup(Map<Column, String> cells, Setup setup) {
    cells.put(Column.GRIP, setup.grip().name());
    cells.put(Column.EDGE, Numbers.plain(setup.edge().millimetres(), 2));
    cells.put(Column.HANDS, setup.hands().word());
    cells.put(Column.LIFTING, Boolean.toString(setup.lifting()));
  }

  private static void load(Map<Column, String> cells, Column column, double kilograms) {
    cells.put(column, Numbers.plain(kilograms, 4));
  }

  private static void number(
      Map<Column, String> cells, Column column, OptionalDouble value, int decimals) {
    if (value.isPresent()) {
      cells.put(column, Numbers.plain(value.getAsDouble(), decimals));
    }
  }

  private static void count(Map<Column, String> cells, Column column, OptionalInt value) {
    if (value.isPresent()) {
      cells.put(column, Integer.toString(value.getAsInt()));
    }
  }
}
