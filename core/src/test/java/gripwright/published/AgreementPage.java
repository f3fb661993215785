package gripwright.published;

import gripwright.published.Comparison.Kind;
import gripwright.published.Disagreements.Disagreement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/** The tables of docs/models/agreement.md. */
final class AgreementPage {

  private final List<PublishedValue> rows;
  private final List<Compared> compared;
  private final Map<String, Disagreement> disagreements;

  AgreementPage(
      List<PublishedValue> rows, List<Compared> compared, Map<String, Disagreement> disagreements) {
    this.rows = rows;
    this.compared = compared;
    this.disagreements = disagreements;
  }

  /** Returns how many values of each section there are of each sort. */
  String counts() {
    StringBuilder table = new StringBuilder();
    line(
        table,
        "section",
        "values",
        "model inside",
        "model outside",
        "set in view",
        "constants",
        "rules",
        "arithmetic",
        "not compared");
    line(table, "---", "---", "---", "---", "---", "---", "---", "---", "---");
    for (String section : sections()) {
      counts(table, section, row -> row.section().equals(section));
    }
    counts(table, "**all**", row -> true);
    return table.toString();
  }

  private void counts(StringBuilder table, String name, Predicate<PublishedValue> in) {
    line(
        table,
        name,
        Long.toString(rows.stream().filter(in).count()),
        count(in, each -> each.comparison().isCheck() && each.inside()),
        count(in, each -> each.comparison().isCheck() && !each.inside()),
        count(in, each -> each.comparison().inView()),
        count(in, each -> each.comparison().kind() == Kind.CONSTANT),
        count(in, each -> each.comparison().kind() == Kind.RULE),
        count(in, each -> each.comparison().kind() == Kind.ARITHMETIC),
        Long.toString(rows.stream().filter(in).filter(row -> !row.compared()).count()));
  }

  private String count(Predicate<PublishedValue> in, Predicate<Compared> what) {
    return Long.toString(
        compared.stream().filter(each -> in.test(each.row())).filter(what).count());
  }

  private List<String> sections() {
    return rows.stream().map(PublishedValue::section).distinct().toList();
  }

  /** Returns a table of each section's models, and a line for each value that is missed. */
  String models() {
    StringBuilder text = new StringBuilder();
    for (String section : sections()) {
      List<Compared> models =
          compared.stream()
              .filter(each -> each.row().section().equals(section))
              .filter(each -> each.comparison().isModel())
              .toList();
      if (models.isEmpty()) {
        continue;
      }
      text.append("\n### ").append(capital(section)).append("\n\n");
      line(text, "quantity", "published", "accepted", "model", "ratio", "inside", "source");
      line(text, "---", "---", "---", "---", "---", "---", "---");
      models.forEach(each -> model(text, each));
      notes(text, models);
    }
    return text.append('\n').toString();
  }

  private void model(StringBuilder text, Compared each) {
    PublishedValue row = each.row();
    line(
        text,
        quantity(row),
        published(row),
        each.accepted().words(),
        each.model(),
        ratio(each.ratio()),
        each.comparison().inView() ? "in view" : each.inside() ? "yes" : "**no**",
        source(row));
  }

  private void notes(StringBuilder text, List<Compared> models) {
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (Compared each : models) {
      Disagreement miss = disagreements.get(each.row().id());
      if (miss != null && !each.inside()) {
        byReason.computeIfAbsent(miss.why(), why -> new ArrayList<>()).add(quantity(each.row()));
      }
    }
    Map<String, List<String>> bySetting = new LinkedHashMap<>();
    for (Compared each : models) {
      if (each.comparison().inView()) {
        bySetting
            .computeIfAbsent(each.comparison().setByIt(), what -> new ArrayList<>())
            .add(quantity(each.row()));
      }
    }
    if (!bySetting.isEmpty()) {
      text.append("\nSet with a value in view:\n\n");
    }
    list(text, bySetting);
    if (!byReason.isEmpty()) {
      text.append("\nOutside:\n\n");
    }
    list(text, byReason);
  }

