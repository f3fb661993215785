package gripwright.budget;

/** The stages of a run, for reports of progress. */
public enum Stage {
  /** Reads files; counted in files. Their number is known only at the end. */
  READING,
  /** Checks declarations; counted in declarations. */
  CHECKING,
  /** Plans and applies rules; counted in weeks of all plans, for all their athletes. */
  PLANNING,
  /** Compares protocols; counted in draws of parameters, then in persons of a cohort. */
  COMPARING
}
