package example.host;

import gripwright.language.Compilation;
import gripwright.language.Gripwright;
import java.io.PrintStream;
import java.nio.file.Path;

/** Reads a plan file and prints what is wrong with it and the resulting sessions. */
public final class PlanFromText {

  private PlanFromText() {}

  /**
   * Prints findings and sessions on standard output.
   *
   * @param arguments the plan file
   */
  public static void main(String[] arguments) {
    print(Path.of(arguments[0]), System.out);
  }

  static void print(Path file, PrintStream out) {
    Compilation season = Gripwright.read(file).compile();
    season
        .findings()
        .forEach(
            finding ->
                out.println(finding.file() + ":" + finding.line() + ": " + finding.message()));
    if (season.usable()) {
      season.plans().stream()
          .flatMap(plan -> plan.sessions().stream())
          .forEach(
              session ->
                  out.println(session.date() + " " + session.name() + " " + session.minutes()));
    }
  }
}
