package gripwright.language.syntax;

import java.util.List;

/** One exercise of a logged session: what was done, on which grip, and how it went. */
public record DoneLine(int id, Word protocol, Word grip, Setup setup, List<DonePart> parts)
    implements Syntax {
  /** Copies the lists. */
  public DoneLine {
    parts = List.copyOf(parts);
  }
}
