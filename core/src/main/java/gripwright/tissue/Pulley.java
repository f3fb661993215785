package gripwright.tissue;

import gripwright.hand.Structure;

/**
 * An annular pulley that a grip loads, with the load it broke at in cadavers.
 *
 * <p>Breaking load does not differ between fingers or sexes (Mallo GC et al. 2008, Hand (NY)
 * 3(1):13-16). A2 is the strongest, A4 stiffer and weaker, and A4 often fails first in a crimp
 * (Marco RA et al. 1998, J Bone Joint Surg Am 80(7):1012-1019), so load is compared with capacity
 * pulley by pulley. A break in a cadaver is no limit for training.
 */
public enum Pulley {
  /** Second annular pulley, on the proximal bone. */
  A2(407, Structure.A2),
  /** Fourth annular pulley, on the middle bone. */
  A4(209, Structure.A4);

  private final double breakingNewtons;
  private final Structure structure;

  Pulley(double breakingNewtons, Structure structure) {
    this.breakingNewtons = breakingNewtons;
    this.structure = structure;
  }

  /**
   * Returns the mean breaking load in N. A2: Lin GT, Cooney WP, Amadio PC, An KN 1990, J Hand Surg
   * Br 15(4):429-434, from memory and not sure; that A2 bears more was seen. A4: the library's own
   * number, about half of A2's. Estimates that rest on them take a spread of 25 %.
   */
  public double breakingNewtons() {
    return breakingNewtons;
  }

  /** Returns the structure of the finger that this is. */
  public Structure structure() {
    return structure;
  }
}
