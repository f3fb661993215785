package gripwright.language.check;

import gripwright.grip.Grip;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.BlockPart;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.PlanItem.BlockItem;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.Word;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.SessionPlan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Checks a block of a plan. */
final class BlockCheck {

  private final PlanScope scope;
  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Defaults defaults;
  private final Map<Session, Optional<SessionPlan>> checked = new HashMap<>();

  /** A session and the defaults that apply to it, checked once for all its athletes. */
  private record Session(int id, Defaults defaults) {}

  BlockCheck(PlanScope scope, Defaults defaults) {
    this.scope = scope;
    this.diagnostics = scope.diagnostics();
    this.amounts = new Amounts(diagnostics);
    this.defaults = defaults;
  }

  /** Returns the block; empty if it has a mistake, which is reported. */
  Optional<Block> check(BlockItem item) {
    Optional<Integer> weeks = amounts.weeks(item.length(), Slot.BLOCK);
    diagnostics.markInvalidIf(item.damaged());
    Optional<Block.Content> base = content(item, item.parts(), weeks, item.damaged());
    Map<String, Block.Content> only = new HashMap<>();
    OnlyFor onlyFor = new OnlyFor(scope);
    for (BlockPart.BlockOnlyFor own : BlockParts.of(item.parts()).onlyFor()) {
      List<String> athletes = onlyFor.athletes(own.athletes());
      diagnostics.markInvalidIf(own.damaged());
      nested(own);
      if (athletes.isEmpty()) {
        // No athlete to build it for: the statements are still checked by themselves.
        content(item, own.parts(), weeks, true);
        continue;
      }
      content(item, Overrides.block(item.parts(), own), weeks, item.damaged() || own.damaged())
          .ifPresent(content -> athletes.forEach(athlete -> only.put(athlete, content)));
    }
    if (!diagnostics.sound() || weeks.isEmpty() || base.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Block.named(item.name().text(), weeks.get()).content(base.get()).only(only).build());
  }

  private void nested(BlockPart.BlockOnlyFor own) {
    for (BlockPart.BlockOnlyFor inner : BlockParts.of(own.parts()).onlyFor()) {
      diagnostics.error(
          inner.athletes().get(0), "value.misplaced", "what", "only for", "inside", "only for");
    }
  }

  private Optional<Block.Content> content(
      BlockItem item, List<BlockPart> parts, Optional<Integer> weeks, boolean damaged) {
    Defaults inner = defaults.within(diagnostics, parts);
    BlockParts sorted = BlockParts.of(parts);
    if (!sorted.noTraining().isEmpty()) {
      return noTraining(sorted);
    }
    Optional<List<SessionPlan>> sessions = sessions(item, sorted.sessions(), inner, damaged);
    // The grip may be in the part that could not be parsed.
    Optional<Set<String>> trained =
        Damage.in(parts) || damaged ? Optional.empty() : sessions.map(BlockCheck::trained);
    List<Advance> advances = advances(sorted.advances(), trained);
    List<Block.Ease> eases = eases(sorted.eases(), weeks);
    List<Block.Introduction> introductions = introductions(sorted.introductions(), trained);
    return sessions
        .filter(made -> diagnostics.sound())
        .map(made -> new Block.Content(made, advances, eases, introductions, sorted.notes()));
  }

  /** Returns the content of a block that is empty on purpose, if nothing else is in it. */
  private Optional<Block.Content> noTraining(BlockParts parts) {
    Once once = new Once(diagnostics);
    parts.noTraining().forEach(each -> once.first(each, "no training"));
    parts.sessions().forEach(session -> besideNoTraining(session.name(), "session"));
    parts.advances().forEach(each -> besideNoTraining(each, "advance"));
    parts.eases().forEach(each -> besideNoTraining(each, "ease"));
    parts.introductions().forEach(each -> besideNoTraining(each, "introduce"));
    return diagnostics.sound()
        ? Optional.of(new Block.Content(List.of(), List.of(), List.of(), List.of(), parts.notes()))
        : Optional.empty();
  }

  private void besideNoTraining(Syntax at, String what) {
    diagnostics.error(at, "value.no-training", "what", what);
  }

  private Optional<List<SessionPlan>> sessions(
      BlockItem item, List<BlockPart.SessionItem> parts, Defaults inner, boolean damaged) {
    Once once = new Once(diagnostics);
    List<SessionPlan> sessions = new ArrayList<>();
    boolean sound = true;
    for (BlockPart.SessionItem session : parts) {
      once.first(session.name(), "session", session.name().text());
      Optional<SessionPlan> made =
          checked.computeIfAbsent(
              new Session(session.id(), inner),
              key -> new SessionCheck(scope, inner).check(session));
      made.ifPresent(sessions::add);
      sound &= made.isPresent();
    }
    if (parts.isEmpty() && !damaged) {
      diagnostics.error(
          item.name(),
          "value.missing",
          "kind",
          Terms.kind("block"),
          "name",
          item.name().text(),
          "missing",
          "`session`");
    }
    return !parts.isEmpty() && sound ? Optional.of(sessions) : Optional.empty();
  }

