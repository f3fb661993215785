package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A statement of a session. */
public sealed interface SessionPart extends Syntax
    permits Note,
        DefaultItem,
        Supervised,
        SessionPart.DoItem,
        SessionPart.SessionOnlyFor,
        SessionPart.Prefer,
        SessionPart.ShareDays,
        OnlyOn,
        OnlyAt {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement of a session. */
  interface Visitor {
    /** Visits a note. */
    void note(Note part);

    /** Visits a default for everything inside. */
    void defaultItem(DefaultItem part);

    /** Visits the supervisor. */
    void supervised(Supervised part);

    /** Visits an exercise. */
    void doItem(DoItem part);

    /** Visits content for some athletes. */
    void sessionOnlyFor(SessionOnlyFor part);

    /** Visits preferred weekdays. */
    void prefer(Prefer part);

    /** Visits the hours to other sessions of a day. */
    void shareDays(ShareDays part);

    /** Visits the weekdays that a session may be on. */
    void onlyOn(OnlyOn part);

    /** Visits the places that a session may be at. */
    void onlyAt(OnlyAt part);
  }

  /**
   * {@code do PROTOCOL with PARAMETERS on GRIP edge DEPTH}: one exercise; {@code rehabilitation}
   * names the clinician's plan it belongs to, {@code alternating} is true with {@code alternating
   * hands}, {@code warmUp} are the words {@code as warm-up}, and {@code note} is the text at the
   * end.
   */
  record DoItem(
      int id,
      Word protocol,
      List<Parameter> with,
      Target target,
      Setup setup,
      boolean alternating,
      @Nullable Word warmUp,
      @Nullable Text rehabilitation,
      @Nullable Text note)
      implements SessionPart, TestPart {
    /** Copies the lists. */
    public DoItem {
      with = List.copyOf(with);
    }

    @Override
    public void accept(SessionPart.Visitor visitor) {
      visitor.doItem(this);
    }

    @Override
    public void accept(TestPart.Visitor visitor) {
      visitor.doItem(this);
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

    @Override
    public void accept(Visitor visitor) {
      visitor.sessionOnlyFor(this);
    }
  }

  /** {@code share days at least 6 h apart}: it may be on a day that has another session. */
  record ShareDays(int id, Amount apart) implements SessionPart {
    @Override
    public void accept(Visitor visitor) {
      visitor.shareDays(this);
    }
  }

  /** {@code prefer tue, sat}: preferred weekdays of the session. */
  record Prefer(int id, List<Word> days) implements SessionPart {
    /** Copies the lists. */
    public Prefer {
      days = List.copyOf(days);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.prefer(this);
    }
  }
}
