package gripwright.language.syntax;

/** {@code rest between exercises 4 min}: the rest from one exercise to the next. */
public record RestBetween(int id, Amount time) implements PlanItem, BlockPart, SessionPart {}
