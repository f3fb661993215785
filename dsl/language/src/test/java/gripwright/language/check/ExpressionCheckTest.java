package gripwright.language.check;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.number;
import static gripwright.expression.Expression.outer;
import static gripwright.expression.Expression.percent;
import static gripwright.expression.Expression.percentOfMax;
import static gripwright.expression.Expression.subject;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.expression.Condition;
import gripwright.expression.Expression;
import gripwright.expression.Expression.Summary;
import gripwright.expression.Kind;
import gripwright.finding.ModelPath;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Declared;
import gripwright.language.source.SourceFile;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Reader;
import gripwright.quantity.Unit;
import gripwright.rule.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From the text of a condition to a typed expression, or to one finding at the right words. */
class ExpressionCheckTest {

  private static final Expression EXERCISE = subject(Kind.EXERCISE);
  private static final Expression WEEK = subject(Kind.WEEK);
  private static final Expression PAIR = subject(Kind.PAIR);

  private static final List<String> GRIPS = List.of("full-crimp", "half-crimp", "open-four");

  /** The result of a condition. */
  private record Outcome(
      Optional<Expression> expression, List<LocatedFinding> findings, SourceFile file) {
    String found() {
      assertEquals(1, findings.size(), findings.toString());
      LocatedFinding finding = findings.get(0);
      return finding.finding().code() + " at " + file.text(finding.span());
    }
  }

  private static Outcome read(String scope, String condition) {
    String text =
        "language 1\nrules r {\n  rule a {\n    severity error\n    for "
            + scope
            + "\n    require "
            + condition
            + "\n    message \"m\"\n  }\n}\n";
    ParsedFile file = Reader.parse(SourceFile.of("r.grip", text));
    List<LocatedFinding> findings = new ArrayList<>(file.findings());
    Declaration.Rules rules = (Declaration.Rules) file.declarations().get(1);
    Declared<Declaration.Rules> declared = new Declared<>(file, rules, rules.name(), false);
    RuleNames names =
        RuleNames.of(
            (diagnostics, word) -> {
              boolean known = GRIPS.contains(word.text());
              if (!known) {
                diagnostics.unknown(word, "grip", GRIPS);
              }
              return known;
            },
            (diagnostics, word) -> true);
    Optional<RuleSet> set =
        new RuleSetCheck(names)
            .check(declared, new Diagnostics(declared, ModelPath.of("rules", "r"), findings));
    return new Outcome(set.map(s -> s.rules().get(0).require()), findings, file.source());
  }

  private static void means(String scope, String condition, Expression expected) {
    Outcome outcome = read(scope, condition);
    assertEquals(List.of(), outcome.findings());
    assertEquals(Optional.of(expected), outcome.expression());
  }

  @Test
  void comparisonsArithmeticAndPrecedence() {
    Expression load = WEEK.get("load");
    Expression before = WEEK.get("previous").get("load");
    means(
        "week",
        "load <= 115 % of previous.load or previous is eased",
        load.atMost(percent(115).times(before)).or(WEEK.get("previous").get("eased")));
    means(
        "week",
        "load - previous.load < 10 % of load + previous.load * 2",
        load.minus(before).lessThan(percent(10).times(load).plus(before.times(number(2)))));
    means(
        "week",
        "not eased and (away or number > 1)",
        WEEK.get("eased").not().and(WEEK.get("away").or(WEEK.get("number").moreThan(number(1)))));
    means("week", "load / previous.load != 1.5", load.dividedBy(before).notEqualTo(number(1.5)));
    means(
        "week",
        "number between 1 and 3 and eased",
        WEEK.get("number").between(number(1), number(3)).and(WEEK.get("eased")));
  }

  @Test
  void everyKindOfValue() {
    means("exercise", "level < 60 % max", EXERCISE.get("level").lessThan(percentOfMax(60)));
    means(
        "exercise",
        "athlete.ability >= french 7c+",
        EXERCISE
            .get("athlete")
            .get("ability")
            .atLeast(Expression.grade(Ability.of(GradeScale.FRENCH, "7c+"))));
    means(
        "exercise",
        "date > 2027-02-01",
        EXERCISE.get("date").moreThan(Expression.date(LocalDate.of(2027, 2, 1))));
    means("pair of sessions", "gap >= 48 h", PAIR.get("gap").atLeast(amount(48, Unit.HOUR)));
    means(
        "exercise",
        "added-load > -5 kg",
        EXERCISE.get("added-load").moreThan(amount(-5, Unit.KILOGRAM)));
    means("week", "has previous", WEEK.get("previous").exists());
  }

