package gripwright.language.check;

import gripwright.language.syntax.Amount;
import gripwright.language.syntax.BlockPart.SessionItem;
import gripwright.language.syntax.SessionPart;
import gripwright.language.syntax.Word;
import gripwright.plan.Exercise;
import gripwright.plan.SessionPlan;
import gripwright.quantity.Range;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Checks a session of a block. */
final class SessionCheck {

  private static final int MOST_EXERCISES = (int) Range.EXERCISES.high();

  private final PlanScope scope;
  private final Ledger ledger;
  private final Defaults defaults;

  SessionCheck(PlanScope scope, Defaults defaults) {
    this.scope = scope;
    this.ledger = scope.ledger();
    this.defaults = defaults;
  }

  /** Returns the session, or nothing and findings. */
  Optional<SessionPlan> check(SessionItem item) {
    Amounts amounts = new Amounts(ledger);
    Optional<Integer> perWeek = amounts.count(item.perWeek(), Slot.PER_WEEK);
    Amount apart = item.apart();
    Optional<Duration> gap =
        apart == null ? Optional.of(SessionPlan.STANDARD_GAP) : amounts.time(apart, Slot.GAP);
    ledger.spoilIf(item.damaged());
    Optional<SessionPlan.Content> content = content(item, item.parts(), item.damaged());
    Map<String, SessionPlan.Content> only = new TreeMap<>();
    OnlyFor onlyFor = new OnlyFor(scope);
    for (SessionPart part : item.parts()) {
      if (part instanceof SessionPart.SessionOnlyFor own) {
        only(item, own, onlyFor, only);
      }
    }
    Optional<List<DayOfWeek>> prefer = prefer(item.parts());
    if (perWeek.isEmpty() || gap.isEmpty() || content.isEmpty() || prefer.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new SessionPlan(
            item.name().text(), perWeek.get(), gap.get(), content.get(), prefer.get(), only));
  }

  private void only(
      SessionItem item,
      SessionPart.SessionOnlyFor own,
      OnlyFor onlyFor,
      Map<String, SessionPlan.Content> only) {
    List<String> athletes = onlyFor.athletes(own.athletes());
    ledger.spoilIf(own.damaged());
    for (SessionPart part : own.parts()) {
      if (part instanceof SessionPart.SessionOnlyFor inner) {
        ledger.error(
            inner.athletes().get(0), "value.misplaced", "what", "only for", "inside", "only for");
      } else if (part instanceof SessionPart.Prefer) {
        ledger.error(part, "value.misplaced", "what", "prefer", "inside", "only for");
      }
    }
    if (athletes.isEmpty()) {
      // Nobody to put it together for: what is written is still checked, by itself.
      content(item, own.parts(), true);
      return;
    }
    content(item, Overrides.session(item.parts(), own), item.damaged() || own.damaged())
        .ifPresent(content -> athletes.forEach(athlete -> only.put(athlete, content)));
  }

  private Optional<SessionPlan.Content> content(
      SessionItem item, List<SessionPart> parts, boolean damaged) {
    Defaults inner = defaults.within(ledger, parts);
    ExerciseCheck check = new ExerciseCheck(scope);
    List<Exercise> exercises = new ArrayList<>();
    int written = 0;
    for (SessionPart part : parts) {
      if (part instanceof SessionPart.DoItem line) {
        written++;
        if (written == MOST_EXERCISES + 1) {
          ledger.error(
              item.name(),
              "value.too-many",
              "what",
              Terms.of("many-exercises"),
              "found",
              parts.stream().filter(SessionPart.DoItem.class::isInstance).count(),
              "limit",
              MOST_EXERCISES);
        }
        check.check(line, inner.weights()).ifPresent(exercises::add);
      }
    }
    if (written == 0 && !damaged) {
      ledger.error(
          item.name(),
          "value.missing",
          "kind",
          Terms.kind("session"),
          "name",
          item.name().text(),
          "missing",
          "`do`");
    }
    return exercises.size() == written && Range.EXERCISES.contains(written)
        ? Optional.of(new SessionPlan.Content(exercises, inner.warmUp(), inner.restBetween()))
        : Optional.empty();
  }

  private Optional<List<DayOfWeek>> prefer(List<SessionPart> parts) {
    List<DayOfWeek> days = new ArrayList<>();
    Once once = new Once(ledger);
    boolean sound = true;
    for (SessionPart part : parts) {
      if (part instanceof SessionPart.Prefer prefer) {
        for (Word word : prefer.days()) {
          Optional<DayOfWeek> day = new Words(ledger).weekday(word);
          day.ifPresent(days::add);
          sound &= day.isPresent() && once.first(word, "preferred-weekday", word.text());
        }
      }
    }
    return sound ? Optional.of(days) : Optional.empty();
  }
}
