package gripwright.language.check;

import gripwright.grip.Grip;
import gripwright.hand.Hands;
import gripwright.language.syntax.Setup;
import gripwright.quantity.Length;
import java.util.Optional;

/** Checks how a grip is set up: the edge, the hands, hanging or lifting. */
final class SetupCheck {

  private SetupCheck() {}

  /** A setup without its grip. */
  record Place(Length edge, Hands hands, boolean lifting) {
    gripwright.grip.Setup with(Grip grip) {
      return new gripwright.grip.Setup(grip, edge, hands, lifting);
    }
  }

  static Optional<Place> check(Ledger ledger, Setup setup) {
    Optional<Length> edge = new Amounts(ledger).length(setup.edge(), Slot.EDGE);
    Optional<Hands> hands = new Words(ledger).hands(setup.hand());
    return edge.isPresent() && hands.isPresent()
        ? Optional.of(new Place(edge.get(), hands.get(), setup.lifting()))
        : Optional.empty();
  }
}
