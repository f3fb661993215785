package gripwright.export.text;

import gripwright.change.PlanChange;
import gripwright.diff.EditionDiff;
import gripwright.diff.FactChange;
import gripwright.diff.PlanDiff;
import gripwright.diff.Redefinition;
import gripwright.finding.ReportedFinding;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/**
 * What changed in meaning from one edition to another, as a coach reads it: causes first, then plan
 * by plan, the most important first, then findings. Stateless and thread-safe; the same in every
 * locale.
 */
public final class DiffText {

  private DiffText() {}

  /**
   * Returns the text of a comparison, closed by a line feed. Changes that are the same on several
   * days are told once.
   */
  public static String of(EditionDiff diff) {
    if (diff.isEmpty()) {
      return "no change in meaning\n";
    }
    Page page = new Page();
    section(page, "KNOWN OTHERWISE", diff.facts(), fact -> page.wrapped("  ", fact(fact)));
    section(
        page,
        "DEFINED OTHERWISE",
        diff.definitions(),
        definition -> page.wrapped("  ", definition(definition)));
    section(page, "NEW PLANS", diff.added(), plan -> page.wrapped("  ", plan(plan)));
    section(page, "PLANS NO LONGER THERE", diff.dropped(), plan -> page.wrapped("  ", plan(plan)));
    diff.plans().forEach(plan -> add(page, plan));
    section(page, "NEW FINDINGS", diff.findingsNew(), finding -> add(page, finding));
    section(page, "FINDINGS NO LONGER THERE", diff.findingsGone(), finding -> add(page, finding));
    return page.toString().substring(1); // each section begins with a gap
  }

  private static <T> void section(Page page, String title, List<T> lines, Consumer<T> add) {
    if (!lines.isEmpty()) {
      page.gap();
      page.line(title);
      lines.forEach(add);
    }
  }

  private static void add(Page page, PlanDiff plan) {
    page.gap();
    page.hanging(
        Page.clean(
            plan.after().plan().name().toUpperCase(Locale.ROOT).replace('-', ' ')
                + " for "
                + plan.after().athlete().title()));
    ChangeGroup.of(plan.changes()).stream()
        .sorted(
            Comparator.comparingInt((ChangeGroup g) -> rank(g.first()))
                .thenComparing(ChangeGroup::date))
        .map(group -> ChangeWords.sentence(group, plan.after()))
        .forEach(sentence -> page.wrapped("  ", Page.clean(sentence)));
    plan.cautionsNew()
        .forEach(c -> page.wrapped("  ", Page.clean("new caution: " + Wording.english().say(c))));
    plan.cautionsGone()
        .forEach(
            c -> page.wrapped("  ", Page.clean("no longer said: " + Wording.english().say(c))));
  }

  /** From what moves everything to what is one number. */
  private static int rank(PlanChange change) {
    if (change instanceof PlanChange.PlanMoved || change instanceof PlanChange.GoalChanged) {
      return 0;
    }
    if (change instanceof PlanChange.BlockAdded
        || change instanceof PlanChange.BlockDropped
        || change instanceof PlanChange.BlockMoved
        || change instanceof PlanChange.BlockResized) {
      return 1;
    }
    if (change instanceof PlanChange.GripStarts || change instanceof PlanChange.WeekEased) {
      return 2;
    }
    if (change instanceof PlanChange.SessionAdded
        || change instanceof PlanChange.SessionDropped
        || change instanceof PlanChange.SessionMoved) {
      return 3;
    }
    if (change instanceof PlanChange.RetestChanged) {
      return 4;
    }
    if (change instanceof PlanChange.ExerciseAdded
        || change instanceof PlanChange.ExerciseDropped) {
      return 5;
    }
    if (change instanceof PlanChange.ExerciseChanged c) {
      return c.measure() == PlanChange.Measure.LOAD ? 7 : 6;
    }
    return change instanceof PlanChange.SessionTimed ? 8 : 9;
  }

  private static String fact(FactChange change) {
    String what = change.fact().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    String words =
        change.before().isEmpty()
            ? ", new: " + change.after()
            : change.after().isEmpty()
                ? ", no longer: " + change.before()
                : ": " + change.after() + " instead of " + change.before();
    return Page.clean(change.athlete() + ", " + what + words);
  }

  private static String definition(Redefinition change) {
    return change.kind().name().toLowerCase(Locale.ROOT)
        + " "
        + change.name()
        + switch (change.state()) {
          case NEW -> " is new";
          case GONE -> " is gone";
          case CHANGED -> " says something else";
        };
  }

  private static String plan(CompiledPlan plan) {
    return Page.clean(
        plan.plan().name()
            + " for "
            + plan.athlete().title()
            + ", "
            + Page.dayAndYear(plan.plan().from())
            + " to "
            + Page.dayAndYear(plan.plan().to())
            + ", "
            + Page.count(plan.sessions().size(), "session"));
  }

  private static void add(Page page, ReportedFinding finding) {
    page.wrapped("  ", WeekNotes.head(finding) + ": " + Page.clean(finding.message()));
    String place = finding.place();
    if (place != null) {
      page.wrapped("    ", "in " + Page.clean(place));
    }
  }
}
