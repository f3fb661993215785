package gripwright.language.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The records have the meaning of the text. */
class RecordsTest {

  private static Expr requirement(String expression) {
    ParsedFile parsed =
        Texts.parse("language 1\nrules r {\n  rule a {\n    require " + expression + "\n  }\n}\n");
    assertEquals(List.of(), Texts.codes(parsed), expression);
    Declaration.Rules rules = (Declaration.Rules) parsed.declarations().get(1);
    return ((RuleItem.RequireItem) rules.rules().get(0).items().get(0)).condition();
  }

  private static Expr.Binary binary(String expression) {
    return assertInstanceOf(Expr.Binary.class, requirement(expression));
  }

  @Test
  void chainsAreLeftAssociative() {
    Expr.Binary last = binary("a - b - c");
    assertEquals(Expr.Operator.MINUS, last.operator());
    assertInstanceOf(Expr.Binary.class, last.left());
    assertInstanceOf(Expr.PathExpr.class, last.right());
  }

  @Test
  void operatorsBindAsInArithmetic() {
    assertEquals(Expr.Operator.OR, binary("a and b or c and d").operator());
    assertEquals(Expr.Operator.AND, binary("a < b and c >= d").operator());
    assertEquals(Expr.Operator.PLUS, binary("a + b * c").operator());
    assertEquals(Expr.Operator.TIMES, binary("(a + b) * c").operator());
    assertInstanceOf(Expr.Not.class, requirement("not a = b"));
    assertInstanceOf(Expr.Not.class, requirement("not not a"));
  }

  @Test
  void percentagesAreOfTheMaximumOrOfAValue() {
    assertEquals(88, ((Expr.PercentOfMax) binary("x <= 88 % max").right()).percent());
    Expr.PercentOf of = (Expr.PercentOf) binary("x <= 115 % of previous.load").right();
    assertEquals(115, of.percent());
    assertEquals(2, ((Expr.PathExpr) of.of()).words().size());
    assertEquals(Unit.PERCENT, ((Amount) binary("x <= 5 %").right()).unit());
  }

  @Test
  void aMinusBeforeANumberIsPartOfIt() {
    Amount amount = (Amount) binary("x > -3 kg").right();
    assertEquals(-3, amount.value());
    assertEquals(Unit.KILOGRAM, amount.unit());
    assertInstanceOf(Expr.Negate.class, binary("x > -y").right());
    assertEquals(
        Expr.Operator.MINUS, ((Expr.Binary) binary("x > body-mass - 5 kg").right()).operator());
  }

  @Test
  void sumsBindTheirOwnOf() {
    Expr.Aggregate sum = (Expr.Aggregate) requirement("sum(load of exercises where hard)");
    assertInstanceOf(Expr.PathExpr.class, sum.value());
    assertInstanceOf(Expr.PathExpr.class, sum.where());
    Expr.Aggregate share = (Expr.Aggregate) requirement("sum(50 % of load of exercises)");
    assertInstanceOf(Expr.PercentOf.class, share.value());
    Expr.Aggregate half = (Expr.Aggregate) requirement("sum(50 % of exercises)");
    assertInstanceOf(Amount.class, half.value());
    Expr.Aggregate count = (Expr.Aggregate) requirement("count(sessions)");
    assertNull(count.value());
  }

  @Test
  void isAndInTests() {
    Expr.Is is = (Expr.Is) requirement("grip.family is not split");
    assertTrue(is.negated());
    Expr.In in = (Expr.In) requirement("grip not in half-crimp, open-four");
    assertTrue(in.negated());
    assertEquals(2, in.options().size());
    assertInstanceOf(Expr.BetweenExpr.class, requirement("gap between 24 h and 48 h"));
    Expr.Quantifier every =
        (Expr.Quantifier) requirement("every(exercises where a: edge >= 18 mm)");
    assertInstanceOf(Expr.Binary.class, every.body());
  }

