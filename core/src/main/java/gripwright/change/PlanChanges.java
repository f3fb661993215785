package gripwright.change;

import gripwright.finding.Message;
import gripwright.grip.Grip;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Compares the meaning of two schedules: what is trained, when, and how hard. Names of files, order
 * of declarations, derivations and findings do not matter.
 */
public final class PlanChanges {

  private final Schedule before;
  private final Schedule after;
  private final List<PlanChange> changes = new ArrayList<>();

  /** Days by which each block of both plans moved later, by name. */
  private final Map<String, Long> delays = new LinkedHashMap<>();

  private PlanChanges(Schedule before, Schedule after) {
    this.before = before;
    this.after = after;
  }

  /**
   * Returns what changed from one schedule to another, by date; empty if and only if both have the
   * same text in meaning and the same training on the same days, with the same tests, goal and
   * waivers.
   */
  public static List<PlanChange> between(Schedule before, Schedule after) {
    PlanChanges found = new PlanChanges(before, after);
    found.compareFrames();
    found.compareBlocks();
    found.compareWeeks();
    found.compareGrips();
    found.compareTests();
    found.compareWaivers();
    found.compareWriting();
    found.changes.sort(Comparator.comparing(PlanChange::date)); // stable within a day
    return List.copyOf(found.changes);
  }

  private void compareFrames() {
    if (!before.plan().from().equals(after.plan().from())) {
      changes.add(new PlanChange.PlanMoved(before.plan().from(), after.plan().from()));
    }
    Optional<Message> goalBefore = PlanParts.goal(before.plan());
    Optional<Message> goalAfter = PlanParts.goal(after.plan());
    if (!goalBefore.equals(goalAfter)) {
      changes.add(new PlanChange.GoalChanged(after.plan().from(), goalBefore, goalAfter));
    }
  }

  /** Adds changes of the plan as a whole, and of blocks whose sessions stay the same. */
  private void compareWriting() {
    Map<PlanChange.Part, Message> were = PlanParts.of(before.plan());
    Map<PlanChange.Part, Message> are = PlanParts.of(after.plan());
    for (PlanChange.Part part : PlanChange.Part.values()) {
      Optional<Message> was = Optional.ofNullable(were.get(part));
      Optional<Message> is = Optional.ofNullable(are.get(part));
      if (!was.equals(is)) {
        changes.add(new PlanChange.PartChanged(after.plan().from(), part, was, is));
      }
    }
    Map<String, Block> blocksAfter = byName(after.plan());
    Map<String, LocalDate> startsAfter = starts(after.plan());
    for (Block old : before.plan().blocks()) {
      Block block = blocksAfter.get(old.name());
      if (block != null
          && !PlanParts.sameContent(
              old.contentFor(before.athlete().name()), block.contentFor(after.athlete().name()))
          && changes.stream().noneMatch(c -> isIn(c, old.name()))) {
        changes.add(
            new BlockChange.BlockRewritten(
                old.name(), startsAfter.getOrDefault(old.name(), after.plan().from())));
      }
    }
  }

  private static boolean isIn(PlanChange change, String block) {
    if (change instanceof BlockChange.WeekEased c) {
      return c.week().block().equals(block);
    }
    return PlanChange.session(change).filter(s -> s.block().equals(block)).isPresent();
  }

  private void compareBlocks() {
    long planDelay = ChronoUnit.DAYS.between(before.plan().from(), after.plan().from());
    Map<String, LocalDate> startsBefore = starts(before.plan());
    Map<String, LocalDate> startsAfter = starts(after.plan());
    Map<String, Block> blocksAfter = byName(after.plan());
    for (Block old : before.plan().blocks()) {
      LocalDate start = startsBefore.getOrDefault(old.name(), before.plan().from());
      Block now = blocksAfter.get(old.name());
      if (now == null) {
        changes.add(new BlockChange.BlockDropped(old.name(), start, old.weeks()));
        continue;
      }
      LocalDate startNow = startsAfter.getOrDefault(now.name(), after.plan().from());
      long delay = ChronoUnit.DAYS.between(start, startNow);
      delays.put(old.name(), delay);
      if (delay != planDelay) {
        changes.add(new BlockChange.BlockMoved(old.name(), (int) (delay - planDelay), startNow));
      }
      if (old.weeks() != now.weeks()) {
        changes.add(new BlockChange.BlockResized(old.name(), startNow, old.weeks(), now.weeks()));
      }
    }
    for (Block now : after.plan().blocks()) {
      if (!startsBefore.containsKey(now.name())) {
        LocalDate start = startsAfter.getOrDefault(now.name(), after.plan().from());
        changes.add(new BlockChange.BlockAdded(now.name(), start, now.weeks()));
      }
    }
  }

