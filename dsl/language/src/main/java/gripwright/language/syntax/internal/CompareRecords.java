package gripwright.language.syntax.internal;

import static gripwright.language.syntax.internal.Parts.in;
import static gripwright.language.syntax.internal.Parts.list;

import gripwright.language.syntax.Amount;
import gripwright.language.syntax.CohortItem;
import gripwright.language.syntax.CompareItem;
import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.SyntaxNode;
import gripwright.language.syntax.Word;
import java.util.List;

/** Reads the statements of cohorts and comparisons from their nodes. */
final class CompareRecords {

  private final Parts parts;
  private final PlanRecords plans;

  CompareRecords(Parts parts, PlanRecords plans) {
    this.parts = parts;
    this.plans = plans;
  }

  CohortItem cohortItem(SyntaxNode node) {
    int id = parts.id(node);
    return switch (node.kind()) {
      case COHORT_SIZE -> new CohortItem.Size(id, only(node));
      case COHORT_SEX ->
          new CohortItem.SexShare(
              id, parts.word(node, NodeKind.NAME), only(node), parts.textIfAny(node));
      case HAND_BY_SEX -> new CohortItem.HandBySex(id, parts.textIfAny(node));
      case COHORT_MASS -> {
        List<Amount> spread = amounts(in(node, NodeKind.SPREAD));
        yield new CohortItem.Mass(id, spread.get(0), spread.get(1), parts.textIfAny(node));
      }
      case COHORT_MAXIMUM -> {
        List<Amount> spread = amounts(in(node, NodeKind.SPREAD));
        yield new CohortItem.Maximum(
            id,
            spread.get(0),
            spread.get(1),
            parts.word(node, NodeKind.NAME),
            parts.setup(node),
            parts.textIfAny(node));
      }
      case COHORT_FORCE -> {
        List<Amount> spread = amounts(node);
        yield new CohortItem.CriticalForce(id, spread.get(0), spread.get(1), parts.textIfAny(node));
      }
      case CORRELATE -> {
        List<Word> traits = list(node.nodes(NodeKind.NAME), parts::word);
        if (traits.size() < 2) {
          throw new Parts.Incomplete();
        }
        yield new CohortItem.Correlate(
            id, traits.get(0), traits.get(1), only(node), parts.textIfAny(node));
      }
      case SOURCE -> new CohortItem.Source(id, parts.text(in(node, NodeKind.TEXT)));
      case NOTE -> parts.note(node);
      default -> throw new Parts.Incomplete();
    };
  }

  private Amount only(SyntaxNode node) {
    return parts.amount(in(node, NodeKind.AMOUNT));
  }

  /** Returns the two amounts of a node. */
  private List<Amount> amounts(SyntaxNode node) {
    List<Amount> amounts = list(node.nodes(NodeKind.AMOUNT), parts::amount);
    if (amounts.size() < 2) {
      throw new Parts.Incomplete();
    }
    return amounts;
  }

  CompareItem compareItem(SyntaxNode node) {
    int id = parts.id(node);
    return switch (node.kind()) {
      case COMPARE_FOR -> new CompareItem.CompareFor(id, parts.names(node));
      case ARM -> arm(id, node);
      case COMPARE_ON ->
          new CompareItem.CompareOn(id, parts.word(node, NodeKind.NAME), parts.setup(node));
      case COMPARE_BETWEEN -> new CompareItem.CompareBetween(id, parts.names(node));
      case COMPARE_MATCH -> match(id, node);
      case MATCH_EACH -> new CompareItem.MatchEach(id);
      case COMPARE_EACH -> new CompareItem.CompareEach(id, only(node));
      case COMPARE_OVER -> new CompareItem.CompareOver(id, only(node));
      case DRAWS -> {
        List<Amount> numbers = amounts(node);
        yield new CompareItem.Draws(id, numbers.get(0), numbers.get(1));
      }
      case COMPARE_MEASURE -> new CompareItem.CompareMeasure(id, parts.names(node));
      case OBJECTIVES ->
          new CompareItem.Objectives(id, list(node.nodes(NodeKind.OBJECTIVE), this::preferred));
      case REPORT -> parts.report(node);
      case NOTE -> parts.note(node);
      default -> throw new Parts.Incomplete();
    };
  }

  private CompareItem.Preferred preferred(SyntaxNode node) {
    return new CompareItem.Preferred(node.has("more"), parts.word(node, NodeKind.NAME));
  }

  private CompareItem arm(int id, SyntaxNode node) {
    List<SyntaxNode> names = node.nodes(NodeKind.NAME);
    Word name = parts.word(names.get(0));
    return new CompareItem.Arm(
        id,
        name,
        node.node(NodeKind.EXERCISE).map(plans::exercise).orElse(null),
        names.size() > 1 ? parts.word(names.get(1)) : null);
  }

  private CompareItem match(int id, SyntaxNode node) {
    List<Word> names = list(node.nodes(NodeKind.NAME), parts::word);
    boolean arms = names.size() == 4;
    if (!arms && names.size() != 2) {
      throw new Parts.Incomplete();
    }
    return new CompareItem.CompareMatch(
        id,
        names.get(0),
        arms ? names.get(1) : null,
        arms ? names.get(2) : null,
        names.get(names.size() - 1),
        parts.amountIfAny(node, "within"));
  }
}
