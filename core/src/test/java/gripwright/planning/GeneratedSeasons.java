package gripwright.planning;

import java.time.LocalDate;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.RandomGenerator;
import net.jqwik.api.Shrinkable;
import net.jqwik.api.ShrinkingDistance;
import net.jqwik.api.providers.ArbitraryProvider;
import net.jqwik.api.providers.TypeUsage;

/**
 * Generates whole seasons: an athlete, what is known of them, and a plan of 2 to 8 weeks. Most are
 * what a careful coach would write; the others break something.
 */
public final class GeneratedSeasons implements ArbitraryProvider {

  /** Of 100 seasons, so many are written without care. */
  private static final int CARELESS = 20;

  @Override
  public boolean canProvideFor(TypeUsage type) {
    return type.isOfType(GeneratedSeason.class);
  }

  @Override
  public Set<Arbitrary<?>> provideFor(TypeUsage type, SubtypeProvider subtypes) {
    return Set.of(seasons());
  }

  /** Returns seasons that shrink by leaving things out. */
  public static Arbitrary<GeneratedSeason> seasons() {
    RandomGenerator<GeneratedSeason> generator = random -> new Drawn(season(random));
    return Arbitraries.fromGenerator(generator);
  }

  private static GeneratedSeason season(Random random) {
    Draw draw = new Draw(random);
    boolean careful = !draw.chance(CARELESS);
    LocalDate from = LocalDate.of(2026, 12, 20).plusDays(draw.between(0, 1500));
    Trainee trainee = Trainee.draw(draw, from, careful);
    SeasonPlan plan = new SeasonPlan(draw, from, careful, trainee);
    gripwright.plan.Plan written = plan.write();
    return new GeneratedSeason(
        trainee.athlete(), new SeasonLog(draw, from, careful, trainee).write(written), written);
  }

  /** A season that was drawn, with all that are simpler. */
  private record Drawn(GeneratedSeason value) implements Shrinkable<GeneratedSeason> {
    @Override
    public Stream<Shrinkable<GeneratedSeason>> shrink() {
      return value.simpler().map(Drawn::new);
    }

    @Override
    public ShrinkingDistance distance() {
      return ShrinkingDistance.of(value.size());
    }
  }
}
