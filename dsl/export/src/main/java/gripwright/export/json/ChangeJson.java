package gripwright.export.json;

import gripwright.change.BlockChange;
import gripwright.change.PlanChange;
import gripwright.change.SessionChange;
import gripwright.finding.Message;
import gripwright.hand.Hands;
import gripwright.plan.Plan;
import gripwright.plan.TestKind;
import gripwright.protocol.Extent;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Numbers;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.wording.Wording;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Writes one change of a plan as JSON. */
final class ChangeJson {

  private ChangeJson() {}

  /**
   * The subject of a change.
   *
   * @param session the session; null if it concerns several sessions or none
   * @param exercise the exercise; null if it concerns more than one
   * @param name name of the block, grip or waived rule; null if the change concerns a session or
   *     the plan
   * @param measure the property that changed; null if the whole item was added, removed or moved
   * @param before the earlier value with its unit; null if there was none
   * @param after the new value with its unit; null if it was removed
   */
  record About(
      @Nullable DatedSession session,
      @Nullable PlannedExercise exercise,
      @Nullable String name,
      @Nullable String measure,
      @Nullable String before,
      @Nullable String after) {

    /** Returns the subject of a change to one session. */
    static About session(
        DatedSession session,
        @Nullable PlannedExercise exercise,
        @Nullable String before,
        @Nullable String after) {
      return new About(session, exercise, null, null, before, after);
    }

    /** Returns the subject of a change to a named item. */
    static About named(@Nullable String name, @Nullable String before, @Nullable String after) {
      return new About(null, null, name, null, before, after);
    }
  }

  /** Returns the kind of a change, such as {@code exercise-changed}. */
  static String kind(PlanChange change) {
    return word(change.kind());
  }

