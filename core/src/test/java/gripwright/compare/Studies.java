package gripwright.compare;

import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.plan.Exercise;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Protocol.Part;
import gripwright.protocol.Term;
import gripwright.quantity.Length;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** The two protocols of the worked checks, on persons with a maximum of 100 kg. */
public final class Studies {

  /** Half crimp on 20 mm. */
  public static final Setup SETUP = Setup.of(StandardGrips.HALF_CRIMP, Length.ofMillimetres(20));

  private Studies() {}

  /** Returns sets of one hold: {@code sets}, {@code hold}, {@code level} are parameters. */
  public static Protocol holds() {
    return Protocol.named("long-holds")
        .given("sets", 5)
        .given("hold", Duration.ofSeconds(10))
        .given("rest", Duration.ofSeconds(180))
        .given("level", Level.ofMax(80))
        .step(
            new Part.Repeat(
                Term.given("sets"),
                Term.given("rest"),
                List.of(new Part.Hold(Term.given("hold"), Term.given("level")))))
        .build();
  }

  /** Returns sets of six holds of 7 s with 3 s of rest. */
  public static Protocol repeats() {
    return Protocol.named("repeats")
        .given("sets", 3)
        .given("level", Level.ofMax(60))
        .step(
            new Part.Repeat(
                Term.given("sets"),
                Term.of(Duration.ofSeconds(180)),
                List.of(
                    new Part.Repeat(
                        Term.of(6),
                        Term.of(Duration.ofSeconds(3)),
                        List.of(
                            new Part.Hold(Term.of(Duration.ofSeconds(7)), Term.given("level")))))))
        .build();
  }

  /** Returns five holds of 10 s at 80 % with rests of 180 s. */
  public static Exercise p1() {
    return Exercise.of(holds(), SETUP.grip(), SETUP.edge());
  }

  /** Returns three sets of six holds of 7 s at 60 %. */
  public static Exercise p2() {
    return Exercise.of(repeats(), SETUP.grip(), SETUP.edge());
  }

  /** Returns a cohort of this size; everybody has a hand by sex. */
  public static Cohort.Builder cohort(int size) {
    return Cohort.builder(
            "adults", size, new Cohort.Maximum(Spread.relative(100, 0.15, "our own"), SETUP))
        .bodyMass(Spread.relative(66, 0.14, "our own"))
        .criticalForce(Spread.relative(0.4, 0.28, "our own"))
        .handBySex("published");
  }

  /** Returns a comparison of one session each. */
  public static Comparison.Builder compared(Exercise a, Exercise b, Measure... measures) {
    return Comparison.builder("two", cohort(200).build())
        .arm(Arm.of("a", a))
        .arm(Arm.of("b", b))
        .draws(1000)
        .measures(List.of(measures));
  }

  /** Returns the result of a comparison, with one thread. */
  public static ComparisonResult run(Comparison comparison) {
    return ComparisonRun.of(comparison, List.of(), List.of(), List.of()).run(RunOptions.standard());
  }

  /** Returns the only subject of a result. */
  public static ComparisonResult.Subject subject(Comparison comparison) {
    ComparisonResult result = run(comparison);
    if (!result.usable()) {
      throw new AssertionError(result.findings());
    }
    return result.subjects().get(0);
  }

  /** Returns the value of an arm. */
  public static double value(ComparisonResult.Subject subject, int arm, Measure measure) {
    return subject.arms().get(arm).values().get(measure).best();
  }

  /** Returns all words of a list of findings. */
  public static List<String> codes(ComparisonResult result) {
    List<String> codes = new ArrayList<>();
    result.findings().forEach(finding -> codes.add(finding.code()));
    return codes;
  }
}
