package gripwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Checks the places that parts of a plan name: athletes of its content, places of its waivers. */
final class PlanPlaces {

  private final String plan;
  private final Set<String> athletes;
  private final List<Block> blocks;

  PlanPlaces(String plan, List<String> athletes, List<Block> blocks) {
    this.plan = plan;
    this.athletes = Set.copyOf(athletes);
    this.blocks = blocks;
  }

  /**
   * Checks the places.
   *
   * @throws IllegalArgumentException if one is not in the plan
   */
  void check(List<Plan.Waiver> waivers) {
    for (Block block : blocks) {
      checkAthletes(block.only().keySet(), "block " + block.name());
      for (SessionPlan session : sessions(List.of(block))) {
        checkAthletes(session.only().keySet(), "session " + session.name());
      }
    }
    waivers.forEach(this::check);
  }

  private void checkAthletes(Set<String> named, String where) {
    for (String athlete : named) {
      if (!athletes.contains(athlete)) {
        throw refused(
            where + " has content for " + athlete + ", who is not an athlete of the plan");
      }
    }
  }

  private void check(Plan.Waiver waiver) {
    List<Block> covered = blocks;
    if (waiver.block().isPresent()) {
      String name = waiver.block().get();
      Block block =
          blocks.stream()
              .filter(each -> each.name().equals(name))
              .findFirst()
              .orElseThrow(() -> refused("a waiver in block " + name + ", which is not there"));
      checkNumber(waiver.week(), block.weeks(), "a waiver in week ", " of block " + name);
      covered = List.of(block);
    }
    Optional<String> session = waiver.session();
    List<SessionPlan> sessions =
        sessions(covered).stream()
            .filter(each -> session.isEmpty() || each.name().equals(session.get()))
            .toList();
    if (sessions.isEmpty()) {
      throw refused("a waiver in session " + session.orElse("") + ", which is not there");
    }
    int most = sessions.stream().mapToInt(PlanPlaces::most).max().orElse(0);
    checkNumber(waiver.exercise(), most, "a waiver in exercise ", "");
  }

  private void checkNumber(OptionalInt number, int most, String before, String after) {
    if (number.isPresent() && number.getAsInt() > most) {
      throw refused(before + number.getAsInt() + after + " is outside 1 to " + most);
    }
  }

  private static List<SessionPlan> sessions(List<Block> blocks) {
    List<SessionPlan> sessions = new ArrayList<>();
    for (Block block : blocks) {
      sessions.addAll(block.content().sessions());
      block.only().values().forEach(own -> sessions.addAll(own.sessions()));
    }
    return sessions;
  }

  private static int most(SessionPlan session) {
    int most = session.content().exercises().size();
    for (SessionPlan.Content own : session.only().values()) {
      most = Math.max(most, own.exercises().size());
    }
    return most;
  }

  private IllegalArgumentException refused(String why) {
    return new IllegalArgumentException("plan " + plan + ": " + why);
  }
}
