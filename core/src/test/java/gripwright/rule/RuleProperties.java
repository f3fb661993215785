package gripwright.rule;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.number;
import static gripwright.expression.Expression.percent;
import static gripwright.expression.Expression.percentOfMax;
import static gripwright.expression.Expression.subject;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Injury;
import gripwright.expression.Expression;
import gripwright.expression.ExpressionCompiler;
import gripwright.expression.ExpressionValues;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.grip.Grip;
import gripwright.hand.Finger;
import gripwright.hand.Structure;
import gripwright.quantity.Unit;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Schedule;
import gripwright.season.CompiledPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Properties of rules for every plan and athlete. */
public class RuleProperties {

  private static final Grip[] GRIPS = {
    Winter.HALF_CRIMP, Winter.FULL_CRIMP, Winter.FRONT_TWO, Winter.BACK_TWO, Winter.MIDDLE_ONE
  };

  private static final Rule TIME =
      Rule.error("week-time", Scope.WEEK)
          .require(subject(Kind.WEEK).get("time-under-load").atMost(amount(60, Unit.SECOND)))
          .message("more than a minute of holds this week")
          .build();
  private static final Rule EDGE =
      Rule.warning("half-level", Scope.EXERCISE)
          .require(subject(Kind.EXERCISE).get("level").atMost(percentOfMax(50)))
          .message("above half of the maximum")
          .build();
  private static final Rule GAP =
      Rule.error("day-between", Scope.PAIR_OF_SESSIONS)
          .require(subject(Kind.PAIR).get("gap").atLeast(amount(2, Unit.DAY)))
          .message("no day between two sessions")
          .neverWaived()
          .build();

  private static final Rule SETS_RULE =
      Rule.warning("few-sets", Scope.EXERCISE)
          .require(subject(Kind.EXERCISE).get("sets").atMost(number(2)))
          .message("more than two sets")
          .build();

  private static final RuleSet[] SETS = {
    RuleSet.of("one", TIME, SETS_RULE), RuleSet.of("two", EDGE), RuleSet.of("three", GAP)
  };

  /** Returns a winter that is the same for the same seed; few of them keep every rule. */
  public static Winter winter(long seed) {
    return winter(seed, List.of(SETS));
  }

  private static Winter winter(long seed, List<RuleSet> named) {
    Random random = new Random(seed);
    Winter winter = new Winter();
    winter.athlete(
        a ->
            a.born(Winter.MONDAY.minusMonths(170 + random.nextInt(60)))
                .trained(random.nextInt(80))
                .ability(Ability.of(GradeScale.IRCRA, Integer.toString(12 + random.nextInt(16)))));
    if (random.nextInt(3) == 0) {
      LocalDate from = Winter.MONDAY.minusDays(100);
      Optional<LocalDate> cleared =
          random.nextBoolean() ? Optional.of(from.plusDays(random.nextInt(120))) : Optional.empty();
      winter.athlete(
          a -> a.injury(Injury.builder(Finger.RING, Structure.A4, from).cleared(cleared).build()));
    }
    for (int day = 0; day < 50; day += 1 + random.nextInt(5)) {
      Winter.Line[] lines = new Winter.Line[1 + random.nextInt(2)];
      for (int i = 0; i < lines.length; i++) {
        lines[i] =
            Winter.line(GRIPS[random.nextInt(GRIPS.length)], 30 + random.nextInt(65))
                .sets(1 + random.nextInt(5));
      }
      winter.session(day, lines);
    }
    if (random.nextBoolean()) {
      winter.climbing(random.nextInt(40));
    }
    named.forEach(set -> winter.rules(set.name()));
    return winter;
  }

  private static List<String> allNames() {
    return RuleCheck.names(winter(0).compiled().plan(), List.of(SETS));
  }

  @Property
  void theOrderOfRuleSetsChangesNothing(@ForAll long seed) {
    List<RuleSet> shuffled = new ArrayList<>(List.of(SETS));
    Collections.shuffle(shuffled, new Random(seed));
    assertEquals(
        winter(seed).check(SETS), winter(seed, shuffled).check(shuffled.toArray(new RuleSet[0])));
  }

  @Property
  void theInputOrderOfSessionsChangesNothing(@ForAll long seed) {
    CompiledPlan plan = winter(seed).compiled();
    List<DatedSession> shuffled = new ArrayList<>(plan.sessions());
    Collections.shuffle(shuffled, new Random(seed));
    Schedule other = plan.schedule().toBuilder().sessions(shuffled).build();
    assertEquals(
        RuleCheck.check(plan.schedule(), plan.timeline(), List.of(SETS)),
        RuleCheck.check(other, plan.timeline(), List.of(SETS)));
  }

