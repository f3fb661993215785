package gripwright.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What hosts may use: each exported package says how stable it is and since when it is there, and
 * so does each exported type that came after its package. {@code docs/versions.md} says what the
 * two mean. What hosts read has no unfilled templates.
 */
final class ExportedTypesTest {

  private static final Path ROOT = Path.of("../..");

  /** The types of the first version; {@code -Dgripwright.bless=true} rewrites it before that. */
  private static final Path FIRST = Path.of("src/test/resources/house/exported-1.0.txt");

  private static final Pattern EXPORTS = Pattern.compile("(?m)^  exports ([\\w.]+);");

  private static final Pattern STABILITY =
      Pattern.compile("(?m)^ \\* <p>Stability: (stable|may change before 2\\.0)\\.$");

  private static final Pattern SINCE = Pattern.compile("@since \\d+\\.\\d+\\b");

  private static final Pattern PUBLIC =
      Pattern.compile(
          "(?m)^public (?:final |sealed |non-sealed |abstract )*"
              + "(?:class|record|enum|interface|@interface) (\\w+)");

  private static final Pattern MODULE = Pattern.compile("<module>([\\w/]+)</module>");

  private static final Pattern JAVADOC = Pattern.compile("(?ms)^ *(/\\*\\*.*?\\*/)");

  /** An exported package, or one that is not. */
  private record Exported(String name, Path folder) {
    String info() throws IOException {
      return Files.readString(folder.resolve("package-info.java"));
    }

    boolean mayChange() throws IOException {
      return info().contains("Stability: may change");
    }
  }

  @Test
  void everyExportedPackageSaysHowStableItIsAndSinceWhen() throws IOException {
    Set<String> silent = new TreeSet<>();
    for (Exported each : exported()) {
      if (!STABILITY.matcher(each.info()).find() || !SINCE.matcher(each.info()).find()) {
        silent.add(each.name());
      }
    }
    assertEquals(Set.of(), silent, "exported packages without a stability or a version");
  }

  @Test
  void everyExportedTypeThatCameAfterItsPackageSaysSinceWhen() throws IOException {
    Set<String> types = new TreeSet<>();
    Set<String> withVersion = new TreeSet<>();
    for (Exported each : exported()) {
      for (Path file : sources(each.folder())) {
        String text = Files.readString(file);
        String type = each.name() + "." + file.getFileName().toString().replace(".java", "");
        if (PUBLIC.matcher(text).find()) {
          types.add(type);
          if (SINCE.matcher(text).find()) {
            withVersion.add(type);
          }
        }
      }
    }
    assertTrue(types.size() > 100, () -> "only " + types.size() + " exported types");
    if (Boolean.getBoolean("gripwright.bless")) {
      Files.createDirectories(FIRST.getParent());
      Files.writeString(FIRST, String.join("\n", types) + "\n");
    }
    Set<String> unversioned = new TreeSet<>(types);
    unversioned.removeAll(withVersion);
    Files.readAllLines(FIRST).forEach(unversioned::remove);
    assertEquals(Set.of(), unversioned, "new types without @since; before 1.0, bless the list");
    Set<String> gone = new TreeSet<>(Files.readAllLines(FIRST));
    gone.removeAll(types);
    assertEquals(Set.of(), gone, "types that are no longer exported; before 1.0, bless the list");
  }

  /** The comparison with the last version skips what hosts can't use and what may change. */
  @Test
  void theComparisonOfVersionsSkipsWhatPromisesNothing() throws IOException {
    Set<String> promised = new TreeSet<>();
    Set<String> others = new TreeSet<>();
    for (Exported each : exported()) {
      (each.mayChange() ? others : promised).add(each.name());
    }
    Set<String> exported = new TreeSet<>(promised);
    exported.addAll(others);
    for (String module : List.of("core", "dsl/language")) {
      packages(module).stream().filter(name -> !exported.contains(name)).forEach(others::add);
    }
    Set<String> skipped = new TreeSet<>();
    String pom = Files.readString(ROOT.resolve("pom.xml"));
    matches(
            Pattern.compile("<exclude>(gripwright\\.[\\w.]+)</exclude>"),
            pom.substring(pom.indexOf("japicmp-maven-plugin")))
        .forEach(skipped::add);
    others.removeIf(
        name -> name.startsWith("gripwright.export") || name.equals("gripwright.tools"));
    Set<String> missing = new TreeSet<>(others);
    missing.removeIf(name -> skipped.stream().anyMatch(s -> (name + ".").startsWith(s + ".")));
    assertEquals(Set.of(), missing, "packages that the comparison of versions should skip");
    Set<String> tooMuch = new TreeSet<>(skipped);
    tooMuch.removeIf(s -> promised.stream().noneMatch(name -> (name + ".").startsWith(s + ".")));
    assertEquals(Set.of(), tooMuch, "stable packages that the comparison of versions skips");
  }

