package gripwright.language;

import gripwright.athlete.Athlete;
import gripwright.athlete.Equipment;
import gripwright.athlete.Injury;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.Hands;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.plan.TestTime;
import gripwright.planning.GeneratedSeason;
import gripwright.protocol.Argument;
import gripwright.protocol.Extent;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.protocol.Term;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.strength.StrengthTest;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;

/** Writes a generated season as a coach would write it. */
final class SeasonText {

  private static final double POUND = 0.45359237;
  private static final double INCH = 25.4;

  private final GeneratedSeason season;
  private final boolean imperial;
  private final Consumer<List<String>> order;

  /**
   * Prepares to write a season.
   *
   * @param imperial whether masses are in lb and lengths in inches, else in kg and mm
   * @param order sorts statements whose order has no meaning
   */
  SeasonText(GeneratedSeason season, boolean imperial, Consumer<List<String>> order) {
    this.season = season;
    this.imperial = imperial;
    this.order = order;
  }

  /** Writes a season in metric units and the usual order. */
  static String of(GeneratedSeason season) {
    return new SeasonText(season, false, lines -> {}).write();
  }

  String write() {
    List<String> declarations = new ArrayList<>(List.of(athlete(), log(), plan()));
    season.plan().blocks().stream()
        .flatMap(block -> block.content().sessions().stream())
        .flatMap(session -> session.content().exercises().stream())
        .map(Exercise::protocol)
        .distinct()
        .filter(protocol -> !StandardProtocols.byName().containsKey(protocol.name()))
        .forEach(protocol -> declarations.add(protocol(protocol)));
    order.accept(declarations);
    return "language 1\n" + String.join("\n", declarations);
  }

  /** Writes a protocol of one repeat and one hold, whose bounds are all written as such. */
  private String protocol(Protocol protocol) {
    Protocol.Part.Repeat repeat = (Protocol.Part.Repeat) protocol.steps().get(0);
    Protocol.Part.Hold hold = (Protocol.Part.Hold) repeat.steps().get(0);
    List<String> lines = new ArrayList<>();
    protocol.parameters().forEach((name, value) -> lines.add("given " + name + " " + value(value)));
    lines.add(
        "repeat up to "
            + term(repeat.times(), Object::toString)
            + " resting "
            + term(repeat.resting(), SeasonText::time)
            + (hold.extent() == Extent.TO_FAILURE ? " { hold to-failure up to " : " { hold up to ")
            + term(hold.time(), SeasonText::time)
            + " at "
            + term(hold.level(), level -> value(Argument.of(level)))
            + " }");
    return body("protocol " + protocol.name(), lines);
  }

  private static <T> String term(Term<T> term, Function<T, String> fixed) {
    return term instanceof Term.Given<T> given
        ? given.parameter()
        : fixed.apply(((Term.Fixed<T>) term).value());
  }

  private String body(String head, List<String> statements) {
    return head + " {\n" + String.join("\n", statements) + "\n}\n";
  }

  private String kg(Load load) {
    double kilograms = load.kilograms();
    return imperial
        ? Numbers.plain(kilograms / POUND, 12) + " lb"
        : Numbers.plain(kilograms, 9) + " kg";
  }

  private String mm(Length length) {
    double millimetres = length.millimetres();
    return imperial
        ? Numbers.plain(millimetres / INCH, 12) + " inch"
        : Numbers.plain(millimetres, 9) + " mm";
  }

  private static String percent(double fraction) {
    return Numbers.plain(fraction * 100, 6) + " %";
  }

  private static String time(Duration time) {
    return time.toSeconds() % 60 == 0 && !time.isZero()
        ? time.toMinutes() + " min"
        : Numbers.plain(time.toMillis() / 1000.0, 3) + " s";
  }

  private static String number(double value) {
    return Numbers.plain(value, 3);
  }

  private static String word(DayOfWeek day) {
    return day.name().substring(0, 3).toLowerCase(Locale.ROOT);
  }

