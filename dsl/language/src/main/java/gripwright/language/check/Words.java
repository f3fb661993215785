package gripwright.language.check;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.finding.Listing;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.Word;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads words of fixed lists: fingers, sides, weekdays, grades. */
final class Words {

  private static final List<String> WEEKDAYS =
      Arrays.stream(DayOfWeek.values()).map(Words::shortName).toList();
  private static final List<String> SCALES =
      Arrays.stream(GradeScale.values()).map(GradeScale::word).toList();

  private final Diagnostics diagnostics;

  Words(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  /** How hard climbing is on the fingers. */
  enum Climbing {
    EASY,
    MODERATE,
    HARD;

    /** Returns whether the day counts as hard. */
    boolean hard() {
      return this == HARD;
    }

    static Optional<Climbing> parse(String word) {
      return Arrays.stream(values()).filter(c -> c.toString().equals(word)).findFirst();
    }

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private static String shortName(DayOfWeek day) {
    return day.name().substring(0, 3).toLowerCase(Locale.ROOT);
  }

  Optional<DayOfWeek> weekday(Word word) {
    return diagnostics.word(
        word,
        "weekday",
        text ->
            WEEKDAYS.contains(text)
                ? Optional.of(DayOfWeek.of(WEEKDAYS.indexOf(text) + 1))
                : Optional.empty(),
        WEEKDAYS);
  }

  Optional<Finger> finger(Word word) {
    return diagnostics.word(word, "finger", Finger::parse, Diagnostics.words(Finger.values()));
  }

  Optional<Structure> structure(Word word) {
    return diagnostics.word(
        word, "structure-of-a-finger", Structure::parse, Diagnostics.words(Structure.values()));
  }

  Optional<Climbing> climbing(Word word) {
    return diagnostics.word(
        word, "kind-of-climbing", Climbing::parse, Diagnostics.words(Climbing.values()));
  }

  /** Returns a side; empty without a finding if none is written. */
  Optional<Side> side(@Nullable Word word) {
    return word == null
        ? Optional.empty()
        : diagnostics.word(word, "side", Side::parse, Diagnostics.words(Side.values()));
  }

  /** Returns the hands of a setup; both if none is written. */
  Optional<Hands> hands(@Nullable Word word) {
    return word == null
        ? Optional.of(Hands.BOTH)
        : side(word).map(side -> side == Side.LEFT ? Hands.LEFT : Hands.RIGHT);
  }

  /** Returns a grade. */
  Optional<Ability> ability(Expr.GradeLiteral grade) {
    Optional<GradeScale> scale =
        diagnostics.word(grade.scale(), "scale", GradeScale::parse, SCALES);
    if (scale.isEmpty()) {
      return Optional.empty();
    }
    String written = grade.grade().text();
    Optional<Ability> ability = Ability.find(scale.get(), written);
    if (ability.isEmpty()) {
      diagnostics.error(
          grade.grade(),
          "value.grade",
          "scale",
          scale.get().word(),
          "grade",
          written,
          "near",
          Listing.of(Listing.Style.COMMAS, Ability.near(scale.get(), written)));
    }
    return ability;
  }
}
