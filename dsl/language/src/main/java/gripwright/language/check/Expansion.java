package gripwright.language.check;

import gripwright.language.syntax.Syntax;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Argument;
import gripwright.protocol.Protocol;
import gripwright.protocol.Protocol.Part;
import gripwright.protocol.Term;
import gripwright.quantity.Range;
import java.time.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How many holds and rests come of a protocol or plan, reckoned without writing them out. */
final class Expansion {

  /** The most holds and rests that one exercise may have. */
  static final long MOST_STEPS = (long) Range.STEPS.high();

  /**
   * The most holds and rests that the plans of a project may have in all their weeks, for all their
   * athletes. An exercise of few counts as {@link #LEAST_STEPS}, and so do a test and a session or
   * week without any, since each takes room of its own.
   */
  static final long MOST_IN_PLANS = 4_000_000;

  private static final long LEAST_STEPS = 10;

  /** A number no sum goes beyond, so that none overflows. */
  private static final long ENDLESS = 1L << 40;

  private Expansion() {}

  /** Returns how many holds and rests a protocol has with these values for its parameters. */
  static long of(Protocol protocol, Map<String, Argument> with) {
    Map<String, Argument> values = new HashMap<>(protocol.parameters());
    values.putAll(with);
    return of(protocol.steps(), values);
  }

  /** Returns how many holds and rests steps have with these values for their parameters. */
  static long of(List<Part> steps, Map<String, Argument> values) {
    return size(steps, values);
  }

  /**
   * Returns the most holds and rests that a plan has for all its athletes, its tests counted in.
   */
  static long of(int athletes, List<Block> blocks, List<Plan.Retest> retests) {
    long weeks = blocks.stream().mapToLong(Block::weeks).sum();
    long tests =
        retests.stream()
            .mapToLong(
                t -> LEAST_STEPS * t.setups().size() * (weeks / Math.max(1, t.everyWeeks()) + 1))
            .sum();
    long each = Math.min(ENDLESS, tests + blocks.stream().mapToLong(Expansion::of).sum());
    return Math.min(ENDLESS, athletes * each);
  }

  /** Returns the most holds and rests that a plan has for all its athletes. */
  static long of(Plan plan) {
    return of(plan.athletes().size(), plan.blocks(), plan.retests());
  }

  private static long of(Block block) {
    long most = of(block.content());
    for (Block.Content content : block.only().values()) {
      most = Math.max(most, of(content));
    }
    return Math.min(ENDLESS, block.weeks() * most);
  }

  private static long of(Block.Content content) {
    long week = 0;
    for (SessionPlan session : content.sessions()) {
      long most = of(session.content());
      for (SessionPlan.Content own : session.only().values()) {
        most = Math.max(most, of(own));
      }
      week += session.perWeek() * most;
    }
    return Math.max(LEAST_STEPS, week);
  }

  private static long of(SessionPlan.Content content) {
    long session =
        content.exercises().stream()
            .mapToLong(e -> Math.max(LEAST_STEPS, of(e.protocol(), e.with())))
            .sum();
    return Math.max(LEAST_STEPS, session);
  }

  private static long size(List<Part> parts, Map<String, Argument> values) {
    long size = 0;
    for (Part part : parts) {
      if (part instanceof Part.Repeat repeat) {
        long once = size(repeat.steps(), values) + 1;
        size += Math.min(ENDLESS, once * times(repeat.times(), values));
      } else {
        size++;
      }
      size = Math.min(ENDLESS, size);
    }
    return size;
  }

  private static long times(Term<Integer> times, Map<String, Argument> values) {
    if (times instanceof Term.Fixed<Integer> fixed) {
      return fixed.value();
    }
    String name = ((Term.Given<Integer>) times).parameter();
    Argument value = values.get(name);
    return value instanceof Argument.Count count ? count.times() : 1;
  }

  /** Returns the names of the parameters that say how long a hold is. */
  static Set<String> holdParameters(Protocol protocol) {
    Set<String> names = new HashSet<>();
    collect(protocol.steps(), names);
    return names;
  }

  private static void collect(List<Part> parts, Set<String> names) {
    for (Part part : parts) {
      if (part instanceof Part.Repeat repeat) {
        collect(repeat.steps(), names);
      } else if (part instanceof Part.Hold hold
          && hold.time() instanceof Term.Given<Duration> given) {
        names.add(given.parameter());
      }
    }
  }

  /** Reports that the plans of a project together are too much work. */
  static void reportTogether(Ledger ledger, Syntax at, long size) {
    ledger.error(
        at,
        "value.too-many",
        "what",
        "holds and rests of all plans together",
        "found",
        size,
        "limit",
        MOST_IN_PLANS);
  }

  /** Reports work that is too much to write out. */
  static void report(Ledger ledger, Syntax at, long size) {
    ledger.error(
        at,
        "value.too-many",
        "what",
        "holds and rests",
        "found",
        size >= ENDLESS ? "more than a million million" : Long.toString(size),
        "limit",
        MOST_STEPS);
  }
}
