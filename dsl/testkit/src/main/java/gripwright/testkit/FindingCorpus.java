package gripwright.testkit;

import gripwright.language.Gripwright;
import gripwright.language.ReadOptions;
import gripwright.language.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.DynamicTest;

/**
 * A folder of plan files, each with a file of expected findings.
 *
 * <p>Every {@code name.grip} directly in the folder is a test: it is read, compiled and checked
 * against the rules, and what is found is compared with {@code name.expected}, which has one line a
 * finding:
 *
 * <pre>
 * # a comment
 * 9:22 error name.unknown
 * 14:3 warning rule.short-rest waived
 * shared/athletes.grip:3:8 advice plan.load-modelled
 * </pre>
 *
 * <p>A finding that is not listed fails the test, and so does a listed one that is not found;
 * findings are not merged, so a mistake that is reported twice becomes visible. The order of the
 * lines does not matter. Files in subfolders are not tests; plan files can include them with {@code
 * use}.
 *
 * <p>With {@code -Dgripwright.bless=true} the expectations are rewritten atomically instead, for
 * review in a diff; comments at the beginning of a file are kept. Immutable.
 */
public final class FindingCorpus {

  /** The system property that rewrites the expectations when it is {@code true}. */
  public static final String BLESS = "gripwright.bless";

  private static final String PLAN = ".grip";
  private static final String EXPECTED = ".expected";

  private final Path folder;
  private final ReadOptions options;
  private final boolean bless;

  private FindingCorpus(Path folder, ReadOptions options, boolean bless) {
    this.folder = folder;
    this.options = options;
    this.bless = bless;
  }

  /**
   * Returns the corpus in a folder.
   *
   * @param folder relative to where the tests run, or absolute
   */
  public static FindingCorpus in(Path folder) {
    return new FindingCorpus(
        folder, ReadOptions.standard().withAllFindings(), Boolean.getBoolean(BLESS));
  }

  /**
   * Returns this corpus read with other options, such as a root above the folder, or limits.
   *
   * @param other used as they are; to see all findings, allow all of them
   */
  public FindingCorpus with(ReadOptions other) {
    return new FindingCorpus(folder, other, bless);
  }

  /** Returns this corpus with expectations rewritten, or not, whatever the system property says. */
  public FindingCorpus blessed(boolean rewrite) {
    return new FindingCorpus(folder, options, rewrite);
  }

  /**
   * Returns one test for each plan file, by name, and a failing one for an expectation without a
   * plan file. A folder without plan files gives one failing test, so that an empty corpus is
   * noticed.
   *
   * @throws UncheckedIOException if the folder cannot be listed
   */
  public Stream<DynamicTest> tests() {
    Set<String> names = names();
    if (names.isEmpty()) {
      return Stream.of(
          DynamicTest.dynamicTest(
              folder.toString(), () -> Assertions.fail("there is no *.grip file in " + folder)));
    }
    return names.stream()
        .map(
            name ->
                DynamicTest.dynamicTest(
                    name, folder.resolve(name + PLAN).toUri(), () -> check(name)));
  }

  private Set<String> names() {
    Set<String> names = new TreeSet<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = String.valueOf(file.getFileName());
        for (String ending : List.of(PLAN, EXPECTED)) {
          if (name.endsWith(ending)) {
            names.add(name.substring(0, name.length() - ending.length()));
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + folder, e);
    }
    return names;
  }

  private void check(String name) throws IOException {
    Path plan = folder.resolve(name + PLAN);
    Path expected = folder.resolve(name + EXPECTED);
    if (!Files.exists(plan)) {
      Assertions.fail(expected + " has no " + name + PLAN + " beside it");
    }
    Reading reading = Gripwright.read(plan, options);
    String self = reading.files().isEmpty() ? plan.toString() : mainFile(reading);
    Expectation found = Expectation.of(reading.check().findings(), self);
    if (bless) {
      found.writeTo(expected);
      return;
    }
    if (!Files.exists(expected)) {
      Assertions.fail(
          plan
              + " has no "
              + name
              + EXPECTED
              + " beside it; -D"
              + BLESS
              + "=true writes it:\n"
              + found.text());
    }
    List<String> differences = found.differences(Expectation.read(expected));
    if (!differences.isEmpty()) {
      Assertions.fail(plan + ":\n" + String.join("\n", differences));
    }
  }

  /** Returns the main file, which comes after those it uses. */
  private static String mainFile(Reading reading) {
    return reading.files().get(reading.files().size() - 1).name();
  }
}