  @Test
  void wordsOfPropertiesAndNamesOfSubjects() {
    Expression family = EXERCISE.get("grip").get("family");
    means("exercise", "grip.family is split", family.is("split"));
    means("exercise", "grip.family is not split", family.is("split").not());
    means("exercise", "grip.family in split, single", family.is("split", "single"));
    means("exercise", "grip.family not in split", family.is("split").not());
    means("exercise", "grip is full-crimp", EXERCISE.get("grip").get("name").is("full-crimp"));
    means(
        "pair of sessions",
        "earlier.intensity is high and later is hard",
        PAIR.get("earlier").get("intensity").is("high").and(PAIR.get("later").get("hard")));
    means(
        "exercise",
        "sets in 3, 5",
        EXERCISE.get("sets").equalTo(number(3)).or(EXERCISE.get("sets").equalTo(number(5))));
  }

  @Test
  void namesReferToTheInnermostSubjectFirst() {
    Expression exercises = WEEK.get("exercises");
    means(
        "week",
        "sum(time-under-load of exercises where grip.family is split) <= 50 s",
        exercises
            .summarizeWhere(
                Summary.SUM,
                EXERCISE.get("time-under-load"),
                EXERCISE.get("grip").get("family").is("split"))
            .atMost(amount(50, Unit.SECOND)));
    means(
        "week",
        "every(exercises where hard: eased or week.away)",
        exercises.everyWhere(
            EXERCISE.get("hard"),
            outer(Kind.WEEK, 1).get("eased").or(EXERCISE.get("week").get("away"))));
    means("week", "count(sessions) < 4", WEEK.get("sessions").count().lessThan(number(4)));
    means(
        "week",
        "any(sessions where hard)",
        WEEK.get("sessions")
            .anyWhere(subject(Kind.SESSION).get("hard"), new Condition.Truth(true)));
    means(
        "week",
        "largest(level of exercises) < 90 % max",
        exercises.summarize(Summary.LARGEST, EXERCISE.get("level")).lessThan(percentOfMax(90)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      pair of sessions | gap >= 3 kg                        | unit.sides at 3 kg
      pair of sessions | 3 kg < gap                         | unit.sides at 3 kg
      week             | load <= time-under-load            | unit.sides at load <= time-under-load
      week             | load + 3 s <= load                 | unit.sides at 3 s
      exercise         | level < 60 %                       | type.sides at 60 %
      exercise         | athlete.ability > 18               | type.sides at 18
      exercise         | total-load > 500 N                 | unit.sides at 500 N
      exercise         | levle < 60 % max                   | name.property at levle
      exercise         | athlete.trainde > 3 months         | name.property at trainde
      exercise         | grip.family is splitt              | name.unknown at splitt
      exercise         | grip is half-crmp                  | name.unknown at half-crmp
      exercise         | grip in half-crimp, opn-four       | name.unknown at opn-four
      exercise         | grip.family = split                | type.word-compared at grip.family = split
      exercise         | load is high                       | type.is at load
      exercise         | hard is high                       | type.is-truth at hard
      exercise         | sets                               | type.wanted at sets
      exercise         | hard and sets                      | type.wanted at sets
      exercise         | not sets                           | type.wanted at sets
      week             | sessions.minutes < 60 min          | type.several at minutes
      week             | load.kg > 3                        | type.no-properties at kg
      week             | count(load) > 3                    | type.wanted at load
      week             | sum(level of exercises) > 1        | type.wanted at level
      week             | sum(lod of exercises) > 1 s        | name.property at lod
      week             | count(exercises where lod > 1) > 1 | name.property at lod
      week             | every(exercises where hard)        | value.every-what at every(exercises where hard)
      week             | load / 0 > load                    | value.divisor at 0
      exercise         | athlete.ability > french 7d        | value.grade at 7d
      week             | previous is easd                   | name.unknown at easd
      exercise         | hold > reserve 3 s                 | type.not-in-rules at reserve 3 s
      exercise         | 5 % of grip > 3                    | type.wanted at grip
      """)
  void oneMistakeIsOneFindingAtItsWords(String scope, String condition, String expected) {
    Outcome outcome = read(scope, condition);
    assertEquals(expected, outcome.found());
    assertTrue(outcome.expression().isEmpty());
  }

  @Test
  void independentMistakesAreAllReported() {
    assertEquals(
        List.of("name.property", "name.property", "unit.sides"),
        read("exercise", "levle > 3 % max and (lod > 3 kg or edge > 3 kg)").findings().stream()
            .map(f -> f.finding().code())
            .toList());
  }

  @Test
  void theNearestPropertyIsSuggested() {
    assertEquals(
        "trained",
        read("exercise", "athlete.trainde > 3 months")
            .findings()
            .get(0)
            .finding()
            .arguments()
            .get("suggestion"));
  }
}
