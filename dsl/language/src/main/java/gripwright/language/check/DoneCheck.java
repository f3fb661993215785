package gripwright.language.check;

import gripwright.grip.Grip;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.DoneLine;
import gripwright.language.syntax.DonePart;
import gripwright.log.LogEntry.Done;
import gripwright.quantity.Load;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Checks the log entry of one exercise of a session. */
final class DoneCheck {

  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Tables tables;
  private OptionalInt sets = OptionalInt.empty();
  private OptionalInt planned = OptionalInt.empty();
  private Optional<Load> load = Optional.empty();
  private OptionalDouble effort = OptionalDouble.empty();
  private OptionalDouble pain = OptionalDouble.empty();

  DoneCheck(Diagnostics diagnostics, Tables tables) {
    this.diagnostics = diagnostics;
    this.amounts = new Amounts(diagnostics);
    this.tables = tables;
  }

  Optional<Done> check(DoneLine line) {
    tables.protocols().find(diagnostics, line.protocol());
    Optional<Grip> grip = tables.grips().find(diagnostics, line.grip());
    Optional<SetupCheck.Place> setup = SetupCheck.check(diagnostics, line.setup());
    Parts parts = new Parts();
    line.parts().forEach(part -> part.accept(parts));
    if (!diagnostics.sound() || grip.isEmpty() || setup.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Done.builder(line.protocol().text(), setup.get().with(grip.get()))
            .sets(sets)
            .setsPlanned(planned)
            .load(load)
            .effort(effort)
            .pain(pain)
            .build());
  }

  /** Checks each part of the line. */
  private final class Parts implements DonePart.Visitor {
    private final Once once = new Once(diagnostics);

    @Override
    public void setsDone(DonePart.SetsDone done) {
      once.first(done, "sets");
      sets = count(done.done(), Slot.SETS);
      Amount of = done.of();
      if (of != null) {
        planned = count(of, Slot.REPEATS);
      }
    }

    @Override
    public void loadDone(DonePart.LoadDone done) {
      once.first(done, "load");
      load = amounts.load(done.load(), Slot.LOAD);
    }

    @Override
    public void effortDone(DonePart.EffortDone done) {
      once.first(done, "effort");
      effort = LogCheck.score(amounts, done.effort(), Slot.EFFORT);
    }

    @Override
    public void painDone(DonePart.PainDone done) {
      once.first(done, "pain");
      pain = LogCheck.score(amounts, done.pain(), Slot.PAIN);
    }
  }

  private OptionalInt count(Amount amount, Slot slot) {
    return amounts.count(amount, slot).map(OptionalInt::of).orElse(OptionalInt.empty());
  }
}
