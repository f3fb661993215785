package gripwright.schedule;

/** What every output that an athlete may read says at its foot. */
public enum Caution {
  /** What the numbers are. */
  ESTIMATES("Loads and times are estimates, not measurements: when in doubt, take less."),
  /** Warming up. */
  WARM_UP("Warm up before the first loaded hold; skip the session if the fingers feel wrong."),
  /** Pain. */
  PAIN("Stop at once on sharp or sudden pain, and see a licensed practitioner."),
  /** Youth. */
  YOUTH(
      "Under 16: no intensive finger training. Pain at a growth plate goes to a physician."
          + " At 16 and 17 train under supervision."),
  /** Who has the last word. */
  GUIDANCE(
      "Follow local guidance and the advice of licensed practitioners; this plan replaces neither.");

  private final String text;

  Caution(String text) {
    this.text = text;
  }

  /** Returns the sentence. */
  public String text() {
    return text;
  }
}
