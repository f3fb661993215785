package gripwright.change;

import gripwright.schedule.PlanWeek;
import java.time.LocalDate;

/** A change of a block or of one of its weeks. */
public sealed interface BlockChange extends PlanChange {

  /** Returns the name of the block. */
  String block();

  /** Answers with what a visitor has for this kind of change. */
  <R> R accept(Visitor<R> visitor);

  @Override
  default <R> R accept(PlanChange.Visitor<R> visitor) {
    return visitor.block(this);
  }

  /**
   * A block is new.
   *
   * @param block its name
   * @param date its first day
   * @param weeks how many weeks it has
   */
  record BlockAdded(String block, LocalDate date, int weeks) implements BlockChange {
    @Override
    public Kind kind() {
      return Kind.BLOCK_ADDED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.blockAdded(this);
    }
  }

  /**
   * A block is gone.
   *
   * @param block its name
   * @param date its first day before
   * @param weeks how many weeks it had
   */
  record BlockDropped(String block, LocalDate date, int weeks) implements BlockChange {
    @Override
    public Kind kind() {
      return Kind.BLOCK_DROPPED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.blockDropped(this);
    }
  }

  /**
   * A block begins earlier or later in the plan.
   *
   * @param block its name
   * @param days by how many days it is later; negative where it is earlier
   * @param date its first day now
   */
  record BlockMoved(String block, int days, LocalDate date) implements BlockChange {
    @Override
    public Kind kind() {
      return Kind.BLOCK_MOVED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.blockMoved(this);
    }
  }

  /**
   * A block is longer or shorter.
   *
   * @param block its name
   * @param date its first day now
   * @param before weeks before
   * @param after weeks now
   */
  record BlockResized(String block, LocalDate date, int before, int after) implements BlockChange {
    @Override
    public Kind kind() {
      return Kind.BLOCK_RESIZED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.blockResized(this);
    }
  }

  /**
   * A week is eased that was not, or no longer.
   *
   * @param week the week now
   */
  record WeekEased(PlanWeek week) implements BlockChange {
    @Override
    public LocalDate date() {
      return week.from();
    }

    @Override
    public String block() {
      return week.block();
    }

    @Override
    public Kind kind() {
      return Kind.WEEK_EASED;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.weekEased(this);
    }
  }

  /**
   * A block is written otherwise, such as when it gets harder, and trains the same all the same.
   *
   * @param block its name
   * @param date its first day now
   */
  record BlockRewritten(String block, LocalDate date) implements BlockChange {
    @Override
    public Kind kind() {
      return Kind.BLOCK_REWRITTEN;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.blockRewritten(this);
    }
  }

  /**
   * One answer for each kind of change of a block.
   *
   * @param <R> what is answered
   */
  interface Visitor<R> {
    /** Answers for a block that is new. */
    R blockAdded(BlockAdded change);

    /** Answers for a block that is gone. */
    R blockDropped(BlockDropped change);

    /** Answers for a block that begins earlier or later. */
    R blockMoved(BlockMoved change);

    /** Answers for a block that is longer or shorter. */
    R blockResized(BlockResized change);

    /** Answers for a week that is eased, or no longer. */
    R weekEased(WeekEased change);

    /** Answers for a block that trains the same and is written otherwise. */
    R blockRewritten(BlockRewritten change);
  }
}
