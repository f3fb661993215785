package gripwright.grip;

import gripwright.ability.Ability;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.util.Collections;
import java.util.Comparator;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What an athlete should bring before training a grip.
 *
 * @param trainedMonths months of structured finger training, 0 or more
 * @param ability least level, if any
 * @param familiar months with other grips, by grip name
 */
public record Prerequisites(
    double trainedMonths, Optional<Ability> ability, Map<String, Double> familiar) {

  /** No prerequisite. */
  public static final Prerequisites NONE = new Prerequisites(0, Optional.empty(), Map.of());

  /**
   * Copies the grips.
   *
   * @throws IllegalArgumentException if months are outside 0 to 1200
   */
  public Prerequisites {
    Objects.requireNonNull(ability, "ability");
    Objects.requireNonNull(familiar, "familiar");
    familiar = Collections.unmodifiableMap(new TreeMap<>(familiar)); // one order, everywhere
    Range.TRAINED.checkIn(Unit.MONTH, trainedMonths);
    familiar.values().forEach(months -> Range.FAMILIAR.checkIn(Unit.MONTH, months));
  }

  /** Returns what both ask for: of each kind the greater. */
  public Prerequisites and(Prerequisites other) {
    Map<String, Double> both = new TreeMap<>(familiar);
    other.familiar.forEach((grip, months) -> both.merge(grip, months, Math::max));
    return new Prerequisites(
        Math.max(trainedMonths, other.trainedMonths),
        Stream.of(ability, other.ability).flatMap(Optional::stream).max(Comparator.naturalOrder()),
        both);
  }

  /** Returns whether there is no prerequisite. */
  public boolean isNone() {
    return equals(NONE);
  }
}