  private String athlete() {
    Athlete athlete = season.athlete();
    List<String> lines = new ArrayList<>();
    lines.add("born " + athlete.born());
    lines.add("body-mass " + kg(athlete.bodyMass()));
    lines.add("trained " + months(athlete.trained()));
    lines.add("ability " + athlete.ability().scale().word() + " " + athlete.ability().grade());
    athlete.sex().ifPresent(s -> lines.add("sex " + s.word()));
    lines.add(hands(athlete));
    athlete
        .familiar()
        .forEach(f -> lines.add("familiar " + f.grip() + " " + months(f.experience())));
    List<String> days = new ArrayList<>();
    athlete
        .available()
        .forEach(s -> days.add(word(s.on().weekday()) + " " + s.time().toMinutes() + " min"));
    lines.add("available " + String.join(", ", days));
    lines.add(equipment(athlete.equipment()));
    athlete
        .climbing()
        .forEach(
            c ->
                lines.add(
                    "climbing "
                        + word(c.day())
                        + " "
                        + c.how()
                        + " "
                        + c.time().toMinutes()
                        + " min"));
    athlete.away().forEach(a -> lines.add("away " + a.from() + " to " + a.to()));
    athlete.injuries().forEach(i -> lines.add(injury(i)));
    order.accept(lines);
    return body("athlete ylva \"Ylva Moen\"", lines);
  }

  private static String months(Athlete.Experience experience) {
    return number(experience.months())
        + " months"
        + experience.asOf().map(day -> " as of " + day).orElse("");
  }

  private static String injury(Injury injury) {
    return "injury "
        + injury.finger()
        + " "
        + injury.structure()
        + injury.side().map(s -> " " + s).orElse("")
        + " from "
        + injury.from()
        + injury.cleared().map(day -> " cleared " + day).orElse("");
  }

  private String hands(Athlete athlete) {
    List<String> right = new ArrayList<>();
    athlete
        .right()
        .bones()
        .forEach(
            (bone, length) -> {
              if (!length.equals(athlete.left().bones().get(bone))) {
                right.add(bone(bone, length));
              }
            });
    List<String> parts = hand(athlete.left());
    if (!right.isEmpty()) {
      parts.add("right { " + String.join(" ", right) + " }");
    }
    return body("hand", parts);
  }

  private String bone(Hand.Bone bone, Length length) {
    return bone.finger() + " " + bone.segment().name().toLowerCase(Locale.ROOT) + " " + mm(length);
  }

  private List<String> hand(Hand hand) {
    List<String> parts = new ArrayList<>();
    parts.add("length " + mm(hand.length()));
    hand.breadth().ifPresent(b -> parts.add("breadth " + mm(b)));
    for (Finger finger : Finger.values()) {
      for (Segment segment : Segment.values()) {
        Hand.Bone bone = new Hand.Bone(finger, segment);
        Optional.ofNullable(hand.bones().get(bone)).ifPresent(l -> parts.add(bone(bone, l)));
      }
      Optional.ofNullable(hand.knuckles().get(finger))
          .ifPresent(k -> parts.add("knuckles " + finger + " " + mm(k)));
      hand.limits()
          .of(finger, Joint.PIP)
          .ifPresent(range -> parts.add(finger + " pip " + range(range)));
    }
    return parts;
  }

  private static String range(FlexionRange range) {
    return number(range.low().degrees()) + " deg to " + number(range.high().degrees()) + " deg";
  }

  private String equipment(Equipment equipment) {
    List<String> parts = new ArrayList<>();
    parts.add("edges " + String.join(", ", equipment.edges().stream().map(this::mm).toList()));
    equipment.added().ifPresent(s -> parts.add("added " + steps(s)));
    equipment.assist().ifPresent(s -> parts.add("assist " + steps(s)));
    return body("equipment", parts);
  }

  private String steps(Equipment.Steps steps) {
    return kg(steps.step()) + " steps to " + kg(steps.limit());
  }

  private String setup(Setup setup) {
    return setup.grip().name() + " " + place(setup.edge(), setup.hands());
  }

  private String place(Length edge, Hands hands) {
    return "edge " + mm(edge) + (hands == Hands.BOTH ? "" : " " + hands.word() + " hand");
  }

  private String log() {
    List<String> lines = new ArrayList<>();
    season.log().entries().forEach(entry -> lines.add(entry.date() + " " + entry(entry)));
    long days = season.log().entries().stream().map(LogEntry::date).distinct().count();
    if (days == lines.size()) {
      order.accept(lines); // entries of one day keep their order
    }
    return body("log ylva", lines);
  }

