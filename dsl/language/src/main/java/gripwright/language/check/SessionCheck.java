package gripwright.language.check;

import gripwright.finding.Listing;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.BlockPart.SessionItem;
import gripwright.language.syntax.OnlyAt;
import gripwright.language.syntax.OnlyOn;
import gripwright.language.syntax.SessionPart;
import gripwright.language.syntax.Supervised;
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
import java.util.Set;
import java.util.TreeMap;

/** Checks a session of a block. */
final class SessionCheck {

  private static final int MOST_EXERCISES = (int) Range.EXERCISES.high();

  private final PlanScope scope;
  private final Diagnostics diagnostics;
  private final Defaults defaults;

  SessionCheck(PlanScope scope, Defaults defaults) {
    this.scope = scope;
    this.diagnostics = scope.diagnostics();
    this.defaults = defaults;
  }

  /** Returns the session; empty if it has a mistake, which is reported. */
  Optional<SessionPlan> check(SessionItem item) {
    Amounts amounts = new Amounts(diagnostics);
    Optional<Integer> perWeek = amounts.count(item.perWeek(), Slot.PER_WEEK);
    Amount apart = item.apart();
    Optional<Duration> gap =
        apart == null ? Optional.of(SessionPlan.STANDARD_GAP) : amounts.time(apart, Slot.GAP);
    diagnostics.markInvalidIf(item.damaged());
    Optional<SessionPlan.Content> content = content(item, item.parts(), item.damaged());
    Map<String, SessionPlan.Content> only = new TreeMap<>();
    OnlyFor onlyFor = new OnlyFor(scope);
    SessionParts sorted = SessionParts.of(item.parts());
    for (SessionPart.SessionOnlyFor own : sorted.onlyFor()) {
      only(item, own, onlyFor, only);
    }
    Optional<List<DayOfWeek>> prefer =
        weekdays(
            sorted.preferred().stream().flatMap(part -> part.days().stream()).toList(),
            "preferred-weekday");
    Optional<List<DayOfWeek>> onlyOn =
        weekdays(
            sorted.onlyOn().stream().flatMap(part -> part.days().stream()).toList(), "weekday");
    Optional<Duration> share = share(sorted.shareDays(), amounts);
    Optional<String> supervisedBy = new Reasons(diagnostics).supervisor(sorted.supervised());
    if (perWeek.isEmpty() || gap.isEmpty() || content.isEmpty() || prefer.isEmpty()) {
      return Optional.empty();
    }
    Optional<Set<String>> onlyAt = scope.places().read(sorted.onlyAt(), diagnostics);
    if (onlyAt.isEmpty()
        || onlyOn.isEmpty()
        || tooFewDays(item, sorted.onlyOn(), perWeek.get(), onlyOn.get())) {
      return Optional.empty();
    }
    return Optional.of(
        SessionPlan.builder(item.name().text(), perWeek.get(), content.get())
            .gap(gap.get())
            .prefer(prefer.get())
            .onlyOn(onlyOn.get())
            .onlyAt(onlyAt.get())
            .share(share)
            .only(only)
            .supervisedBy(supervisedBy)
            .build());
  }

  private Optional<Duration> share(List<SessionPart.ShareDays> parts, Amounts amounts) {
    Once once = new Once(diagnostics);
    Optional<Duration> share = Optional.empty();
    for (SessionPart.ShareDays part : parts) {
      once.first(part, "share");
      share = amounts.time(part.apart(), Slot.DAY_GAP);
    }
    return share;
  }

