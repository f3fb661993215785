package gripwright.language.syntax;

import org.jspecify.annotations.Nullable;

/** What is noted about one exercise of a logged session. */
public sealed interface DonePart extends Syntax {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of note on one exercise. */
  interface Visitor {
    /** Visits the sets. */
    void setsDone(SetsDone part);

    /** Visits the load. */
    void loadDone(LoadDone part);

    /** Visits the effort. */
    void effortDone(EffortDone part);

    /** Visits the pain. */
    void painDone(PainDone part);
  }

  /** {@code sets 4 of 5}. */
  record SetsDone(int id, Amount done, @Nullable Amount of) implements DonePart {
    @Override
    public void accept(Visitor visitor) {
      visitor.setsDone(this);
    }
  }

  /** {@code load 80.25 kg}. */
  record LoadDone(int id, Amount load) implements DonePart {
    @Override
    public void accept(Visitor visitor) {
      visitor.loadDone(this);
    }
  }

  /** {@code effort 8}, of 10. */
  record EffortDone(int id, Amount effort) implements DonePart {
    @Override
    public void accept(Visitor visitor) {
      visitor.effortDone(this);
    }
  }

  /** {@code pain 1}, of 10. */
  record PainDone(int id, Amount pain) implements DonePart {
    @Override
    public void accept(Visitor visitor) {
      visitor.painDone(this);
    }
  }
}
