package gripwright.rule.view;

import gripwright.budget.Meter;
import gripwright.expression.Evaluation;
import gripwright.expression.Scope;
import gripwright.expression.Subjects;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.GripStructure;
import gripwright.grip.Setup;
import gripwright.history.LogTimeline;
import gripwright.history.TestMatch;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.protocol.Hardness;
import gripwright.quantity.Load;
import gripwright.quantity.Unit;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.Schedule;
import gripwright.strength.KnownLight;
import gripwright.strength.StrengthTest;
import gripwright.tissue.FingerLedger;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A schedule as read by rules: linked views of its blocks, weeks, days, sessions and exercises,
 * with their sums computed once.
 */
public final class PlanView implements Subject {

  /** How many months of the log before the plan are reported on; the library's own choice. */
  private static final int LOG_MATTERS_MONTHS = 6;

  public final Schedule schedule;
  final LogTimeline timeline;
  public final ModelPath path;
  final FingerHistory history;

  /** Work by finger, computed only if a rule reads it. */
  final FingerLedger ledger = new FingerLedger();

  /** The cost of checking this plan. */
  public final Evaluation evaluation;

  /** Counts the places where rules are broken. */
  public final Meter meter;

  /** Plans of the athlete that began before this one. */
  final List<PlanView> before;

  final List<BlockView> blocks;
  final List<WeekView> weeks;
  final List<SessionView> sessions;

  /** Sessions, retests and days of hard climbing by date. */
  final List<SessionView> events;

  /** Logged days of the athlete that belong to no plan. */
  final LoggedDays logged;

  final List<DayView> days;
  final List<ExerciseView> exercises;

  /** Exercises and tests, by date. */
  private final List<ExerciseView> exercisesAndTests;

  final AthleteView athlete;
  final double load;
  final double timeUnderLoad;
  private final NavigableMap<LocalDate, Load> bodyMasses = new TreeMap<>();
  private final Map<LocalDate, AthleteView> athletes = new HashMap<>();
  private final Map<Integer, WeekView> weeksByNumber = new HashMap<>();
  private final Map<Scope, Subjects> subjects = new EnumMap<>(Scope.class);
  private final Map<Double, Subjects> pairs = new HashMap<>();
  private @Nullable Subjects withTests;
  private @Nullable NavigableSet<Long> testWeeks;
  private @Nullable AthleteDays athleteDays;
  private @Nullable LoadRise loadRise;
  private @Nullable Efforts efforts;
  private @Nullable List<FingerView> atWork;

  /** Creates a view without a limit on the work. */
  public PlanView(Schedule schedule, LogTimeline timeline) {
    this(schedule, timeline, List.of(), Meter.unbounded());
  }

  /**
   * Creates a view.
   *
   * @param before other plans of the athlete that began before this one, because they strain the
   *     same body; rules that only they break are not reported
   * @param meter counts the work
   */
  public PlanView(Schedule schedule, LogTimeline timeline, List<Schedule> before, Meter meter) {
    this.meter = meter;
    this.before =
        before.stream()
            .map(
                earlier ->
                    new PlanView(
                        earlier,
                        LogTimeline.of(earlier.plan(), earlier.athlete(), timeline.log()),
                        List.of(),
                        meter))
            .toList();
    this.evaluation = new Evaluation(Readers.ALL, meter);
    this.schedule = schedule;
    this.timeline = timeline;
    path = schedule.plan().path().then("for", schedule.athlete().name());
    history = new FingerHistory(timeline);
    timeline.log().of(LogEntry.BodyMass.class).forEach(e -> bodyMasses.put(e.date(), e.mass()));
    athlete = athleteOn(schedule.plan().from());
    blocks = blocks();
    weeks = weeks();
    weeks.forEach(w -> weeksByNumber.put(w.number(), w));
    sessions = new ArrayList<>();
    exercises = new ArrayList<>();
    schedule.sessions().stream()
        .sorted(DatedSession.IN_ORDER)
        .forEach(s -> add(s, weeksByNumber.get(s.week())));
    events = events();
    addWarmUpsOfTests();
    logged = new LoggedDays(this);
    exercisesAndTests =
        events.stream()
            .flatMap(e -> Stream.concat(e.exercises.stream(), e.tests.stream()))
            .toList();
    days = days();
    weeks.forEach(WeekView::settle);
    blocks.forEach(BlockView::settle);
    load = events.stream().mapToDouble(s -> s.load).sum();
    timeUnderLoad = events.stream().mapToDouble(s -> s.timeUnderLoad).sum();
    this.before.forEach(other -> other.exercises.forEach(history::record));
    exercises.forEach(history::record);
    List<Setup> setups = new ArrayList<>();
    for (ExerciseView exercise : exercises) {
      if (!setups.contains(exercise.setup)) {
        setups.add(exercise.setup);
        history.recordLogged(exercise);
      }
    }
  }

