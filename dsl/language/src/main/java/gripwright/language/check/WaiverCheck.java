package gripwright.language.check;

import gripwright.language.syntax.Amount;
import gripwright.language.syntax.BlockPart;
import gripwright.language.syntax.Place;
import gripwright.language.syntax.PlanItem;
import gripwright.language.syntax.PlanItem.BlockItem;
import gripwright.language.syntax.SessionPart;
import gripwright.language.syntax.Word;
import gripwright.plan.Plan.Waiver;
import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Checks the place of a waiver, and that its rule exists. */
final class WaiverCheck {

  private static final String WHOLE_PLAN = "plan";

  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final List<BlockItem> blocks;
  private final Optional<Set<String>> rules;
  private final boolean damaged;
  private final Map<String, BlockItem> byName = new HashMap<>();

  /** Sessions by name of their block, and of all blocks under an empty name; found once each. */
  private final Map<String, Sessions> sessions = new HashMap<>();

  /**
   * The sessions that a waiver may name.
   *
   * @param exercises by name of the session the most exercises of a session with that name
   * @param most the most exercises of any session
   */
  private record Sessions(SortedMap<String, Integer> exercises, int most) {}

  /**
   * Returns a check.
   *
   * @param rules names of the rules that apply to the plan; empty if not all of them are known
   * @param damaged true if part of the plan could not be parsed and may contain the place
   */
  WaiverCheck(
      Diagnostics diagnostics,
      List<BlockItem> blocks,
      Optional<Set<String>> rules,
      boolean damaged) {
    this.damaged = damaged;
    this.diagnostics = diagnostics;
    this.amounts = new Amounts(diagnostics);
    this.blocks = blocks;
    this.rules = rules;
    blocks.forEach(block -> byName.putIfAbsent(block.name().text(), block));
  }

  /** Returns the waiver; empty if it has a mistake, which is reported. */
  Optional<Waiver> check(PlanItem.WaiveItem item) {
    if (rules.isPresent() && !rules.get().contains(item.rule().text())) {
      diagnostics.unknown(item.rule(), "rule", rules.get());
    }
    new Reasons(diagnostics)
        .words(item.because(), "waiver", Terms.of("reason-waiver", "rule", item.rule().text()));
    if (damaged) {
      diagnostics.markInvalid();
      return Optional.empty();
    }
    Place place = item.place();
    Optional<BlockItem> block = Optional.ofNullable(byName.get(place.block().text()));
    if (block.isEmpty() && !place.block().text().equals(WHOLE_PLAN)) {
      Set<String> names = new TreeSet<>(byName.keySet());
      names.add(WHOLE_PLAN);
      diagnostics.unknown(place.block(), "block", names);
      return Optional.empty();
    }
    OptionalInt week = week(place, block);
    Optional<String> session = session(place, block);
    OptionalInt exercise = exercise(place, block);
    if (!diagnostics.sound()) {
      return Optional.empty();
    }
    return Optional.of(
        new Waiver(
            item.rule().text(),
            block.map(b -> b.name().text()),
            week,
            session,
            exercise,
            item.because().value()));
  }

  private OptionalInt week(Place place, Optional<BlockItem> block) {
    Amount written = place.week();
    if (written == null) {
      return OptionalInt.empty();
    }
    Optional<Integer> week = amounts.count(written, Slot.WEEK);
    if (week.isEmpty()) {
      return OptionalInt.empty();
    }
    if (block.isEmpty()) {
      diagnostics.error(written, "value.week-of-plan", "week", week.get());
      return OptionalInt.empty();
    }
    Unit unit = block.get().length().unit();
    double weeks =
        unit == null
            ? Double.MAX_VALUE
            : Unit.WEEK.fromBase(unit.toBase(block.get().length().value()));
    if (week.get() > weeks) {
      diagnostics.error(
          written, "value.week", "week", week.get(), "weeks", (int) Math.floor(weeks));
    }
    return OptionalInt.of(week.get());
  }

  private Sessions sessions(Optional<BlockItem> block) {
    return sessions.computeIfAbsent(
        block.map(b -> b.name().text()).orElse(""), name -> collected(block));
  }

  private Sessions collected(Optional<BlockItem> block) {
    List<BlockPart.SessionItem> all = new ArrayList<>();
    for (BlockItem item : block.map(List::of).orElse(blocks)) {
      collect(item.parts(), all);
    }
    SortedMap<String, Integer> byName = new TreeMap<>();
    all.forEach(s -> byName.merge(s.name().text(), exercises(s.parts()), Math::max));
    return new Sessions(
        byName, byName.values().stream().mapToInt(Integer::intValue).max().orElse(0));
  }

  private static void collect(List<BlockPart> parts, List<BlockPart.SessionItem> sessions) {
    BlockParts sorted = BlockParts.of(parts);
    sessions.addAll(sorted.sessions());
    sorted.onlyFor().forEach(only -> collect(only.parts(), sessions));
  }

  private Optional<String> session(Place place, Optional<BlockItem> block) {
    Word name = place.session();
    if (name == null) {
      return Optional.empty();
    }
    Set<String> names = sessions(block).exercises().keySet();
    if (!names.contains(name.text())) {
      diagnostics.unknown(name, "session", names);
    }
    return Optional.of(name.text());
  }

  private OptionalInt exercise(Place place, Optional<BlockItem> block) {
    Amount written = place.exercise();
    if (written == null) {
      return OptionalInt.empty();
    }
    Optional<Integer> number = amounts.count(written, Slot.EXERCISE);
    if (number.isEmpty()) {
      return OptionalInt.empty();
    }
    Word name = place.session();
    Sessions known = sessions(block);
    int most = name == null ? known.most() : known.exercises().getOrDefault(name.text(), 0);
    if (most > 0 && number.get() > most) {
      diagnostics.error(written, "value.exercise", "exercise", number.get(), "exercises", most);
    }
    return OptionalInt.of(number.get());
  }

  private static int exercises(List<SessionPart> parts) {
    SessionParts sorted = SessionParts.of(parts);
    int most = sorted.exercises().size();
    for (SessionPart.SessionOnlyFor only : sorted.onlyFor()) {
      most = Math.max(most, exercises(only.parts()));
    }
    return most;
  }
}
