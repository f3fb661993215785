package gripwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.language.format.Formatted;
import gripwright.language.format.Formatter;
import gripwright.language.source.SourceFile;
import gripwright.tools.Main;
import gripwright.tools.command.Console;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Keeps all pages up to date: outputs are real, quoted code is in its file, and links have a
 * target.
 */
class PagesTest {

  private static final Pattern OUTPUT = Pattern.compile("<!-- output: gripwright (.*) -->");
  private static final Pattern HEAD =
      Pattern.compile("<!-- first lines of output: gripwright (.*) -->");
  private static final Pattern PART = Pattern.compile("<!-- part of: (.*) -->");
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]+)(#[^)]*)?\\)");

  private static List<String> pages() throws IOException {
    Path root = Page.root();
    List<String> pages = new ArrayList<>(List.of("README.md", "DEVELOPERS.md"));
    try (Stream<Path> files = Files.walk(root.resolve("docs"))) {
      files
          .filter(file -> file.toString().endsWith(".md"))
          .map(file -> root.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .forEach(pages::add);
    }
    return pages;
  }

  @TestFactory
  Stream<DynamicTest> everyOutputIsReal() throws IOException {
    return blocks(OUTPUT)
        .map(
            found ->
                DynamicTest.dynamicTest(
                    found.argument(),
                    () ->
                        Blessing.block(
                            Page.read(found.page()), found.block(), output(found.argument()))));
  }

  /**
   * A long output may be quoted up to one of its blank lines; the number of quoted paragraphs stays
   * the same.
   */
  @TestFactory
  Stream<DynamicTest> everyBeginningOfAnOutputIsReal() throws IOException {
    return blocks(HEAD)
        .map(
            found ->
                DynamicTest.dynamicTest(
                    found.argument(),
                    () ->
                        Blessing.block(
                            Page.read(found.page()),
                            found.block(),
                            head(
                                output(found.argument()),
                                found.block().text().split("\n\n", -1).length))));
  }

  private static String head(String output, int paragraphs) {
    return Stream.of(output.split("\n\n", -1))
        .limit(paragraphs)
        .collect(Collectors.joining("\n\n"));
  }

  @TestFactory
  Stream<DynamicTest> everyQuotedPartIsInItsFile() throws IOException {
    return blocks(PART)
        .map(
            found ->
                DynamicTest.dynamicTest(
                    found.argument(),
                    () ->
                        assertTrue(
                            flat(Files.readString(Page.root().resolve(found.argument())))
                                .contains(flat(found.block().text())),
                            found.page() + " quotes what is not there")));
  }

  /** Blocks that begin like a file; those that are wrong in their text have no layout. */
  @TestFactory
  Stream<DynamicTest> everyCompleteFileHasTheCanonicalLayout() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (String page : pages()) {
      for (Page.Block block : Page.read(page).blocks()) {
        if (block.text().startsWith("language 1")) {
          Formatted formatted = Formatter.format(SourceFile.of("example.grip", block.text()));
          tests.add(
              DynamicTest.dynamicTest(
                  page + ", line " + block.first(),
                  () ->
                      Blessing.block(
                          Page.read(page), block, formatted.text().orElse(block.text()))));
        }
      }
    }
    Collections.reverse(tests); // from the bottom up, so that a rewritten block moves no later one
    return tests.stream();
  }

  @Test
  void everyLinkLeadsToAFile() throws IOException {
    List<String> broken = new ArrayList<>();
    for (String page : pages()) {
      Path file = Page.root().resolve(page);
      Matcher link = LINK.matcher(Files.readString(file));
      while (link.find()) {
        if (!Files.exists(file.resolveSibling(link.group(1)))) {
          broken.add(page + ": " + link.group(1));
        }
      }
    }
    assertEquals(List.of(), broken);
  }

  /**
   * Every picture of a grip in docs is the one that the command writes for the README's athlete.
   */
  @TestFactory
  Stream<DynamicTest> everyPictureIsReal(@TempDir Path folder) throws IOException {
    output("grips examples/plans/first-weeks.grip --athlete randi --to " + folder);
    List<Path> pictures;
    try (Stream<Path> files = Files.list(Page.root().resolve("docs").resolve("pictures"))) {
      pictures = files.sorted().toList();
    }
    return pictures.stream()
        .map(
            picture ->
                DynamicTest.dynamicTest(
                    picture.getFileName().toString(),
                    () ->
                        Blessing.file(
                            picture, Files.readString(folder.resolve(picture.getFileName())))));
  }

  private record Found(String page, Page.Block block, String argument) {}

  private static Stream<Found> blocks(Pattern mark) throws IOException {
    List<Found> found = new ArrayList<>();
    for (String page : pages()) {
      for (Page.Block block : Page.read(page).blocks()) {
        Matcher matcher = mark.matcher(block.before());
        if (matcher.matches()) {
          found.add(new Found(page, block, matcher.group(1)));
        }
      }
    }
    Collections.reverse(found); // from the bottom up, so that a rewritten block moves no later one
    return found.stream();
  }

  /** Ignores indentation and line breaks, which a page may choose. */
  private static String flat(String text) {
    return text.lines().map(String::strip).collect(Collectors.joining("\n"));
  }

  private static String output(String arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Main.run(List.of(arguments.split(" ")), new Console(out, out, Page.root(), false), Map.of());
    return out.toString(StandardCharsets.UTF_8);
  }
}
