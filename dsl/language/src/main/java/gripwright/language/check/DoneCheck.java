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

/** Checks what is noted about one exercise of a logged session. */
final class DoneCheck {

  private final Ledger ledger;
  private final Amounts amounts;
  private final Tables tables;
  private OptionalInt sets = OptionalInt.empty();
  private OptionalInt asked = OptionalInt.empty();
  private Optional<Load> load = Optional.empty();
  private OptionalDouble effort = OptionalDouble.empty();
  private OptionalDouble pain = OptionalDouble.empty();

  DoneCheck(Ledger ledger, Tables tables) {
    this.ledger = ledger;
    this.amounts = new Amounts(ledger);
    this.tables = tables;
  }

  Optional<Done> check(DoneLine line) {
    tables.protocols().find(ledger, line.protocol());
    Optional<Grip> grip = tables.grips().find(ledger, line.grip());
    Optional<SetupCheck.Place> setup = SetupCheck.check(ledger, line.setup());
    Once once = new Once(ledger);
    line.parts().forEach(part -> part(part, once));
    if (!ledger.sound() || grip.isEmpty() || setup.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Done(
            line.protocol().text(), setup.get().with(grip.get()), sets, asked, load, effort, pain));
  }

  private void part(DonePart part, Once once) {
    if (part instanceof DonePart.SetsDone done) {
      once.first(done, "sets");
      sets = count(done.done(), Slot.SETS);
      Amount of = done.of();
      if (of != null) {
        asked = count(of, Slot.REPEATS);
      }
    } else if (part instanceof DonePart.LoadDone done) {
      once.first(done, "load");
      load = amounts.load(done.load(), Slot.LOAD);
    } else if (part instanceof DonePart.EffortDone done) {
      once.first(done, "effort");
      effort = LogCheck.score(amounts, done.effort(), Slot.EFFORT);
    } else if (part instanceof DonePart.PainDone done) {
      once.first(done, "pain");
      pain = LogCheck.score(amounts, done.pain(), Slot.PAIN);
    }
  }

  private OptionalInt count(Amount amount, Slot slot) {
    return amounts.count(amount, slot).map(OptionalInt::of).orElse(OptionalInt.empty());
  }
}
