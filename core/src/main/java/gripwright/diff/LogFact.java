package gripwright.diff;

import gripwright.diff.FactChange.Fact;
import gripwright.finding.Clause;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.LogEntry;
import gripwright.quantity.Numbers;
import gripwright.strength.StrengthTest;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The content of one line of a log.
 *
 * @param fact the kind of fact
 * @param message its content; numbers are rounded to the precision people write
 */
record LogFact(Fact fact, Message message) {

  static final int DECIMALS = 3;

  /** The fact of each kind of line. */
  static final LogEntry.Visitor<LogFact> OF_LINE =
      new LogEntry.Visitor<>() {
        @Override
        public LogFact tested(LogEntry.Tested tested) {
          StrengthTest test = tested.test();
          return new LogFact(
              Fact.TESTS,
              Clause.of("diff.tested", "setup", setup(test.setup()))
                  .with("result", result(test))
                  .with("day", test.date()));
        }

        @Override
        public LogFact trained(LogEntry.Trained trained) {
          String key = trained.done().isEmpty() ? "diff.trained" : "diff.trained-done";
          Clause line = Clause.of(key, "session", trained.session()).with("day", trained.date());
          return new LogFact(
              Fact.TRAINING,
              trained.done().isEmpty()
                  ? line
                  : line.with(
                      "done",
                      Listing.of(
                          Listing.Style.COMMAS,
                          trained.done().stream().map(LogFact::done).toList())));
        }

        @Override
        public LogFact climbed(LogEntry.Climbed climbed) {
          String key = climbed.effort().isPresent() ? "diff.climbed-effort" : "diff.climbed";
          Clause line =
              Clause.of(key, "how", climbed.how())
                  .with("minutes", minutes(climbed.time()))
                  .with("day", climbed.date());
          return new LogFact(
              Fact.TRAINING,
              climbed.effort().isPresent()
                  ? line.with("effort", rounded(climbed.effort().getAsDouble()))
                  : line);
        }

        @Override
        public LogFact skipped(LogEntry.Skipped skipped) {
          return new LogFact(
              Fact.TRAINING,
              Clause.of("diff.skipped", "session", skipped.session()).with("day", skipped.date()));
        }

        @Override
        public LogFact bodyMass(LogEntry.BodyMass mass) {
          return new LogFact(
              Fact.WEIGHED,
              Clause.of("diff.weighed", "mass", mass.mass()).with("day", mass.date()));
        }

        @Override
        public LogFact pain(LogEntry.Pain pain) {
          return new LogFact(
              Fact.PAIN,
              Clause.of(
                      "diff.pain-" + pain.kind().name().toLowerCase(Locale.ROOT),
                      "place",
                      place(pain.finger(), pain.structure(), pain.side()))
                  .with("score", rounded(pain.score()))
                  .with("day", pain.date()));
        }
      };

  /** Returns the result of a test, with the force that a sensor showed. */
  private static Message result(StrengthTest test) {
    Clause result = test.result().accept(RESULT);
    return test.inForce()
        ? Clause.of("diff.in-force", "result", result)
            .with("newtons", Numbers.plain(test.result().greatest().newtons(), 1))
        : result;
  }

  private static final StrengthTest.Result.Visitor<Clause> RESULT =
      new StrengthTest.Result.Visitor<>() {
        @Override
        public Clause held(StrengthTest.Held held) {
          return Clause.of("diff.held", "load", held.load()).with("seconds", seconds(held.hold()));
        }

        @Override
        public Clause toFailure(StrengthTest.ToFailure failure) {
          return Clause.of("diff.failed", "load", failure.load())
              .with("seconds", seconds(failure.lasting()));
        }

        @Override
        public Clause series(StrengthTest.Series series) {
          return Clause.of("diff.series", "count", series.means().size())
              .with("work", seconds(series.work()))
              .with("rest", seconds(series.rest()))
              .with("means", Listing.of(Listing.Style.COMMAS, series.means()));
        }
      };

  /** Returns a setup without the data of its grip, since a changed grip is a change of its own. */
  private static Message setup(Setup setup) {
    return new Clause(setup.key(), setup.arguments());
  }

  /** Returns the work of an exercise, in enough detail to distinguish two lines of a log. */
  private static Message done(LogEntry.Done d) {
    Message done = setup(d.setup());
    if (d.sets().isPresent()) {
      done = Clause.of("diff.done-sets", "done", done).with("sets", d.sets().getAsInt());
    }
    if (d.setsPlanned().isPresent()) {
      done = Clause.of("diff.done-of", "done", done).with("sets", d.setsPlanned().getAsInt());
    }
    if (d.load().isPresent()) {
      done = Clause.of("diff.done-load", "done", done).with("load", d.load().get());
    }
    if (d.effort().isPresent()) {
      done =
          Clause.of("diff.done-effort", "done", done)
              .with("effort", rounded(d.effort().getAsDouble()));
    }
    return d.pain().isPresent()
        ? Clause.of("diff.done-pain", "done", done).with("pain", rounded(d.pain().getAsDouble()))
        : done;
  }

  private static BigDecimal rounded(double score) {
    return Numbers.rounded(score, 2);
  }

  /** Returns a place of pain or injury. */
  static Message place(Finger finger, Optional<Structure> structure, Optional<Side> side) {
    Map<String, Object> arguments = new TreeMap<>();
    arguments.put("finger", finger);
    structure.ifPresent(s -> arguments.put("structure", s));
    side.ifPresent(s -> arguments.put("side", s));
    return new Clause(
        (structure.isPresent() ? "common.place-structure" : "common.place-finger")
            + (side.isPresent() ? "-side" : ""),
        arguments);
  }

  static BigDecimal minutes(Duration time) {
    return Numbers.rounded(time.toNanos() / 60e9, DECIMALS);
  }

  private static BigDecimal seconds(Duration time) {
    return Numbers.rounded(time.toNanos() / 1e9, DECIMALS);
  }
}
