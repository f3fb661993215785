package gripwright.export.text;

import gripwright.change.PlanChange;
import gripwright.change.SessionChange;
import gripwright.diff.EditionDiff;
import gripwright.diff.FactChange;
import gripwright.diff.PlanDiff;
import gripwright.diff.Redefinition;
import gripwright.export.words.Words;
import gripwright.finding.ReportedFinding;
import gripwright.schedule.Caution;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/**
 * Describes for a coach what changed in meaning from one edition to another: causes first, then
 * plan by plan, the most important first, then findings. Words and date formats come from a message
 * bundle. Stateless and thread-safe.
 */
public final class DiffText {

  private final Words words;
  private final ChangeWords changes;
  private final Page page = new Page();

  private DiffText(Words words) {
    this.words = words;
    changes = new ChangeWords(words);
  }

  /**
   * Returns the text of a comparison, closed by a line feed. A change that is the same on several
   * days appears once.
   */
  public static String of(EditionDiff diff, Wording wording) {
    return new DiffText(new Words(wording)).write(diff);
  }

  private String write(EditionDiff diff) {
    if (diff.isEmpty()) {
      page.line(words.say("diff.none"));
      return page.toString();
    }
    section("diff.facts", diff.facts(), fact -> page.wrapped("  ", fact(fact)));
    section(
        "diff.definitions",
        diff.definitions(),
        definition -> page.wrapped("  ", definition(definition)));
    section("diff.plans-new", diff.added(), plan -> page.wrapped("  ", plan(plan)));
    section("diff.plans-gone", diff.dropped(), plan -> page.wrapped("  ", plan(plan)));
    diff.plans().forEach(this::add);
    section("diff.findings-new", diff.findingsNew(), this::add);
    section("diff.findings-gone", diff.findingsGone(), this::add);
    return page.toString().substring(1); // each section begins with an empty line
  }

  private <T> void section(String key, List<T> lines, Consumer<T> add) {
    if (!lines.isEmpty()) {
      page.gap();
      page.line(words.say(key));
      lines.forEach(add);
    }
  }

  private void add(PlanDiff plan) {
    page.gap();
    page.hanging(
        Page.clean(
            words.say(
                "diff.plan-heading",
                "plan",
                words.capitals(plan.after().plan().name()).replace('-', ' '),
                "athlete",
                plan.after().athlete().title())));
    ChangeGroup.of(plan.changes()).stream()
        .sorted(
            Comparator.comparingInt((ChangeGroup g) -> rank(g.first()))
                .thenComparing(ChangeGroup::date))
        .map(group -> changes.sentence(group, plan.after()))
        .forEach(sentence -> page.wrapped("  ", Page.clean(sentence)));
    plan.cautionsNew().forEach(c -> caution("diff.caution-new", c));
    plan.cautionsGone().forEach(c -> caution("diff.caution-gone", c));
  }

  private void caution(String key, Caution caution) {
    page.wrapped("  ", Page.clean(words.say(key, "caution", caution)));
  }

  /** Returns the rank of a change, from those that move everything to those of a single number. */
  private static int rank(PlanChange change) {
    return switch (change.kind()) {
      case PLAN_MOVED, GOAL_CHANGED -> 0;
      case BLOCK_ADDED, BLOCK_DROPPED, BLOCK_MOVED, BLOCK_RESIZED -> 1;
      case GRIP_STARTS, WEEK_EASED -> 2;
      case SESSION_ADDED, SESSION_DROPPED, SESSION_MOVED -> 3;
      case RETEST_CHANGED -> 4;
      case EXERCISE_ADDED, EXERCISE_DROPPED -> 5;
      case EXERCISE_CHANGED -> isOfLoad(change) ? 7 : 6;
      case SESSION_TIMED -> 8;
      case WAIVER_ADDED, WAIVER_DROPPED, PART_CHANGED, BLOCK_REWRITTEN -> 9;
    };
  }

  private static boolean isOfLoad(PlanChange change) {
    return change instanceof SessionChange.ExerciseChanged c
        && c.measure() == SessionChange.Measure.LOAD;
  }

  private String fact(FactChange change) {
    String key =
        change.before().isEmpty()
            ? "diff.fact-new"
            : change.after().isEmpty() ? "diff.fact-gone" : "diff.fact-changed";
    return Page.clean(
        words.say(
            key,
            "athlete",
            change.athlete(),
            "fact",
            words.of("diff.fact", change.fact()),
            "before",
            words.few(change.before()),
            "after",
            words.few(change.after())));
  }

  private String definition(Redefinition change) {
    return words.say(
        Words.key("diff.defined", change.state()),
        "kind",
        words.of("diff.kind", change.kind()),
        "name",
        change.name());
  }

  private String plan(CompiledPlan plan) {
    return Page.clean(
        words.say(
            "diff.plan",
            "plan",
            plan.plan().name(),
            "athlete",
            plan.athlete().title(),
            "from",
            words.dayAndYear(plan.plan().from()),
            "to",
            words.dayAndYear(plan.plan().to()),
            "sessions",
            words.count("diff.sessions", plan.sessions().size())));
  }

  private void add(ReportedFinding finding) {
    page.wrapped("  ", WeekNotes.sentence(finding, words));
    String place = finding.place();
    if (place != null) {
      page.wrapped("    ", words.say("diff.finding-place", "place", Page.clean(place)));
    }
  }
}
