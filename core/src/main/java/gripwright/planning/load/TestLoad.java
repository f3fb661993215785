package gripwright.planning.load;

import gripwright.protocol.Level;
import gripwright.quantity.Load;
import java.util.Optional;

/**
 * The load of a test to failure, before it is rounded to the equipment.
 *
 * @param maximum the maximum that counts, if it is known
 * @param test the load of the latest test of exactly this setup, if there is one
 * @param mass body mass, 0 if a weight is lifted
 */
record TestLoad(Optional<Load> maximum, Optional<Load> test, Load mass)
    implements Level.Visitor<Optional<Load>> {

  @Override
  public Optional<Load> ofMax(Level.OfMax level) {
    return maximum.map(load -> load.times(level.fraction()));
  }

  @Override
  public Optional<Load> ofTest(Level.OfTest level) {
    return test.map(load -> load.times(level.fraction()));
  }

  @Override
  public Optional<Load> total(Level.Total level) {
    return Optional.of(level.load());
  }

  @Override
  public Optional<Load> bodyMass(Level.BodyMass level) {
    return Optional.of(mass.plus(level.added()));
  }

  @Override
  public Optional<Load> reserve(Level.Reserve level) {
    return Optional.empty(); // no load of a test follows from its time
  }

  @Override
  public Optional<Load> effort(Level.Effort level) {
    return Optional.empty(); // the same
  }
}
