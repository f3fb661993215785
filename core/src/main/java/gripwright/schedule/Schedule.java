package gripwright.schedule;

import gripwright.athlete.Athlete;
import gripwright.plan.Plan;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The compiled sessions of a plan for one athlete, by date. Immutable. */
public final class Schedule {

  /** The components; lists are copied. */
  private record Parts(
      Plan plan,
      Athlete athlete,
      List<DatedSession> sessions,
      List<PlanWeek> weeks,
      List<DatedRetest> retests,
      List<LocalDate> climbing,
      List<MissedSession> missed,
      List<NotMadeUp> notMadeUp,
      List<DatedSession> beside,
      Optional<List<LocalDate>> withoutLog) {
    Parts {
      sessions = List.copyOf(sessions);
      weeks = List.copyOf(weeks);
      retests = List.copyOf(retests);
      climbing = List.copyOf(climbing);
      missed = List.copyOf(missed);
      notMadeUp = List.copyOf(notMadeUp);
      beside = List.copyOf(beside);
      withoutLog = withoutLog.map(List::copyOf);
    }
  }

  private final Parts parts;

  private Schedule(Parts parts) {
    this.parts = parts;
  }

  /** Returns a builder for the schedule of a plan for an athlete, empty unless set. */
  public static Builder builder(Plan plan, Athlete athlete) {
    return new Builder(plan, athlete);
  }

  /** Returns a builder with these components. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /** Returns the plan as written. */
  public Plan plan() {
    return parts.plan;
  }

  /** Returns the athlete. */
  public Athlete athlete() {
    return parts.athlete;
  }

  /** Returns the sessions by date: past ones as trained, then planned ones. */
  public List<DatedSession> sessions() {
    return parts.sessions;
  }

  /** Returns every week of the plan, in order. */
  public List<PlanWeek> weeks() {
    return parts.weeks;
  }

  /** Returns the dated tests. */
  public List<DatedRetest> retests() {
    return parts.retests;
  }

  /** Returns the hard climbing days that fall in the plan, by date. */
  public List<LocalDate> climbing() {
    return parts.climbing;
  }

  /** Returns past planned sessions that were not done. */
  public List<MissedSession> missed() {
    return parts.missed;
  }

  /** Returns the sessions that lost their day to the log and got no other. */
  public List<NotMadeUp> notMadeUp() {
    return parts.notMadeUp;
  }

  /**
   * Returns logged sessions that are in no plan, from twelve weeks before this plan to its end;
   * they belong to no block, and their week is 0.
   */
  public List<DatedSession> beside() {
    return parts.beside;
  }

  /**
   * Returns the days of the sessions as planned without the log; empty if nothing was logged during
   * the plan.
   */
  public Optional<List<LocalDate>> withoutLog() {
    return parts.withoutLog;
  }

  /** Returns the sessions of a plan week, from 1, by date. */
  public List<DatedSession> sessionsOf(int week) {
    return parts.sessions.stream().filter(s -> s.week() == week).toList();
  }

  /** Returns the sessions of a day. */
  public List<DatedSession> sessionsOn(LocalDate day) {
    return parts.sessions.stream().filter(s -> s.date().equals(day)).toList();
  }

  /** Returns this schedule with the planned days of the schedule without the log. */
  public Schedule besides(Schedule other) {
    return toBuilder()
        .withoutLog(Optional.of(other.parts.sessions.stream().map(DatedSession::date).toList()))
        .build();
  }

  /**
   * Returns the planned days of the sessions, without the log if that is known. A day with several
   * sessions is listed several times.
   */
  public List<LocalDate> plannedDays() {
    return parts.withoutLog.orElseGet(() -> planned().stream().map(DatedSession::date).toList());
  }

  /** Returns the sessions missed on a day. */
  public List<MissedSession> missedOn(LocalDate day) {
    return parts.missed.stream().filter(m -> m.planned().date().equals(day)).toList();
  }

  /**
   * Returns the planned sessions, by date: past ones as they were planned, including missed ones,
   * and future ones.
   */
  public List<DatedSession> planned() {
    return Stream.concat(
            parts.sessions.stream()
                .flatMap(
                    s ->
                        s.happened().isEmpty()
                            ? Stream.of(s)
                            : s.happened().get().planned().stream()),
            parts.missed.stream().map(MissedSession::planned))
        .sorted(DatedSession.IN_ORDER)
        .toList();
  }

