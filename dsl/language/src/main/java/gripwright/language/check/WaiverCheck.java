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

/** Checks where a waiver holds, and that there is such a rule. */
final class WaiverCheck {

  private static final String WHOLE_PLAN = "plan";

  private final Ledger ledger;
  private final Amounts amounts;
  private final List<BlockItem> blocks;
  private final Optional<Set<String>> rules;
  private final boolean damaged;
  private final Map<String, BlockItem> byName = new HashMap<>();

  /** The sessions by the name of their block, and of all blocks by none, each looked for once. */
  private final Map<String, Sessions> sessions = new HashMap<>();

  /**
   * The sessions that a waiver may name.
   *
   * @param exercises by name of the session the most exercises that one of that name has
   * @param most the most exercises of any
   */
  private record Sessions(SortedMap<String, Integer> exercises, int most) {}

  /**
   * Returns a check.
   *
   * @param rules names of the rules a plan is held to; empty if not all of them are known
   * @param damaged true if something in the plan did not parse: the place may be in there
   */
  WaiverCheck(Ledger ledger, List<BlockItem> blocks, Optional<Set<String>> rules, boolean damaged) {
    this.damaged = damaged;
    this.ledger = ledger;
    this.amounts = new Amounts(ledger);
    this.blocks = blocks;
    this.rules = rules;
    blocks.forEach(block -> byName.putIfAbsent(block.name().text(), block));
  }

  /** Returns the waiver, or nothing and findings. */
  Optional<Waiver> check(PlanItem.WaiveItem item) {
    if (rules.isPresent() && !rules.get().contains(item.rule().text())) {
      ledger.unknown(item.rule(), "rule", rules.get());
    }
    if (item.because().value().isBlank()) {
      ledger.error(item.because(), "value.no-reason", "rule", item.rule().text());
    }
    if (damaged) {
      ledger.spoil();
      return Optional.empty();
    }
    Place place = item.place();
    Optional<BlockItem> block = Optional.ofNullable(byName.get(place.block().text()));
    if (block.isEmpty() && !place.block().text().equals(WHOLE_PLAN)) {
      Set<String> names = new TreeSet<>(byName.keySet());
      names.add(WHOLE_PLAN);
      ledger.unknown(place.block(), "block", names);
      return Optional.empty();
    }
    OptionalInt week = week(place, block);
    Optional<String> session = session(place, block);
    OptionalInt exercise = exercise(place, block);
    if (!ledger.sound()) {
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
      ledger.error(written, "value.week-of-plan", "week", week.get());
      return OptionalInt.empty();
    }
    Unit unit = block.get().length().unit();
    double weeks =
        unit == null
            ? Double.MAX_VALUE
            : Unit.WEEK.fromBase(unit.toBase(block.get().length().value()));
    if (week.get() > weeks) {
      ledger.error(written, "value.week", "week", week.get(), "weeks", (int) Math.floor(weeks));
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
    for (BlockPart part : parts) {
      if (part instanceof BlockPart.SessionItem session) {
        sessions.add(session);
      } else if (part instanceof BlockPart.BlockOnlyFor only) {
        collect(only.parts(), sessions);
      }
    }
  }

  private Optional<String> session(Place place, Optional<BlockItem> block) {
    Word name = place.session();
    if (name == null) {
      return Optional.empty();
    }
    Set<String> names = sessions(block).exercises().keySet();
    if (!names.contains(name.text())) {
      ledger.unknown(name, "session", names);
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
      ledger.error(written, "value.exercise", "exercise", number.get(), "exercises", most);
    }
    return OptionalInt.of(number.get());
  }

  private static int exercises(List<SessionPart> parts) {
    int most = 0;
    int here = 0;
    for (SessionPart part : parts) {
      if (part instanceof SessionPart.DoItem) {
        here++;
      } else if (part instanceof SessionPart.SessionOnlyFor only) {
        most = Math.max(most, exercises(only.parts()));
      }
    }
    return Math.max(here, most);
  }
}
