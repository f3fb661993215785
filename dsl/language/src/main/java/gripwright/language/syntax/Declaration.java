package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a file is made of: one declaration at its top level. {@code damaged} means that part of the
 * body was reported and left out.
 */
public sealed interface Declaration extends Syntax {

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of declaration.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits the version of the language. */
    R language(Language declaration);

    /** Visits another file that is used. */
    R use(Use declaration);

    /** Visits an athlete. */
    R athlete(Athlete declaration);

    /** Visits a grip. */
    R grip(Grip declaration);

    /** Visits a protocol. */
    R protocol(Protocol declaration);

    /** Visits a plan. */
    R plan(Plan declaration);

    /** Visits rules. */
    R rules(Rules declaration);

    /** Visits a log. */
    R log(Log declaration);

    /** Visits a cohort. */
    R cohort(Cohort declaration);

    /** Visits a comparison. */
    R compare(Compare declaration);
  }

  /** {@code language 1}: the version of the language the file is written in. */
  record Language(int id, Amount version) implements Declaration {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.language(this);
    }
  }

  /** {@code use "file.grip"}: another file whose declarations can be used here. */
  record Use(int id, Text path) implements Declaration {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.use(this);
    }
  }

  /** {@code athlete NAME { ... }}: who is trained. */
  record Athlete(int id, Word name, @Nullable Text title, List<AthleteItem> items, boolean damaged)
      implements Declaration {
    /** Copies the lists. */
    public Athlete {
      items = List.copyOf(items);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.athlete(this);
    }
  }

  /** {@code grip NAME { ... }}: which fingers hold, and how they are bent. */
  record Grip(
      int id,
      Word name,
      boolean replaces,
      @Nullable Text title,
      List<GripItem> items,
      boolean damaged)
      implements Declaration {
    /** Copies the lists. */
    public Grip {
      items = List.copyOf(items);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.grip(this);
    }
  }

  /** {@code protocol NAME { ... }}: how holds and rests follow each other. */
  record Protocol(
      int id,
      Word name,
      boolean replaces,
      @Nullable Text title,
      List<ProtocolItem> items,
      boolean damaged)
      implements Declaration {
    /** Copies the lists. */
    public Protocol {
      items = List.copyOf(items);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.protocol(this);
    }
  }

  /** {@code plan NAME { ... }}: what is trained in which weeks. */
  record Plan(int id, Word name, @Nullable Text title, List<PlanItem> items, boolean damaged)
      implements Declaration {
    /** Copies the lists. */
    public Plan {
      items = List.copyOf(items);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.plan(this);
    }
  }

  /** {@code rules NAME { ... }}: rules that a plan can be held to. */
  record Rules(int id, Word name, @Nullable Text title, List<RuleDecl> rules, boolean damaged)
      implements Declaration {
    /** Copies the lists. */
    public Rules {
      rules = List.copyOf(rules);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.rules(this);
    }
  }

  /** {@code log ATHLETE { ... }}: what was tested, trained and felt. */
  record Log(int id, Word athlete, List<LogLine> lines, boolean damaged) implements Declaration {
    /** Copies the lists. */
    public Log {
      lines = List.copyOf(lines);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.log(this);
    }
  }

  /** {@code cohort NAME { ... }}: adults, by distributions. */
  record Cohort(int id, Word name, @Nullable Text title, List<CohortItem> items, boolean damaged)
      implements Declaration {
    /** Copies the lists. */
    public Cohort {
      items = List.copyOf(items);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.cohort(this);
    }
  }

  /** {@code compare NAME { ... }}: protocols side by side. */
  record Compare(int id, Word name, @Nullable Text title, List<CompareItem> items, boolean damaged)
      implements Declaration {
    /** Copies the lists. */
    public Compare {
      items = List.copyOf(items);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.compare(this);
    }
  }
}
