package gripwright.language.write.internal;

import gripwright.grip.Setup;
import gripwright.language.write.Unwritable;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes plans. */
final class PlanLines {

  private final Lines out = new Lines();

  private PlanLines() {}

  static String of(Plan plan) {
    PlanLines lines = new PlanLines();
    lines.plan(plan);
    return lines.out.text();
  }

  private void plan(Plan plan) {
    out.add("plan " + plan.name() + Written.quotedIfPresent(plan.title()) + " {");
    out.list("for ", plan.athletes(), a -> a);
    out.add("from " + plan.from());
    plan.towards()
        .ifPresent(
            goal -> out.add("towards " + goal.date() + Written.quotedIfPresent(goal.title())));
    plan.taper().ifPresent(this::taper);
    out.list(
        "demand ",
        plan.demand().entrySet(),
        share -> share.getKey().name() + " " + Written.percent(share.getValue()));
    out.list("rules ", plan.ruleSets(), r -> r);
    plan.weeklyRise().ifPresent(rise -> out.add("weekly-rise at most " + Written.percent(rise)));
    if (!plan.warmUp().equals(Plan.STANDARD_WARM_UP) || plan.warmUpText().isPresent()) {
      out.add(
          "warm-up " + Written.time(plan.warmUp()) + Written.quotedIfPresent(plan.warmUpText()));
    }
    if (!plan.restBetween().equals(Plan.STANDARD_REST_BETWEEN)) {
      out.add("rest between exercises " + Written.time(plan.restBetween()));
    }
    if (!plan.weights().equals(Exercise.Weights.STANDARD)) {
      out.add(weigh(plan.weights()));
    }
    plan.supervisedBy().ifPresent(who -> out.add("supervised by " + Written.quoted(who)));
    plan.reports().forEach(report -> out.add(Written.report(report)));
    plan.notes().forEach(note -> out.add(Written.note(note)));
    plan.blocks().forEach(block -> out.add("\n" + BlockLines.of(block)));
    out.add("");
    plan.retests().forEach(this::retest);
    plan.waivers().forEach(this::waiver);
    out.add("}");
  }

  private void taper(Plan.Taper taper) {
    out.add(
        "taper "
            + Written.weeks(taper.weeks())
            + " to "
            + Written.percent(taper.setsFraction())
            + " sets");
  }

  static String weigh(Exercise.Weights weights) {
    return "weigh match "
        + Written.percent(weights.match())
        + ", margin "
        + Written.percent(weights.margin())
        + ", carry-over "
        + Written.percent(weights.carryOver());
  }

  private void retest(PlannedTest retest) {
    if (retest.setups().isEmpty()) {
      throw new Unwritable("a retest of no grip");
    }
    Setup first = retest.setups().get(0);
    String place = Written.place(first.edge(), first.hands(), first.lifting());
    if (!retest.setups().stream()
        .allMatch(s -> Written.place(s.edge(), s.hands(), s.lifting()).equals(place))) {
      throw new Unwritable("a retest on more than one edge, or with different hands");
    }
    String grips =
        retest.setups().stream().map(s -> s.grip().name()).collect(Collectors.joining(", "));
    if (retest.isPlain()) {
      out.add(
          "retest "
              + grips
              + " "
              + place
              + " hold "
              + Written.seconds(retest.kind().holdTime())
              + " "
              + TestLines.times(retest));
    } else {
      new TestLines(out).write(retest, grips + " " + place);
    }
  }

  private void waiver(Plan.Waiver waiver) {
    StringBuilder line = new StringBuilder("waive ").append(waiver.rule()).append(" in ");
    line.append(waiver.block().orElse("plan"));
    waiver.week().ifPresent(week -> line.append(" week ").append(week));
    Optional<String> session = waiver.session();
    session.ifPresent(name -> line.append(" session ").append(name));
    waiver.exercise().ifPresent(number -> line.append(" exercise ").append(number));
    out.add(line.append(" because ").append(Written.quoted(waiver.because())).toString());
  }
}
