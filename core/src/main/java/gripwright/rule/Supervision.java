package gripwright.rule;

import gripwright.finding.Clause;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Schedule;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Who supervises the sessions of a plan, as written. */
final class Supervision {

  private static final int MOST_SAID = 5;

  private Supervision() {}

  /**
   * Returns who supervises, each with their sessions unless it is all of them; empty if nobody is
   * named.
   */
  static Optional<Message> of(Schedule schedule) {
    Map<String, Set<String>> sessionsBy = new LinkedHashMap<>();
    Set<String> sessions = new LinkedHashSet<>();
    for (DatedSession session : schedule.sessions()) {
      sessions.add(session.name());
      schedule
          .plan()
          .supervisorOf(session.block(), session.name(), schedule.athlete().name())
          .ifPresent(
              who ->
                  sessionsBy.computeIfAbsent(who, w -> new LinkedHashSet<>()).add(session.name()));
    }
    if (sessionsBy.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Listing.few(
            MOST_SAID,
            Listing.Style.COMMAS,
            sessionsBy.entrySet().stream()
                .map(e -> supervisor(e.getKey(), e.getValue(), sessions))
                .toList()));
  }

  private static Message supervisor(String who, Set<String> watched, Set<String> all) {
    Message name = new WrittenText(who);
    return watched.equals(all)
        ? name
        : Clause.of("breach.supervises-some", "who", name)
            .with(
                "sessions",
                Listing.few(MOST_SAID, Listing.Style.COMMAS, watched.stream().toList()));
  }
}
