package gripwright.benchmarks;

/** A program that does nothing: what a Java program costs at the least. */
final class Empty {

  private Empty() {}

  /** Does nothing. */
  public static void main(String[] args) {}
}
