package gripwright.language.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ReportedFinding;
import gripwright.language.Compilation;
import gripwright.language.Gripwright;
import gripwright.language.ReadOptions;
import gripwright.language.Reading;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.SourceLoader;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Reader;
import gripwright.language.syntax.SyntaxElement;
import gripwright.language.syntax.SyntaxNode;
import gripwright.work.CountedWork;
import gripwright.work.Work;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Texts of the published grammar, and stored texts with parts replaced by others of the same
 * production, are read and compiled completely: none throws, each takes moderate work, the tree
 * gives the text back, and every finding is inside a text.
 *
 * <p>A text whose findings are of kinds not met together before is kept and changed further. A
 * build reads the same texts each time, a fixed number of them. For a long run: {@code
 * -Dgripwright.fuzz.minutes=30 -Dgripwright.fuzz.stream=7}. What fails, or is kept, is written to
 * {@code target/fuzz}; what failed once belongs into {@code resources/fuzz}, which is run again on
 * every build.
 */
@CountedWork
class FuzzTest {

  private static final int TEXTS = Integer.getInteger("gripwright.fuzz.texts", 2_000);

  /** Above zero only by hand, for a long run; then the number of texts doesn't matter. */
  private static final double MINUTES =
      Double.parseDouble(System.getProperty("gripwright.fuzz.minutes", "0"));

  private static final long STREAM = Long.getLong("gripwright.fuzz.stream", 20270111);

  /** Constant number of steps for a text, and steps for each of its characters. */
  private static final long MOST_STEPS = 100_000_000;

  private static final long MOST_STEPS_A_CHARACTER = 5_000;

  private static final int MOST_KEPT = 3_000;
  private static final Path FOUND = Path.of("target/fuzz");
  private static final List<Path> STORED =
      List.of(
          Path.of("src/test/resources/fuzz"),
          Path.of("src/test/resources/corpus"),
          Path.of("src/test/resources/syntax-all"),
          Path.of("../../examples/plans"));

  private final Map<String, String> files = new TreeMap<>();
  private final List<String> pool = new ArrayList<>();
  private final Set<String> signatures = new HashSet<>();
  private final Map<String, String> failures = new TreeMap<>();
  private final Derivations grammar = new Derivations();

  private void load() throws IOException {
    for (Path folder : STORED) {
      try (Stream<Path> found = Files.list(folder)) {
        for (Path file : found.filter(f -> f.toString().endsWith(".grip")).sorted().toList()) {
          if (!file.endsWith("latin.grip")) {
            files.put(file.getFileName().toString(), Files.readString(file));
          }
        }
      }
    }
    pool.addAll(files.values());
  }

  @Test
  void textsThatFailedOncePass() throws IOException {
    load();
    try (Stream<Path> found = Files.list(STORED.get(0))) {
      for (Path file : found.filter(f -> f.toString().endsWith(".grip")).sorted().toList()) {
        run(Files.readString(file));
      }
    }
    assertEquals(Map.of(), failures);
  }

  @Test
  void textsOfTheGrammarAreRead() throws IOException {
    load();
    Random random = new Random(STREAM);
    long end = System.nanoTime() + (long) (MINUTES * 60e9);
    long texts = 0;
    Set<String> codes = new TreeSet<>();
    while ((MINUTES > 0 ? System.nanoTime() < end : texts < TEXTS) && failures.size() < 20) {
      String text = next(random);
      Set<String> codesOfText = run(text);
      codes.addAll(codesOfText);
      texts++;
      if (signatures.add(codesOfText.toString())
          && pool.size() < MOST_KEPT
          && text.length() < 10_000) {
        pool.add(text);
        keep("kept-" + signatures.size(), text);
      }
    }
    String report =
        String.format(
            Locale.ROOT,
            "%d texts, stream %d, %d codes, %d kinds of findings together, %d failures%n",
            texts,
            STREAM,
            codes.size(),
            signatures.size(),
            failures.size());
    keep("report", report + String.join("\n", codes) + "\n");
    assertEquals(Map.of(), failures, report);
    assertTrue(texts > 0);
  }

  private String next(Random random) {
    String text =
        switch (random.nextInt(4)) {
          case 0 -> "language 1\n" + grammar.of("file", random).replaceFirst("^language .*?\n", "");
          case 1 -> grammar.of("file", random);
          default -> pool.get(random.nextInt(pool.size()));
        };
    int changes = random.nextInt(4);
    for (int i = 0; i < changes && text.length() < 100_000; i++) {
      text = random.nextInt(5) == 0 ? characterChanged(text, random) : replaced(text, random);
    }
    return text;
  }

