package gripwright.export.study;

import static gripwright.export.csv.TidyTable.Type.BOOLEAN;
import static gripwright.export.csv.TidyTable.Type.DATE;
import static gripwright.export.csv.TidyTable.Type.INTEGER;
import static gripwright.export.csv.TidyTable.Type.NUMBER;
import static gripwright.export.csv.TidyTable.Type.STRING;

import gripwright.export.csv.TidyTable;
import gripwright.grip.Setup;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.schedule.PlannedExercise.Maximum;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * Compiled plans as three tidy tables: {@code sessions}, {@code holds} and {@code weeks}. A past
 * session is written as it was trained. Immutable and thread-safe.
 *
 * @since 1.0
 */
public final class PlanTables {

  private static final int KILOGRAMS = 4;
  private static final int SECONDS = 3;
  private static final int MILLIMETRES = 2;
  private static final int KILOGRAM_SECONDS = 3;
  private static final int SHARE = 4;

  private final Wording wording;
  private final Pseudonyms names;

  private PlanTables(Wording wording, Pseudonyms names) {
    this.wording = Objects.requireNonNull(wording, "wording");
    this.names = Objects.requireNonNull(names, "names");
  }

  /**
   * Returns the tables of compiled plans, rows in the order of the plans and by date.
   *
   * @param plans plans whose sessions may be used
   * @param names how athletes are called
   * @param wording describes tables and columns
   */
  public static List<TidyTable> of(List<CompiledPlan> plans, Pseudonyms names, Wording wording) {
    PlanTables tables = new PlanTables(wording, names);
    return List.of(tables.sessions(plans), tables.holds(plans), tables.weeks(plans));
  }

  /** Adds columns with their descriptions. */
  private final class Table {
    private final TidyTable.Builder built;

    Table(String name) {
      built = TidyTable.named(name, wording.say("methods.table-" + name));
      column("plan", STRING, "").column("athlete", STRING, "");
    }

    Table column(String name, TidyTable.Type type, String unit) {
      return column(name, type, unit, false);
    }

    Table estimate(String name, TidyTable.Type type, String unit) {
      return column(name, type, unit, true);
    }

    private Table column(String name, TidyTable.Type type, String unit, boolean estimate) {
      String key = name.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
      String description = wording.say("methods.column-" + key);
      built.column(new TidyTable.Column(name, type, unit, description, "", estimate));
      return this;
    }

    TidyTable.Builder rows() {
      return built;
    }
  }

  private List<String> row(CompiledPlan plan) {
    List<String> row = new ArrayList<>();
    row.add(names.hide(plan.plan().name()));
    row.add(names.of(plan.athlete().name()));
    return row;
  }

