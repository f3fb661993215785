package gripwright.language.syntax.internal;

import gripwright.finding.Clause;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.language.syntax.internal.grammar.GripParser;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.jspecify.annotations.Nullable;

/** Describes in a coach's words what is possible at a place. */
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
          Map.entry(GripParser.RULE_setup, "edge-depth"),
          Map.entry(GripParser.RULE_edges, "edge-depth"),
          Map.entry(GripParser.RULE_bodyMass, "mass"),
          Map.entry(GripParser.RULE_trained, "time"),
          Map.entry(GripParser.RULE_handLength, "length"),
          Map.entry(GripParser.RULE_handBreadth, "length"),
          Map.entry(GripParser.RULE_fingerMeasure, "length-or-an-angle"),
          Map.entry(GripParser.RULE_knuckles, "length"),
          Map.entry(GripParser.RULE_slot, "time-such-as-75-min"),
          Map.entry(GripParser.RULE_familiar, "time"),
          Map.entry(GripParser.RULE_climbingDay, "time"),
          Map.entry(GripParser.RULE_climbingLine, "time"),
          Map.entry(GripParser.RULE_jointBand, "angle"),
          Map.entry(GripParser.RULE_warmUp, "time"),
          Map.entry(GripParser.RULE_restBetween, "time"),
          Map.entry(GripParser.RULE_demand, "percentage"),
          Map.entry(GripParser.RULE_weigh, "percentage"),
          Map.entry(GripParser.RULE_weeklyRise, "percentage"),
          Map.entry(GripParser.RULE_blockHeading, "number-of-weeks"),
          Map.entry(GripParser.RULE_sessionHeading, "number-of-sessions"),
          Map.entry(GripParser.RULE_placeWeek, "number"),
          Map.entry(GripParser.RULE_placeExercise, "number"),
          Map.entry(GripParser.RULE_failureTest, "load-or-a-time"),
          Map.entry(GripParser.RULE_rested, "time"),
          Map.entry(GripParser.RULE_shareDays, "time"),
          Map.entry(GripParser.RULE_testTime, "number-of-weeks"),
          Map.entry(GripParser.RULE_holdTest, "time-or-a-load"),
          Map.entry(GripParser.RULE_effort, "number-from-0-to-10"),
          Map.entry(GripParser.RULE_pain, "number-from-0-to-10"),
          Map.entry(GripParser.RULE_painLine, "number-from-0-to-10"),
          Map.entry(GripParser.RULE_span, "number-of-weeks"),
          Map.entry(GripParser.RULE_clock, "two-digits-of-a-time-such-as-18-00"),
          Map.entry(GripParser.RULE_language, "number-1"));

  private static final Map<Integer, String> NAMES =
      Map.ofEntries(
          Map.entry(GripParser.RULE_athleteHeading, "name-for-the-athlete"),
          Map.entry(GripParser.RULE_gripHeading, "name-for-the-grip"),
          Map.entry(GripParser.RULE_protocolHeading, "name-for-the-protocol"),
          Map.entry(GripParser.RULE_planHeading, "name-for-the-plan"),
          Map.entry(GripParser.RULE_blockHeading, "name-for-the-block"),
          Map.entry(GripParser.RULE_sessionHeading, "name-for-the-session"),
          Map.entry(GripParser.RULE_rulesHeading, "name-for-the-rules"),
          Map.entry(GripParser.RULE_ruleHeading, "name-for-the-rule"),
          Map.entry(GripParser.RULE_cohortHeading, "name-for-the-cohort"),
          Map.entry(GripParser.RULE_compareHeading, "name-for-the-comparison"),
          Map.entry(GripParser.RULE_logHeading, "athletes-name"),
          Map.entry(GripParser.RULE_exercise, "protocols-name"),
          Map.entry(GripParser.RULE_target, "grips-name"),
          Map.entry(GripParser.RULE_testLine, "grips-name"),
          Map.entry(GripParser.RULE_compareOn, "grips-name"),
          Map.entry(GripParser.RULE_onGrip, "grips-name"),
          Map.entry(GripParser.RULE_introduce, "grips-name"),
          Map.entry(GripParser.RULE_retest, "grips-name"),
          Map.entry(GripParser.RULE_testHeading, "grips-name"),
          Map.entry(GripParser.RULE_atPlace, "places-name"),
          Map.entry(GripParser.RULE_onlyAt, "places-name"),
          Map.entry(GripParser.RULE_onlyOn, "weekday-such-as-tue"),
          Map.entry(GripParser.RULE_demand, "grips-name"),
          Map.entry(GripParser.RULE_familiar, "grips-name"),
          Map.entry(GripParser.RULE_forAthletes, "athletes-name"),
          Map.entry(GripParser.RULE_onlyForHeading, "athletes-name"),
          Map.entry(GripParser.RULE_compareFor, "athletes-name"),
          Map.entry(GripParser.RULE_waive, "rules-name"),
          Map.entry(GripParser.RULE_place, "blocks-name-or-plan"),
          Map.entry(GripParser.RULE_ruleSets, "name-of-rules"),
          Map.entry(GripParser.RULE_ability, "scale-such-as-french"),
          Map.entry(GripParser.RULE_available, "weekday-such-as-tue"),
          Map.entry(GripParser.RULE_slot, "weekday-such-as-tue"),
          Map.entry(GripParser.RULE_climbingDay, "weekday-or-how-hard-it-is"),
          Map.entry(GripParser.RULE_fingers, "finger"),
          Map.entry(GripParser.RULE_jointBand, "joint-such-as-pip"),
          Map.entry(GripParser.RULE_fingerMeasure, "bone-or-joint-such-as-middle-or-pip"),
          Map.entry(GripParser.RULE_parameter, "parameters-name"),
          Map.entry(GripParser.RULE_isTest, "word-such-as-high"),
          Map.entry(GripParser.RULE_compareBetween, "protocols-name"));

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
          GripParser.RULE_day,
          GripParser.RULE_text);

  private Expectation() {}

  /**
   * Returns a description of what is possible at a place.
   *
   * @param required the tokens required there; empty if the statement may end
   * @param optional the tokens that may come before them
   * @param context the rule that was being read
   */
  static Message of(IntervalSet required, IntervalSet optional, @Nullable RuleContext context) {
    if (required.contains(GripParser.LPAREN) && required.contains(GripParser.NUMBER)) {
      return term("value");
    }
    boolean mayEnd = required.isNil();
    IntervalSet types = required.or(optional);
    Set<Object> concepts = new LinkedHashSet<>();
    addValues(concepts, types, statement(context));
    if (!types.contains(GripParser.WORD)) {
      addKeywords(concepts, mayEnd ? optional : required, statement(context));
    }
    if (types.contains(GripParser.STRING)) {
      concepts.add(term("text-in-quotes"));
    }
    addSigns(concepts, types);
    if (concepts.isEmpty() && types.contains(GripParser.LT)) {
      concepts.add(term("comparison-such-as"));
    } else if (concepts.isEmpty() && required.contains(GripParser.PERCENT)) {
      concepts.add(required.size() == 1 ? "`%`" : term("unit"));
    }
    if (mayEnd) {
      concepts.add(term("new-line"));
    }
    return concepts.isEmpty() ? term("new-line") : join(concepts.stream().limit(MOST).toList());
  }

  private static void addValues(Set<Object> concepts, IntervalSet types, int statement) {
    if (types.contains(GripParser.WORD)) {
      concepts.add(term(NAMES.getOrDefault(statement, "name")));
    }
    if (types.contains(GripParser.NUMBER)) {
      concepts.add(
          types.contains(GripParser.GRADE)
              ? term("grade-such-as-7c")
              : term(AMOUNTS.getOrDefault(statement, "number")));
    }
    if (types.contains(GripParser.DATE)) {
      concepts.add(term("date-such-as-2027-01-11"));
    }
  }

  private static void addKeywords(Set<Object> concepts, IntervalSet types, int statement) {
    boolean units = types.contains(GripParser.KG);
    List<String> words = new ArrayList<>();
    for (String word : Vocabulary.keywords(types)) {
      boolean operator = Vocabulary.isOperator(Vocabulary.typeOf(word)) && types.size() > 1;
      if (!operator && !(units && word.equals("week"))) {
        words.add("`" + word + "`");
      }
    }
    if (statement == GripParser.RULE_logLine) {
      concepts.add(term("what-happened-such-as-test-or-session"));
    } else if (types.contains(GripParser.FRENCH) && types.contains(GripParser.IRCRA)) {
      concepts.add(term("scale-such-as-french"));
    } else {
      words.stream().limit(Math.max(0, MOST - concepts.size())).forEach(concepts::add);
    }
  }

  private static void addSigns(Set<Object> concepts, IntervalSet types) {
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

  private static Message term(String key) {
    return Clause.of("term." + key);
  }

  private static Message join(List<Object> concepts) {
    return Listing.of(Listing.Style.OR, concepts);
  }
}
