package example.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.net.URISyntaxException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Measures how long whole processes of the command line take, compared with the start of the JVM
 * itself. Run it in the root of the project, after a build, on a system with a POSIX shell; it
 * prints a table in Markdown. With {@code processor} it compares {@link LaunchWays} instead, after
 * {@code gripwright} has run once.
 */
public final class StartUp {

  private static final int ROUNDS = 20;

  /** The flags that the launcher {@code gripwright} starts Java with, on every system. */
  private static final List<String> LAUNCHER_FLAGS =
      List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-XX:-UsePerfData");

  private StartUp() {}

  /**
   * Measures and prints.
   *
   * @param args {@code processor} or nothing; then the number of rounds, 20 by default
   */
  public static void main(String[] args)
      throws IOException, InterruptedException, URISyntaxException {
    boolean ways = args.length > 0 && args[0].equals("processor");
    int given = ways ? 1 : 0;
    int rounds = args.length == given ? ROUNDS : Integer.parseInt(args[given]);
    Path root = Path.of("").toAbsolutePath();
    Path folder = Files.createTempDirectory("gripwright-start-up");
    try {
      if (ways) {
        List<String> flags = new ArrayList<>(LAUNCHER_FLAGS);
        flags.addAll(largePages());
        new LaunchWays(root, folder, flags).race(empty(flags), rounds, System.out);
      } else {
        Path thousand = folder.resolve("thousand.grip");
        Files.writeString(thousand, PlanFile.ofLines(PlanFile.STANDARD_LINES));
        print(Program.run(programs(root, thousand), rounds, Program.Measure.ELAPSED), System.out);
      }
    } finally {
      delete(folder);
    }
  }

  /** The launcher uses large pages where Linux gives them to those who ask. */
  private static List<String> largePages() throws IOException {
    Path pages = Path.of("/sys/kernel/mm/transparent_hugepage/enabled");
    boolean given = Files.isReadable(pages) && !Files.readString(pages).contains("[never]");
    return given ? List.of("-XX:+UseTransparentHugePages") : List.of();
  }

  private static void delete(Path folder) throws IOException {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }

  private static List<Program> programs(Path root, Path thousand)
      throws IOException, URISyntaxException {
    String launcher = root.resolve("gripwright").toString();
    String season = root.resolve("examples/plans/season.grip").toString();
    String weeks = root.resolve("examples/plans/first-weeks.grip").toString();
    String one = root.resolve("examples/plans/one-season.grip").toString();
    return List.of(
        empty(LAUNCHER_FLAGS),
        new Program("`gripwright --help`", List.of(launcher, "--help")),
        new Program("`gripwright check` of the first weeks", List.of(launcher, "check", weeks)),
        new Program("`gripwright check` of one athlete's season", List.of(launcher, "check", one)),
        new Program(
            "`gripwright check` of the club's season, three athletes",
            List.of(launcher, "check", season)),
        new Program(
            "`gripwright check` of 1,000 lines", List.of(launcher, "check", thousand.toString())),
        new Program(
            "`check` of the club's season by Java alone, without stored classes",
            java(LAUNCHER_FLAGS, commandLine(root), "gripwright.tools.Main", "check", season)));
  }

  /** The empty program; with the smallest class path. */
  static Program empty(List<String> flags) throws URISyntaxException {
    Path own = Path.of(StartUp.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    return new Program("an empty `main`", java(flags, own.toString(), Empty.class.getName()));
  }

  private static List<String> java(List<String> flags, String classPath, String... rest) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(flags);
    command.addAll(List.of("-cp", classPath));
    command.addAll(List.of(rest));
    return List.copyOf(command);
  }

  private static String commandLine(Path root) throws IOException {
    try (Stream<Path> jars = Files.list(root.resolve("dsl/tools/target/app"))) {
      return jars.map(Path::toString)
          .filter(jar -> jar.endsWith(".jar"))
          .sorted()
          .collect(Collectors.joining(System.getProperty("path.separator")));
    }
  }

  /** Prints a table; the others are compared with the first program. */
  static void print(Map<Program, double[]> times, PrintStream out) {
    double first = Program.quantile(times.values().iterator().next(), 0.5);
    StringBuilder table = new StringBuilder();
    table.append("| whole process | median ms | quartiles ms | ratio |\n");
    table.append("|---|---:|---:|---:|\n");
    times.forEach(
        (program, sorted) ->
            table.append(
                String.format(
                    Locale.ROOT,
                    "| %s | %.0f | %.0f to %.0f | %.1f |\n",
                    program.title(),
                    Program.quantile(sorted, 0.5),
                    Program.quantile(sorted, 0.25),
                    Program.quantile(sorted, 0.75),
                    Program.quantile(sorted, 0.5) / first)));
    out.print(table);
    out.flush();
  }
}