  /** Replaces a part by another of its production, by nothing, or by itself twice. */
  private String replaced(String text, Random random) {
    List<SyntaxNode> nodes = new ArrayList<>();
    try {
      ParsedFile parsed =
          Work.atMost(mostSteps(text), () -> Reader.parse(SourceFile.of("x.grip", text)));
      collect(parsed.tree().root(), nodes);
    } catch (Work.TooMuch e) {
      return text; // which is run next, and fails
    }
    if (nodes.isEmpty()) {
      return text;
    }
    SyntaxNode node = nodes.get(random.nextInt(nodes.size()));
    String before = text.substring(0, node.span().start());
    String old = text.substring(node.span().start(), node.span().end());
    String after = text.substring(node.span().end());
    String production = production(node);
    return switch (random.nextInt(6)) {
      case 0 -> before + after;
      case 1 -> before + old + "\n" + old + after;
      case 2 -> before + grammar.of(any(random), random) + after;
      default ->
          grammar.names().contains(production)
              ? before + grammar.of(production, random) + after
              : before + after;
    };
  }

  private String any(Random random) {
    List<String> names = grammar.names();
    return names.get(random.nextInt(names.size()));
  }

  private static void collect(SyntaxNode node, List<SyntaxNode> nodes) {
    for (SyntaxElement child : node.children()) {
      if (child instanceof SyntaxNode inner) {
        nodes.add(inner);
        collect(inner, nodes);
      }
    }
  }

  private static String production(SyntaxNode node) {
    StringBuilder name = new StringBuilder();
    for (String word : node.kind().name().toLowerCase(Locale.ROOT).split("_", -1)) {
      name.append(
          name.length() == 0 || word.isEmpty()
              ? word
              : Character.toUpperCase(word.charAt(0)) + word.substring(1));
    }
    return name.toString();
  }

  private static String characterChanged(String text, Random random) {
    if (text.isEmpty()) {
      return "{";
    }
    int at = random.nextInt(text.length());
    StringBuilder changed = new StringBuilder(text);
    switch (random.nextInt(3)) {
      case 0 -> changed.deleteCharAt(at);
      case 1 -> changed.setCharAt(at, text.charAt(random.nextInt(text.length())));
      default ->
          changed.insert(
              at, "{}()\"#,:.<=%-+/\u0430\u0000\uD83E\uFEFF\t\r0".charAt(random.nextInt(22)));
    }
    return changed.toString();
  }

  /** Reads and compiles a text, and returns the codes of its findings. */
  private Set<String> run(String text) {
    try {
      return Work.atMost(mostSteps(text), () -> codesOf(text));
    } catch (RuntimeException | Error e) {
      fail(e.getClass().getSimpleName() + " " + top(e), text);
      return Set.of();
    }
  }

  private static long mostSteps(String text) {
    return MOST_STEPS + MOST_STEPS_A_CHARACTER * text.length();
  }

  private Set<String> codesOf(String text) {
    Set<String> codesOfText = new TreeSet<>();
    ParsedFile parsed = Reader.parse(SourceFile.of("x.grip", text));
    check(parsed.tree().text().equals(text), "the tree is another text");
    ReadOptions options =
        ReadOptions.standard().withFiles(SourceLoader.of(files)).withAllFindings();
    Reading reading = Gripwright.read("x.grip", text, options);
    Compilation compilation = reading.compile();
    for (LocatedFinding finding : compilation.located()) {
      check(
          finding.span().end() <= finding.file().text().length(),
          finding.finding().code() + " stands outside its file");
    }
    for (ReportedFinding finding : compilation.findings()) {
      check(!finding.message().isBlank() && finding.line() >= 1, finding.code() + " says nothing");
      codesOfText.add(finding.code());
    }
    return codesOfText;
  }

  private static void check(boolean holds, String otherwise) {
    if (!holds) {
      throw new IllegalStateException(otherwise);
    }
  }

  private static String top(Throwable e) {
    String message = String.valueOf(e.getMessage());
    String frame = e.getStackTrace().length == 0 ? "" : " at " + e.getStackTrace()[0];
    for (StackTraceElement element : e.getStackTrace()) {
      if (element.getClassName().startsWith("gripwright.")) {
        frame = " at " + element;
        break;
      }
    }
    return message.substring(0, Math.min(80, message.length())) + frame;
  }

  private void fail(String what, String text) {
    if (failures.putIfAbsent(what.replaceFirst("^(\\S+) .* at ", "$1 at "), what) == null) {
      keep("failure-" + failures.size(), text);
    }
  }

  private static void keep(String name, String text) {
    try {
      Files.createDirectories(FOUND);
      Files.write(
          FOUND.resolve(name + ".grip"), text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
