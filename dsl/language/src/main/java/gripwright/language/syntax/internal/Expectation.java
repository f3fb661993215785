package gripwright.language.syntax.internal;

import gripwright.language.syntax.internal.grammar.GripParser;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.jspecify.annotations.Nullable;

/** What could have stood in a place, in a coach's words. */
final class Expectation {

  private static final int MOST = 5;

  private static final List<Integer> SIGNS =
      List.of(
          GripParser.LBRACE,
          GripParser.COMMA,
          GripParser.COLON,
          GripParser.LPAREN,
          GripParser.RPAREN);

  private static final Map<Integer, String> AMOUNTS =
      Map.ofEntries(
          Map.entry(GripParser.RULE_setup, "an edge depth"),
          Map.entry(GripParser.RULE_edges, "an edge depth"),
          Map.entry(GripParser.RULE_bodyMass, "a mass"),
          Map.entry(GripParser.RULE_trained, "a time"),
          Map.entry(GripParser.RULE_handLength, "a length"),
          Map.entry(GripParser.RULE_handBreadth, "a length"),
          Map.entry(GripParser.RULE_fingerMeasure, "a length, or an angle"),
          Map.entry(GripParser.RULE_knuckles, "a length"),
          Map.entry(GripParser.RULE_available, "a time"),
          Map.entry(GripParser.RULE_familiar, "a time"),
          Map.entry(GripParser.RULE_climbingDay, "a time"),
          Map.entry(GripParser.RULE_climbingLine, "a time"),
          Map.entry(GripParser.RULE_jointBand, "an angle"),
          Map.entry(GripParser.RULE_warmUp, "a time"),
          Map.entry(GripParser.RULE_restBetween, "a time"),
          Map.entry(GripParser.RULE_demand, "a percentage"),
          Map.entry(GripParser.RULE_weigh, "a percentage"),
          Map.entry(GripParser.RULE_weeklyRise, "a percentage"),
          Map.entry(GripParser.RULE_blockHeading, "a number of weeks"),
          Map.entry(GripParser.RULE_sessionHeading, "a number of sessions"),
          Map.entry(GripParser.RULE_placeWeek, "a number"),
          Map.entry(GripParser.RULE_placeExercise, "a number"),
          Map.entry(GripParser.RULE_failureTest, "a load or a time"),
          Map.entry(GripParser.RULE_holdTest, "a time or a load"),
          Map.entry(GripParser.RULE_effort, "a number from 0 to 10"),
          Map.entry(GripParser.RULE_pain, "a number from 0 to 10"),
          Map.entry(GripParser.RULE_painLine, "a number from 0 to 10"),
          Map.entry(GripParser.RULE_language, "the number 1"));

  private static final Map<Integer, String> NAMES =
      Map.ofEntries(
          Map.entry(GripParser.RULE_athleteHeading, "a name for the athlete"),
          Map.entry(GripParser.RULE_gripHeading, "a name for the grip"),
          Map.entry(GripParser.RULE_protocolHeading, "a name for the protocol"),
          Map.entry(GripParser.RULE_planHeading, "a name for the plan"),
          Map.entry(GripParser.RULE_blockHeading, "a name for the block"),
          Map.entry(GripParser.RULE_sessionHeading, "a name for the session"),
          Map.entry(GripParser.RULE_rulesHeading, "a name for the rules"),
          Map.entry(GripParser.RULE_ruleHeading, "a name for the rule"),
          Map.entry(GripParser.RULE_compareHeading, "a name for the comparison"),
          Map.entry(GripParser.RULE_logHeading, "an athlete's name"),
          Map.entry(GripParser.RULE_exercise, "a protocol's name"),
          Map.entry(GripParser.RULE_target, "a grip's name"),
          Map.entry(GripParser.RULE_testLine, "a grip's name"),
          Map.entry(GripParser.RULE_compareOn, "a grip's name"),
          Map.entry(GripParser.RULE_onGrip, "a grip's name"),
          Map.entry(GripParser.RULE_introduce, "a grip's name"),
          Map.entry(GripParser.RULE_retest, "a grip's name"),
          Map.entry(GripParser.RULE_demand, "a grip's name"),
          Map.entry(GripParser.RULE_familiar, "a grip's name"),
          Map.entry(GripParser.RULE_forAthletes, "an athlete's name"),
          Map.entry(GripParser.RULE_onlyForHeading, "an athlete's name"),
          Map.entry(GripParser.RULE_compareFor, "an athlete's name"),
          Map.entry(GripParser.RULE_waive, "a rule's name"),
          Map.entry(GripParser.RULE_place, "a block's name or `plan`"),
          Map.entry(GripParser.RULE_ruleSets, "a name of rules"),
          Map.entry(GripParser.RULE_ability, "a scale such as `french`"),
          Map.entry(GripParser.RULE_available, "a weekday such as `tue`"),
          Map.entry(GripParser.RULE_climbingDay, "a weekday or how hard it is"),
          Map.entry(GripParser.RULE_fingers, "a finger"),
          Map.entry(GripParser.RULE_jointBand, "a joint such as `pip`"),
          Map.entry(GripParser.RULE_fingerMeasure, "a bone or joint such as `middle` or `pip`"),
          Map.entry(GripParser.RULE_parameter, "a parameter's name"),
          Map.entry(GripParser.RULE_isTest, "a word such as `high`"),
          Map.entry(GripParser.RULE_compareBetween, "a protocol's name"));

