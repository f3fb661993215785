package gripwright.language.write.internal;

import gripwright.grip.Grip;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Protocol;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Finds the grips and protocols that plans and logs need, in the order of their first use. */
public final class References {

  private References() {}

  /** Returns the grips of a log. */
  public static Set<Grip> in(Log log) {
    Set<Grip> grips = new LinkedHashSet<>();
    for (LogEntry entry : log.entries()) {
      if (entry instanceof LogEntry.Tested tested) {
        grips.add(tested.test().setup().grip());
      } else if (entry instanceof LogEntry.Trained trained) {
        trained.done().forEach(done -> grips.add(done.setup().grip()));
      }
    }
    return grips;
  }

  /** Returns the protocols of a plan. */
  public static Set<Protocol> protocols(Plan plan) {
    Set<Protocol> protocols = new LinkedHashSet<>();
    exercises(plan).forEach(exercise -> protocols.add(exercise.protocol()));
    return protocols;
  }

  /** Returns the grips of a plan. */
  public static Set<Grip> grips(Plan plan) {
    Set<Grip> grips = new LinkedHashSet<>(plan.demand().keySet());
    for (Exercise exercise : exercises(plan)) {
      grips.addAll(exercise.target().grips());
    }
    for (Block.Content content : contents(plan)) {
      content.introductions().forEach(introduction -> grips.add(introduction.grip()));
    }
    plan.retests().forEach(retest -> retest.setups().forEach(setup -> grips.add(setup.grip())));
    return grips;
  }

  private static List<Block.Content> contents(Plan plan) {
    List<Block.Content> contents = new ArrayList<>();
    for (Block block : plan.blocks()) {
      contents.add(block.content());
      contents.addAll(block.only().values());
    }
    return contents;
  }

  private static List<Exercise> exercises(Plan plan) {
    List<Exercise> exercises = new ArrayList<>();
    for (Block.Content content : contents(plan)) {
      for (SessionPlan session : content.sessions()) {
        exercises.addAll(session.content().exercises());
        session.only().values().forEach(own -> exercises.addAll(own.exercises()));
      }
    }
    plan.retests().forEach(test -> exercises.addAll(test.exercises()));
    return exercises;
  }
}
