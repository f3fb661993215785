package gripwright.export.study;

import gripwright.export.words.Words;
import gripwright.finding.ModelPath;
import gripwright.plan.Plan;
import gripwright.wording.Wording;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The methods of plans as Markdown: what is done, in sentences, and tables of the items that
 * reporting guidelines ask for, each with what the plan says and the line that it comes from.
 *
 * <p>Guidelines: CERT (Slade SC et al. 2016, Br J Sports Med 50:1428-1437), TIDieR (Hoffmann TC et
 * al. 2014, BMJ 348:g1687), and the descriptors of Toigo M, Boutellier U (2006, Eur J Appl Physiol
 * 97:643-663). Items from memory, in our own words.
 *
 * @since 1.0
 */
public final class Methods {

  private final Words words;
  private final Pseudonyms names;
  private final Function<ModelPath, Optional<String>> lines;
  private final StringBuilder text = new StringBuilder();

  private Methods(Words words, Pseudonyms names, Function<ModelPath, Optional<String>> lines) {
    this.words = words;
    this.names = names;
    this.lines = lines;
  }

  /**
   * Returns the methods of plans, closed by a line feed.
   *
   * @param plans the plans, in the order to be written
   * @param names how athletes are called
   * @param wording turns data into words
   * @param lines file and line where a part of a plan is written, if known
   */
  public static String of(
      Collection<Plan> plans,
      Pseudonyms names,
      Wording wording,
      Function<ModelPath, Optional<String>> lines) {
    Methods methods = new Methods(new Words(wording), names, lines);
    plans.forEach(methods::add);
    methods.text.append(methods.words.say("methods.unverified")).append('\n');
    return methods.text.toString();
  }

  private void add(Plan plan) {
    heading("# ", words.say("methods.title", "plan", plan.title().orElse(plan.name())));
    for (String paragraph : new Procedure(plan, words, names).paragraphs()) {
      text.append(names.hide(paragraph)).append("\n\n");
    }
    PlanFacts facts = new PlanFacts(plan, words, names.hiding());
    for (ReportingItem.Guideline guideline : ReportingItem.Guideline.values()) {
      heading("## ", words.of("methods.guideline", guideline));
      row(
          List.of(
              words.say("methods.column-number"),
              words.say("methods.column-item"),
              words.say("methods.column-value"),
              words.say("methods.column-line")));
      text.append("|---|---|---|---|\n");
      ReportingItem.of(guideline).forEach(item -> row(item, facts));
      text.append('\n');
    }
  }

  private void heading(String mark, String title) {
    text.append(mark).append(names.hide(flat(title))).append("\n\n");
  }

  private void row(ReportingItem item, PlanFacts facts) {
    Optional<PlanFacts.Value> value = facts.of(item.fact());
    row(
        List.of(
            item.number(),
            words.say(item.key()),
            value.map(PlanFacts.Value::text).orElse(words.say("methods.not-stated")),
            value.flatMap(v -> lines.apply(v.place())).orElse("")));
  }

  private void row(List<String> cells) {
    for (String cell : cells) {
      text.append("| ").append(names.hide(flat(cell))).append(' ');
    }
    text.append("|\n");
  }

  /** Returns a text on one line, without signs that Markdown would read. */
  static String flat(String text) {
    return text.replaceAll("\\s+", " ")
        .strip()
        .replace("\\", "\\\\")
        .replace("|", "\\|")
        .replace("*", "\\*")
        .replace("_", "\\_")
        .replace("`", "\\`")
        .replace("[", "\\[")
        .replace("<", "&lt;");
  }
}