  /**
   * Returns this schedule reduced to one day: its sessions, tests, climbing and missed sessions,
   * and its week.
   */
  public Schedule on(LocalDate day) {
    return toBuilder()
        .sessions(sessionsOn(day))
        .weeks(
            parts.weeks.stream()
                .filter(w -> !day.isBefore(w.from()) && !day.isAfter(w.to()))
                .toList())
        .retests(parts.retests.stream().filter(r -> r.date().equals(day)).toList())
        .climbing(parts.climbing.stream().filter(day::equals).toList())
        .missed(missedOn(day))
        .notMadeUp(List.of())
        .beside(parts.beside.stream().filter(s -> s.date().equals(day)).toList())
        .withoutLog(parts.withoutLog.map(days -> days.stream().filter(day::equals).toList()))
        .build();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Schedule that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "Schedule" + parts.toString().substring("Parts".length());
  }

  /** Collects the components. Not thread-safe. */
  public static final class Builder {
    private Plan plan;
    private Athlete athlete;
    private List<DatedSession> sessions = List.of();
    private List<PlanWeek> weeks = List.of();
    private List<DatedRetest> retests = List.of();
    private List<LocalDate> climbing = List.of();
    private List<MissedSession> missed = List.of();
    private List<NotMadeUp> notMadeUp = List.of();
    private List<DatedSession> beside = List.of();
    private Optional<List<LocalDate>> withoutLog = Optional.empty();

    private Builder(Plan plan, Athlete athlete) {
      this.plan = Objects.requireNonNull(plan, "plan");
      this.athlete = Objects.requireNonNull(athlete, "athlete");
    }

    private Builder(Parts copied) {
      plan = copied.plan;
      athlete = copied.athlete;
      sessions = copied.sessions;
      weeks = copied.weeks;
      retests = copied.retests;
      climbing = copied.climbing;
      missed = copied.missed;
      notMadeUp = copied.notMadeUp;
      beside = copied.beside;
      withoutLog = copied.withoutLog;
    }

    /** Sets the plan as written. */
    public Builder plan(Plan value) {
      Objects.requireNonNull(value, "value");
      plan = value;
      return this;
    }

    /** Sets the athlete. */
    public Builder athlete(Athlete value) {
      Objects.requireNonNull(value, "value");
      athlete = value;
      return this;
    }

    /** Sets the sessions by date: past ones as trained, then planned ones. */
    public Builder sessions(List<DatedSession> value) {
      Objects.requireNonNull(value, "value");
      sessions = List.copyOf(value);
      return this;
    }

    /** Sets every week of the plan, in order. */
    public Builder weeks(List<PlanWeek> value) {
      Objects.requireNonNull(value, "value");
      weeks = List.copyOf(value);
      return this;
    }

    /** Sets the dated tests. */
    public Builder retests(List<DatedRetest> value) {
      Objects.requireNonNull(value, "value");
      retests = List.copyOf(value);
      return this;
    }

    /** Sets the hard climbing days that fall in the plan, by date. */
    public Builder climbing(List<LocalDate> value) {
      Objects.requireNonNull(value, "value");
      climbing = List.copyOf(value);
      return this;
    }

    /** Sets past planned sessions that were not done. */
    public Builder missed(List<MissedSession> value) {
      Objects.requireNonNull(value, "value");
      missed = List.copyOf(value);
      return this;
    }

    /** Sets the sessions that lost their day to the log and got no other. */
    public Builder notMadeUp(List<NotMadeUp> value) {
      Objects.requireNonNull(value, "value");
      notMadeUp = List.copyOf(value);
      return this;
    }

    /**
     * Sets logged sessions that are in no plan, from twelve weeks before this plan to its end; they
     * belong to no block, and their week is 0.
     */
    public Builder beside(List<DatedSession> value) {
      Objects.requireNonNull(value, "value");
      beside = List.copyOf(value);
      return this;
    }

    /**
     * Sets the days of the sessions as planned without the log; empty if nothing was logged during
     * the plan.
     */
    public Builder withoutLog(Optional<List<LocalDate>> value) {
      Objects.requireNonNull(value, "value");
      withoutLog = value.map(List::copyOf);
      return this;
    }

    /** Returns the schedule. */
    public Schedule build() {
      return new Schedule(
          new Parts(
              plan,
              athlete,
              sessions,
              weeks,
              retests,
              climbing,
              missed,
              notMadeUp,
              beside,
              withoutLog));
    }
  }
}