  @Test
  void noTemplateIsLeftUnfilledInJavadoc() throws IOException {
    Set<String> unfilled = new TreeSet<>();
    int[] comments = new int[1];
    for (Path file : mainSources()) {
      for (String comment : matches(JAVADOC, Files.readString(file))) {
        comments[0]++;
        brace(comment).ifPresent(line -> unfilled.add(file.getFileName() + ": " + line));
      }
    }
    assertTrue(comments[0] > 3000, () -> "only " + comments[0] + " comments");
    assertEquals(Set.of(), unfilled, "braces in prose; write {@code ...} if they are meant");
  }

  @Test
  void braceInProseIsFoundAndBraceInTagIsNot() {
    assertEquals(Optional.of("Returns the {result}."), brace("/** Returns the {result}. */"));
    assertEquals(Optional.of("b {c}"), brace("/**\n * {@code a {x} y}\n * b {c}\n */"));
    assertEquals(Optional.empty(), brace("/** Such as {@code a {x}}, or {@link A}. */"));
  }

  /** Returns the first line of a comment with an opening brace outside of every inline tag. */
  private static Optional<String> brace(String comment) {
    int depth = 0;
    for (int i = 0; i < comment.length(); i++) {
      char each = comment.charAt(i);
      if (each == '{' && depth == 0 && comment.charAt(i + 1) != '@') {
        int end = comment.indexOf('\n', i);
        String line =
            comment.substring(comment.lastIndexOf('\n', i) + 1, end < 0 ? comment.length() : end);
        return Optional.of(line.replaceAll("^[ /*]+|[ /*]+$", ""));
      }
      depth += each == '{' ? 1 : each == '}' && depth > 0 ? -1 : 0;
    }
    return Optional.empty();
  }

  private static List<Path> mainSources() throws IOException {
    List<Path> sources = new ArrayList<>();
    for (String module : matches(MODULE, Files.readString(ROOT.resolve("pom.xml")))) {
      Path main = ROOT.resolve(module).resolve("src/main/java");
      if (Files.isDirectory(main)) {
        try (Stream<Path> files = Files.walk(main)) {
          files.filter(file -> file.toString().endsWith(".java")).sorted().forEach(sources::add);
        }
      }
    }
    return sources;
  }

  private static List<Exported> exported() throws IOException {
    List<Exported> exported = new ArrayList<>();
    for (String module :
        List.of("core", "dsl/language", "dsl/export", "dsl/testkit", "dsl/tools")) {
      Path sources = ROOT.resolve(module).resolve("src/main/java");
      for (String name : matches(EXPORTS, Files.readString(sources.resolve("module-info.java")))) {
        exported.add(new Exported(name, sources.resolve(name.replace('.', '/'))));
      }
    }
    return exported;
  }

  private static List<String> matches(Pattern pattern, String text) {
    return pattern.matcher(text).results().map((MatchResult result) -> result.group(1)).toList();
  }

  private static List<Path> sources(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(file -> !file.endsWith("package-info.java"))
          .sorted()
          .toList();
    }
  }

  private static Set<String> packages(String module) throws IOException {
    Path root = ROOT.resolve(module).resolve("src/main/java");
    Set<String> packages = new TreeSet<>();
    try (Stream<Path> walk = Files.walk(root)) {
      walk.filter(file -> file.endsWith("package-info.java"))
          .map(file -> root.relativize(file.getParent()).toString().replace('\\', '/'))
          .map(name -> name.replace('/', '.'))
          .forEach(packages::add);
    }
    return packages;
  }
}
