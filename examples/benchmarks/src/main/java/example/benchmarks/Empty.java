package example.benchmarks;

/** A program that does nothing: the minimal cost of starting Java. */
final class Empty {

  private Empty() {}

  /** Does nothing. */
  public static void main(String[] args) {}
}
