package gripwright.budget;

/** What a run is doing when it reports progress. */
public enum Stage {
  /** Reads files; counted in files. How many there are is known only at the end. */
  READING,
  /** Checks what was read; counted in declarations. */
  CHECKING,
  /** Plans and applies rules; counted in weeks of all plans, for all their athletes. */
  PLANNING
}
