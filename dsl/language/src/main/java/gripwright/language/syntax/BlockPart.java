package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A statement of a block. */
public sealed interface BlockPart extends Syntax
    permits Note,
        WarmUp,
        RestBetween,
        Weigh,
        BlockPart.SessionItem,
        BlockPart.AdvanceItem,
        BlockPart.EaseItem,
        BlockPart.IntroduceItem,
        BlockPart.BlockOnlyFor {

  /** {@code session NAME 2 per week at least 48 h apart { ... }}. */
  record SessionItem(
      int id,
      Word name,
      Amount perWeek,
      @Nullable Amount apart,
      List<SessionPart> parts,
      boolean damaged)
      implements BlockPart {
    /** Copies the lists. */
    public SessionItem {
      parts = List.copyOf(parts);
    }
  }

  /** {@code advance load 2 % weekly}: what grows, what grows after that, and on which grip only. */
  record AdvanceItem(int id, Progress first, @Nullable Progress then, @Nullable Word on)
      implements BlockPart {}

  /** {@code ease week 4 to 60 % sets}: weeks with less work. */
  record EaseItem(int id, List<Amount> weeks, Amount share) implements BlockPart {
    /** Copies the lists. */
    public EaseItem {
      weeks = List.copyOf(weeks);
    }
  }

  /** {@code introduce GRIP from 50 % max over 3 weeks}: a ramp for a new grip. */
  record IntroduceItem(int id, Word grip, Expr from, Amount over) implements BlockPart {}

  /** {@code only for NAME { ... }}: what differs for some athletes of the plan. */
  record BlockOnlyFor(int id, List<Word> athletes, List<BlockPart> parts, boolean damaged)
      implements BlockPart {
    /** Copies the lists. */
    public BlockOnlyFor {
      athletes = List.copyOf(athletes);
      parts = List.copyOf(parts);
    }
  }
}
