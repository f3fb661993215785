package gripwright.rule.view;

import gripwright.budget.Meter;
import gripwright.expression.Evaluation;
import gripwright.expression.Scope;
import gripwright.expression.Subjects;
import gripwright.finding.ModelPath;
import gripwright.history.LogTimeline;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.quantity.Load;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.Schedule;
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
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A schedule as rules see it: blocks, weeks, days, sessions and exercises that know each other,
 * with their sums calculated once.
 */
public final class PlanView implements Subject {

  /** What a pair of sessions counts as among the values that are kept. */
  private static final long VALUES_OF_A_PAIR = 4;

  public final Schedule schedule;
  final LogTimeline timeline;
  public final ModelPath path;
  final FingerHistory history;

  /** Work by finger, reckoned only where a rule asks. */
  final FingerLedger ledger = new FingerLedger();

  /** What checking this plan took. */
  public final Evaluation evaluation;

  /** Counts the places where rules are broken. */
  public final Meter meter;

  final List<BlockView> blocks;
  final List<WeekView> weeks;
  final List<SessionView> sessions;

  /** Sessions, retests and days of hard climbing by date. */
  final List<SessionView> events;

  final List<DayView> days;
  final List<ExerciseView> exercises;
  final AthleteView athlete;
  final double load;
  final double timeUnderLoad;
  private final NavigableMap<LocalDate, Load> bodyMasses = new TreeMap<>();
  private final Map<LocalDate, AthleteView> athletes = new HashMap<>();
  private final Map<Scope, Subjects> subjects = new EnumMap<>(Scope.class);
  private final Map<Double, Subjects> pairs = new HashMap<>();
  private @Nullable List<FingerView> atWork;

  /** Returns what rules see, for a check without a bound. */
  public PlanView(Schedule schedule, LogTimeline timeline) {
    this(schedule, timeline, Meter.unbounded());
  }

  /**
   * Returns what rules see.
   *
   * @param meter counts what is looked at
   */
  public PlanView(Schedule schedule, LogTimeline timeline, Meter meter) {
    this.meter = meter;
    this.evaluation = new Evaluation(Readers.ALL, meter);
    this.schedule = schedule;
    this.timeline = timeline;
    path = schedule.plan().path().then("for", schedule.athlete().name());
    history = new FingerHistory(schedule.athlete(), timeline.log());
    timeline.log().of(LogEntry.BodyMass.class).forEach(e -> bodyMasses.put(e.date(), e.mass()));
    athlete = athleteOn(schedule.plan().from());
    blocks = blocks();
    weeks = weeks();
    Map<Integer, WeekView> byNumber = new HashMap<>();
    weeks.forEach(w -> byNumber.put(w.number(), w));
    sessions = new ArrayList<>();
    exercises = new ArrayList<>();
    schedule.sessions().stream()
        .sorted(Comparator.comparing(DatedSession::date))
        .forEach(s -> add(s, byNumber.get(s.week())));
    events = events(byNumber);
    days = days();
    weeks.forEach(WeekView::settle);
    blocks.forEach(BlockView::settle);
    load = sessions.stream().mapToDouble(s -> s.load).sum();
    timeUnderLoad = sessions.stream().mapToDouble(s -> s.timeUnderLoad).sum();
    exercises.forEach(history::record);
  }

  private void add(DatedSession dated, @Nullable WeekView week) {
    SessionView session = SessionView.of(dated, this, week);
    sessions.add(session);
    exercises.addAll(session.exercises);
    if (week != null) {
      week.add(session);
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

  private List<SessionView> events(Map<Integer, WeekView> byNumber) {
    List<SessionView> all = new ArrayList<>(sessions);
    for (DatedRetest retest : schedule.retests()) {
      all.add(SessionView.of(retest, this, byNumber.get(retest.week())));
    }
    for (LocalDate day : schedule.climbing()) {
      all.add(SessionView.climbing(day, this, weekOf(day, byNumber)));
    }
    all.sort(Comparator.comparing(s -> s.date));
    return all;
  }

  private @Nullable WeekView weekOf(LocalDate day, Map<Integer, WeekView> byNumber) {
    long days = ChronoUnit.DAYS.between(schedule.plan().from(), day);
    return days < 0 ? null : byNumber.get((int) (days / 7) + 1);
  }

  private List<DayView> days() {
    Map<LocalDate, List<SessionView>> byDate = new TreeMap<>();
    for (SessionView event : events) {
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

  /** Returns the athlete as things stand on a day. */
  AthleteView athleteOn(LocalDate day) {
    return athletes.computeIfAbsent(
        day, d -> new AthleteView(schedule.athlete(), bodyMasses, d, schedule.plan().from()));
  }

  /** Returns what rules of a scope look at, in order; pairs are {@link #pairs} instead. */
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

  /**
   * Returns the pairs of sessions within reach: each with those that follow, by date, as long as
   * they are near. Two days of climbing are no pair, since neither is planned.
   *
   * @param reach greatest gap, in seconds
   */
  public Subjects pairs(double reach) {
    return pairs.computeIfAbsent(reach, r -> new Subjects(pairsWithin(r), evaluation));
  }

  private List<PairView> pairsWithin(double reach) {
    List<PairView> all = new ArrayList<>();
    for (int i = 0; i < events.size(); i++) {
      for (int j = i + 1; j < events.size(); j++) {
        evaluation.take(1);
        PairView pair = new PairView(events.get(i), events.get(j));
        if (pair.gap() > reach) {
          break;
        }
        if (pair.earlier().what != SessionView.What.CLIMBING
            || pair.later().what != SessionView.What.CLIMBING) {
          evaluation.keep(VALUES_OF_A_PAIR);
          all.add(pair);
        }
      }
    }
    return all;
  }

  /** Returns how much more a week's load may be than before; 0.1 where the plan does not say. */
  double weeklyRise() {
    return schedule.plan().weeklyRise().orElse(Plan.STANDARD_WEEKLY_RISE);
  }

  /** Tells whether all days of a place are past: what stands there has happened. */
  public boolean isPast(ModelPath place) {
    return timeline.isPast(place, schedule.weeks());
  }

  /** Returns the fingers that hold, reckoned when they are first asked for. */
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