  private static Map<String, LocalDate> starts(Plan plan) {
    Map<String, LocalDate> starts = new LinkedHashMap<>();
    LocalDate start = plan.from();
    for (Block block : plan.blocks()) {
      starts.putIfAbsent(block.name(), start);
      start = start.plusWeeks(block.weeks());
    }
    return starts;
  }

  private static Map<String, Block> byName(Plan plan) {
    Map<String, Block> blocks = new LinkedHashMap<>();
    plan.blocks().forEach(b -> blocks.putIfAbsent(b.name(), b));
    return blocks;
  }

  /** A week of a block, the key of corresponding weeks. */
  private record WeekKey(String block, int week) implements Comparable<WeekKey> {
    @Override
    public int compareTo(WeekKey other) {
      int byBlock = block.compareTo(other.block);
      return byBlock != 0 ? byBlock : Integer.compare(week, other.week);
    }
  }

  private void compareWeeks() {
    Map<WeekKey, PlanWeek> weeksBefore = new TreeMap<>();
    before.weeks().forEach(w -> weeksBefore.put(new WeekKey(w.block(), w.blockWeek()), w));
    for (PlanWeek week : after.weeks()) {
      PlanWeek old = weeksBefore.get(new WeekKey(week.block(), week.blockWeek()));
      if (old != null && old.eased() != week.eased()) {
        changes.add(new BlockChange.WeekEased(week));
      }
    }
    SortedMap<WeekKey, Map<String, List<DatedSession>>> olds = byWeek(before);
    SortedMap<WeekKey, Map<String, List<DatedSession>>> news = byWeek(after);
    SortedMap<WeekKey, Boolean> keys = new TreeMap<>();
    olds.keySet().forEach(k -> keys.put(k, true));
    news.keySet().forEach(k -> keys.put(k, true));
    for (WeekKey key : keys.keySet()) {
      Map<String, List<DatedSession>> was = olds.getOrDefault(key, Map.of());
      Map<String, List<DatedSession>> is = news.getOrDefault(key, Map.of());
      SortedMap<String, Boolean> names = new TreeMap<>();
      was.keySet().forEach(n -> names.put(n, true));
      is.keySet().forEach(n -> names.put(n, true));
      for (String name : names.keySet()) {
        compareSessions(
            was.getOrDefault(name, List.of()),
            is.getOrDefault(name, List.of()),
            delays.getOrDefault(key.block(), 0L));
      }
    }
  }

  private static SortedMap<WeekKey, Map<String, List<DatedSession>>> byWeek(Schedule plan) {
    SortedMap<WeekKey, Map<String, List<DatedSession>>> weeks = new TreeMap<>();
    for (DatedSession session : plan.sessions()) {
      weeks
          .computeIfAbsent(new WeekKey(session.block(), session.blockWeek()), k -> new TreeMap<>())
          .computeIfAbsent(session.name(), k -> new ArrayList<>())
          .add(session);
    }
    return weeks;
  }

  /** Compares sessions of one name in one week: first those of one day, then the rest in order. */
  private void compareSessions(List<DatedSession> was, List<DatedSession> is, long delay) {
    List<DatedSession> olds = new ArrayList<>(was);
    List<DatedSession> news = new ArrayList<>(is);
    for (Pair<DatedSession> pair :
        Pair.taken(olds, news, (o, n) -> o.date().plusDays(delay).equals(n.date()))) {
      if (!pair.before().time().equals(pair.after().time())
          || !pair.before().place().equals(pair.after().place())) {
        changes.add(new SessionChange.SessionMoved(pair.before(), pair.after()));
      }
      changes.addAll(ExerciseChanges.between(pair));
    }
    for (Pair<DatedSession> pair : Pair.taken(olds, news, (o, n) -> true)) {
      changes.add(new SessionChange.SessionMoved(pair.before(), pair.after()));
      changes.addAll(ExerciseChanges.between(pair));
    }
    olds.forEach(s -> changes.add(new SessionChange.SessionDropped(s)));
    news.forEach(s -> changes.add(new SessionChange.SessionAdded(s)));
  }

