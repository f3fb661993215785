package gripwright.schedule;

import gripwright.finding.ModelPath;
import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A week of a compiled plan: seven days from the plan's first day on. Immutable. */
public final class PlanWeek {

  /** The components. */
  private record Parts(
      int number,
      String block,
      int blockWeek,
      LocalDate from,
      boolean eased,
      boolean away,
      double timeUnderLoadSeconds,
      double loadIndex,
      ModelPath path) {}

  private final Parts parts;

  private PlanWeek(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns a builder for a week without work, neither eased nor away unless set.
   *
   * @param number from 1 through the plan
   * @param block name of the block
   * @param blockWeek week of the block, from 1
   * @param from the first day
   * @param path its place in the model
   */
  public static Builder builder(
      int number, String block, int blockWeek, LocalDate from, ModelPath path) {
    return new Builder(number, block, blockWeek, from, path);
  }

  /** Returns a builder with these components. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /** Returns the number of the week, from 1 through the plan. */
  public int number() {
    return parts.number;
  }

  /** Returns the name of the block. */
  public String block() {
    return parts.block;
  }

  /** Returns the week of the block, from 1. */
  public int blockWeek() {
    return parts.blockWeek;
  }

  /** Returns the first day. */
  public LocalDate from() {
    return parts.from;
  }

  /** Returns the last day. */
  public LocalDate to() {
    return parts.from.plusDays(6);
  }

  /** Returns whether the block or the taper eases this week. */
  public boolean eased() {
    return parts.eased;
  }

  /** Returns whether the athlete is away on every training day. */
  public boolean away() {
    return parts.away;
  }

  /** Returns the time under tension of the week, in seconds. */
  public double timeUnderLoadSeconds() {
    return parts.timeUnderLoadSeconds;
  }

  /** Returns the load-time: sum of total load times hold time, in kg s. */
  public double loadIndex() {
    return parts.loadIndex;
  }

  /** Returns its place in the model. */
  public ModelPath path() {
    return parts.path;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PlanWeek that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "PlanWeek" + parts.toString().substring("Parts".length());
  }

  /** Collects the components. Not thread-safe. */
  public static final class Builder {
    private int number;
    private String block;
    private int blockWeek;
    private LocalDate from;
    private boolean eased;
    private boolean away;
    private double timeUnderLoadSeconds;
    private double loadIndex;
    private ModelPath path;

    private Builder(int number, String block, int blockWeek, LocalDate from, ModelPath path) {
      this.number = number;
      this.block = Objects.requireNonNull(block, "block");
      this.blockWeek = blockWeek;
      this.from = Objects.requireNonNull(from, "from");
      this.path = Objects.requireNonNull(path, "path");
    }

    private Builder(Parts copied) {
      number = copied.number;
      block = copied.block;
      blockWeek = copied.blockWeek;
      from = copied.from;
      eased = copied.eased;
      away = copied.away;
      timeUnderLoadSeconds = copied.timeUnderLoadSeconds;
      loadIndex = copied.loadIndex;
      path = copied.path;
    }

    /** Sets the number of the week, from 1 through the plan. */
    public Builder number(int value) {
      number = value;
      return this;
    }

    /** Sets the name of the block. */
    public Builder block(String value) {
      Objects.requireNonNull(value, "value");
      block = value;
      return this;
    }

    /** Sets the week of the block, from 1. */
    public Builder blockWeek(int value) {
      blockWeek = value;
      return this;
    }

    /** Sets the first day. */
    public Builder from(LocalDate value) {
      Objects.requireNonNull(value, "value");
      from = value;
      return this;
    }

    /** Sets whether the block or the taper eases this week. */
    public Builder eased(boolean value) {
      eased = value;
      return this;
    }

    /** Sets whether the athlete is away on every training day. */
    public Builder away(boolean value) {
      away = value;
      return this;
    }

    /** Sets the time under tension of the week, in seconds. */
    public Builder timeUnderLoadSeconds(double value) {
      timeUnderLoadSeconds = value;
      return this;
    }

    /** Sets the load-time: sum of total load times hold time, in kg s. */
    public Builder loadIndex(double value) {
      loadIndex = value;
      return this;
    }

    /** Sets its place in the model. */
    public Builder path(ModelPath value) {
      Objects.requireNonNull(value, "value");
      path = value;
      return this;
    }

    /** Returns the week. */
    public PlanWeek build() {
      return new PlanWeek(
          new Parts(
              number, block, blockWeek, from, eased, away, timeUnderLoadSeconds, loadIndex, path));
    }
  }
}
