package gripwright.language.build;

import gripwright.finding.ModelPath;
import gripwright.language.check.Overrides;
import gripwright.language.check.Source;
import gripwright.language.resolve.Declared;
import gripwright.language.resolve.Names;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import gripwright.language.syntax.BlockPart;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.PlanItem;
import gripwright.language.syntax.SessionPart;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.Word;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Notes where the parts of plans, and all other declarations, are written. A statement with a body
 * is its first line. Not thread-safe.
 */
final class PlaceBuilder {

  private final Map<ModelPath, Source> sources = new HashMap<>();

  Places build() {
    return new Places(sources);
  }

  /**
   * Notes every declaration that has a name of its own.
   *
   * @param madePlans the plans that are in order; nothing is asked about others
   */
  void addAll(Names names, Set<String> madePlans) {
    names.athletes().forEach(d -> named("athlete", d));
    names.grips().forEach(d -> named("grip", d));
    names.protocols().forEach(d -> named("protocol", d));
    names.comparisons().forEach(d -> named("comparison", d));
    names.logs().forEach(d -> named("log", d));
    names.ruleSets().forEach(this::ruleSet);
    names.plans().stream().filter(d -> madePlans.contains(d.name().text())).forEach(this::plan);
  }

  void add(ModelPath path, SourceFile file, Span span) {
    sources.putIfAbsent(path, new Source(file, firstLine(file, span)));
  }

  private static Span firstLine(SourceFile file, Span span) {
    int line = file.line(span.start());
    int end = Math.min(span.end(), file.lineStart(line) + file.lineText(line).length());
    while (end > span.start() && " \t\r{".indexOf(file.text().charAt(end - 1)) >= 0) {
      end--;
    }
    return Span.between(span.start(), Math.max(end, span.start()));
  }

  private void named(String kind, Declared<?> declared) {
    if (!declared.misnamed() || kind.equals("log")) {
      add(
          ModelPath.of(kind, declared.name().text()),
          declared.file().source(),
          declared.span(declared.name()));
    }
  }

  private void ruleSet(Declared<Declaration.Rules> declared) {
    named("rules", declared);
    ModelPath path = ModelPath.of("rules", declared.name().text());
    declared
        .declaration()
        .rules()
        .forEach(
            rule ->
                add(
                    path.then("rule", rule.name().text()),
                    declared.file().source(),
                    declared.span(rule.name())));
  }

  private void plan(Declared<Declaration.Plan> declared) {
    if (declared.misnamed()) {
      return;
    }
    named("plan", declared);
    String name = declared.name().text();
    int retests = 0;
    int waivers = 0;
    for (PlanItem item : declared.declaration().items()) {
      ModelPath path = ModelPath.of("plan", name);
      if (item instanceof PlanItem.RetestItem) {
        add(declared, path.then("retest", ++retests), item);
      } else if (item instanceof PlanItem.TaperItem) {
        add(declared, path.then("taper", 1), item);
      } else if (item instanceof PlanItem.WaiveItem) {
        add(declared, path.then("waiver", ++waivers), item);
      } else if (item instanceof PlanItem.BlockItem block) {
        block(declared, path, block);
      }
    }
  }

  private void add(Declared<?> declared, ModelPath path, Syntax part) {
    add(path, declared.file().source(), declared.span(part));
  }

  private void block(Declared<?> declared, ModelPath plan, PlanItem.BlockItem block) {
    String name = block.name().text();
    ModelPath path = plan.then("block", name);
    add(declared, path, block);
    content(declared, path, block.parts());
    for (BlockPart part : block.parts()) {
      if (part instanceof BlockPart.BlockOnlyFor own) {
        List<BlockPart> parts = Overrides.block(block.parts(), own);
        for (Word athlete : own.athletes()) {
          content(declared, plan.then("for", athlete.text()).then("block", name), parts);
        }
      }
    }
  }

  private void content(Declared<?> declared, ModelPath block, List<BlockPart> parts) {
    int advances = 0;
    int eases = 0;
    int introductions = 0;
    for (BlockPart part : parts) {
      if (part instanceof BlockPart.AdvanceItem) {
        add(declared, block.then("advance", ++advances), part);
      } else if (part instanceof BlockPart.IntroduceItem) {
        add(declared, block.then("introduce", ++introductions), part);
      } else if (part instanceof BlockPart.EaseItem ease) {
        for (int i = 0; i < ease.weeks().size(); i++) {
          add(declared, block.then("ease", ++eases), part);
        }
      } else if (part instanceof BlockPart.SessionItem session) {
        session(declared, block, session);
      }
    }
  }

  private void session(Declared<?> declared, ModelPath block, BlockPart.SessionItem session) {
    String name = session.name().text();
    ModelPath path = block.then("session", name);
    add(declared, path, session);
    exercises(declared, path, session.parts());
    for (SessionPart part : session.parts()) {
      if (part instanceof SessionPart.SessionOnlyFor own) {
        List<SessionPart> parts = Overrides.session(session.parts(), own);
        for (Word athlete : own.athletes()) {
          exercises(declared, forAthlete(path, athlete.text()), parts);
        }
      }
    }
  }

  /** Returns the path of an athlete's own text: {@code for} stands right after the plan. */
  private static ModelPath forAthlete(ModelPath path, String athlete) {
    ModelPath own = ModelPath.ROOT;
    for (ModelPath.Step step : path.without("for").steps()) {
      own = own.then(step.kind(), step.name());
      if (step.kind().equals("plan")) {
        own = own.then("for", athlete);
      }
    }
    return own;
  }

  private void exercises(Declared<?> declared, ModelPath session, List<SessionPart> parts) {
    int exercises = 0;
    for (SessionPart part : parts) {
      if (part instanceof SessionPart.DoItem) {
        add(declared, session.then("exercise", ++exercises), part);
      }
    }
  }
}