  @Test
  void gradesAndLevelsAreWords() {
    Expr.GradeLiteral grade = (Expr.GradeLiteral) binary("a >= french 7c+").right();
    assertEquals("french", grade.scale().text());
    assertEquals("7c+", grade.grade().text());
    assertEquals("8+", ((Expr.GradeLiteral) binary("a >= uiaa 8+").right()).grade().text());
    assertEquals("6", ((Expr.GradeLiteral) binary("a >= v 6").right()).grade().text());
    assertInstanceOf(Expr.EffortLevel.class, binary("a >= effort 8").right());
    assertInstanceOf(Expr.PathExpr.class, binary("effort >= 8").left());
    assertInstanceOf(Expr.ReserveLevel.class, binary("a >= reserve 3 s").right());
  }

  @Test
  void keywordsAreNamesWhereANameIsExpected() {
    ParsedFile parsed =
        Texts.parse(
            """
            language 1
            plan plan {
              for   session, on
              from  2027-01-11
              block block 2 weeks {
                session session 1 per week {
                  do with with load 60 % max on on edge 20 mm
                }
              }
            }
            log s {
              2027-01-12 session session {
                min on kg edge 20 mm: sets 1
                s on N edge 20 mm: load 3 kg
              }
            }
            """);
    assertEquals(List.of(), Texts.codes(parsed));
    assertEquals("plan", ((Declaration.Plan) parsed.declarations().get(1)).name().text());
    Declaration.Log log = (Declaration.Log) parsed.declarations().get(2);
    LogLine.SessionLine session = (LogLine.SessionLine) log.lines().get(0);
    assertEquals(2, session.done().size());
    assertEquals("N", session.done().get(1).grip().text());
  }

  @Test
  void weeklyIsEveryWeek() {
    ParsedFile parsed =
        Texts.parse(
            """
            language 1
            plan p {
              block a 4 weeks {
                advance first sets to 6 by 1 weekly then load 2.5 % when done in full and effort at most 8 twice on half-crimp
                ease week 2, 4 to 60 % sets
              }
            }
            """);
    assertEquals(List.of(), Texts.codes(parsed));
    Declaration.Plan plan = (Declaration.Plan) parsed.declarations().get(1);
    PlanItem.BlockItem block = (PlanItem.BlockItem) plan.items().get(0);
    BlockPart.AdvanceItem advance = (BlockPart.AdvanceItem) block.parts().get(0);
    assertEquals("sets", advance.first().variable().text());
    assertEquals(Unit.WEEK, advance.first().every().unit());
    assertEquals(6, advance.first().to().value());
    assertEquals(2.5, advance.then().by().value());
    assertTrue(advance.then().condition().doneInFull() && advance.then().condition().twice());
    assertEquals(8, advance.then().condition().effortAtMost().value());
    assertEquals("half-crimp", advance.on().text());
    assertEquals(2, ((BlockPart.EaseItem) block.parts().get(1)).weeks().size());
  }

  @Test
  void escapesInTextsAreUndone() {
    ParsedFile parsed =
        Texts.parse("language 1\nplan p \"a \\\"b\\\" \\\\ c\" {\n  note \"\\n stays\"\n}\n");
    Declaration.Plan plan = (Declaration.Plan) parsed.declarations().get(1);
    assertEquals("a \"b\" \\ c", plan.title().value());
    assertEquals("\\n stays", ((Note) plan.items().get(0)).text().value());
  }

  @Test
  void aBrokenHeadingKeepsItsName() {
    ParsedFile parsed = Texts.parse("language 1\nplan spring spring base {\n  for ines\n}\n");
    Declaration.Plan plan = (Declaration.Plan) parsed.declarations().get(1);
    assertEquals("spring", plan.name().text());
    assertTrue(plan.damaged());
    assertEquals(1, plan.items().size());
  }

  @Test
  void spansArePositionsInTheTextWhateverIsBeforeThem() {
    String text =
        "language 1 # \ud83e\uddd7\u200d e\u0301\nplan p \"\ud83e\uddd7\" {\n  for ines\n}\n";
    ParsedFile parsed = Texts.check(text);
    Declaration.Plan plan = (Declaration.Plan) parsed.declarations().get(1);
    Word name = ((PlanItem.ForItem) plan.items().get(0)).athletes().get(0);
    assertEquals("ines", parsed.source().text(parsed.span(name.id())));
    assertEquals("p", parsed.source().text(parsed.span(plan.name().id())));
  }
}
