package gripwright.planning;

import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.history.LogTimeline;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.SessionPlan;
import gripwright.planning.load.Dose;
import gripwright.planning.load.HandFindings;
import gripwright.planning.load.Prescription;
import gripwright.planning.mix.Choice;
import gripwright.planning.mix.MixLinks;
import gripwright.planning.progression.Progression;
import gripwright.protocol.Scheme;
import gripwright.quantity.Length;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Derivation;
import gripwright.schedule.GripMix;
import gripwright.schedule.PlacementReason;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;

/**
 * Expands a line of a session into exercises with loads: one, or several that share its sets if the
 * line leaves a choice of grips.
 */
final class LineExpansion {

  private final String athlete;
  private final LogTimeline timeline;
  private final Prescription prescription;
  private final SessionFrame frame;
  private final Choice choice;
  private final Meter meter;
  private final Map<OfHands, DatedSession> unloaded = new LinkedHashMap<>();
  private final IdentityHashMap<Block, Progression> progressions = new IdentityHashMap<>();

  /**
   * Creates an expansion.
   *
   * @param frame creates sessions for rule checks
   * @param meter enforces the limits of an exercise
   */
  LineExpansion(
      LogTimeline timeline,
      HandFindings hands,
      Prescription prescription,
      SessionFrame frame,
      Meter meter) {
    this.athlete = timeline.athlete().name();
    this.timeline = timeline;
    this.prescription = prescription;
    this.frame = frame;
    this.meter = meter;
    LocalDate from = timeline.plan().from();
    this.choice =
        new Choice(
            timeline, hands.fits(), prescription.strengthOn(from), prescription.bodyMassOn(from));
  }

  /** A line in any week, and the hands that it is for. */
  private record OfHands(ModelPath line, Hands hands) {}

  /**
   * A line of a session on a day.
   *
   * @param week the week
   * @param session the session
   * @param day the day
   * @param exercise the line
   * @param path its place
   * @param before the number of exercises before it in the session
   * @param at name of the place, if there is one
   */
  record Line(
      WeekContext week,
      SessionPlan session,
      LocalDate day,
      Exercise exercise,
      ModelPath path,
      int before,
      Optional<String> at) {

    private Prescription.Place place(int offset) {
      return new Prescription.Place(
          day, before + offset + 1, path, week.standing().rise(), true, at);
    }
  }

  /** Returns the exercises of a line; empty, with a finding, if none can be trained. */
  List<PlannedExercise> exercises(Line line, FindingList into) {
    Exercise exercise = line.exercise();
    if (exercise.target() instanceof Exercise.BestOf) {
      return chosen(line, into);
    }
    Grip grip = Choice.grips(exercise).get(0);
    return prescribed(line, grip, into).stream().toList();
  }

  private Optional<PlannedExercise> prescribed(Line line, Grip grip, FindingList into) {
    return prescribed(
        line.exercise(),
        dose(line, grip),
        line.place(0),
        alone ->
            frame.dated(
                line.week(),
                line.session(),
                line.day(),
                List.of(alone),
                new PlacementReason.Unplaced()),
        into);
  }

  /**
   * Returns an exercise with its load; a line without one is kept for the rules.
   *
   * @param alone makes a session of an exercise alone
   */
  private Optional<PlannedExercise> prescribed(
      Exercise exercise,
      Dose dose,
      Prescription.Place place,
      Function<PlannedExercise, DatedSession> alone,
      FindingList into) {
    Grip grip = Choice.grips(exercise).get(0);
    Optional<PlannedExercise> planned = prescription.prescribe(exercise, grip, dose, place, into);
    if (planned.isEmpty() && isNewWithoutLoad(place.path(), exercise.hands())) {
      prescription
          .unloaded(exercise, grip, dose, place)
          .map(alone)
          .ifPresent(session -> unloaded.put(key(place.path(), exercise.hands()), session));
    }
    return planned;
  }

