package gripwright.language.check;

import gripwright.grip.Grip;
import gripwright.hand.Hands;
import gripwright.language.syntax.Setup;
import gripwright.quantity.Length;
import java.util.Optional;

/** Checks the setup of a grip: edge, hands, hanging or lifting. */
final class SetupCheck {

  private SetupCheck() {}

  /** A setup without its grip. */
  record Place(Length edge, Hands hands, boolean lifting) {
    gripwright.grip.Setup with(Grip grip) {
      return new gripwright.grip.Setup(grip, edge, hands, lifting);
    }
  }

  static Optional<Place> check(Diagnostics diagnostics, Setup setup) {
    Optional<Length> edge = new Amounts(diagnostics).length(setup.edge(), Slot.EDGE);
    Optional<Hands> hands = new Words(diagnostics).hands(setup.hand());
    return edge.isPresent() && hands.isPresent()
        ? Optional.of(new Place(edge.get(), hands.get(), setup.lifting()))
        : Optional.empty();
  }
}