  /** Returns the names of the grips that any athlete trains. */
  private static Set<String> trained(List<SessionPlan> sessions) {
    Set<String> trained = new TreeSet<>();
    for (SessionPlan session : sessions) {
      List<SessionPlan.Content> contents = new ArrayList<>(session.only().values());
      contents.add(session.content());
      for (SessionPlan.Content content : contents) {
        content.exercises().forEach(exercise -> trained.addAll(grips(exercise.target())));
      }
    }
    return trained;
  }

  private static List<String> grips(Exercise.Target target) {
    return target.grips().stream().map(Grip::name).toList();
  }

  private boolean isTrained(Word grip, Optional<Set<String>> trained) {
    if (trained.isEmpty() || trained.get().contains(grip.text())) {
      return true;
    }
    diagnostics.error(
        grip,
        "value.not-trained",
        "grip",
        grip.text(),
        "trained",
        String.join(", ", trained.get()));
    return false;
  }

  private List<Advance> advances(List<BlockPart.AdvanceItem> parts, Optional<Set<String>> trained) {
    List<Advance> advances = new ArrayList<>();
    List<BlockPart.AdvanceItem> before = new ArrayList<>();
    for (BlockPart.AdvanceItem item : parts) {
      Word on = item.on();
      if (on != null && scope.grips().find(diagnostics, on).isPresent()) {
        isTrained(on, trained);
      }
      before.stream()
          .filter(other -> meets(other, item))
          .findFirst()
          .ifPresent(
              other ->
                  diagnostics.errorBeside(
                      item, other, "first-written-here", "value.advance-twice"));
      before.add(item);
      new AdvanceCheck(diagnostics).check(item).ifPresent(advances::add);
    }
    return advances;
  }

  private static boolean meets(BlockPart.AdvanceItem first, BlockPart.AdvanceItem second) {
    Word on = first.on();
    Word other = second.on();
    return on == null || other == null || on.text().equals(other.text());
  }

  private List<Block.Ease> eases(List<BlockPart.EaseItem> parts, Optional<Integer> weeks) {
    List<Block.Ease> eases = new ArrayList<>();
    Once once = new Once(diagnostics);
    for (BlockPart.EaseItem item : parts) {
      Optional<Double> share = amounts.base(item.share(), Slot.EASE);
      for (Amount written : item.weeks()) {
        Optional<Integer> week = amounts.count(written, Slot.WEEK);
        if (week.isPresent() && once.first(written, "eased-week", week.get().toString())) {
          within(written, week.get(), weeks);
          share.ifPresent(s -> eases.add(new Block.Ease(week.get(), s)));
        }
      }
    }
    return eases;
  }

  private void within(Amount written, int week, Optional<Integer> weeks) {
    if (weeks.isPresent() && week > weeks.get()) {
      diagnostics.error(written, "value.week", "week", week, "weeks", weeks.get());
    }
  }

  private List<Block.Introduction> introductions(
      List<BlockPart.IntroduceItem> parts, Optional<Set<String>> trained) {
    List<Block.Introduction> introductions = new ArrayList<>();
    Once once = new Once(diagnostics);
    for (BlockPart.IntroduceItem item : parts) {
      Optional<Grip> grip = scope.grips().find(diagnostics, item.grip());
      boolean first = once.first(item.grip(), "introduced-grip", item.grip().text());
      Optional<Double> from = from(item.from());
      Optional<Integer> over = amounts.weeks(item.over(), Slot.RAMP);
      if (grip.isPresent()
          && isTrained(item.grip(), trained)
          && first
          && from.isPresent()
          && over.isPresent()) {
        introductions.add(new Block.Introduction(grip.get(), from.get(), over.get()));
      }
    }
    return introductions;
  }

  private Optional<Double> from(Expr from) {
    Values values = new Values(diagnostics);
    if (from instanceof Expr.PercentOfMax percent) {
      return values.ofMax(percent);
    }
    if (from instanceof Amount amount) {
      values.level(amount).ifPresent(level -> noShare(from));
    } else {
      noShare(from);
    }
    return Optional.empty();
  }

  private void noShare(Expr from) {
    diagnostics.error(
        from,
        "type.mismatch",
        "slot",
        Terms.of("start-of-ramp"),
        "expected",
        Terms.of("value-level"),
        "found",
        from instanceof Amount ? Slot.LOAD : Values.kind(from));
  }
}
