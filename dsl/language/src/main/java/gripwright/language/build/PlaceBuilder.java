package gripwright.language.build;

import gripwright.finding.ModelPath;
import gripwright.language.check.Overrides;
import gripwright.language.check.Source;
import gripwright.language.resolve.Declared;
import gripwright.language.resolve.Names;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import gripwright.language.syntax.AthleteItem;
import gripwright.language.syntax.BlockPart;
import gripwright.language.syntax.CompareItem;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.DefaultItem;
import gripwright.language.syntax.Note;
import gripwright.language.syntax.PlanItem;
import gripwright.language.syntax.ProtocolItem;
import gripwright.language.syntax.Report;
import gripwright.language.syntax.SessionPart;
import gripwright.language.syntax.Supervised;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.TestPart;
import gripwright.language.syntax.Word;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Records where declarations and the parts of plans are written. The place of a statement with a
 * body is its first line. Not thread-safe.
 */
final class PlaceBuilder {

  private final Map<ModelPath, Source> sources = new HashMap<>();

  Places build() {
    return new Places(sources);
  }

  /**
   * Records every named declaration.
   *
   * @param madePlans names of the valid plans; parts of other plans are not needed
   */
  void addAll(Names names, Set<String> madePlans) {
    names.athletes().forEach(this::athlete);
    names.grips().forEach(d -> named("grip", d));
    names.protocols().forEach(this::protocol);
    names.cohorts().forEach(d -> named("cohort", d));
    names.comparisons().forEach(this::comparison);
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

  private void athlete(Declared<Declaration.Athlete> declared) {
    if (declared.misnamed()) {
      return;
    }
    named("athlete", declared);
    ModelPath path = ModelPath.of("athlete", declared.name().text());
    int injuries = 0;
    for (AthleteItem item : declared.declaration().items()) {
      if (item instanceof AthleteItem.InjuryItem) {
        add(declared, path.then("injury", ++injuries), item);
      } else if (item instanceof AthleteItem.Trained) {
        add(declared, path.then("trained", 1), item);
      } else if (item instanceof AthleteItem.BodyMass) {
        add(declared, path.then("body-mass", 1), item);
      } else if (item instanceof AthleteItem.Familiar familiar) {
        for (AthleteItem.FamiliarGrip grip : familiar.grips()) {
          add(declared, path.then("familiar", grip.grip().text()), grip);
        }
      }
    }
  }

  private void protocol(Declared<Declaration.Protocol> declared) {
    named("protocol", declared);
    ModelPath path = ModelPath.of("protocol", declared.name().text());
    for (ProtocolItem item : declared.declaration().items()) {
      if (item instanceof Report report) {
        add(declared, path.then("report", report.item().text()), report);
      }
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

  private void comparison(Declared<Declaration.Compare> declared) {
    named("comparison", declared);
    ModelPath path = ModelPath.of("comparison", declared.name().text());
    int matches = 0;
    for (CompareItem item : declared.declaration().items()) {
      if (item instanceof CompareItem.Arm arm) {
        add(declared, path.then("arm", arm.name().text()), arm);
      } else if (item instanceof CompareItem.CompareBetween between) {
        between.protocols().forEach(word -> add(declared, path.then("arm", word.text()), word));
      } else if (item instanceof CompareItem.CompareMatch match) {
        add(declared, path.then("match", ++matches), match);
      }
    }
  }

  private void plan(Declared<Declaration.Plan> declared) {
    if (declared.misnamed()) {
      return;
    }
    named("plan", declared);
    PlanParts parts = new PlanParts(declared, ModelPath.of("plan", declared.name().text()));
    declared.declaration().items().forEach(item -> item.accept(parts));
  }

  /** Records the statements of a plan that have a path. */
  private final class PlanParts implements PlanItem.Visitor {
    private final Declared<?> declared;
    private final ModelPath plan;
    private int retests;
    private int waivers;

    PlanParts(Declared<?> declared, ModelPath plan) {
      this.declared = declared;
      this.plan = plan;
    }

    @Override
    public void note(Note item) {
      // has no path of its own
    }

    @Override
    public void defaultItem(DefaultItem item) {
      // has no path of its own
    }

    @Override
    public void report(Report item) {
      add(declared, plan.then("report", item.item().text()), item);
    }

    @Override
    public void supervised(Supervised item) {
      add(declared, plan.then("supervised", 1), item);
    }

    @Override
    public void forItem(PlanItem.ForItem item) {
      // has no path of its own
    }

    @Override
    public void fromItem(PlanItem.FromItem item) {
      // has no path of its own
    }

    @Override
    public void towards(PlanItem.Towards item) {
      // has no path of its own
    }

    @Override
    public void taperItem(PlanItem.TaperItem item) {
      add(declared, plan.then("taper", 1), item);
    }

    @Override
    public void demand(PlanItem.Demand item) {
      // has no path of its own
    }

    @Override
    public void rulesItem(PlanItem.RulesItem item) {
      // has no path of its own
    }

    @Override
    public void blockItem(PlanItem.BlockItem item) {
      block(declared, plan, item);
    }

    @Override
    public void retestItem(PlanItem.RetestItem item) {
      add(declared, plan.then("retest", ++retests), item);
    }

    @Override
    public void testItem(PlanItem.TestItem item) {
      ModelPath test = plan.then("retest", ++retests);
      add(declared, test, item);
      int exercises = 0;
      for (TestPart part : item.body().parts()) {
        if (part instanceof SessionPart.DoItem) {
          add(declared, test.then("exercise", ++exercises), part);
        }
      }
    }

    @Override
    public void waiveItem(PlanItem.WaiveItem item) {
      add(declared, plan.then("waiver", ++waivers), item);
    }

    @Override
    public void weeklyRise(PlanItem.WeeklyRise item) {
      // has no path of its own
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
    BlockContent content = new BlockContent(declared, block);
    parts.forEach(part -> part.accept(content));
  }

  /** Records the statements of a block that have a path. */
  private final class BlockContent implements BlockPart.Visitor {
    private final Declared<?> declared;
    private final ModelPath block;
    private int advances;
    private int eases;
    private int introductions;

    BlockContent(Declared<?> declared, ModelPath block) {
      this.declared = declared;
      this.block = block;
    }

    @Override
    public void note(Note part) {
      // has no path of its own
    }

    @Override
    public void defaultItem(DefaultItem part) {
      // has no path of its own
    }

    @Override
    public void noTraining(BlockPart.NoTraining part) {
      // has no path of its own
    }

    @Override
    public void sessionItem(BlockPart.SessionItem part) {
      session(declared, block, part);
    }

    @Override
    public void advanceItem(BlockPart.AdvanceItem part) {
      add(declared, block.then("advance", ++advances), part);
    }

    @Override
    public void easeItem(BlockPart.EaseItem part) {
      for (int i = 0; i < part.weeks().size(); i++) {
        add(declared, block.then("ease", ++eases), part);
      }
    }

    @Override
    public void introduceItem(BlockPart.IntroduceItem part) {
      add(declared, block.then("introduce", ++introductions), part);
    }

    @Override
    public void blockOnlyFor(BlockPart.BlockOnlyFor part) {
      // recorded for each of its athletes with the rest of the block
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

  /** Returns the path of an athlete's own text, in which {@code for} comes right after the plan. */
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