  private String entry(LogEntry entry) {
    if (entry instanceof LogEntry.Tested tested) {
      return "test " + setup(tested.test().setup()) + " " + result(tested.test().result());
    }
    if (entry instanceof LogEntry.Trained trained) {
      return body("session " + trained.session(), trained.done().stream().map(this::done).toList());
    }
    if (entry instanceof LogEntry.Climbed climbed) {
      return "climbing "
          + climbed.how()
          + " "
          + time(climbed.time())
          + (climbed.effort().isPresent()
              ? " effort " + number(climbed.effort().getAsDouble())
              : "")
          + (climbed.pain().isPresent() ? " pain " + number(climbed.pain().getAsDouble()) : "");
    }
    if (entry instanceof LogEntry.Skipped skipped) {
      return "skipped " + skipped.session();
    }
    if (entry instanceof LogEntry.Pain pain) {
      return "pain "
          + pain.finger()
          + pain.structure().map(s -> " " + s).orElse("")
          + pain.side().map(s -> " " + s).orElse("")
          + " "
          + number(pain.score())
          + (pain.kind() == LogEntry.Pain.Kind.DULL
              ? ""
              : " " + pain.kind().name().toLowerCase(Locale.ROOT));
    }
    return "body-mass " + kg(((LogEntry.BodyMass) entry).mass());
  }

  private String result(StrengthTest.Result result) {
    if (result instanceof StrengthTest.Held held) {
      return "hold " + time(held.hold()) + " load " + kg(held.load());
    }
    if (result instanceof StrengthTest.ToFailure failure) {
      return "to-failure " + kg(failure.load()) + " lasting " + time(failure.lasting());
    }
    StrengthTest.Series series = (StrengthTest.Series) result;
    List<String> means = series.means().stream().map(this::kg).toList();
    String unit = imperial ? " lb" : " kg";
    return "series "
        + means.size()
        + " x "
        + time(series.work())
        + " / "
        + time(series.rest())
        + " mean "
        + String.join(", ", means).replace(unit, "")
        + unit;
  }

  private String done(LogEntry.Done done) {
    return done.protocol()
        + " on "
        + setup(done.setup())
        + ": sets "
        + done.sets().orElseThrow()
        + " of "
        + done.setsPlanned().orElseThrow()
        + ", load "
        + kg(done.load().orElseThrow())
        + ", effort "
        + number(done.effort().orElseThrow())
        + ", pain "
        + number(done.pain().orElseThrow());
  }

  private String plan() {
    Plan plan = season.plan();
    List<String> lines = new ArrayList<>();
    lines.add("for ylva");
    lines.add("from " + plan.from());
    if (!plan.demand().isEmpty()) {
      List<String> shares = new ArrayList<>();
      plan.demand().forEach((grip, share) -> shares.add(grip.name() + " " + percent(share)));
      lines.add("demand " + String.join(", ", shares));
    }
    if (plan.weeklyRise().isPresent()) {
      lines.add("weekly-rise at most " + percent(plan.weeklyRise().getAsDouble()));
    }
    if (!plan.warmUp().equals(Plan.STANDARD_WARM_UP)) {
      lines.add("warm-up " + time(plan.warmUp()));
    }
    for (PlannedTest retest : plan.retests()) {
      lines.add(
          "retest "
              + setup(retest.setups().get(0))
              + " hold "
              + time(retest.kind().holdTime())
              + " every "
              + ((TestTime.Every) retest.times().get(0)).weeks()
              + " weeks");
    }
    List<String> blocks = plan.blocks().stream().map(this::block).toList();
    lines.add(String.join("\n", blocks)); // blocks keep their written order
    order.accept(lines);
    return body("plan season", lines);
  }

  private String block(Block block) {
    List<String> lines = new ArrayList<>();
    block.content().sessions().forEach(s -> lines.add(session(s)));
    block.content().advances().forEach(a -> lines.add(advance(a)));
    block
        .content()
        .eases()
        .forEach(
            e -> lines.add("ease week " + e.week() + " to " + percent(e.setsFraction()) + " sets"));
    for (Block.Introduction i : block.content().introductions()) {
      lines.add(
          "introduce "
              + i.grip().name()
              + " from "
              + percent(i.fromFraction())
              + " max over "
              + i.weeks()
              + " weeks");
    }
    order.accept(lines);
    return body("block " + block.name() + " " + block.weeks() + " weeks", lines);
  }

