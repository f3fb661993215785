package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A statement of a block. */
public sealed interface BlockPart extends Syntax
    permits Note,
        DefaultItem,
        BlockPart.SessionItem,
        BlockPart.AdvanceItem,
        BlockPart.EaseItem,
        BlockPart.IntroduceItem,
        BlockPart.BlockOnlyFor,
        BlockPart.NoTraining {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement of a block. */
  interface Visitor {
    /** Visits a note. */
    void note(Note part);

    /** Visits a default for all sessions inside. */
    void defaultItem(DefaultItem part);

    /** Visits a session. */
    void sessionItem(SessionItem part);

    /** Visits an advance. */
    void advanceItem(AdvanceItem part);

    /** Visits weeks with less work. */
    void easeItem(EaseItem part);

    /** Visits a ramp for a new grip. */
    void introduceItem(IntroduceItem part);

    /** Visits the statement that a block is empty on purpose. */
    void noTraining(NoTraining part);

    /** Visits content for some athletes. */
    void blockOnlyFor(BlockOnlyFor part);
  }

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

    @Override
    public void accept(Visitor visitor) {
      visitor.sessionItem(this);
    }
  }

  /**
   * {@code advance load 2 % weekly}: what increases, what increases after that, and for which grip.
   */
  record AdvanceItem(int id, Progress first, @Nullable Progress then, @Nullable Word on)
      implements BlockPart {
    @Override
    public void accept(Visitor visitor) {
      visitor.advanceItem(this);
    }
  }

  /** {@code ease week 4 to 60 % sets}: weeks with less work. */
  record EaseItem(int id, List<Amount> weeks, Amount share) implements BlockPart {
    /** Copies the lists. */
    public EaseItem {
      weeks = List.copyOf(weeks);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.easeItem(this);
    }
  }

  /** {@code introduce GRIP from 50 % max over 3 weeks}: a ramp for a new grip. */
  record IntroduceItem(int id, Word grip, Expr from, Amount over) implements BlockPart {
    @Override
    public void accept(Visitor visitor) {
      visitor.introduceItem(this);
    }
  }

  /** {@code no training}: the block is empty on purpose. */
  record NoTraining(int id) implements BlockPart {
    @Override
    public void accept(Visitor visitor) {
      visitor.noTraining(this);
    }
  }

  /** {@code only for NAME { ... }}: what differs for some athletes of the plan. */
  record BlockOnlyFor(int id, List<Word> athletes, List<BlockPart> parts, boolean damaged)
      implements BlockPart {
    /** Copies the lists. */
    public BlockOnlyFor {
      athletes = List.copyOf(athletes);
      parts = List.copyOf(parts);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.blockOnlyFor(this);
    }
  }
}
