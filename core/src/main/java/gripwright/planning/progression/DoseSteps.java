package gripwright.planning.progression;

import gripwright.plan.Advance;
import gripwright.planning.load.Dose;
import gripwright.protocol.Scheme;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.Derivation;
import gripwright.schedule.ProgressLink;
import java.time.Duration;
import java.util.List;

/** Applies steps of one change to a dose: load, sets, hold time or edge depth. */
final class DoseSteps {

  private DoseSteps() {}

  /** Returns how many steps a variable can still take from a dose. */
  static int toLimit(Advance.Change change, Dose dose) {
    return change.accept(new StepsToLimit(dose));
  }

  private record StepsToLimit(Dose dose) implements Advance.Change.Visitor<Integer> {
    @Override
    public Integer loadByShare(Advance.LoadByShare load) {
      return Integer.MAX_VALUE;
    }

    @Override
    public Integer loadBy(Advance.LoadBy load) {
      return Integer.MAX_VALUE;
    }

    @Override
    public Integer setsTo(Advance.SetsTo sets) {
      return stepsBetween(sets.limit() - dose.scheme().sets(), sets.step());
    }

    @Override
    public Integer holdTo(Advance.HoldTo hold) {
      Duration longest =
          dose.scheme().written().stream()
              .map(Scheme.Hold::time)
              .max(Duration::compareTo)
              .orElse(Duration.ZERO);
      return stepsBetween(hold.limit().minus(longest).toNanos() / 1e9, hold.step().toNanos() / 1e9);
    }

    @Override
    public Integer edgeTo(Advance.EdgeTo edge) {
      return stepsBetween(
          dose.edge().millimetres() - edge.limit().millimetres(), edge.step().millimetres());
    }
  }

  private static int stepsBetween(double distance, double step) {
    return distance <= 0 ? 0 : (int) Math.ceil(distance / step - 1e-9);
  }

  /**
   * Returns a dose after steps of a change, up to its limit.
   *
   * @param why receives the changes
   */
  static Dose changed(Dose dose, Advance.Change change, int earned, List<Derivation> why) {
    int steps = Math.min(earned, toLimit(change, dose));
    if (steps <= 0) {
      return dose;
    }
    return change.accept(new Changed(dose, steps, why));
  }

  private record Changed(Dose dose, int steps, List<Derivation> why)
      implements Advance.Change.Visitor<Dose> {
    @Override
    public Dose loadByShare(Advance.LoadByShare share) {
      why.add(new ProgressLink.LoadShare(steps, share.fraction()));
      return dose.scaled(Math.pow(1 + share.fraction(), steps));
    }

    @Override
    public Dose loadBy(Advance.LoadBy by) {
      why.add(new ProgressLink.LoadStep(steps, by.step()));
      return dose.heavierBy(Load.ofKilograms(by.step().kilograms() * steps));
    }

    @Override
    public Dose setsTo(Advance.SetsTo to) {
      int sets = Math.min(to.limit(), dose.scheme().sets() + steps * to.step());
      why.add(new ProgressLink.Sets(steps, to.step(), sets));
      return dose.with(dose.scheme().withSets(sets));
    }

    @Override
    public Dose holdTo(Advance.HoldTo to) {
      Duration more = to.step().multipliedBy(steps);
      Scheme scheme = dose.scheme().mapHolds(h -> h.lasting(longer(h.time(), more, to)));
      why.add(
          new ProgressLink.Hold(
              steps, to.step().toNanos() / 1e9, scheme.written().get(0).seconds()));
      return dose.with(scheme);
    }

    @Override
    public Dose edgeTo(Advance.EdgeTo to) {
      Length depth =
          Length.ofMillimetres(
              Math.max(
                  to.limit().millimetres(),
                  dose.edge().millimetres() - steps * to.step().millimetres()));
      why.add(new ProgressLink.Edge(steps, to.step(), depth));
      return dose.on(depth);
    }
  }

  private static Duration longer(Duration time, Duration more, Advance.HoldTo to) {
    Duration wanted = time.plus(more);
    if (wanted.compareTo(to.limit()) <= 0) {
      return wanted;
    }
    return time.compareTo(to.limit()) > 0 ? time : to.limit();
  }
}