  /** Returns the name of a constant as written in JSON, such as {@code set-rest}. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static About about(PlanChange change, Wording wording) {
    return change.accept(new OfPlan(wording));
  }

  private static final class OfPlan implements PlanChange.Visitor<About> {
    private final Wording wording;

    OfPlan(Wording wording) {
      this.wording = wording;
    }

    @Override
    public About planMoved(PlanChange.PlanMoved c) {
      return About.named(null, c.before().toString(), c.after().toString());
    }

    @Override
    public About goalChanged(PlanChange.GoalChanged c) {
      return About.named(null, said(c.before()), said(c.after()));
    }

    @Override
    public About gripStarts(PlanChange.GripStarts c) {
      return About.named(c.grip().name(), c.before().toString(), c.after().toString());
    }

    @Override
    public About retestChanged(PlanChange.RetestChanged c) {
      return About.named(null, tests(c.before()), tests(c.after()));
    }

    @Override
    public About waiverAdded(PlanChange.WaiverAdded c) {
      return About.named(c.waiver().rule(), null, waiver(c.waiver()));
    }

    @Override
    public About waiverDropped(PlanChange.WaiverDropped c) {
      return About.named(c.waiver().rule(), waiver(c.waiver()), null);
    }

    @Override
    public About partChanged(PlanChange.PartChanged c) {
      return new About(null, null, null, word(c.part()), said(c.before()), said(c.after()));
    }

    private @Nullable String said(Optional<Message> message) {
      return message.map(wording::say).orElse(null);
    }

    @Override
    public About block(BlockChange change) {
      return change.accept(new OfBlock());
    }

    @Override
    public About session(SessionChange change) {
      return change.accept(new OfSession());
    }
  }

  private static final class OfBlock implements BlockChange.Visitor<About> {
    @Override
    public About blockAdded(BlockChange.BlockAdded c) {
      return About.named(c.block(), null, c.weeks() + " weeks");
    }

    @Override
    public About blockDropped(BlockChange.BlockDropped c) {
      return About.named(c.block(), c.weeks() + " weeks", null);
    }

    @Override
    public About blockMoved(BlockChange.BlockMoved c) {
      return About.named(c.block(), c.date().minusDays(c.days()).toString(), c.date().toString());
    }

    @Override
    public About blockResized(BlockChange.BlockResized c) {
      return About.named(c.block(), c.before() + " weeks", c.after() + " weeks");
    }

    @Override
    public About blockRewritten(BlockChange.BlockRewritten c) {
      return About.named(c.block(), null, null);
    }

    @Override
    public About weekEased(BlockChange.WeekEased c) {
      boolean now = c.week().eased();
      return About.named(c.week().block(), now ? null : "eased", now ? "eased" : null);
    }
  }

  private static final class OfSession implements SessionChange.Visitor<About> {
    @Override
    public About sessionAdded(SessionChange.SessionAdded c) {
      return About.session(c.session(), null, null, c.session().date().toString());
    }

    @Override
    public About sessionDropped(SessionChange.SessionDropped c) {
      return About.session(c.session(), null, c.session().date().toString(), null);
    }

    @Override
    public About sessionMoved(SessionChange.SessionMoved c) {
      return About.session(c.after(), null, moment(c.before()), moment(c.after()));
    }

    private static String moment(DatedSession session) {
      return session.date()
          + session.time().map(time -> " " + time).orElse("")
          + session.place().map(place -> " at " + place).orElse("");
    }

    @Override
    public About sessionTimed(SessionChange.SessionTimed c) {
      return About.session(
          c.after(), null, c.before().minutes() + " min", c.after().minutes() + " min");
    }

    @Override
    public About exerciseAdded(SessionChange.ExerciseAdded c) {
      return About.session(c.session(), c.exercise(), null, null);
    }

    @Override
    public About exerciseDropped(SessionChange.ExerciseDropped c) {
      return About.session(c.session(), c.exercise(), null, null);
    }

    @Override
    public About exerciseChanged(SessionChange.ExerciseChanged c) {
      return new About(
          c.session(),
          c.after(),
          null,
          word(c.measure()),
          value(c.before(), c.measure()),
          value(c.after(), c.measure()));
    }
  }

  private static String waiver(Plan.Waiver waiver) {
    return waiver.block().map(b -> "block " + b + " ").orElse("")
        + (waiver.week().isPresent() ? "week " + waiver.week().getAsInt() + " " : "")
        + waiver.session().map(s -> "session " + s + " ").orElse("")
        + (waiver.exercise().isPresent() ? "exercise " + waiver.exercise().getAsInt() + " " : "")
        + "because "
        + waiver.because();
  }

  private static @Nullable String tests(List<DatedRetest> tests) {
    return tests.isEmpty()
        ? null
        : tests.stream()
            .map(
                t ->
                    t.date()
                        + t.setups().stream().map(s -> " " + s).collect(Collectors.joining(","))
                        + kind(t)
                        + warmUp(t))
            .collect(Collectors.joining("; "));
  }

  private static String warmUp(DatedRetest test) {
    return test.exercises().stream()
        .map(e -> " after " + e.protocol() + " on " + e.setup() + " " + e.totalLoad())
        .collect(Collectors.joining(","));
  }

  private static String kind(DatedRetest test) {
    String kind =
        test.kind()
            .accept(
                new TestKind.Visitor<String>() {
                  @Override
                  public String hold(TestKind.Hold hold) {
                    return " hold " + seconds(hold.time());
                  }

                  @Override
                  public String toFailure(TestKind.ToFailure failure) {
                    return " to-failure";
                  }

                  @Override
                  public String series(TestKind.Series series) {
                    return " series "
                        + series.holds()
                        + " x "
                        + seconds(series.work())
                        + " / "
                        + seconds(series.rest());
                  }
                });
    int attempts = test.attempts().number();
    return attempts == 1 ? kind : kind + " attempts " + attempts;
  }

  private static String seconds(Duration time) {
    return Numbers.plain(time.toNanos() / 1e9, 3) + " s";
  }

  /** Returns what sets and hold times mean, such as {@code sets up to 5, hold up to 20 s}. */
  private static String bound(Scheme scheme) {
    List<String> parts = new ArrayList<>();
    parts.add("sets " + (scheme.setsUpTo() ? "up to " : "") + scheme.sets());
    scheme.written().stream()
        .map(h -> "hold " + bound(h.extent()) + seconds(h.time()))
        .distinct()
        .forEach(parts::add);
    return String.join(", ", parts);
  }

  private static String bound(Extent extent) {
    return switch (extent) {
      case WHOLE -> "";
      case UP_TO -> "up to ";
      case TO_FAILURE -> "to failure up to ";
    };
  }

  private static @Nullable String value(PlannedExercise exercise, SessionChange.Measure measure) {
    Scheme scheme = exercise.scheme();
    return switch (measure) {
      case PROTOCOL -> exercise.protocol();
      case GRIP -> exercise.setup().grip().name();
      case EDGE -> exercise.setup().edge().toString();
      case HANDS ->
          (exercise.setup().hands() == Hands.BOTH ? "both" : exercise.setup().hands().word())
              + (exercise.setup().lifting() ? " lifting" : "");
      case SETS -> Integer.toString(scheme.sets());
      case REPETITIONS -> Integer.toString(scheme.repetitionsPerSet());
      case HOLD -> seconds(scheme.holds().get(0).time());
      case REST -> seconds(scheme.restBetweenHolds());
      case SET_REST -> seconds(scheme.restBetweenSets());
      case LOAD -> exercise.totalLoad().toString();
      case LEVEL ->
          exercise.percentOfMax().isPresent()
              ? Numbers.plain(exercise.percentOfMax().getAsDouble(), 3) + " %"
              : scheme.levels().stream().map(Level::toString).collect(Collectors.joining(" and "));
      case REHABILITATION -> exercise.rehabilitation().orElse(null);
      case ORDER -> Integer.toString(exercise.order());
      case HARDNESS -> exercise.hard() ? "hard" : "not hard";
      case BOUND -> bound(scheme);
      case WARM_UP -> exercise.warmUp() ? "warm-up" : "work";
      case COURSE -> null;
    };
  }
}
