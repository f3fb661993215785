package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A statement of a session. */
public sealed interface SessionPart extends Syntax
    permits Note,
        WarmUp,
        RestBetween,
        Weigh,
        SessionPart.DoItem,
        SessionPart.SessionOnlyFor,
        SessionPart.Prefer {

  /**
   * {@code do PROTOCOL with PARAMETERS on GRIP edge DEPTH}: one exercise; {@code rehabilitation}
   * names the clinician's plan it belongs to.
   */
  record DoItem(
      int id,
      Word protocol,
      List<Parameter> with,
      Target target,
      Setup setup,
      @Nullable Text rehabilitation)
      implements SessionPart {
    /** Copies the lists. */
    public DoItem {
      with = List.copyOf(with);
    }
  }

  /** {@code only for NAME { ... }}: what differs for some athletes of the plan. */
  record SessionOnlyFor(int id, List<Word> athletes, List<SessionPart> parts, boolean damaged)
      implements SessionPart {
    /** Copies the lists. */
    public SessionOnlyFor {
      athletes = List.copyOf(athletes);
      parts = List.copyOf(parts);
    }
  }

  /** {@code prefer tue, sat}: weekdays the session would best be on. */
  record Prefer(int id, List<Word> days) implements SessionPart {
    /** Copies the lists. */
    public Prefer {
      days = List.copyOf(days);
    }
  }
}
