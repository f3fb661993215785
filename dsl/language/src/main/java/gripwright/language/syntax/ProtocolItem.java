package gripwright.language.syntax;

import java.util.List;

/** A statement of a protocol. */
public sealed interface ProtocolItem extends Syntax
    permits Note, Report, Step, ProtocolItem.Aim, ProtocolItem.Given {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement of a protocol. */
  interface Visitor {
    /** Visits a note. */
    void note(Note item);

    /** Visits a fact about the delivery. */
    void report(Report item);

    /** Visits a step. */
    void step(Step item);

    /** Visits the aim. */
    void aim(Aim item);

    /** Visits parameters. */
    void given(Given item);
  }

  /** {@code aim maximal-strength}: what the protocol is for. */
  record Aim(int id, Word aim) implements ProtocolItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.aim(this);
    }
  }

  /** {@code given sets 5, ...}: parameters and their defaults. */
  record Given(int id, List<Parameter> parameters) implements ProtocolItem {
    /** Copies the lists. */
    public Given {
      parameters = List.copyOf(parameters);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.given(this);
    }
  }
}
