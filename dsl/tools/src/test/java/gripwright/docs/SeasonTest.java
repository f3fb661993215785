package gripwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import gripwright.language.Compilation;
import gripwright.language.Gripwright;
import gripwright.language.source.SourceFile;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Reader;
import gripwright.language.syntax.Syntax;
import gripwright.quantity.Unit;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The season of the invented club has no errors and uses every construct. */
class SeasonTest {

  private static Path folder() {
    return Page.root().resolve("examples/plans");
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(folder())) {
      return files.filter(f -> f.toString().endsWith(".grip")).sorted().toList();
    }
  }

  @Test
  void theSeasonHasNoErrorAndFewOtherFindings() {
    Compilation season = Gripwright.read(folder().resolve("season.grip")).compile();
    List<ReportedFinding> findings = season.findings();
    assertEquals(List.of(), findings.stream().filter(f -> f.severity() == Severity.ERROR).toList());
    assertTrue(findings.size() <= 15, () -> findings.size() + " findings are too many to read");
    assertTrue(findings.stream().anyMatch(f -> f.waivedBecause() != null));
    assertEquals(6, season.plans().size());
  }

  @Test
  void everyConstructIsUsed() throws IOException {
    Set<String> kinds = new TreeSet<>();
    collectKinds(Syntax.class, kinds);
    Set<String> operators = new TreeSet<>();
    for (Expr.Operator operator : Expr.Operator.values()) {
      operators.add(operator.name());
    }
    Set<String> missing = new TreeSet<>(kinds);
    missing.addAll(operators);
    for (Path file : files()) {
      ParsedFile parsed = Reader.parse(SourceFile.of("x.grip", Files.readString(file)));
      assertEquals(List.of(), parsed.findings());
      parsed.declarations().forEach(declaration -> strike(declaration, missing));
    }
    assertEquals(Set.of(), missing);
    assertTrue(kinds.size() > 100, "the records of the language were not found");
  }

  @Test
  void everyOptionalPartIsWrittenSomewhereAndLeftOutSomewhere() throws IOException {
    Set<String> written = new TreeSet<>();
    Set<String> leftOut = new TreeSet<>();
    for (Path file : files()) {
      Reader.parse(SourceFile.of("x.grip", Files.readString(file)))
          .declarations()
          .forEach(declaration -> parts(declaration, written, leftOut));
    }
    // A part that is never null is not optional; one that is always null was never shown.
    Set<String> never = new TreeSet<>(leftOut);
    never.removeAll(written);
    assertEquals(Set.of(), never);
  }

  @Test
  void everyUnitIsUsed() throws IOException {
    StringBuilder text = new StringBuilder();
    for (Path file : files()) {
      text.append(Files.readString(file));
    }
    Set<String> missing = new TreeSet<>();
    for (Unit unit : Unit.values()) {
      if (!text.toString().matches("(?s).*\\d " + unit.symbol() + "\\W.*")) {
        missing.add(unit.symbol());
      }
    }
    assertEquals(Set.of(), missing);
  }

  private static void collectKinds(Class<?> type, Set<String> kinds) {
    if (type.isRecord()) {
      kinds.add(name(type));
    } else if (type.isSealed()) {
      for (Class<?> each : type.getPermittedSubclasses()) {
        collectKinds(each, kinds);
      }
    }
  }

  private static String name(Class<?> type) {
    return type.getName().replaceFirst(".*\\.", "");
  }

  private static void strike(Object node, Set<String> missing) {
    if (node instanceof List<?> list) {
      list.forEach(each -> strike(each, missing));
    } else if (node instanceof Record
        && node.getClass().getPackage().equals(Syntax.class.getPackage())) {
      missing.remove(name(node.getClass()));
      if (node instanceof Expr.Binary binary) {
        missing.remove(binary.operator().name());
      }
      for (RecordComponent component : node.getClass().getRecordComponents()) {
        strike(value(component, node), missing);
      }
    }
  }

  private static void parts(Object node, Set<String> written, Set<String> leftOut) {
    if (node instanceof List<?> list) {
      list.forEach(each -> parts(each, written, leftOut));
    } else if (node instanceof Syntax && node instanceof Record) {
      for (RecordComponent component : node.getClass().getRecordComponents()) {
        Object value = value(component, node);
        (value == null ? leftOut : written).add(name(node.getClass()) + "." + component.getName());
        if (value != null) {
          parts(value, written, leftOut);
        }
      }
    }
  }

  private static Object value(RecordComponent component, Object node) {
    try {
      return component.getAccessor().invoke(node);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
