package gripwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Holds texts to the standard terms of strength training and of software, by words that must not
 * come back.
 */
class PlainWordsTest {

  private static final Path ROOT = Path.of("../..");

  /** Words of a dialect of our own, in whatever is read: messages, pages, help and Javadoc. */
  private static final String ANYWHERE =
      "reckon\\w*|heard|manieth|gravest|dearest|remarks?|stands? against|known otherwise"
          + "|defined otherwise|good enough for this one|fill a shelf|the truth about"
          + "|nothing has to be done|not whole|how far it may be otherwise";

  /** Words that also have a plain meaning, which messages and pages can do without. */
  private static final String FOR_READERS =
      "told|tells? of|says? of|asked|alike|eased weeks?(?! \\(deload)|time under load|recalled"
          + "|from memory|an advice|expected [^.]{1,60} here, found|\\bkg s\\b"
          + "|seeds?|weight of (?:a|the) test";

  private static final Pattern IN_CODE = words(ANYWHERE);
  private static final Pattern IN_TEXT = words(ANYWHERE + "|" + FOR_READERS);

  /** What is quoted from code, and names of files. */
  private static final Pattern CODE = Pattern.compile("(?s)```.*?```|`[^`\n]*`|\\]\\([^)]*\\)");

  private static Pattern words(String alternatives) {
    return Pattern.compile("\\b(?:" + alternatives + ")\\b", Pattern.CASE_INSENSITIVE);
  }

  private static List<Path> files(String folder, String ending) throws IOException {
    try (Stream<Path> files = Files.walk(ROOT.resolve(folder))) {
      return files
          .filter(file -> file.toString().endsWith(ending))
          .filter(file -> !file.toString().contains("/target/"))
          .sorted()
          .toList();
    }
  }

  /** Keys of messages, and the arguments of their sentences. */
  private static final Pattern KEYS = Pattern.compile("(?m)^[a-z0-9.-]+ = |\\{[a-z0-9-]+}");

  private static final Pattern STRINGS =
      Pattern.compile("\"\"\"[\\s\\S]*?\"\"\"|\"(?:\\\\.|[^\"\\\\\n])*\"");

  private static String without(Pattern what, String text) {
    return what.matcher(text).replaceAll(each -> each.group().replaceAll("[^\n]", " "));
  }

  /** Returns the strings of Java code that are not just one word or key, in their lines. */
  private static String strings(String code) {
    StringBuilder text = new StringBuilder();
    Matcher string = STRINGS.matcher(code);
    int end = 0;
    while (string.find()) {
      text.append(code.substring(end, string.start()).replaceAll("[^\n]", " "));
      boolean key = !string.group().contains(" ");
      text.append(key ? " " : string.group());
      end = string.end();
    }
    return text.toString();
  }

  private static void check(List<Path> files, Pattern banned) throws IOException {
    check(files, banned, text -> text);
  }

  private static void check(List<Path> files, Pattern banned, UnaryOperator<String> read)
      throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : files) {
      String plain = without(CODE, read.apply(Files.readString(file)));
      int line = 0;
      for (String each : plain.split("\n", -1)) {
        line++;
        Matcher word = banned.matcher(each);
        while (word.find()) {
          found.add(ROOT.relativize(file) + ":" + line + " " + word.group() + ": " + each.strip());
        }
      }
    }
    assertEquals("", String.join("\n", found));
  }

  @Test
  void messagesArePlain() throws IOException {
    check(files("core/src/main/resources", ".properties"), IN_TEXT, text -> without(KEYS, text));
    check(files("dsl/language/src/main/resources", ".grip"), IN_TEXT);
    check(files("dsl/tools/src/main/resources", ".grip"), IN_TEXT);
  }

  @Test
  void helpIsPlain() throws IOException {
    List<Path> files = new ArrayList<>(files("dsl/tools/src/main/java", ".java"));
    files.addAll(files("dsl/export/src/main/java/gripwright/export/text", ".java"));
    check(files, IN_TEXT, PlainWordsTest::strings);
  }

  @Test
  void pagesArePlain() throws IOException {
    List<Path> files = new ArrayList<>(files("docs", ".md"));
    for (String page : List.of("README.md", "DEVELOPERS.md", "CHANGELOG.md")) {
      files.add(ROOT.resolve(page));
    }
    files.addAll(files("examples/plans", ".grip"));
    check(files, IN_TEXT);
  }

  @Test
  void commentsArePlain() throws IOException {
    List<Path> files = new ArrayList<>();
    for (String module : List.of("core", "dsl", "examples")) {
      files.addAll(files(module, ".java"));
    }
    files.removeIf(file -> file.endsWith("PlainWordsTest.java"));
    check(files, IN_CODE);
  }
}
