package gripwright.change;

import gripwright.schedule.PlanWeek;
import java.time.LocalDate;

/** A change of a block or of one of its weeks. */
public sealed interface BlockChange extends PlanChange {

  /** Returns the name of the block. */
  String block();

  /** Returns what the visitor returns for this kind of change. */
  <R> R accept(Visitor<R> visitor);

  @Override
  default <R> R accept(PlanChange.Visitor<R> visitor) {
    return visitor.block(this);
  }

  /**
   * A block was added.
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
   * A block was removed.
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
   * A week became an eased (deload) week, or no longer is one.
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
   * A block is written differently, such as when it gets harder, but trains the same.
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
   * One method for each kind of change of a block.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits an added block. */
    R blockAdded(BlockAdded change);

    /** Visits a removed block. */
    R blockDropped(BlockDropped change);

    /** Visits a block that begins earlier or later. */
    R blockMoved(BlockMoved change);

    /** Visits a block that is longer or shorter. */
    R blockResized(BlockResized change);

    /** Visits a week that became an eased week or no longer is one. */
    R weekEased(WeekEased change);

    /** Visits a block that is written differently but trains the same. */
    R blockRewritten(BlockRewritten change);
  }
}
