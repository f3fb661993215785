package gripwright.language.syntax.internal;

import gripwright.finding.Clause;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.language.syntax.internal.grammar.GripParser;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.atn.ATN;
import org.antlr.v4.runtime.atn.ATNState;
import org.antlr.v4.runtime.atn.RuleStopState;
import org.antlr.v4.runtime.atn.Transition;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.jspecify.annotations.Nullable;

/** The bodies in braces, and which statements each of them may contain. */
final class Bodies {

  /**
   * The body of a declaration or block.
   *
   * @param rule the grammar rule
   * @param owner owner of the body, as a key of {@code term}
   * @param first the tokens that may begin a statement in it
   * @param start the state of the grammar where a statement begins
   */
  record Body(int rule, String owner, IntervalSet first, ATNState start) {

    boolean mayBegin(int type) {
      return first.contains(type);
    }

    /** Returns whether a statement may begin with these two tokens. */
    boolean mayBegin(int type, int next) {
      return follows(start, type).contains(next);
    }
  }

  private static final @Nullable Body[] BODIES = bodies();
  private static final Set<Integer> ITEMS =
      Set.of(
          GripParser.RULE_declaration,
          GripParser.RULE_language,
          GripParser.RULE_athleteItem,
          GripParser.RULE_handItem,
          GripParser.RULE_equipmentItem,
          GripParser.RULE_gripItem,
          GripParser.RULE_protocolItem,
          GripParser.RULE_step,
          GripParser.RULE_planItem,
          GripParser.RULE_blockItem,
          GripParser.RULE_sessionItem,
          GripParser.RULE_testItem,
          GripParser.RULE_rule_,
          GripParser.RULE_ruleItem,
          GripParser.RULE_logLine,
          GripParser.RULE_doneLine,
          GripParser.RULE_cohortItem,
          GripParser.RULE_compareItem);

  private Bodies() {}

  private static @Nullable Body[] bodies() {
    @Nullable Body[] bodies = new Body[GripParser.ruleNames.length];
    add(bodies, GripParser.RULE_athleteBody, "body-athlete");
    add(bodies, GripParser.RULE_handBody, "body-hand");
    add(bodies, GripParser.RULE_equipmentBody, "body-equipment");
    add(bodies, GripParser.RULE_gripBody, "body-grip");
    add(bodies, GripParser.RULE_protocolBody, "body-protocol");
    add(bodies, GripParser.RULE_repeatBody, "body-repeat");
    add(bodies, GripParser.RULE_planBody, "body-plan");
    add(bodies, GripParser.RULE_testBody, "body-test");
    add(bodies, GripParser.RULE_blockBody, "body-block");
    add(bodies, GripParser.RULE_sessionBody, "body-session");
    add(bodies, GripParser.RULE_rulesBody, "body-set-of-rules");
    add(bodies, GripParser.RULE_ruleBody, "body-rule");
    add(bodies, GripParser.RULE_logBody, "body-log");
    add(bodies, GripParser.RULE_sessionLineBody, "body-logged-session");
    add(bodies, GripParser.RULE_cohortBody, "body-cohort");
    add(bodies, GripParser.RULE_compareBody, "body-comparison");
    return bodies;
  }

  private static void add(@Nullable Body[] bodies, int rule, String owner) {
    ATN atn = GripParser._ATN;
    ATNState state = atn.ruleToStartState[rule];
    while (true) {
      Transition only = state.transition(0);
      state = only.target;
      if (only.label() != null) {
        break;
      }
    }
    IntervalSet first = new IntervalSet(atn.nextTokens(state));
    first.remove(GripParser.RBRACE);
    bodies[rule] = new Body(rule, owner, first, state);
  }

  /** Returns whether a declaration may begin with these two tokens. */
  static boolean mayDeclare(int type, int next) {
    ATN atn = GripParser._ATN;
    return follows(atn.ruleToStartState[GripParser.RULE_declaration], type).contains(next);
  }

  /** Returns the tokens that may follow the first token of a statement. */
  private static IntervalSet follows(ATNState start, int type) {
    IntervalSet follows = new IntervalSet();
    Set<ATNState> seen = new HashSet<>();
    Deque<ATNState> pending = new ArrayDeque<>(List.of(start));
    while (!pending.isEmpty()) {
      ATNState state = pending.pop();
      if (!seen.add(state) || state instanceof RuleStopState) {
        continue;
      }
      for (Transition transition : state.getTransitions()) {
        if (transition.isEpsilon()) {
          pending.push(transition.target);
        } else if (transition.matches(type, 0, Integer.MAX_VALUE)) {
          follows.addAll(GripParser._ATN.nextTokens(transition.target));
        }
      }
    }
    return follows;
  }

  /** Returns the body of a grammar rule, or null if it has none. */
  static @Nullable Body of(int rule) {
    return BODIES[rule];
  }

  /** Returns the innermost body that contains a context or is it, or null. */
  static @Nullable Body around(@Nullable RuleContext context) {
    RuleContext found = contextAround(context);
    return found == null ? null : of(found.getRuleIndex());
  }

  static @Nullable RuleContext contextAround(@Nullable RuleContext context) {
    RuleContext at = context;
    while (at != null && of(at.getRuleIndex()) == null) {
      at = at.parent;
    }
    return at;
  }

  /** Returns whether reading continues at the end of this rule after a mistake. */
  static boolean isItem(int rule) {
    return ITEMS.contains(rule);
  }

  static boolean isHeading(int rule) {
    return GripParser.ruleNames[rule].endsWith("Heading");
  }

  static boolean isDeclaration(int type) {
    return type >= GripParser.USE && type <= GripParser.COMPARE;
  }

  /** Returns where a statement that begins with a keyword belongs, or null. */
  static @Nullable Message home(int type) {
    if (isDeclaration(type) && type != GripParser.RULES) {
      return Clause.of("term.home-file");
    }
    List<Message> owners = new ArrayList<>();
    for (int rule = 0; rule < GripParser.ruleNames.length; rule++) {
      Body body = of(rule);
      if (body != null && rule != GripParser.RULE_sessionLineBody && body.mayBegin(type)) {
        owners.add(Clause.of("term." + body.owner()));
      }
    }
    return owners.isEmpty()
        ? null
        : Clause.of("term.home", "owners", Listing.of(Listing.Style.OR, owners));
  }

  /** Returns whether two statements belong in the same kind of body. */
  static boolean shareHome(int type, int other) {
    for (Body body : BODIES) {
      if (body != null
          && body.rule() != GripParser.RULE_sessionLineBody
          && body.mayBegin(type)
          && body.mayBegin(other)) {
        return true;
      }
    }
    return type == other;
  }

  /** Returns whether a word is the keyword of a log line. */
  static boolean isLogWord(int type) {
    return type == GripParser.TEST
        || type == GripParser.SESSION
        || type == GripParser.CLIMBING
        || type == GripParser.SKIPPED
        || type == GripParser.BODY_MASS
        || type == GripParser.PAIN;
  }

  /** Returns whether a body around this one, but not this one, may hold a statement. */
  static boolean outerMayBegin(RuleContext body, int type) {
    RuleContext outer = contextAround(body.parent);
    while (outer != null) {
      Body of = of(outer.getRuleIndex());
      if (of != null && of.mayBegin(type)) {
        return true;
      }
      outer = contextAround(outer.parent);
    }
    return false;
  }
}