  @Property
  void aWaiverNeverAddsAnErrorOtherThanAboutItself(
      @ForAll long seed, @ForAll @IntRange(max = 100) int which) {
    String rule = allNames().get(which % allNames().size());
    Set<String> before = new HashSet<>(winter(seed).codes(SETS));
    for (Finding finding : winter(seed).waive(rule).check(SETS)) {
      boolean aboutWaiver = finding.code().startsWith("plan.waiver-");
      if (finding.severity() == Severity.ERROR && !aboutWaiver) {
        assertTrue(before.contains(finding.code()), finding.code());
      }
    }
  }

  @Property
  void aWaiverHidesNothing(@ForAll long seed, @ForAll @IntRange(max = 100) int which) {
    String rule = allNames().get(which % allNames().size());
    List<String> before = new ArrayList<>();
    winter(seed).check(SETS).forEach(f -> before.add(f.code() + f.place() + f.places()));
    List<String> after = new ArrayList<>();
    winter(seed).waive(rule).check(SETS).stream()
        .filter(f -> !f.code().startsWith("plan.waiver-"))
        .forEach(f -> after.add(f.code() + f.place() + f.places()));
    assertEquals(before, after);
  }

  @Property
  void nothingRemovesAFindingThatIsNeverWaived(@ForAll long seed) {
    Set<String> never = new HashSet<>();
    StandardRules.sets()
        .forEach(
            s -> s.rules().stream().filter(Rule::neverWaived).forEach(r -> never.add(r.name())));
    never.add(GAP.name());
    Winter waived = winter(seed);
    allNames().forEach(waived::waive);
    assertEquals(blocking(winter(seed), never), blocking(waived, never));
  }

  private static List<Finding> blocking(Winter winter, Set<String> rules) {
    return winter.check(SETS).stream()
        .filter(f -> f.rule().filter(rules::contains).isPresent())
        .filter(Finding::blocks)
        .toList();
  }

  @Property
  void oneLineBreaksOneRuleInOneFinding(@ForAll long seed) {
    Set<String> lines = new HashSet<>();
    for (Finding finding : winter(seed).check(SETS)) {
      String line = finding.code() + finding.place().without("for").without("week").without("date");
      assertTrue(lines.add(line), line);
    }
  }

  @Property
  void percentagesAndProductsAgree(
      @ForAll @DoubleRange(min = 0, max = 300) double share,
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
    Expression product = percent(share).times(number(value));
    assertEquals(share * value / 100, of(product), 1e-9 * Math.max(1, Math.abs(value)));
  }

  @Property
  void unitsDoNotChangeTheResult(
      @ForAll @IntRange(max = 13) int which,
      @ForAll @DoubleRange(min = -1000, max = 1000) double value) {
    Unit unit = Unit.values()[which % Unit.values().length];
    for (Unit other : Unit.of(unit.dimension())) {
      Expression same = amount(other.fromBase(unit.toBase(value)), other);
      assertEquals(
          ExpressionCompiler.YES, truth(amount(value, unit).equalTo(same)), unit + " " + other);
      assertEquals(ExpressionCompiler.NO, truth(amount(value, unit).lessThan(same)));
    }
  }

  @Property
  void relationsFormAnOrder(
      @ForAll @DoubleRange(min = -10, max = 10) double a,
      @ForAll @DoubleRange(min = -10, max = 10) double b) {
    Expression one = number(a);
    Expression other = number(b);
    int less = truth(one.lessThan(other));
    int equal = truth(one.equalTo(other));
    int greater = truth(one.moreThan(other));
    assertEquals(ExpressionCompiler.YES, less + equal + greater, "exactly one of three holds");
    assertEquals(truth(one.atMost(other)), Math.max(less, equal));
    assertEquals(truth(one.atLeast(other)), truth(one.lessThan(other).not()));
    assertEquals(truth(one.notEqualTo(other)), truth(one.equalTo(other).not()));
    assertEquals(greater, truth(other.lessThan(one)));
  }

  private static int truth(Expression expression) {
    return ExpressionValues.truth(expression, Kind.GRIP, Winter.HALF_CRIMP);
  }

  private static double of(Expression expression) {
    return ExpressionValues.number(expression, Kind.GRIP, Winter.HALF_CRIMP);
  }
}
