package gripwright.tools.command;

import gripwright.finding.ReportedFinding;
import gripwright.language.Gripwright;
import gripwright.language.finding.FindingText;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.format.Formatted;
import gripwright.language.source.SourceFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** {@code format FILE...}: gives files their canonical layout. */
public final class FormatCommand {

  /** What {@code format --help} prints. */
  public static final String HELP =
      """
      gripwright format FILE... [--check] [--as text|json] [--root DIR]

      Puts plan files into the standard layout, in place: indents, spaces, columns and line
      breaks. Words, numbers, comments and the meaning of a file stay as they are. A file
      that already has the layout is not written. If the text of one file has errors, no
      file is written.

        --check         writes nothing and lists the files that would change
        --as text|json  text for people (default), or JSON for programs
        --root DIR      the folder that the files lie in; each file's own by default

      Exit: 0 done, 1 errors in the text of a file, or a file that would change with --check,
      2 wrong usage or a file that can't be read or written.
      """;

  private FormatCommand() {}

  /**
   * Runs the command and returns the exit code.
   *
   * @throws UsageException if the arguments are wrong, or a file can't be written
   */
  public static int run(List<String> arguments, Console console) throws UsageException {
    Arguments given =
        Arguments.parse(arguments, console, Arguments.CHECK, Arguments.AS, Arguments.ROOT);
    if (given.rest().isEmpty()) {
      throw new UsageException("format needs a file: gripwright format FILE...");
    }
    NamedFiles named = NamedFiles.of(given);
    Map<String, Formatted> files = new LinkedHashMap<>();
    int exit = Exit.FINE;
    for (String file : given.rest()) {
      Formatted formatted = Gripwright.format(given.path(file), named.options(file));
      files.put(file, formatted);
      exit = Math.max(exit, exit(formatted));
    }
    boolean writes = exit == Exit.FINE && !given.has(Arguments.CHECK);
    if (writes) {
      write(files, given);
    }
    if (given.asJson()) {
      console.out(
          exit == Exit.FINE
              ? document(files)
              : Console.documents(sources(files)).findings(findings(files)));
    } else {
      files.forEach((name, file) -> say(name, file, writes, console));
    }
    boolean would = files.values().stream().anyMatch(Formatted::changed) && !writes;
    return Math.max(exit, would ? Exit.ERRORS : Exit.FINE);
  }

  private static void write(Map<String, Formatted> files, Arguments given) throws UsageException {
    List<String> written = new ArrayList<>();
    for (Map.Entry<String, Formatted> file : files.entrySet()) {
      if (file.getValue().changed()) {
        try {
          Output.replace(given.path(file.getKey()), file.getValue().text().orElseThrow());
        } catch (UsageException e) {
          throw written.isEmpty()
              ? e
              : new UsageException(
                  e.sentence() + "; formatted before that: `" + String.join("`, `", written) + "`");
        }
        written.add(file.getKey());
      }
    }
  }

  private static int exit(Formatted file) {
    return !file.fileRead() ? Exit.USAGE : file.text().isEmpty() ? Exit.ERRORS : Exit.FINE;
  }

  private static void say(String name, Formatted file, boolean writes, Console console) {
    FindingText text = console.colour() ? FindingText.coloured() : FindingText.plain();
    console.out(text.body(file.findings()));
    if (file.text().isEmpty()) {
      String count =
          FindingText.plain().count(file.findings().stream().map(LocatedFinding::finding).toList());
      console.out(name + ": " + count + ", left as it is\n");
    } else if (file.changed()) {
      console.out(name + (writes ? ": formatted\n" : ": would change\n"));
    } else {
      console.out(name + ": unchanged\n");
    }
  }

  private static List<SourceFile> sources(Map<String, Formatted> files) {
    return files.values().stream().map(Formatted::source).toList();
  }

  private static String document(Map<String, Formatted> files) {
    Map<String, Boolean> changed = new LinkedHashMap<>();
    files.values().forEach(file -> changed.put(file.source().name(), file.changed()));
    return Console.documents(sources(files)).formatted(changed);
  }

  private static List<ReportedFinding> findings(Map<String, Formatted> files) {
    return files.values().stream()
        .flatMap(file -> file.findings().stream())
        .distinct()
        .map(l -> l.report(Console.wording()))
        .toList();
  }
}
