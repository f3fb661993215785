package gripwright.language.check;

import gripwright.language.syntax.Amount;
import gripwright.language.syntax.BlockPart.AdvanceItem;
import gripwright.language.syntax.Condition;
import gripwright.language.syntax.Progress;
import gripwright.plan.Advance;
import gripwright.plan.Advance.Change;
import gripwright.plan.Advance.Pace;
import gripwright.quantity.Length;
import gripwright.quantity.Unit;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Checks an {@code advance} line. */
final class AdvanceCheck {

  private static final List<String> VARIABLES = List.of("load", "sets", "hold", "edge");

  private final Diagnostics diagnostics;
  private final Amounts amounts;

  AdvanceCheck(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
    this.amounts = new Amounts(diagnostics);
  }

  /**
   * Returns the advance; empty if it has a mistake, which is reported. Its grip is checked
   * elsewhere.
   */
  Optional<Advance> check(AdvanceItem item) {
    Optional<Pace> pace = firstPace(item.first());
    Optional<Advance.Progress> first = progress(item.first(), pace);
    Progress second = item.then();
    Optional<Advance.Progress> then =
        second == null ? Optional.empty() : progress(second, pace(second).or(() -> pace));
    if (first.isEmpty() || (second != null && then.isEmpty())) {
      return Optional.empty();
    }
    if (second != null && second.variable().text().equals(item.first().variable().text())) {
      diagnostics.errorBeside(
          second.variable(),
          item.first().variable(),
          "first-written-here",
          "value.doubled",
          "kind",
          Terms.kind("variable"),
          "name",
          second.variable().text());
      return Optional.empty();
    }
    return Optional.of(
        new Advance(first.get(), then, Optional.ofNullable(item.on()).map(on -> on.text())));
  }

  private Optional<Advance.Progress> progress(Progress progress, Optional<Pace> pace) {
    Optional<Change> change = change(progress);
    return change.isPresent() && pace.isPresent()
        ? Optional.of(new Advance.Progress(change.get(), pace.get()))
        : Optional.empty();
  }

  private Optional<Change> change(Progress progress) {
    String variable = progress.variable().text();
    if (!VARIABLES.contains(variable)) {
      diagnostics.unknown(progress.variable(), "variable", VARIABLES);
      return Optional.empty();
    }
    Amount by = progress.by();
    Amount to = progress.to();
    if (variable.equals("load")) {
      return by.unit() == Unit.PERCENT || by.unit() == null
          ? amounts.base(by, Slot.LOAD_PERCENT).map(Advance.LoadByShare::new)
          : amounts.load(by, Slot.LOAD_STEP).map(Advance.LoadBy::new);
    }
    if (to == null) {
      diagnostics.error(
          progress,
          "value.missing",
          "kind",
          Terms.kind("statement"),
          "name",
          "advance " + variable,
          "missing",
          "`to`");
      return Optional.empty();
    }
    return limited(variable, to, by);
  }

  private Optional<Change> limited(String variable, Amount to, Amount by) {
    if (variable.equals("sets")) {
      Optional<Integer> sets = amounts.count(to, Slot.SETS_LIMIT);
      return amounts
          .count(by, Slot.SETS_LIMIT)
          .flatMap(step -> sets.map(limit -> new Advance.SetsTo(limit, step)));
    }
    if (variable.equals("hold")) {
      Optional<Duration> hold = amounts.time(to, Slot.HOLD);
      return amounts
          .time(by, Slot.HOLD)
          .flatMap(step -> hold.map(limit -> new Advance.HoldTo(limit, step)));
    }
    Optional<Length> edge = amounts.length(to, Slot.EDGE);
    return amounts
        .length(by, Slot.EDGE_STEP)
        .flatMap(step -> edge.map(limit -> new Advance.EdgeTo(limit, step)));
  }

  private Optional<Pace> firstPace(Progress progress) {
    if (progress.every() == null && progress.condition() == null) {
      diagnostics.error(
          progress,
          "value.no-pace",
          "variable",
          Terms.of("variable-" + progress.variable().text()));
    }
    return pace(progress);
  }

  private Optional<Pace> pace(Progress progress) {
    Amount every = progress.every();
    Condition condition = progress.condition();
    if (every != null) {
      return amounts.weeks(every, Slot.EVERY).map(Advance.EveryWeeks::new);
    }
    if (condition == null) {
      return Optional.empty();
    }
    Optional<OptionalDouble> effort = score(condition.effortAtMost(), Slot.EFFORT);
    Optional<OptionalDouble> pain = score(condition.painAtMost(), Slot.PAIN);
    return effort.isPresent() && pain.isPresent()
        ? Optional.of(
            new Advance.WhenLogged(
                condition.doneInFull(), effort.get(), pain.get(), condition.twice() ? 2 : 1))
        : Optional.empty();
  }

  private Optional<OptionalDouble> score(@Nullable Amount amount, Slot slot) {
    return amount == null
        ? Optional.of(OptionalDouble.empty())
        : amounts.base(amount, slot).map(OptionalDouble::of);
  }
}