  private static OfHands key(ModelPath path, Hands hands) {
    return new OfHands(path.without("week", "date"), hands);
  }

  private boolean isNewWithoutLoad(ModelPath path, Hands hands) {
    DatedSession known = unloaded.get(key(path, hands));
    return known == null || timeline.isPast(known.date());
  }

  /** Keeps a line that is not trained, for rule checks, see {@link #unloaded}. */
  void untrained(WeekContext week, SessionPlan session, LocalDate day, PlannedExercise exercise) {
    Hands hands = exercise.setup().hands();
    if (isNewWithoutLoad(exercise.path(), hands)) {
      unloaded.put(
          key(exercise.path(), hands),
          frame.dated(week, session, day, List.of(exercise), new PlacementReason.Unplaced()));
    }
  }

  /**
   * A line of a test on a day: a warm-up, which does not advance.
   *
   * @param week the week
   * @param test the test on its day
   * @param exercise the line
   * @param path its place
   * @param before the number of exercises before it
   */
  record Before(
      WeekContext week, DatedRetest test, Exercise exercise, ModelPath path, int before) {}

  /** Returns the exercise of a line of a test; empty, with a finding, if it can't be done. */
  Optional<PlannedExercise> beforeTest(Before line, FindingList into) {
    WeekContext week = line.week();
    LocalDate day = line.test().date();
    Grip grip = Choice.grips(line.exercise()).get(0);
    Dose dose =
        within(progression(week).dose(line.exercise(), grip, week.standing(), day, line.path()));
    return prescribed(
        line.exercise(),
        dose,
        new Prescription.Place(
            day, line.before() + 1, line.path(), week.standing().rise(), true, line.test().place()),
        alone ->
            DatedSession.builder(day, "test", prescription.bodyMassOn(day), line.path())
                .week(week.number())
                .block(week.block().name())
                .exercises(List.of(alone))
                .placedBecause(new PlacementReason.Unplaced())
                .build(),
        into);
  }

  /**
   * Returns the lines without a load, and warm-ups without anything to warm up for, for rule
   * checks, each once, as a session of its own on its first planned day.
   */
  List<DatedSession> unloaded() {
    return List.copyOf(unloaded.values());
  }

  private Progression progression(WeekContext week) {
    return progressions.computeIfAbsent(
        week.block(), block -> new Progression(block.contentFor(athlete), prescription));
  }

  private Dose dose(Line line, Grip grip) {
    return within(
        progression(line.week())
            .dose(line.exercise(), grip, line.week().standing(), line.day(), line.path()));
  }

  private Dose within(Dose dose) {
    within(dose.scheme());
    dose.whole().ifPresent(this::within);
    return dose;
  }

  /** Returns the scheme after checking its size, because progression may have added sets. */
  Scheme within(Scheme scheme) {
    meter.require(Limit.EXERCISE, scheme.size());
    return scheme;
  }

  /** Returns the edges that a line needs. */
  List<Length> edges(Line line) {
    return setups(line).stream().map(Setup::edge).distinct().toList();
  }

  /** Returns the grips that a line offers, on the edges reached by progression. */
  private List<Setup> setups(Line line) {
    Exercise exercise = line.exercise();
    return Choice.grips(exercise).stream()
        .map(
            grip ->
                exercise
                    .setup(grip)
                    .withEdge(
                        progression(line.week())
                            .dose(exercise, grip, line.week().standing())
                            .edge()))
        .toList();
  }

  private List<PlannedExercise> chosen(Line line, FindingList into) {
    meter.look();
    Exercise exercise = line.exercise();
    List<Setup> setups = setups(line);
    List<Choice.Exclusion> out = new ArrayList<>();
    for (Setup setup : setups) {
      excluded(line, setup).ifPresent(out::add);
    }
    Optional<GripMix> mix = choice.mix(exercise, setups, out);
    if (mix.isPresent()) {
      return shared(line, mix.get(), into);
    }
    if (out.stream().allMatch(o -> o.reason() instanceof GripMix.NoLoad)) {
      // The coach needs to know what prevents a load for the first grip.
      Grip first = setups.get(0).grip();
      prescribed(line, first, into);
    } else {
      into.add(noneOpen(line, out).with("session", line.session().name()));
    }
    return List.of();
  }