  private TidyTable sessions(List<CompiledPlan> plans) {
    TidyTable.Builder rows =
        new Table("sessions")
            .column("date", DATE, "")
            .column("week", INTEGER, "")
            .column("block", STRING, "")
            .column("blockWeek", INTEGER, "")
            .column("session", STRING, "")
            .column("outcome", STRING, "")
            .column("exercises", INTEGER, "")
            .column("minutes", INTEGER, "min")
            .column("hard", BOOLEAN, "")
            .column("eased", BOOLEAN, "")
            .column("bodyMassKg", NUMBER, "kg")
            .column("timeUnderLoadSeconds", NUMBER, "s")
            .column("loadTimeKgS", NUMBER, "kg s")
            .rows();
    for (CompiledPlan plan : plans) {
      for (DatedSession session : plan.sessions()) {
        List<String> row = row(plan);
        row.add(session.date().toString());
        row.add(Integer.toString(session.week()));
        row.add(names.hide(session.block()));
        row.add(Integer.toString(session.blockWeek()));
        row.add(names.hide(session.name()));
        row.add(
            session
                .happened()
                .map(h -> h.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .orElse("planned"));
        row.add(Integer.toString(session.exercises().size()));
        row.add(Integer.toString(session.minutes()));
        row.add(Boolean.toString(session.hard()));
        row.add(Boolean.toString(session.eased()));
        row.add(Numbers.plain(session.bodyMass().kilograms(), KILOGRAMS));
        row.add(Numbers.plain(session.timeUnderLoadSeconds(), SECONDS));
        row.add(Numbers.plain(session.loadIndex(), KILOGRAM_SECONDS));
        rows.row(row);
      }
    }
    return rows.build();
  }

  private TidyTable holds(List<CompiledPlan> plans) {
    TidyTable.Builder rows =
        new Table("holds")
            .column("date", DATE, "")
            .column("session", STRING, "")
            .column("exercise", INTEGER, "")
            .column("protocol", STRING, "")
            .column("grip", STRING, "")
            .column("edgeMm", NUMBER, "mm")
            .column("hands", STRING, "")
            .column("lifting", BOOLEAN, "")
            .column("hold", INTEGER, "")
            .column("set", INTEGER, "")
            .column("repetition", INTEGER, "")
            .column("seconds", NUMBER, "s")
            .column("restSeconds", NUMBER, "s")
            .column("totalLoadKg", NUMBER, "kg")
            .column("addedKg", NUMBER, "kg")
            .estimate("maxUsedKg", NUMBER, "kg")
            .estimate("shareOfMax", NUMBER, "")
            .rows();
    for (CompiledPlan plan : plans) {
      for (DatedSession session : plan.sessions()) {
        session
            .exercises()
            .forEach(e -> holds(rows, plan, session.date(), names.hide(session.name()), e));
      }
      for (DatedRetest test : plan.retests()) {
        test.exercises().forEach(e -> holds(rows, plan, test.date(), "test", e));
      }
    }
    return rows.build();
  }

  private void holds(
      TidyTable.Builder rows,
      CompiledPlan plan,
      LocalDate date,
      String session,
      PlannedExercise exercise) {
    int repetitions = Math.max(1, exercise.scheme().repetitionsPerSet());
    List<LoadedStep> steps = exercise.steps();
    int hold = 0;
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).isHold()) {
        List<String> row = row(plan);
        row.add(date.toString());
        row.add(session);
        exercise(row, exercise);
        row.add(Integer.toString(hold + 1));
        row.add(Integer.toString(hold / repetitions + 1));
        row.add(Integer.toString(hold % repetitions + 1));
        row.add(Numbers.plain(steps.get(i).seconds(), SECONDS));
        row.add(Numbers.plain(restAfter(steps, i), SECONDS));
        load(row, steps.get(i).load().orElseThrow(), exercise);
        rows.row(row);
        hold++;
      }
    }
  }

  private void exercise(List<String> row, PlannedExercise exercise) {
    Setup setup = exercise.setup();
    row.add(Integer.toString(exercise.order()));
    row.add(names.hide(exercise.protocol()));
    row.add(names.hide(setup.grip().name()));
    row.add(Numbers.plain(setup.edge().millimetres(), MILLIMETRES));
    row.add(setup.hands().word());
    row.add(Boolean.toString(setup.lifting()));
  }

  private static void load(List<String> row, Load load, PlannedExercise exercise) {
    Optional<Maximum> maximum = exercise.maximum().filter(m -> m.used().kilograms() > 0);
    row.add(Numbers.plain(load.kilograms(), KILOGRAMS));
    row.add(Numbers.plain(load.minus(exercise.bodyMass()).kilograms(), KILOGRAMS));
    row.add(maximum.map(m -> Numbers.plain(m.used().kilograms(), KILOGRAMS)).orElse(""));
    row.add(
        maximum.map(m -> Numbers.plain(load.kilograms() / m.used().kilograms(), SHARE)).orElse(""));
  }

  /** Returns the seconds of rest between a hold and the next one, or the end of the exercise. */
  private static double restAfter(List<LoadedStep> steps, int hold) {
    double rest = 0;
    for (int i = hold + 1; i < steps.size() && !steps.get(i).isHold(); i++) {
      rest += steps.get(i).seconds();
    }
    return rest;
  }

  private TidyTable weeks(List<CompiledPlan> plans) {
    TidyTable.Builder rows =
        new Table("weeks")
            .column("week", INTEGER, "")
            .column("block", STRING, "")
            .column("blockWeek", INTEGER, "")
            .column("from", DATE, "")
            .column("eased", BOOLEAN, "")
            .column("taper", BOOLEAN, "")
            .column("away", BOOLEAN, "")
            .column("sessions", INTEGER, "")
            .column("timeUnderLoadSeconds", NUMBER, "s")
            .column("loadTimeKgS", NUMBER, "kg s")
            .rows();
    for (CompiledPlan plan : plans) {
      for (PlanWeek week : plan.weeks()) {
        List<String> row = row(plan);
        row.add(Integer.toString(week.number()));
        row.add(names.hide(week.block()));
        row.add(Integer.toString(week.blockWeek()));
        row.add(week.from().toString());
        row.add(Boolean.toString(week.eased()));
        row.add(Boolean.toString(plan.plan().taperIn(week.from()).isPresent()));
        row.add(Boolean.toString(week.away()));
        row.add(Integer.toString(plan.sessionsOf(week.number()).size()));
        row.add(Numbers.plain(week.timeUnderLoadSeconds(), SECONDS));
        row.add(Numbers.plain(week.loadIndex(), KILOGRAM_SECONDS));
        rows.row(row);
      }
    }
    return rows.build();
  }
}