  private static final Set<Integer> THROUGH =
      Set.of(
          GripParser.RULE_amount,
          GripParser.RULE_plainAmount,
          GripParser.RULE_name,
          GripParser.RULE_names,
          GripParser.RULE_head,
          GripParser.RULE_nameAmount,
          GripParser.RULE_angleRange,
          GripParser.RULE_date,
          GripParser.RULE_text);

  private Expectation() {}

  /**
   * Returns what could stand in a place.
   *
   * @param required the tokens the statement cannot do without there; empty if it may end
   * @param optional the tokens that may come before them
   * @param context the rule that was being read
   */
  static String inWords(IntervalSet required, IntervalSet optional, @Nullable RuleContext context) {
    if (required.contains(GripParser.LPAREN) && required.contains(GripParser.NUMBER)) {
      return "a value";
    }
    boolean mayEnd = required.isNil();
    IntervalSet types = required.or(optional);
    Set<String> concepts = new LinkedHashSet<>();
    addValues(concepts, types, statement(context));
    if (!types.contains(GripParser.WORD)) {
      addKeywords(concepts, mayEnd ? optional : required, statement(context));
    }
    if (types.contains(GripParser.STRING)) {
      concepts.add("a text in quotes");
    }
    addSigns(concepts, types);
    if (concepts.isEmpty() && types.contains(GripParser.LT)) {
      concepts.add("a comparison such as `>=`");
    } else if (concepts.isEmpty() && required.contains(GripParser.PERCENT)) {
      concepts.add(required.size() == 1 ? "`%`" : "a unit");
    }
    if (mayEnd) {
      concepts.add("a new line");
    }
    return concepts.isEmpty() ? "a new line" : join(concepts.stream().limit(MOST).toList());
  }

  private static void addValues(Set<String> concepts, IntervalSet types, int statement) {
    if (types.contains(GripParser.WORD)) {
      concepts.add(NAMES.getOrDefault(statement, "a name"));
    }
    if (types.contains(GripParser.NUMBER)) {
      concepts.add(
          types.contains(GripParser.GRADE)
              ? "a grade such as `7c`"
              : AMOUNTS.getOrDefault(statement, "a number"));
    }
    if (types.contains(GripParser.DATE)) {
      concepts.add("a date such as `2027-01-11`");
    }
  }

  private static void addKeywords(Set<String> concepts, IntervalSet types, int statement) {
    boolean units = types.contains(GripParser.KG);
    List<String> words = new ArrayList<>();
    for (String word : Vocabulary.keywords(types)) {
      boolean operator = Vocabulary.isOperator(Vocabulary.typeOf(word)) && types.size() > 1;
      if (!operator && !(units && word.equals("week"))) {
        words.add("`" + word + "`");
      }
    }
    if (statement == GripParser.RULE_logLine) {
      concepts.add("what happened, such as `test` or `session`");
    } else if (types.contains(GripParser.FRENCH) && types.contains(GripParser.IRCRA)) {
      concepts.add("a scale such as `french`");
    } else {
      words.stream().limit(Math.max(0, MOST - concepts.size())).forEach(concepts::add);
    }
  }

  private static void addSigns(Set<String> concepts, IntervalSet types) {
    for (int sign : SIGNS) {
      if (types.contains(sign)) {
        concepts.add("`" + Vocabulary.spelling(sign) + "`");
      }
    }
    if (types.contains(GripParser.SLASH) && types.size() == 1) {
      concepts.add("`/`");
    }
  }

  private static int statement(@Nullable RuleContext context) {
    RuleContext at = context;
    while (at != null && THROUGH.contains(at.getRuleIndex())) {
      at = at.parent;
    }
    return at == null ? -1 : at.getRuleIndex();
  }

  private static String join(List<String> concepts) {
    if (concepts.size() == 1) {
      return concepts.get(0);
    }
    return String.join(", ", concepts.subList(0, concepts.size() - 1))
        + " or "
        + concepts.get(concepts.size() - 1);
  }
}
