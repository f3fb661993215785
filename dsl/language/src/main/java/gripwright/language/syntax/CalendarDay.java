package gripwright.language.syntax;

import org.jspecify.annotations.Nullable;

/** A weekday or a date; the other one is null. */
public record CalendarDay(int id, @Nullable Word weekday, @Nullable DateText date)
    implements Syntax {}
