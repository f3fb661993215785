package gripwright.language.syntax;

import java.util.List;

/** A statement of a protocol. */
public sealed interface ProtocolItem extends Syntax
    permits Note, Step, ProtocolItem.Aim, ProtocolItem.Given {

  /** {@code aim maximal-strength}: what the protocol is for. */
  record Aim(int id, Word aim) implements ProtocolItem {}

  /** {@code given sets 5, ...}: parameters and their defaults. */
  record Given(int id, List<Parameter> parameters) implements ProtocolItem {
    /** Copies the lists. */
    public Given {
      parameters = List.copyOf(parameters);
    }
  }
}
