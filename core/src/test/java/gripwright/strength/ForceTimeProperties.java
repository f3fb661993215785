package gripwright.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.quantity.Load;
import gripwright.strength.ForceTime.Form;
import gripwright.strength.ForceTime.HoldTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class ForceTimeProperties {

  private static Effort effort(double seconds, double kilograms) {
    return new Effort(seconds, Load.ofKilograms(kilograms));
  }

  @Provide
  Arbitrary<List<Effort>> efforts() {
    return Combinators.combine(
            Arbitraries.of(2.0, 6.0, 7.0, 20.0, 40.0, 55.0, 90.0, 200.0, 600.0),
            Arbitraries.doubles().between(10, 120))
        .as(ForceTimeProperties::effort)
        .list()
        .ofMinSize(1)
        .ofMaxSize(6);
  }

  private static Optional<ForceTime> fit(Form form, List<Effort> efforts) {
    return ForceTime.fit(form, efforts);
  }

  @Property
  void longerHoldsNeverAllowMore(
      @ForAll("efforts") List<Effort> efforts,
      @ForAll Form form,
      @ForAll @DoubleRange(min = 0, max = 1) double one,
      @ForAll @DoubleRange(min = 0, max = 1) double other) {
    Optional<ForceTime> fitted = fit(form, efforts);
    Assume.that(fitted.isPresent());
    ForceTime curve = fitted.get();
    double span = curve.longestSeconds() - curve.shortestSeconds();
    LoadEstimate shorter = curve.load(curve.shortestSeconds() + span * Math.min(one, other));
    LoadEstimate longer = curve.load(curve.shortestSeconds() + span * Math.max(one, other));
    assertTrue(longer.low().kilograms() <= shorter.low().kilograms() * (1 + 1e-12));
    assertTrue(longer.best().kilograms() <= shorter.best().kilograms() * (1 + 1e-12));
    assertTrue(longer.high().kilograms() <= shorter.high().kilograms() * (1 + 1e-12));
  }

  @Property
  void timeIsTheInverseOfLoad(
      @ForAll("efforts") List<Effort> efforts,
      @ForAll Form form,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double at) {
    Optional<ForceTime> fitted = fit(form, efforts);
    Assume.that(fitted.isPresent());
    ForceTime curve = fitted.get();
    double from = Math.max(6.1, curve.shortestSeconds());
    double seconds = from + (curve.longestSeconds() - from) * at;
    LoadEstimate load = curve.load(seconds);
    assertEquals(seconds, curve.time(load.low()).low(), 1e-5 * seconds);
    assertEquals(seconds, curve.time(load.best()).best(), 1e-5 * seconds);
    assertEquals(seconds, curve.time(load.high()).high(), 1e-5 * seconds);
    HoldTime time = curve.time(load.best());
    assertTrue(time.low() <= time.best() && time.best() <= time.high());
    assertEquals(time.low() - 10, time.reserveSeconds(10));
  }

  @Property
  void scalingLoadsScalesTheCurveAndOrderDoesNotMatter(
      @ForAll("efforts") List<Effort> efforts,
      @ForAll Form form,
      @ForAll @DoubleRange(min = 0.1, max = 10) double factor,
      @ForAll Random random) {
    List<Effort> scaled = new ArrayList<>();
    efforts.forEach(e -> scaled.add(new Effort(e.seconds(), e.load().times(factor))));
    Collections.shuffle(scaled, random);
    Optional<ForceTime> fitted = fit(form, efforts);
    Optional<ForceTime> other = fit(form, scaled);
    assertEquals(fitted.isPresent(), other.isPresent());
    Assume.that(fitted.isPresent());
    LoadEstimate one = fitted.get().load(120);
    LoadEstimate two = other.orElseThrow().load(120);
    assertEquals(factor, two.best().kilograms() / one.best().kilograms(), 1e-7 * factor);
    assertEquals(one.spread(), two.spread(), 1e-7);
  }

  @Property
  void timeWidensTheIntervalAndLeavesTheBestEstimateWhereAllAreOfOneDay(
      @ForAll("efforts") List<Effort> efforts,
      @ForAll Form form,
      @ForAll @DoubleRange(min = 0, max = 0.2) double drift) {
    Optional<ForceTime> fresh = fit(form, efforts);
    Optional<ForceTime> old = fit(form, efforts.stream().map(e -> e.aged(drift)).toList());
    Assume.that(fresh.isPresent() && old.isPresent());
    LoadEstimate one = fresh.get().load(120);
    LoadEstimate two = old.get().load(120);
    assertEquals(1, two.best().kilograms() / one.best().kilograms(), 1e-7);
    assertEquals(Math.hypot(one.spread(), drift), two.spread(), 1e-7);
  }

  @Property
  void anOlderEffortNeverNarrowsTheInterval(
      @ForAll("efforts") List<Effort> efforts,
      @ForAll @DoubleRange(min = 0, max = 0.2) double drift) {
    List<Effort> older = new ArrayList<>(efforts);
    older.set(0, efforts.get(0).aged(drift));
    for (Form form : List.of(Form.ROHMERT, Form.POWER_LAW)) {
      Optional<ForceTime> fresh = fit(form, efforts);
      Assume.that(fresh.isPresent());
      assertTrue(
          fit(form, older).orElseThrow().load(120).spread()
              >= fresh.get().load(120).spread() - 1e-9);
    }
  }

  @Example
  void oneEffortScalesThePopulation() {
    ForceTime curve = fit(Form.ROHMERT, List.of(effort(7, 80))).orElseThrow();
    assertEquals(80, curve.load(7).best().kilograms(), 1e-9);
    assertEquals(0.056, curve.load(7).spread(), 1e-12, "a maximal test repeats that well");
    double share = EnduranceLaw.ROHMERT.share(66) / EnduranceLaw.ROHMERT.share(7);
    assertEquals(80 * share, curve.load(66).best().kilograms(), 1e-9);
    assertTrue(curve.load(66).spread() > 0.2, "of how this athlete fades nothing is known");
  }

  @Example
  void dataOvercomeThePopulation() {
    double populations = EnduranceLaw.ROHMERT.share(60) / EnduranceLaw.ROHMERT.share(7);
    double own = Math.pow(populations, 0.6);
    List<Effort> efforts = new ArrayList<>();
    double far = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 6; i++) {
      efforts.add(effort(7, 80));
      efforts.add(effort(60, 80 * own));
      double off =
          Math.abs(
              fit(Form.ROHMERT, efforts).orElseThrow().load(60).best().kilograms() / (80 * own)
                  - 1);
      assertTrue(off < far, "each pair brings it nearer");
      far = off;
    }
    assertTrue(far < 0.01, "off by " + far);
  }

  @Example
  void aCurveThatTheTestsWouldTurnUpwardsStillFalls() {
    List<Effort> odd = List.of(effort(7, 60), effort(60, 70), effort(60, 70), effort(60, 71));
    ForceTime curve = fit(Form.ROHMERT, odd).orElseThrow();
    assertTrue(curve.load(60).best().kilograms() < curve.load(7).best().kilograms());
    assertTrue(curve.load(60).best().kilograms() < 71);
  }

  @Example
  void outsideItsRangeAFormRefuses() {
    ForceTime rohmert = fit(Form.ROHMERT, List.of(effort(7, 80))).orElseThrow();
    assertThrows(IllegalArgumentException.class, () -> rohmert.load(1.9));
    assertThrows(IllegalArgumentException.class, () -> rohmert.load(601));
    assertEquals(0, rohmert.time(Load.ofKilograms(100)).high(), "more than is ever held");
    assertEquals(Double.POSITIVE_INFINITY, rohmert.time(Load.ofKilograms(5)).low());
    assertEquals(Optional.empty(), fit(Form.POWER_LAW, List.of(effort(40, 40))));
    assertEquals(
        Optional.empty(),
        fit(Form.CRITICAL_FORCE, List.of(effort(7, 80), effort(60, 40), effort(90, 38))),
        "too near each other");
    assertTrue(fit(Form.POWER_LAW, List.of(effort(60, 40))).orElseThrow().isValidFor(600));
  }
}
