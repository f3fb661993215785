package gripwright.export.study;

import gripwright.export.study.PlanFacts.Fact;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * An item of a reporting guideline, and the fact about a plan that answers it.
 *
 * @param guideline the guideline
 * @param number its number there
 * @param fact the fact
 */
record ReportingItem(Guideline guideline, String number, Fact fact) {

  /** A list of what a report has to say. */
  enum Guideline {
    /** Consensus on Exercise Reporting Template. */
    CERT,
    /** Template for Intervention Description and Replication. */
    TIDIER,
    /** The mechano-biological descriptors of Toigo and Boutellier. */
    TOIGO
  }

  private static final List<ReportingItem> ITEMS =
      List.of(
          cert("1", Fact.EQUIPMENT),
          cert("2", Fact.PROVIDER),
          cert("3", Fact.DELIVERY),
          cert("4", Fact.SUPERVISION),
          cert("5", Fact.FIDELITY),
          cert("6", Fact.MOTIVATION),
          cert("7a", Fact.PROGRESSION_RULE),
          cert("7b", Fact.PROGRESSION),
          cert("8", Fact.EXERCISES),
          cert("9", Fact.HOME),
          cert("10", Fact.OTHER_PARTS),
          cert("11", Fact.ADVERSE_EVENTS),
          cert("12", Fact.SETTING),
          cert("13", Fact.DOSE),
          cert("14a", Fact.TAILORED),
          cert("14b", Fact.TAILORING),
          cert("15", Fact.STARTING_LEVEL),
          cert("16a", Fact.FIDELITY),
          cert("16b", Fact.DELIVERED),
          tidier("1", Fact.NAME),
          tidier("2", Fact.WHY),
          tidier("3", Fact.EQUIPMENT),
          tidier("4", Fact.EXERCISES),
          tidier("5", Fact.PROVIDER),
          tidier("6", Fact.DELIVERY),
          tidier("7", Fact.SETTING),
          tidier("8", Fact.DOSE),
          tidier("9", Fact.TAILORING),
          tidier("10", Fact.DELIVERED),
          tidier("11", Fact.FIDELITY),
          tidier("12", Fact.DELIVERED),
          toigo("1", Fact.LEVELS),
          toigo("2", Fact.REPETITIONS),
          toigo("3", Fact.SETS),
          toigo("4", Fact.REST_BETWEEN_SETS),
          toigo("5", Fact.FREQUENCY),
          toigo("6", Fact.PERIOD),
          toigo("7", Fact.CONTRACTION),
          toigo("8", Fact.REST_BETWEEN_HOLDS),
          toigo("9", Fact.TIME_UNDER_TENSION),
          toigo("10", Fact.FAILURE),
          toigo("11", Fact.RANGE_OF_MOTION),
          toigo("12", Fact.RECOVERY),
          toigo("13", Fact.FORM));

  private static ReportingItem cert(String number, Fact fact) {
    return new ReportingItem(Guideline.CERT, number, fact);
  }

  private static ReportingItem tidier(String number, Fact fact) {
    return new ReportingItem(Guideline.TIDIER, number, fact);
  }

  private static ReportingItem toigo(String number, Fact fact) {
    return new ReportingItem(Guideline.TOIGO, number, fact);
  }

  /** Returns the items of a guideline, in its order. */
  static List<ReportingItem> of(Guideline guideline) {
    return ITEMS.stream().filter(item -> item.guideline() == guideline).toList();
  }

  /** Returns the key of the words for the item. */
  String key() {
    return Stream.of("methods.item", guideline.name().toLowerCase(Locale.ROOT), number)
        .reduce((one, other) -> one + "-" + other)
        .orElseThrow();
  }
}