  private void add(DatedSession dated, @Nullable WeekView week) {
    SessionView session = SessionView.of(dated, this, week);
    sessions.add(session);
    exercises.addAll(session.exercises);
    if (week != null) {
      week.add(session);
    }
  }

  /** Adds the warm-ups of planned tests, which are work although the tests add to no sum. */
  private void addWarmUpsOfTests() {
    List<SessionView> warmed =
        events.stream()
            .filter(e -> e.what == SessionView.What.RETEST && !e.exercises.isEmpty())
            .toList();
    for (SessionView test : warmed) {
      exercises.addAll(test.exercises);
      if (test.week != null) {
        test.week.addTest(test);
      }
    }
    if (!warmed.isEmpty()) {
      exercises.sort(Comparator.comparing(ExerciseView::date));
    }
  }

  private List<BlockView> blocks() {
    List<BlockView> all = new ArrayList<>();
    for (Block block : schedule.plan().blocks()) {
      all.add(new BlockView(block, this));
    }
    return all;
  }

  private List<WeekView> weeks() {
    Map<String, BlockView> byName = new HashMap<>();
    blocks.forEach(b -> byName.putIfAbsent(b.name(), b));
    List<WeekView> all = new ArrayList<>();
    List<PlanWeek> inOrder = new ArrayList<>(schedule.weeks());
    inOrder.sort(Comparator.comparingInt(PlanWeek::number));
    for (PlanWeek week : inOrder) {
      BlockView block = byName.get(week.block());
      WeekView before = all.isEmpty() ? null : all.get(all.size() - 1);
      WeekView view = new WeekView(week, this, block, before);
      all.add(view);
      if (block != null) {
        block.weeks.add(view);
      }
    }
    return all;
  }

  private List<SessionView> events() {
    List<SessionView> all = new ArrayList<>(sessions);
    for (DatedRetest retest : schedule.retests()) {
      all.add(SessionView.of(retest, this, weeksByNumber.get(retest.week())));
    }
    for (LocalDate day : schedule.climbing()) {
      all.add(SessionView.climbing(day, this, weekOf(day)));
    }
    all.sort(Comparator.comparing(s -> s.date));
    return all;
  }

  /** Returns the week of this plan that includes a day; null if there is none. */
  @Nullable WeekView weekOf(LocalDate day) {
    long days = ChronoUnit.DAYS.between(schedule.plan().from(), day);
    return days < 0 ? null : weeksByNumber.get((int) (days / 7) + 1);
  }

  /** Returns the events and the sessions only known from the log during the plan, by date. */
  List<SessionView> happenings() {
    return logged.within.isEmpty()
        ? events
        : Stream.concat(events.stream(), logged.within.stream())
            .sorted(Comparator.comparing(each -> each.date))
            .toList();
  }

  private List<DayView> days() {
    Map<LocalDate, List<SessionView>> byDate = new TreeMap<>();
    for (SessionView event : happenings()) {
      byDate.computeIfAbsent(event.date, d -> new ArrayList<>()).add(event);
    }
    List<DayView> all = new ArrayList<>();
    new LinkedHashMap<>(byDate)
        .forEach(
            (date, onDay) -> {
              DayView day = new DayView(date, this, onDay.get(0).week, onDay);
              all.add(day);
              if (day.week != null) {
                day.week.days.add(day);
              }
            });
    return all;
  }

  /** Returns the state of the athlete on a day. */
  AthleteView athleteOn(LocalDate day) {
    return athletes.computeIfAbsent(
        day, d -> new AthleteView(schedule.athlete(), bodyMasses, d, schedule.plan().from()));
  }

  /** Returns the subjects of a scope, in order; for pairs see {@link #pairs}. */
  public Subjects subjects(Scope scope) {
    return subjects.computeIfAbsent(
        scope,
        s ->
            new Subjects(
                switch (s) {
                  case EXERCISE -> exercises;
                  case SESSION -> sessions;
                  case DAY -> days;
                  case WEEK -> weeks;
                  case BLOCK -> blocks;
                  case PLAN -> List.of(this);
                  case PAIR_OF_SESSIONS ->
                      throw new IllegalArgumentException("pairs of what reach");
                },
                evaluation));
  }

  /** Returns the exercises and planned tests by date, because the built-in rules apply to both. */
  public Subjects exercisesAndTests() {
    Subjects all = withTests;
    if (all == null) {
      all = new Subjects(exercisesAndTests, evaluation);
      withTests = all;
    }
    return all;
  }

  /**
   * Returns the pairs of sessions within a gap, by date. Two days of climbing are no pair, because
   * neither is planned.
   *
   * @param reach maximum gap, in seconds
   */
  public Subjects pairs(double reach) {
    return pairs.computeIfAbsent(
        reach, r -> new Subjects(new SessionPairs(this).within(r), evaluation));
  }

