package gripwright.tools.command;

import gripwright.compare.Arm;
import gripwright.compare.Comparison;
import gripwright.compare.ComparisonResult;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.export.csv.AllocationCsv;
import gripwright.export.csv.ComparisonCsv;
import gripwright.export.csv.TidyTable;
import gripwright.export.json.JsonDocuments;
import gripwright.export.json.Provenance;
import gripwright.export.picture.ForestPicture;
import gripwright.export.picture.ParetoPicture;
import gripwright.export.study.ComparisonMethods;
import gripwright.export.study.Pseudonyms;
import gripwright.language.Reading;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Writes comparisons as a folder: tables, their description, methods and figures. */
final class StudyFiles {

  private static final Pattern PICTURED = Pattern.compile("(?<=>)[^<>]+(?=<)");

  private StudyFiles() {}

  /**
   * Returns the table of the participants who were revealed, if {@code --log} names their log.
   *
   * @param chosen the comparisons that are run
   * @throws UsageException if the log can't be read, or belongs to another trial or to several
   */
  static Optional<TidyTable> revealed(Collection<Comparison> chosen, Arguments given)
      throws UsageException {
    Optional<String> written = given.value(Arguments.LOG);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    if (!given.has(Arguments.TO)) {
      throw new UsageException("--log needs --to FOLDER, which then has `allocation.csv`");
    }
    if (chosen.size() != 1) {
      throw new UsageException("--log belongs to one comparison: give its NAME");
    }
    Path file = given.path(written.get());
    if (!Files.exists(file)) {
      throw new UsageException("cannot read `" + written.get() + "`: there is no such file");
    }
    Comparison comparison = chosen.iterator().next();
    return Optional.of(
        AllocationCsv.revealed(
            comparison.name(),
            RevealedLog.read(file, written.get())
                .published(comparison.arms().stream().map(Arm::name).toList())));
  }

  /**
   * Writes the folder and returns a line about it.
   *
   * @param revealed the table of {@link #revealed}
   * @throws UsageException if it can't be written
   */
  static String write(
      List<ComparisonResult> results,
      Optional<TidyTable> revealed,
      Reading reading,
      Arguments given)
      throws UsageException {
    Path folder = given.path(given.value(Arguments.TO).orElseThrow());
    Optional<CodeKey> key = CodeKey.of(given, folder, athletes(results), reading);
    Pseudonyms names = CodeKey.names(key, reading);
    List<ComparisonResult> shown = coded(results, names);
    Provenance provenance = Console.provenance(reading.files(), names);
    Map<String, String> texts = new LinkedHashMap<>();
    List<TidyTable> tables =
        Stream.concat(ComparisonCsv.tables(shown).stream(), revealed.stream())
            .map(table -> table.withTexts(names::hide))
            .toList();
    tables.forEach(table -> texts.put(table.fileName(), table.csv()));
    String title =
        shown.size() == 1
            ? shown.get(0).comparison().title().orElse(shown.get(0).comparison().name())
            : "comparisons";
    texts.put(
        "datapackage.json",
        new JsonDocuments(provenance, Console.wording())
            .dataPackage(
                names.hide(shown.get(0).comparison().name()).toLowerCase(Locale.ROOT),
                names.hide(title),
                tables));
    for (ComparisonResult result : shown) {
      for (Subject subject : result.subjects()) {
        boolean only = shown.size() == 1 && result.subjects().size() == 1;
        String suffix =
            only ? "" : names.hide("-" + result.comparison().name() + "-" + subject.name());
        texts.put(
            "methods" + suffix + ".md",
            ComparisonMethods.of(result, subject, provenance, Console.wording(), names));
        texts.put(
            "forest" + suffix + ".svg",
            hidden(ForestPicture.of(subject, Console.wording()), names));
        if (ParetoPicture.canDraw(result.comparison())) {
          texts.put(
              "pareto" + suffix + ".svg",
              hidden(ParetoPicture.of(result.comparison(), subject, Console.wording()), names));
        }
      }
    }
    OutputFolder output = OutputFolder.checked(folder, texts);
    if (key.isPresent()) {
      key.get().write();
    }
    output.write();
    return texts.size() + " files written to " + given.value(Arguments.TO).orElse("") + "\n";
  }

  /** Returns a picture without names in its texts; its elements stay as they are. */
  private static String hidden(String svg, Pseudonyms names) {
    return PICTURED
        .matcher(svg)
        .replaceAll(text -> Matcher.quoteReplacement(names.hide(text.group())));
  }

  private static Set<String> athletes(List<ComparisonResult> results) {
    Set<String> names = new TreeSet<>();
    for (ComparisonResult result : results) {
      result.subjects().stream()
          .filter(subject -> subject.athletes() == 0)
          .forEach(subject -> names.add(subject.name()));
    }
    return names;
  }

  private static List<ComparisonResult> coded(List<ComparisonResult> results, Pseudonyms names) {
    if (!names.hiding()) {
      return results;
    }
    List<ComparisonResult> coded = new ArrayList<>();
    for (ComparisonResult result : results) {
      coded.add(
          new ComparisonResult(
              result.comparison(),
              result.subjects().stream().map(subject -> coded(subject, names)).toList(),
              result.findings()));
    }
    return coded;
  }

  private static Subject coded(Subject subject, Pseudonyms names) {
    return subject.athletes() > 0
        ? subject
        : new Subject(
            names.of(subject.name()),
            subject.athletes(),
            subject.draws(),
            subject.inputs(),
            subject.matches(),
            subject.arms(),
            subject.differences(),
            subject.pareto());
  }
}
