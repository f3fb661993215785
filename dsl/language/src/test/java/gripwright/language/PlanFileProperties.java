package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.language.format.Formatter;
import gripwright.language.source.SourceFile;
import gripwright.log.Log;
import gripwright.plan.Plan;
import gripwright.protocol.Protocol;
import gripwright.rule.RuleSet;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Everything built in Java reads back equal, and is written in canonical layout. */
class PlanFileProperties {

  private static Reading back(PlanFile file) {
    String text = file.text();
    assertFalse(Formatter.format(SourceFile.of("a.grip", text)).changed(), text);
    return Gripwright.read("a.grip", text);
  }

  @Property(tries = 150)
  void athletes(@ForAll Random random) {
    Athlete athlete = new Inventions(random).athlete("tove");
    Reading back = back(new PlanFile().add(athlete));
    assertEquals(athlete, back.athletes().get("tove"));
  }

  @Property(tries = 150)
  void gripsAndProtocols(@ForAll Random random) {
    Inventions inventions = new Inventions(random);
    Grip grip = inventions.grip();
    Protocol protocol = inventions.protocol("own");
    Reading back = back(new PlanFile().add(grip).add(protocol));
    assertEquals(grip, back.grips().get(grip.name()));
    assertEquals(protocol, back.protocols().get("own"));
  }

  @Property(tries = 150)
  void plans(@ForAll Random random) {
    Inventions inventions = new Inventions(random);
    Plan plan = inventions.plan();
    PlanFile file = new PlanFile().add(plan);
    plan.athletes().forEach(name -> file.add(inventions.athlete(name)));
    assertEquals(plan, back(file).plans().get("p"));
  }

  @Property(tries = 150)
  void logs(@ForAll Random random) {
    Inventions inventions = new Inventions(random);
    Setup setup = inventions.setup(StandardGrips.HALF_CRIMP);
    Log log = new InventedLogs(random).log("tove", setup);
    Reading back = back(new PlanFile().add(inventions.athlete("tove")).add(log));
    assertEquals(log, back.logs().get("tove"));
  }

  @Property(tries = 400)
  void rules(@ForAll Random random) {
    RuleSet rules = new InventedRules(random).ruleSet();
    assertEquals(rules, back(new PlanFile().add(rules)).ruleSets().get(rules.name()));
  }
}