  /** Returns the weeks with a test, numbered from this plan's first; earlier ones are negative. */
  private NavigableSet<Long> testWeeks() {
    NavigableSet<Long> known = testWeeks;
    if (known == null) {
      NavigableSet<Long> all = new TreeSet<>();
      timeline.log().tests().forEach(test -> all.add(weekIndex(test.date())));
      Stream.concat(Stream.of(schedule), before.stream().map(plan -> plan.schedule))
          .flatMap(each -> each.retests().stream())
          .forEach(retest -> all.add(weekIndex(retest.date())));
      evaluation.take(all.size());
      known = all;
      testWeeks = known;
    }
    return known;
  }

  private long weekIndex(LocalDate day) {
    return Math.floorDiv(ChronoUnit.DAYS.between(schedule.plan().from(), day), 7L);
  }

  /**
   * Returns the time from the last earlier week with a test to the week of a day, in seconds; NaN
   * if there is none.
   */
  double sinceTest(LocalDate day) {
    long week = weekIndex(day);
    Long last = testWeeks().lower(week);
    return last == null ? Double.NaN : Unit.WEEK.toBase((double) (week - last));
  }

  /** Returns whether a setup of a planned test was tested in that week of the plan. */
  boolean isTested(DatedRetest planned, Setup setup) {
    evaluation.take(timeline.log().tests().size());
    return timeline.log().tests().stream()
        .filter(test -> test.setup().toString().equals(setup.toString()))
        .filter(test -> planned.done() || TestMatch.isOf(planned.kind(), test.result()))
        .anyMatch(test -> weekIndex(test.date()) == weekIndex(planned.date()));
  }

  /** Returns the number of sessions of earlier plans between two days, both included. */
  double sessionsOfOtherPlans(LocalDate first, LocalDate last) {
    long count = 0;
    for (PlanView other : before) {
      evaluation.take(other.sessions.size());
      count +=
          other.sessions.stream()
              .filter(s -> !s.date.isBefore(first) && !s.date.isAfter(last))
              .count();
    }
    return count;
  }

  /**
   * Returns the number of tests of the athlete under 16, from half a year before the plan to its
   * end.
   */
  double testsUnder16() {
    return timeline.log().tests().stream()
        .map(StrengthTest::date)
        .filter(this::isRecentAndUnder16)
        .count();
  }

  private boolean isRecentAndUnder16(LocalDate day) {
    return !day.isBefore(schedule.plan().from().minusMonths(LOG_MATTERS_MONTHS))
        && !day.isAfter(schedule.plan().to())
        && schedule.athlete().ageInMonths(day) < KnownLight.YOUNG_MONTHS;
  }

  /**
   * Returns the number of sessions logged under 16 with hard work or a grip not allowed at that
   * age, from half a year before the plan to its end.
   */
  double hardWorkUnder16() {
    List<LogEntry.Trained> trained = timeline.log().of(LogEntry.Trained.class);
    evaluation.take(trained.size());
    return trained.stream()
        .filter(session -> isRecentAndUnder16(session.date()))
        .filter(session -> session.done().stream().anyMatch(PlanView::isHardForYouth))
        .count();
  }

  private static boolean isHardForYouth(LogEntry.Done done) {
    Grip grip = done.setup().grip();
    return done.effort().orElse(0) >= Hardness.EFFORT
        || grip.fullCrimp()
        || grip.structure() == GripStructure.SINGLE
        || grip.structure() == GripStructure.SPLIT;
  }

  /** Returns the athlete's days over all plans, computed on first use. */
  AthleteDays athleteDays() {
    AthleteDays known = athleteDays;
    if (known == null) {
      known = new AthleteDays(this);
      athleteDays = known;
    }
    return known;
  }

  /** Returns the rise of the weekly load, computed on first use. */
  LoadRise loadRise() {
    LoadRise known = loadRise;
    if (known == null) {
      known = new LoadRise(this);
      loadRise = known;
    }
    return known;
  }

  /** Returns the logged efforts, read on first use. */
  Efforts efforts() {
    Efforts known = efforts;
    if (known == null) {
      known = new Efforts(this);
      efforts = known;
    }
    return known;
  }

  /** Returns the permitted weekly rise of load; 0.1 if the plan sets none. */
  double weeklyRise() {
    return schedule.plan().weeklyRise().orElse(Plan.STANDARD_WEEKLY_RISE);
  }

  /** Returns whether all days of a place are in the past. */
  public boolean isPast(ModelPath place) {
    return timeline.isPast(place, schedule.weeks());
  }

  /** Returns the fingers that hold, computed on first use. */
  List<FingerView> fingers() {
    List<FingerView> known = atWork;
    if (known == null) {
      known = FingerView.of(FingerView.together(weeks.stream().map(WeekView::fingers).toList()));
      atWork = known;
    }
    return known;
  }

  @Override
  public ModelPath path() {
    return path;
  }

  @Override
  public LocalDate date() {
    return schedule.plan().from();
  }
}
