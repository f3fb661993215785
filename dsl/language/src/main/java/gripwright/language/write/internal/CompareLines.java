package gripwright.language.write.internal;

import gripwright.compare.Arm;
import gripwright.compare.Cohort;
import gripwright.compare.Comparison;
import gripwright.compare.Objective;
import gripwright.compare.Spread;
import java.util.Optional;

/** Writes cohorts and comparisons. */
final class CompareLines {

  private final Lines out = new Lines();

  private CompareLines() {}

  static String of(Cohort cohort) {
    CompareLines lines = new CompareLines();
    lines.cohort(cohort);
    return lines.out.text();
  }

  static String of(Comparison comparison) {
    CompareLines lines = new CompareLines();
    lines.comparison(comparison);
    return lines.out.text();
  }

  private void cohort(Cohort cohort) {
    out.add("cohort " + cohort.name() + Written.quotedIfPresent(cohort.title()) + " {");
    out.add("size " + cohort.size());
    cohort
        .sexes()
        .ifPresent(
            sexes ->
                out.add(
                    "sex female "
                        + Written.percent(sexes.female())
                        + Written.quotedIfPresent(sexes.source())));
    cohort
        .handBySex()
        .ifPresent(
            source ->
                out.add(
                    "hand by sex"
                        + Written.quotedIfPresent(
                            Optional.of(source).filter(text -> !text.isEmpty()))));
    cohort.bodyMass().ifPresent(mass -> out.add("body-mass " + kilograms(mass) + source(mass)));
    Spread load = cohort.maximum().load();
    out.add(
        "maximum "
            + kilograms(load)
            + " on "
            + Written.setup(cohort.maximum().setup())
            + source(load));
    cohort
        .criticalForce()
        .ifPresent(
            force ->
                out.add(
                    "critical-force "
                        + Written.percent(force.median())
                        + " max spread "
                        + Written.percent(force.deviation())
                        + source(force)));
    cohort
        .correlations()
        .forEach(
            each ->
                out.add(
                    "correlate "
                        + each.one().word()
                        + ", "
                        + each.other().word()
                        + " "
                        + Written.number(each.value())
                        + Written.quotedIfPresent(each.source())));
    cohort.sources().forEach(source -> out.add("source " + Written.quoted(source)));
    cohort.notes().forEach(note -> out.add(Written.note(note)));
    out.add("}");
  }

  private static String kilograms(Spread spread) {
    return Written.number(spread.median())
        + " kg spread "
        + (spread.relative()
            ? Written.percent(spread.deviation())
            : Written.number(spread.deviation()) + " kg");
  }

  private static String source(Spread spread) {
    return Written.quotedIfPresent(spread.source());
  }

  private void comparison(Comparison comparison) {
    out.add("compare " + comparison.name() + Written.quotedIfPresent(comparison.title()) + " {");
    out.list("for ", comparison.subjects().names(), name -> name);
    comparison
        .arms()
        .forEach(arm -> out.add("arm " + arm.name() + " " + arm.content().accept(new Contents())));
    comparison
        .matches()
        .forEach(
            match ->
                out.add(
                    "match "
                        + match.quantity().word()
                        + " of "
                        + match.arm()
                        + " to "
                        + match.to()
                        + " by "
                        + match.by()
                        + (match.within().isPresent()
                            ? " within " + Written.percent(match.within().getAsDouble())
                            : "")));
    if (comparison.matchEach()) {
      out.add("match each athlete");
    }
    out.add("each " + comparison.perWeek() + " per week");
    out.add("over " + Written.weeks(comparison.weeks()));
    out.add("draws " + comparison.draws() + " stream " + comparison.stream());
    out.list("measure ", comparison.measures(), m -> m.word());
    out.list("prefer ", comparison.objectives(), Objective::toString);
    comparison.reports().forEach(report -> out.add(Written.report(report)));
    comparison.notes().forEach(note -> out.add(Written.note(note)));
    out.add("}");
  }

  private static final class Contents implements Arm.Content.Visitor<String> {
    @Override
    public String trained(Arm.Trained content) {
      return BlockLines.exercise(content.exercise());
    }

    @Override
    public String planned(Arm.Planned content) {
      return "plan " + content.plan().name();
    }

    @Override
    public String noTraining(Arm.NoTraining content) {
      return "no training";
    }
  }
}