  private static void list(StringBuilder text, Map<String, List<String>> quantitiesByReason) {
    quantitiesByReason.forEach(
        (reason, quantities) ->
            text.append("- ")
                .append(String.join("; ", quantities))
                .append(": ")
                .append(reason)
                .append(".\n"));
  }

  /** Returns the constants and the arithmetic in one table. */
  String constants() {
    StringBuilder text = new StringBuilder();
    line(text, "section", "quantity", "published", "here", "sort", "source");
    line(text, "---", "---", "---", "---", "---", "---");
    for (Compared each : compared) {
      if (!each.comparison().isModel()) {
        PublishedValue row = each.row();
        line(
            text,
            row.section(),
            quantity(row),
            published(row),
            each.comparison().kind() == Kind.RULE
                ? (each.inside() ? "holds" : "**does not hold**")
                : each.model(),
            each.comparison().kind().toString(),
            source(row));
      }
    }
    return text.toString();
  }

  /** Returns the values that are not compared, by reason. */
  String notCompared() {
    Map<String, List<PublishedValue>> byReason = new LinkedHashMap<>();
    for (PublishedValue row : rows) {
      if (!row.compared()) {
        byReason.computeIfAbsent(row.reason(), reason -> new ArrayList<>()).add(row);
      }
    }
    StringBuilder text = new StringBuilder();
    byReason.forEach(
        (reason, missed) -> {
          text.append("\n**").append(capital(reason)).append("** (").append(missed.size());
          text.append("):\n\n");
          bySource(missed)
              .forEach(
                  (source, values) ->
                      text.append("- ")
                          .append(source)
                          .append(": ")
                          .append(String.join("; ", values))
                          .append('\n'));
        });
    return text.append('\n').toString();
  }

  private Map<String, List<String>> bySource(List<PublishedValue> missed) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    for (PublishedValue row : missed) {
      values
          .computeIfAbsent(source(row), source -> new ArrayList<>())
          .add(quantity(row) + ", " + published(row));
    }
    return values;
  }

  /** Returns the citations behind the short names. */
  String sources() {
    Map<String, String> byName = new TreeMap<>();
    rows.forEach(
        row -> {
          String name = source(row).replace("\u2020", "");
          if (!name.equals(row.citation())) {
            byName.put(name, row.citation());
          }
        });
    StringBuilder text = new StringBuilder("\n");
    byName.forEach(
        (name, citation) ->
            text.append("- ").append(name).append(": ").append(citation).append('\n'));
    return text.append('\n').toString();
  }

  private static String quantity(PublishedValue row) {
    return row.quantity().replace("|", "\\|").replace("<", "&lt;").replace("*", "\\*");
  }

  private static String published(PublishedValue row) {
    String unit = row.unit();
    boolean words = unit.equals("-") || unit.equals("rule") || unit.equals("order");
    String value =
        row.value()
            .replace("..", " to ")
            .replace("~", " about ")
            .replace(";", "; ")
            .replace(">", "\\>");
    boolean bare = words || unit.isEmpty() || unit.equals("ratio");
    return (bare ? value : value + " " + unit).replace("|", "\\|");
  }

  /** A short name that stands for two publications is of no use, so both are given in full. */
  private String source(PublishedValue row) {
    String name = row.shortSource();
    boolean one =
        rows.stream()
            .filter(other -> other.shortSource().equals(name))
            .allMatch(other -> other.citation().equals(row.citation()));
    return (one ? name : row.citation()) + (row.verified() ? "" : "\u2020");
  }

  private static String ratio(double ratio) {
    return Double.isInfinite(ratio) ? "no end" : String.format(Locale.ROOT, "%.2f", ratio);
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static void line(StringBuilder table, String... cells) {
    table.append("| ").append(String.join(" | ", cells)).append(" |\n");
  }
}
