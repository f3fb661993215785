package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ReportedFinding;
import gripwright.language.source.SourceLoader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * Any changed file is read and compiled without an exception. Files: the corpus, the examples and
 * the samples.
 */
class MutationProperties {

  private static final List<Path> FOLDERS =
      List.of(
          Path.of("src/test/resources/corpus"),
          Path.of("../../examples/plans"),
          Path.of("src/test/resources/samples"));

  private static final Map<String, String> TEXTS = texts();
  private static final List<String> NAMES = List.copyOf(TEXTS.keySet());

  private static Map<String, String> texts() {
    Map<String, String> texts = new TreeMap<>();
    for (Path folder : FOLDERS) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".grip")).toList()) {
          if (!file.endsWith("latin.grip")) {
            texts.put(
                FOLDERS.indexOf(folder) + "/" + folder.relativize(file).toString(),
                Files.readString(file));
          }
        }
      } catch (IOException e) {
        throw new java.io.UncheckedIOException(e);
      }
    }
    return texts;
  }

  @Property
  void noChangeOfAFileThrows(@ForAll Random random) {
    String name = NAMES.get(random.nextInt(NAMES.size()));
    String text = TEXTS.getOrDefault(name, "");
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      text = random.nextBoolean() ? characterChanged(text, random) : wordChanged(text, random);
    }
    ReadOptions options =
        ReadOptions.standard().withFiles(SourceLoader.of(TEXTS)).withAllFindings();
    Compilation compilation = Gripwright.read(name, text, options).compile();
    for (ReportedFinding finding : compilation.findings()) {
      assertTrue(finding.line() >= 1, finding.toString());
    }
  }

  private static String characterChanged(String text, Random random) {
    if (text.isEmpty()) {
      return "{";
    }
    int at = random.nextInt(text.length());
    int other = random.nextInt(text.length());
    StringBuilder changed = new StringBuilder(text);
    switch (random.nextInt(4)) {
      case 0 -> changed.deleteCharAt(at);
      case 1 -> changed.insert(at, text.charAt(at));
      case 2 -> changed.setCharAt(at, text.charAt(other));
      default -> changed.insert(at, "{}()\"#,:.<=%-+é\u0000\uD83E0".charAt(random.nextInt(18)));
    }
    return changed.toString();
  }

  private static String wordChanged(String text, Random random) {
    List<String> words = new ArrayList<>(Arrays.asList(text.split("(?<=\\s)|(?=\\s)")));
    if (words.size() < 2) {
      return text + text;
    }
    int at = random.nextInt(words.size());
    int other = random.nextInt(words.size());
    switch (random.nextInt(4)) {
      case 0 -> words.remove(at);
      case 1 -> words.add(at, words.get(at) + " ");
      case 2 -> java.util.Collections.swap(words, at, other);
      default -> words.set(at, " " + words.get(other) + " ");
    }
    return String.join("", words);
  }
}