  private void only(
      SessionItem item,
      SessionPart.SessionOnlyFor own,
      OnlyFor onlyFor,
      Map<String, SessionPlan.Content> only) {
    List<String> athletes = onlyFor.athletes(own.athletes());
    diagnostics.markInvalidIf(own.damaged());
    SessionParts inside = SessionParts.of(own.parts());
    for (SessionPart.SessionOnlyFor inner : inside.onlyFor()) {
      diagnostics.error(
          inner.athletes().get(0), "value.misplaced", "what", "only for", "inside", "only for");
    }
    for (SessionPart.Prefer prefer : inside.preferred()) {
      diagnostics.error(prefer, "value.misplaced", "what", "prefer", "inside", "only for");
    }
    for (OnlyOn onlyOn : inside.onlyOn()) {
      diagnostics.error(onlyOn, "value.misplaced", "what", "only on", "inside", "only for");
    }
    for (OnlyAt onlyAt : inside.onlyAt()) {
      diagnostics.error(onlyAt, "value.misplaced", "what", "only at", "inside", "only for");
    }
    for (SessionPart.ShareDays share : inside.shareDays()) {
      diagnostics.error(share, "value.misplaced", "what", "share days", "inside", "only for");
    }
    for (Supervised supervised : inside.supervised()) {
      diagnostics.error(
          supervised, "value.misplaced", "what", "supervised by", "inside", "only for");
    }
    if (athletes.isEmpty()) {
      // No athlete to build it for: the statements are still checked by themselves.
      content(item, own.parts(), true);
      return;
    }
    content(item, Overrides.session(item.parts(), own), item.damaged() || own.damaged())
        .ifPresent(content -> athletes.forEach(athlete -> only.put(athlete, content)));
  }

  private Optional<SessionPlan.Content> content(
      SessionItem item, List<SessionPart> parts, boolean damaged) {
    Defaults inner = defaults.within(diagnostics, parts);
    ExerciseCheck check = new ExerciseCheck(scope);
    SessionParts sorted = SessionParts.of(parts);
    List<SessionPart.DoItem> written = sorted.exercises();
    List<Exercise> exercises = new ArrayList<>();
    for (int i = 0; i < written.size(); i++) {
      if (i == MOST_EXERCISES) {
        diagnostics.error(
            item.name(),
            "value.too-many",
            "what",
            Terms.of("many-exercises"),
            "found",
            (long) written.size(),
            "limit",
            MOST_EXERCISES);
      }
      check.check(written.get(i), inner.weights()).ifPresent(exercises::add);
    }
    if (written.isEmpty() && !damaged) {
      diagnostics.error(
          item.name(),
          "value.missing",
          "kind",
          Terms.kind("session"),
          "name",
          item.name().text(),
          "missing",
          "`do`");
    }
    boolean complete = !written.isEmpty() && exercises.size() == written.size();
    boolean works = exercises.stream().anyMatch(e -> !e.warmUp());
    if (complete && !damaged && !works) {
      diagnostics.error(item.name(), "value.warm-up", "session", item.name().text());
    }
    return complete && works && Range.EXERCISES.contains(written.size())
        ? Optional.of(
            new SessionPlan.Content(
                exercises, inner.warmUp(), inner.restBetween(), inner.warmUpText(), sorted.notes()))
        : Optional.empty();
  }

  /** Returns whether fewer weekdays are allowed than there are sessions, and reports it. */
  private boolean tooFewDays(
      SessionItem item, List<OnlyOn> parts, int perWeek, List<DayOfWeek> days) {
    if (parts.isEmpty() || days.size() >= perWeek) {
      return false;
    }
    diagnostics.error(
        parts.get(0),
        "value.days",
        "session",
        item.name().text(),
        "wanted",
        perWeek,
        "days",
        Listing.of(
            Listing.Style.AND,
            parts.stream()
                .flatMap(part -> part.days().stream())
                .map(day -> "`" + day.text() + "`")
                .toList()));
    return true;
  }

  private Optional<List<DayOfWeek>> weekdays(List<Word> words, String kind) {
    List<DayOfWeek> days = new ArrayList<>();
    Once once = new Once(diagnostics);
    boolean sound = true;
    for (Word word : words) {
      Optional<DayOfWeek> day = new Words(diagnostics).weekday(word);
      day.ifPresent(days::add);
      sound &= day.isPresent() && once.first(word, kind, word.text());
    }
    return sound ? Optional.of(days) : Optional.empty();
  }
}
