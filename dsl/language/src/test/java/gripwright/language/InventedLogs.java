package gripwright.language;

import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;

/** Logs with every kind of line. */
final class InventedLogs {

  private final Random random;
  private final Inventions inventions;

  InventedLogs(Random random) {
    this.random = random;
    this.inventions = new Inventions(random);
  }

  Log log(String athlete, Setup setup) {
    Log log = Log.empty(athlete);
    for (int i = random.nextInt(8); i >= 0; i--) {
      // A duplicate line counts once, so every entry has a day of its own.
      log = log.with(entry(setup, Inventions.DAY.minusDays(20L * i + random.nextInt(20))));
    }
    return log;
  }

  private OptionalDouble score() {
    return inventions.sometimes()
        ? OptionalDouble.of(inventions.tenths(0, 10))
        : OptionalDouble.empty();
  }

  private LogEntry tested(Setup setup, LocalDate day, Load load) {
    boolean force = inventions.sometimes();
    Load measured = force ? Load.ofKilograms((100 + random.nextInt(9000)) / 10.0 / 9.80665) : load;
    return new LogEntry.Tested(
        new StrengthTest(day, setup, result(measured, force ? measured : load.times(0.9)), force),
        inventions.text());
  }

  private LogEntry entry(Setup setup, LocalDate day) {
    Load load = Load.ofKilograms(inventions.anyOf(20, 90));
    return switch (random.nextInt(6)) {
      case 0 -> tested(setup, day, load);
      case 1 ->
          new LogEntry.Trained(
              day,
              "s",
              List.of(
                  LogEntry.Done.builder("max-holds", setup)
                      .sets(3)
                      .setsPlanned(inventions.sometimes() ? OptionalInt.of(4) : OptionalInt.empty())
                      .load(inventions.sometimes() ? Optional.of(load) : Optional.empty())
                      .effort(score())
                      .pain(score())
                      .build()),
              inventions.text());
      case 2 ->
          LogEntry.Climbed.builder(day, true, "hard", Duration.ofMinutes(90))
              .effort(score())
              .pain(score())
              .note(inventions.text())
              .build();
      case 3 -> new LogEntry.Skipped(day, "s", inventions.text());
      case 4 -> new LogEntry.BodyMass(day, load);
      default ->
          LogEntry.Pain.builder(day, inventions.one(Finger.values()), inventions.tenths(0, 10))
              .structure(
                  inventions.sometimes()
                      ? Optional.of(inventions.one(Structure.values()))
                      : Optional.empty())
              .side(
                  inventions.sometimes()
                      ? Optional.of(inventions.one(Side.values()))
                      : Optional.empty())
              .kind(inventions.one(LogEntry.Pain.Kind.values()))
              .note(inventions.text())
              .build();
    };
  }

  private StrengthTest.Result result(Load load, Load last) {
    return switch (random.nextInt(3)) {
      case 0 -> new StrengthTest.Held(inventions.time(5, 10), load);
      case 1 -> new StrengthTest.ToFailure(load, inventions.time(20, 90));
      default ->
          new StrengthTest.Series(
              Duration.ofSeconds(7), Duration.ofSeconds(3), List.of(load, load, last));
    };
  }
}
