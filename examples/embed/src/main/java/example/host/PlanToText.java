package example.host;

import gripwright.language.PlanFile;
import java.io.PrintStream;

/** Writes the plan of {@link PlanInJava} as a file that coaches can read, review and change. */
public final class PlanToText {

  private PlanToText() {}

  /** Prints the file on standard output. */
  public static void main(String[] arguments) {
    print(System.out);
  }

  static void print(PrintStream out) {
    String text =
        new PlanFile()
            .add(PlanInJava.athlete())
            .add(PlanInJava.log())
            .add(PlanInJava.plan())
            .text();
    out.print(text);
  }
}
