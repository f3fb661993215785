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
 * Checks a log. Each line stands for itself: one with a mistake is left out and the others are
 * kept, since a log is a record of what happened.
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
   * What came of a log.
   *
   * @param log its lines that are in order
   * @param settled false if a test is missing for a mistake that was reported
   */
  record Result(CheckedLog log, boolean settled) {}

  /** Returns the lines that are in order; empty if the athlete is not known. */
  static Optional<Result> check(
      Declared<Declaration.Log> declared, Tables tables, List<LocatedFinding> findings) {
    return new LogCheck(declared, tables, findings).check();
  }

  private Optional<Result> check() {
    Ledger header = new Ledger(declared, place, findings);
    Word athlete = declared.name();
    boolean known = tables.athletes().declares(header, athlete);
    List<Line> lines = new ArrayList<>();
    for (LogLine line : declared.declaration().lines()) {
      Ledger ledger = new Ledger(declared, place, findings);
      Optional<LogEntry> entry = entry(ledger, line);
      if (entry.isPresent() && ledger.sound()) {
        lines.add(new Line(entry.get(), new Source(declared.file().source(), declared.span(line))));
      } else if (line instanceof LogLine.TestLine) {
        settled = false;
      }
    }
    return known
        ? Optional.of(new Result(new CheckedLog(athlete.text(), lines), settled))
        : Optional.empty();
  }

  private Optional<LogEntry> entry(Ledger ledger, LogLine line) {
    Amounts amounts = new Amounts(ledger);
    Optional<LocalDate> date = amounts.date(line.date());
    if (line instanceof LogLine.TestLine test) {
      return test(ledger, test, date);
    }
    if (line instanceof LogLine.SessionLine session) {
      // A done line with a mistake loses itself and nothing else.
      List<LogEntry.Done> done = new ArrayList<>();
      for (var written : session.done()) {
        new DoneCheck(new Ledger(declared, place, findings), tables)
            .check(written)
            .ifPresent(done::add);
      }
      return date.map(
          day ->
              new LogEntry.Trained(
                  day, session.name().text(), done, AthleteCheck.note(session.note())));
    }
    if (line instanceof LogLine.ClimbingLine climbing) {
      return climbed(ledger, climbing, date);
    }
    if (line instanceof LogLine.SkippedLine skipped) {
      return date.map(
          day ->
              new LogEntry.Skipped(
                  day, skipped.session().text(), AthleteCheck.note(skipped.note())));
    }
    if (line instanceof LogLine.BodyMassLine mass) {
      return amounts
          .load(mass.mass(), Slot.BODY_MASS)
          .flatMap(load -> date.map(day -> new LogEntry.BodyMass(day, load)));
    }
    return pain(ledger, (LogLine.PainLine) line, date);
  }

  private Optional<LogEntry> test(Ledger ledger, LogLine.TestLine test, Optional<LocalDate> date) {
    Optional<Grip> grip = tables.grips().find(ledger, test.grip());
    Optional<SetupCheck.Place> setup = SetupCheck.check(ledger, test.setup());
    Optional<StrengthTest.Result> result = new TestCheck(ledger).check(test.result());
    if (date.isEmpty() || grip.isEmpty() || setup.isEmpty() || result.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new LogEntry.Tested(
            new StrengthTest(date.get(), setup.get().with(grip.get()), result.get()),
            AthleteCheck.note(test.note())));
  }

  private static Optional<LogEntry> climbed(
      Ledger ledger, LogLine.ClimbingLine line, Optional<LocalDate> date) {
    Amounts amounts = new Amounts(ledger);
    Optional<Words.Climbing> how = new Words(ledger).climbing(line.how());
    Optional<Duration> time = amounts.time(line.time(), Slot.CLIMBING);
    OptionalDouble effort = score(amounts, line.effort(), Slot.EFFORT);
    OptionalDouble pain = score(amounts, line.pain(), Slot.PAIN);
    if (date.isEmpty() || how.isEmpty() || time.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new LogEntry.Climbed(
            date.get(),
            how.get().hard(),
            line.how().text(),
            time.get(),
            effort,
            pain,
            AthleteCheck.note(line.note())));
  }

  /** Returns a score; empty where none is written, and where a wrong one was reported. */
  static OptionalDouble score(Amounts amounts, @Nullable Amount amount, Slot slot) {
    if (amount == null) {
      return OptionalDouble.empty();
    }
    return amounts.base(amount, slot).map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private static Optional<LogEntry> pain(
      Ledger ledger, LogLine.PainLine line, Optional<LocalDate> date) {
    Words words = new Words(ledger);
    Optional<Finger> finger = words.finger(line.finger());
    Word structureWord = line.structure();
    Optional<Structure> structure =
        structureWord == null ? Optional.empty() : words.structure(structureWord);
    var side = words.side(line.side());
    OptionalDouble score = score(new Amounts(ledger), line.score(), Slot.PAIN);
    Word kindWord = line.kind();
    Optional<Kind> kind = Optional.of(Kind.DULL);
    if (kindWord != null) {
      kind =
          ledger.word(
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
        new LogEntry.Pain(
            date.get(),
            finger.get(),
            structure,
            side,
            score.getAsDouble(),
            kind.get(),
            AthleteCheck.note(line.note())));
  }
}
