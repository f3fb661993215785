package example.benchmarks;

import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The ways to start the command line: by Java alone, with stored classes, with linked jars. Each is
 * measured in processor time on the same three plans, beside an empty program, with the JVM that
 * runs this class.
 */
final class LaunchWays {

  /** The first version of Java that makes an ahead-of-time cache in one run. */
  private static final int AHEAD_OF_TIME = 25;

  private static final String MAIN = "gripwright.tools.Main";
  private static final String LAUNCHER = "gripwright.launcher.Launcher";

  /** A plan that is checked: its file, and what it is called in the table. */
  private record Plan(String file, String title) {}

  private static final List<Plan> PLANS =
      List.of(
          new Plan("first-weeks", "first weeks"),
          new Plan("one-season", "one athlete's season"),
          new Plan("season", "club's season"));

  private final Path root;
  private final Path folder;
  private final String java;
  private final List<String> flags;
  private final Map<String, List<String>> ways = new LinkedHashMap<>();

  /**
   * Stores the classes.
   *
   * @param root of the project, after {@code gripwright} has run in it
   * @param folder where the stored classes go
   * @param flags of every JVM
   * @throws IllegalStateException if there are no linked jars or the classes can't be stored
   */
  LaunchWays(Path root, Path folder, List<String> flags) throws IOException, InterruptedException {
    this.root = root;
    this.folder = folder;
    this.flags = flags;
    this.java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String built = classPath("dsl/tools/target/app");
    String linked = classPath("dsl/launcher/target/linked");
    String archive = archive("built", built);
    String ofLinked = archive("linked", linked);
    ways.put("`java -cp`", List.of("-cp", built));
    ways.put("linked jars", List.of("-cp", linked));
    ways.put("archive", List.of(archive, "-Xshare:on", "-cp", built));
    ways.put("archive, linked jars", List.of(ofLinked, "-Xshare:on", "-cp", linked));
    ways.put(
        "archive, linked jars, archive verified: as `gripwright` does",
        List.of(ofLinked, "-Xshare:on", "-XX:+VerifySharedSpaces", "-cp", linked));
    if (Runtime.version().feature() >= AHEAD_OF_TIME) {
      ways.put("AOT cache", List.of(cache("built", built), "-cp", built));
      ways.put("AOT cache, linked jars", List.of(cache("linked", linked), "-cp", linked));
    }
  }

  /** Measures every way in turn and prints a table in Markdown. */
  void race(Program empty, int rounds, PrintStream out) throws IOException, InterruptedException {
    List<Program> programs = new ArrayList<>();
    programs.add(empty);
    ways.forEach((way, options) -> PLANS.forEach(p -> programs.add(check(options, p))));
    print(Program.run(programs, rounds, Program.Measure.PROCESSOR), out);
  }

  private Program check(List<String> options, Plan plan) {
    List<String> command = new ArrayList<>(List.of(java));
    command.addAll(flags);
    command.addAll(options);
    command.addAll(List.of(LAUNCHER, MAIN, "check", plan(plan.file())));
    return new Program("", List.copyOf(command));
  }

  private String plan(String name) {
    return root.resolve("examples/plans/" + name + ".grip").toString();
  }

  private void print(Map<Program, double[]> times, PrintStream out) {
    StringBuilder table = new StringBuilder("| processor ms |");
    PLANS.forEach(plan -> table.append(' ').append(plan.title()).append(" |"));
    table.append("\n|---|").append("---:|".repeat(PLANS.size())).append('\n');
    List<double[]> each = new ArrayList<>(times.values());
    table.append("| empty `main` |").append(cell(each.get(0)).repeat(PLANS.size())).append('\n');
    int next = 1;
    for (String way : ways.keySet()) {
      table.append("| ").append(way).append(" |");
      for (int plan = 0; plan < PLANS.size(); plan++) {
        table.append(cell(each.get(next++)));
      }
      table.append('\n');
    }
    out.print(table);
    out.flush();
  }

  private static String cell(double[] sorted) {
    return String.format(
        Locale.ROOT,
        " %.0f (%.0f to %.0f) |",
        Program.quantile(sorted, 0.5),
        Program.quantile(sorted, 0.25),
        Program.quantile(sorted, 0.75));
  }

  /** Returns the jars of a folder and the launcher's own, in the order in which it has them. */
  private String classPath(String jars) throws IOException {
    List<String> all = new ArrayList<>(jarsIn(root.resolve(jars)));
    all.addAll(jarsIn(root.resolve("dsl/launcher/target/run")));
    return String.join(File.pathSeparator, all);
  }

  private static List<String> jarsIn(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new IllegalStateException("'" + folder + "' is missing: run './gripwright' once");
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(Path::toString).filter(jar -> jar.endsWith(".jar")).sorted().toList();
    }
  }

  /** Returns the option for an archive of classes, made as the launcher makes its own. */
  private String archive(String name, String classPath) throws IOException, InterruptedException {
    Path archive = folder.resolve(name + ".jsa");
    Path script = root.resolve("dsl/launcher/src/main/sh/store.sh");
    make("/bin/sh", script.toString(), java, classPath, archive.toString(), plan("season"));
    return "-XX:SharedArchiveFile=" + archive;
  }

  /** Returns the option for an ahead-of-time cache, made from one run. */
  private String cache(String name, String classPath) throws IOException, InterruptedException {
    Path cache = folder.resolve(name + ".aot");
    List<String> command = new ArrayList<>(List.of(java));
    command.addAll(flags);
    command.addAll(List.of("-XX:AOTCacheOutput=" + cache, "-cp", classPath));
    command.addAll(List.of(LAUNCHER, MAIN, "check", plan("season")));
    make(command.toArray(String[]::new));
    return "-XX:AOTCache=" + cache;
  }

  private static void make(String... command) throws IOException, InterruptedException {
    int exit =
        new ProcessBuilder(command)
            .redirectOutput(Redirect.DISCARD)
            .redirectError(Redirect.DISCARD)
            .start()
            .waitFor();
    if (exit != 0) {
      throw new IllegalStateException("'" + String.join(" ", command) + "' failed: " + exit);
    }
  }
}