  /** Adds grips that start in another week. */
  private void compareGrips() {
    Map<String, DatedSession> firstBefore = firstUses(before);
    Map<String, DatedSession> firstAfter = firstUses(after);
    firstAfter.forEach(
        (name, now) -> {
          DatedSession was = firstBefore.get(name);
          if (was != null
              && !was.date().equals(now.date())
              && !new WeekKey(was.block(), was.blockWeek())
                  .equals(new WeekKey(now.block(), now.blockWeek()))) {
            changes.add(new PlanChange.GripStarts(grip(now, name), was.date(), now.date()));
          }
        });
  }

  private static Map<String, DatedSession> firstUses(Schedule plan) {
    Map<String, DatedSession> first = new TreeMap<>();
    plan.sessions().stream()
        .sorted(Comparator.comparing(DatedSession::date))
        .forEach(s -> s.exercises().forEach(e -> first.putIfAbsent(e.setup().grip().name(), s)));
    return first;
  }

  private static Grip grip(DatedSession session, String name) {
    return session.exercises().stream()
        .map(e -> e.setup().grip())
        .filter(g -> g.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private void compareTests() {
    List<DatedRetest> olds = new ArrayList<>(before.retests());
    List<DatedRetest> news = new ArrayList<>(after.retests());
    Pair.taken(olds, news, (o, n) -> sameTests(o, n) && isSameDay(o, n));
    for (Pair<DatedRetest> pair : Pair.taken(olds, news, this::isSameDay)) {
      changes.add(tests(List.of(pair.before()), List.of(pair.after())));
    }
    for (Pair<DatedRetest> pair :
        Pair.taken(olds, news, (o, n) -> sameTests(o, n) && o.week() == n.week())) {
      changes.add(tests(List.of(pair.before()), List.of(pair.after())));
    }
    olds.forEach(o -> changes.add(tests(List.of(o), List.of())));
    news.forEach(n -> changes.add(tests(List.of(), List.of(n))));
  }

  private static PlanChange tests(List<DatedRetest> was, List<DatedRetest> is) {
    return new PlanChange.RetestChanged((is.isEmpty() ? was : is).get(0).date(), was, is);
  }

  /** Returns whether two tests are on the same day of their block, or else of their plan. */
  private boolean isSameDay(DatedRetest old, DatedRetest now) {
    long delay =
        old.block().equals(now.block())
            ? delays.getOrDefault(old.block(), 0L)
            : ChronoUnit.DAYS.between(before.plan().from(), after.plan().from());
    return old.date().plusDays(delay).equals(now.date());
  }

  private static boolean sameTests(DatedRetest one, DatedRetest other) {
    return one.kind().equals(other.kind())
        && one.attempts().equals(other.attempts())
        && sameWarmUp(one.warmUp(), other.warmUp())
        && one.setups().stream()
            .map(Object::toString)
            .toList()
            .equals(other.setups().stream().map(Object::toString).toList());
  }

  private static boolean sameWarmUp(DatedRetest.WarmUp one, DatedRetest.WarmUp other) {
    return one.minutes().equals(other.minutes())
        && one.text().equals(other.text())
        && one.exercises().stream()
            .map(PlanChanges::work)
            .toList()
            .equals(other.exercises().stream().map(PlanChanges::work).toList());
  }

  private static List<Object> work(PlannedExercise exercise) {
    return List.of(
        exercise.protocol(),
        exercise.setup().toString(),
        exercise.totalLoad(),
        exercise.scheme().sets(),
        exercise.scheme().duration());
  }

  private void compareWaivers() {
    LocalDate from = after.plan().from();
    List<Plan.Waiver> olds = new ArrayList<>(before.plan().waivers());
    List<Plan.Waiver> news = new ArrayList<>(after.plan().waivers());
    Pair.taken(olds, news, Object::equals);
    olds.forEach(w -> changes.add(new PlanChange.WaiverDropped(from, w)));
    news.forEach(w -> changes.add(new PlanChange.WaiverAdded(from, w)));
  }
}
