package gripwright.expression;

import gripwright.finding.Message;

/** A thing in a collection that a finding can name. */
public interface Named {

  /** Returns its name among the others, such as {@code left ring finger}. */
  Message called();
}