  private String session(SessionPlan session) {
    List<String> lines = new ArrayList<>();
    session.content().exercises().forEach(e -> lines.add(exercise(e)));
    if (!session.onlyOn().isEmpty()) {
      lines.add(
          "only on " + String.join(", ", session.onlyOn().stream().map(SeasonText::word).toList()));
    }
    if (!session.prefer().isEmpty()) {
      lines.add(
          "prefer " + String.join(", ", session.prefer().stream().map(SeasonText::word).toList()));
    }
    return body(
        "session "
            + session.name()
            + " "
            + session.perWeek()
            + " per week at least "
            + session.gap().toHours()
            + " h apart",
        lines);
  }

  private String exercise(Exercise exercise) {
    List<String> with = new ArrayList<>();
    exercise.with().forEach((name, value) -> with.add(name + " " + value(value)));
    String grips =
        exercise.target() instanceof Exercise.BestOf best
            ? "best of " + String.join(", ", best.grips().stream().map(Grip::name).toList())
            : ((Exercise.On) exercise.target()).grip().name();
    return "do "
        + exercise.protocol().name()
        + (with.isEmpty() ? "" : " with " + String.join(", ", with))
        + " on "
        + grips
        + " "
        + place(exercise.edge(), exercise.hands())
        + (exercise.warmUp() ? " as warm-up" : "")
        + exercise.rehabilitation().map(whose -> " rehabilitation \"" + whose + "\"").orElse("");
  }

  private String value(Argument value) {
    if (value instanceof Argument.Count count) {
      return Integer.toString(count.times());
    }
    if (value instanceof Argument.Time argument) {
      return time(argument.time());
    }
    Level level = ((Argument.AtLevel) value).level();
    if (level instanceof Level.OfMax share) {
      return percent(share.fraction()) + " max";
    }
    if (level instanceof Level.Total total) {
      return kg(total.load());
    }
    if (level instanceof Level.BodyMass body) {
      double added = body.added().kilograms();
      return "body-mass"
          + (added == 0 ? "" : (added > 0 ? " + " : " - ") + kg(Load.ofKilograms(Math.abs(added))));
    }
    return level instanceof Level.Reserve reserve
        ? "reserve " + time(reserve.time())
        : "effort " + number(((Level.Effort) level).outOfTen());
  }

  private String advance(Advance advance) {
    String progress =
        advance
            .then()
            .map(then -> "first " + progress(advance.first()) + " then " + progress(then))
            .orElseGet(() -> progress(advance.first()));
    return "advance " + progress + advance.on().map(grip -> " on " + grip).orElse("");
  }

  private String progress(Advance.Progress progress) {
    return change(progress.change()) + pace(progress.when());
  }

  private String change(Advance.Change change) {
    if (change instanceof Advance.LoadByShare share) {
      return "load " + percent(share.fraction());
    }
    if (change instanceof Advance.LoadBy by) {
      return "load " + kg(by.step());
    }
    if (change instanceof Advance.SetsTo to) {
      return "sets to " + to.limit() + " by " + to.step();
    }
    if (change instanceof Advance.HoldTo to) {
      return "hold to " + time(to.limit()) + " by " + time(to.step());
    }
    Advance.EdgeTo to = (Advance.EdgeTo) change;
    return "edge to " + mm(to.limit()) + " by " + mm(to.step());
  }

  private static String pace(Advance.Pace pace) {
    if (pace instanceof Advance.EveryWeeks every) {
      return every.weeks() == 1 ? " weekly" : " every " + every.weeks() + " weeks";
    }
    Advance.WhenLogged logged = (Advance.WhenLogged) pace;
    List<String> clauses = new ArrayList<>();
    if (logged.doneInFull()) {
      clauses.add("done in full");
    }
    atMost("effort", logged.effortAtMost()).ifPresent(clauses::add);
    atMost("pain", logged.painAtMost()).ifPresent(clauses::add);
    return " when " + String.join(" and ", clauses) + (logged.sessions() == 2 ? " twice" : "");
  }

  private static Optional<String> atMost(String what, OptionalDouble most) {
    return most.isPresent()
        ? Optional.of(what + " at most " + number(most.getAsDouble()))
        : Optional.empty();
  }
}