  private Optional<Choice.Exclusion> excluded(Line line, Setup setup) {
    FindingList why = new FindingList();
    Optional<PlannedExercise> candidate =
        prescription.prescribe(
            line.exercise(), setup.grip(), dose(line, setup.grip()), line.place(0), why);
    Optional<Choice.Exclusion> byHand = choice.excludedByHand(setup);
    if (byHand.isPresent()) {
      return byHand;
    }
    if (candidate.isEmpty()) {
      return Optional.of(Choice.Exclusion.withoutLoad(setup, why.all()));
    }
    WeekContext week = line.week();
    return choice.excludedByRule(
        candidate.get(),
        frame.dated(
            week,
            line.session(),
            line.day(),
            List.of(candidate.get()),
            new PlacementReason.Unplaced()),
        PlanWeek.builder(
                week.number(), week.block().name(), week.blockWeek(), week.first(), line.path())
            .eased(week.eased())
            .build());
  }

  /** Prescribes the share of the sets of each grip in a mix. */
  private List<PlannedExercise> shared(Line line, GripMix mix, FindingList into) {
    Exercise exercise = line.exercise();
    Progression progression = progression(line.week());
    Progression.Week standing = line.week().standing();
    List<PlannedExercise> chosen = new ArrayList<>();
    SortedMap<String, Double> shares = mix.best().shares();
    Grip first = gripNamed(exercise, shares.firstKey());
    // A newly introduced grip progresses later, and the whole line waits for it.
    int full =
        shares.keySet().stream()
            .map(name -> gripNamed(exercise, name))
            .filter(grip -> grip.equals(first) || progression.introduction(grip).isPresent())
            .mapToInt(grip -> progression.fullSets(exercise, grip, standing))
            .min()
            .orElseThrow();
    int all =
        progression
            .doseOfMix(exercise, first, standing, full, line.day(), line.path())
            .scheme()
            .sets();
    Choice.apportion(all, shares)
        .forEach(
            (name, sets) -> {
              if (sets > 0) {
                Grip grip = gripNamed(exercise, name);
                Dose dose =
                    within(
                        progression.doseOfMix(
                            exercise, grip, standing, full, line.day(), line.path()));
                List<Derivation> why = new ArrayList<>(dose.why());
                why.addAll(
                    MixLinks.why(
                        mix,
                        name,
                        sets,
                        all,
                        chosen.stream().findFirst().map(c -> c.setup().grip().name())));
                prescription
                    .prescribe(
                        exercise, grip, dose.withSets(sets, why), line.place(chosen.size()), into)
                    .map(planned -> planned.chosenBy(mix))
                    .ifPresent(chosen::add);
              }
            });
    return chosen;
  }

  private static Grip gripNamed(Exercise exercise, String name) {
    return Choice.grips(exercise).stream()
        .filter(grip -> grip.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Reports that a line has no grip left, with the excluded grips for each reason. */
  private static Finding noneOpen(Line line, List<Choice.Exclusion> out) {
    Map<GripMix.Reason, List<String>> grips = new LinkedHashMap<>();
    out.forEach(
        each -> grips.computeIfAbsent(each.reason(), r -> new ArrayList<>()).add(each.grip()));
    List<Message> reasons = new ArrayList<>();
    grips.forEach(
        (reason, some) ->
            reasons.add(
                new Clause("derivation.mix-none", Map.of("grips", some, "reason", reason))));
    return Finding.error("plan.choose-none", line.path())
        .with("grips", Choice.grips(line.exercise()).stream().map(Grip::name).toList())
        .with("reasons", Listing.of(Listing.Style.CLAUSES, reasons));
  }
}
