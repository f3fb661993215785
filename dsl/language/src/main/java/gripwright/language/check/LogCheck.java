package gripwright.language.check;

import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.hand.Finger;
import gripwright.hand.Structure;
import gripwright.language.check.Checked.CheckedLog;
import gripwright.language.check.Checked.Line;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Declared;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.DateText;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.LogLine;
import gripwright.language.syntax.Word;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Pain.Kind;
import gripwright.strength.StrengthTest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Checks a log. Lines are independent: one with a mistake is left out and the others are kept,
 * because a log is a record of past training.
 */
final class LogCheck {

  private static final List<String> PAIN_KINDS = List.of("sharp", "sudden");

  private final Declared<Declaration.Log> declared;
  private final Tables tables;
  private final List<LocatedFinding> findings;
  private final ModelPath place;
  private boolean settled;

  private LogCheck(
      Declared<Declaration.Log> declared, Tables tables, List<LocatedFinding> findings) {
    this.declared = declared;
    this.tables = tables;
    this.findings = findings;
    this.place = ModelPath.of("log", declared.name().text());
    this.settled = !declared.declaration().damaged();
  }

  /**
   * A checked log.
   *
   * @param log its valid lines
   * @param settled false if a test is missing because of a reported mistake
   */
  record Result(CheckedLog log, boolean settled) {}

  /** Returns the valid lines; empty if the athlete is unknown. */
  static Optional<Result> check(
      Declared<Declaration.Log> declared, Tables tables, List<LocatedFinding> findings) {
    return new LogCheck(declared, tables, findings).check();
  }

  private Optional<Result> check() {
    Diagnostics header = new Diagnostics(declared, place, findings);
    Word athlete = declared.name();
    boolean known = tables.athletes().declares(header, athlete);
    List<Line> lines = new ArrayList<>();
    for (LogLine line : declared.declaration().lines()) {
      Diagnostics diagnostics = new Diagnostics(declared, place, findings);
      Optional<LogEntry> entry = line.accept(new Lines(diagnostics, line.date()));
      if (entry.isPresent() && diagnostics.sound()) {
        lines.add(new Line(entry.get(), new Source(declared.file().source(), declared.span(line))));
      } else if (line instanceof LogLine.TestLine) {
        settled = false;
      }
    }
    return known
        ? Optional.of(new Result(new CheckedLog(athlete.text(), lines), settled))
        : Optional.empty();
  }

  /** Returns a score; empty if none is written, or a wrong one was reported. */
  static OptionalDouble score(Amounts amounts, @Nullable Amount amount, Slot slot) {
    if (amount == null) {
      return OptionalDouble.empty();
    }
    return amounts.base(amount, slot).map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  /** Builds the entry of each kind of line. */
  private final class Lines implements LogLine.Visitor<Optional<LogEntry>> {
    private final Diagnostics diagnostics;
    private final Amounts amounts;
    private final Optional<LocalDate> date;

    Lines(Diagnostics diagnostics, DateText date) {
      this.diagnostics = diagnostics;
      this.amounts = new Amounts(diagnostics);
      this.date = amounts.date(date);
    }

    @Override
    public Optional<LogEntry> testLine(LogLine.TestLine test) {
      Optional<Grip> grip = tables.grips().find(diagnostics, test.grip());
      Optional<SetupCheck.Place> setup = SetupCheck.check(diagnostics, test.setup());
      Optional<StrengthTest.Result> result = test.result().accept(new TestCheck(diagnostics));
      if (date.isEmpty() || grip.isEmpty() || setup.isEmpty() || result.isEmpty()) {
        return Optional.empty();
      }
      return Optional.of(
          new LogEntry.Tested(
              new StrengthTest(
                  date.get(),
                  setup.get().with(grip.get()),
                  result.get(),
                  TestCheck.isInForce(test.result())),
              AthleteCheck.note(test.note())));
    }

    @Override
    public Optional<LogEntry> sessionLine(LogLine.SessionLine session) {
      // A done line with a mistake is left out; the rest of the session is kept.
      List<LogEntry.Done> done = new ArrayList<>();
      for (var written : session.done()) {
        new DoneCheck(new Diagnostics(declared, place, findings), tables)
            .check(written)
            .ifPresent(done::add);
      }
      return date.map(
          day ->
              new LogEntry.Trained(
                  day, session.name().text(), done, AthleteCheck.note(session.note())));
    }

    @Override
    public Optional<LogEntry> climbingLine(LogLine.ClimbingLine line) {
      Optional<Words.Climbing> how = new Words(diagnostics).climbing(line.how());
      Optional<Duration> time = amounts.time(line.time(), Slot.CLIMBING);
      OptionalDouble effort = score(amounts, line.effort(), Slot.EFFORT);
      OptionalDouble pain = score(amounts, line.pain(), Slot.PAIN);
      if (date.isEmpty() || how.isEmpty() || time.isEmpty()) {
        return Optional.empty();
      }
      return Optional.of(
          LogEntry.Climbed.builder(date.get(), how.get().hard(), line.how().text(), time.get())
              .effort(effort)
              .pain(pain)
              .note(AthleteCheck.note(line.note()))
              .build());
    }

    @Override
    public Optional<LogEntry> skippedLine(LogLine.SkippedLine skipped) {
      return date.map(
          day ->
              new LogEntry.Skipped(
                  day, skipped.session().text(), AthleteCheck.note(skipped.note())));
    }

    @Override
    public Optional<LogEntry> bodyMassLine(LogLine.BodyMassLine mass) {
      return amounts
          .load(mass.mass(), Slot.BODY_MASS)
          .flatMap(load -> date.map(day -> new LogEntry.BodyMass(day, load)));
    }

    @Override
    public Optional<LogEntry> painLine(LogLine.PainLine line) {
      Words words = new Words(diagnostics);
      Optional<Finger> finger = words.finger(line.finger());
      Word structureWord = line.structure();
      Optional<Structure> structure =
          structureWord == null ? Optional.empty() : words.structure(structureWord);
      var side = words.side(line.side());
      OptionalDouble score = score(amounts, line.score(), Slot.PAIN);
      Word kindWord = line.kind();
      Optional<Kind> kind = Optional.of(Kind.DULL);
      if (kindWord != null) {
        kind =
            diagnostics.word(
                kindWord,
                "kind-of-pain",
                text ->
                    PAIN_KINDS.contains(text)
                        ? Optional.of(Kind.valueOf(text.toUpperCase(Locale.ROOT)))
                        : Optional.empty(),
                PAIN_KINDS);
      }
      if (date.isEmpty() || finger.isEmpty() || score.isEmpty() || kind.isEmpty()) {
        return Optional.empty();
      }
      return Optional.of(
          LogEntry.Pain.builder(date.get(), finger.get(), score.getAsDouble())
              .structure(structure)
              .side(side)
              .kind(kind.get())
              .note(AthleteCheck.note(line.note()))
              .build());
    }
  }
}
