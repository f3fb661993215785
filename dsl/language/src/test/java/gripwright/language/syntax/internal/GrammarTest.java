package gripwright.language.syntax.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.language.source.SourceFile;
import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.internal.grammar.GripParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.DecisionInfo;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The grammar can be read in one pass. */
class GrammarTest {

  private static final int MOST_LOOKAHEAD = 10;

  @TestFactory
  Stream<DynamicTest> rightTextsAreReadWithoutAmbiguityOrFallback() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/syntax-all"))) {
      List<Path> texts = files.filter(f -> f.toString().endsWith(".grip")).sorted().toList();
      return texts.stream()
          .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> check(f)));
    }
  }

  private static void check(Path file) throws IOException {
    Scan scan = Scan.of(SourceFile.of("a.grip", Files.readString(file)), 1_000_000);
    GripParser parser = new GripParser(new CommonTokenStream(new ListTokenSource(scan.tokens())));
    parser.removeErrorListeners();
    parser.setErrorHandler(new BailErrorStrategy());
    parser.setProfile(true);
    parser.getInterpreter().setPredictionMode(PredictionMode.LL_EXACT_AMBIG_DETECTION);
    assertNotNull(parser.file());
    for (DecisionInfo decision : parser.getParseInfo().getDecisionInfo()) {
      String rule =
          GripParser.ruleNames[GripParser._ATN.getDecisionState(decision.decision).ruleIndex];
      assertEquals(List.of(), decision.ambiguities, rule);
      assertEquals(0, decision.LL_Fallback, rule);
      assertEquals(0, decision.errors.size(), rule);
      assertTrue(decision.SLL_MaxLook <= MOST_LOOKAHEAD, () -> rule + " " + decision.SLL_MaxLook);
    }
  }

  @Test
  void everyRuleHasItsKindOfNodeInTheSameOrder() {
    assertEquals(
        Arrays.stream(GripParser.ruleNames)
            .map(
                rule ->
                    rule.replaceAll("_$", "")
                        .replaceAll("([a-z])([A-Z])", "$1_$2")
                        .toUpperCase(Locale.ROOT))
            .toList(),
        Arrays.stream(NodeKind.values()).map(Enum::name).toList());
  }

  @Test
  void recursionPassesThroughBracketsPrefixesOrBodiesOnly() {
    // Each of these is counted before parsing: a new cycle in the grammar needs a new count.
    List<String> recursive =
        List.of(
            "handBody",
            "handItem",
            "handSide", // braces
            "step",
            "repeat",
            "repeatBody",
            "blockBody",
            "blockItem",
            "blockOnlyFor",
            "sessionBody",
            "sessionItem",
            "sessionOnlyFor",
            "negation", // `not`
            "unary", // `-`
            "number",
            "ofWhat",
            "primary", // `% of`
            "expr",
            "conjunction",
            "comparison",
            "sum",
            "product", // brackets
            "inTest",
            "betweenTest",
            "aggregate",
            "count",
            "quantifier",
            "where",
            "group");
    List<String> found = new java.util.ArrayList<>();
    for (int rule = 0; rule < GripParser.ruleNames.length; rule++) {
      if (reaches(rule, rule, new java.util.HashSet<>())) {
        found.add(GripParser.ruleNames[rule]);
      }
    }
    assertEquals(recursive.stream().sorted().toList(), found.stream().sorted().toList());
  }

  private static boolean reaches(int from, int goal, java.util.Set<Integer> seen) {
    for (var state : GripParser._ATN.states) {
      if (state == null || state.ruleIndex != from) {
        continue;
      }
      for (var transition : state.getTransitions()) {
        if (transition instanceof org.antlr.v4.runtime.atn.RuleTransition call) {
          int target = call.target.ruleIndex;
          if (target == goal || (seen.add(target) && reaches(target, goal, seen))) {
            return true;
          }
        }
      }
    }
    return false;
  }

  @Test
  void theEndOfTheFileIsATokenToo() {
    Scan scan = Scan.of(SourceFile.of("a.grip", ""), 10);
    assertEquals(Token.EOF, scan.tokens().get(0).getType());
  }
}
