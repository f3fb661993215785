package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A statement of a plan. */
public sealed interface PlanItem extends Syntax
    permits Note,
        DefaultItem,
        Supervised,
        Report,
        PlanItem.ForItem,
        PlanItem.FromItem,
        PlanItem.Towards,
        PlanItem.TaperItem,
        PlanItem.Demand,
        PlanItem.RulesItem,
        PlanItem.BlockItem,
        PlanItem.RetestItem,
        PlanItem.TestItem,
        PlanItem.WaiveItem,
        PlanItem.WeeklyRise {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement of a plan. */
  interface Visitor {
    /** Visits a note. */
    void note(Note item);

    /** Visits a default for all sessions inside. */
    void defaultItem(DefaultItem item);

    /** Visits the supervisor. */
    void supervised(Supervised item);

    /** Visits a fact about the delivery. */
    void report(Report item);

    /** Visits the athletes of the plan. */
    void forItem(ForItem item);

    /** Visits the first day. */
    void fromItem(FromItem item);

    /** Visits the goal. */
    void towards(Towards item);

    /** Visits the taper. */
    void taperItem(TaperItem item);

    /** Visits the demand of the climbing ahead. */
    void demand(Demand item);

    /** Visits rule sets. */
    void rulesItem(RulesItem item);

    /** Visits a block. */
    void blockItem(BlockItem item);

    /** Visits a retest. */
    void retestItem(RetestItem item);

    /** Visits a planned test. */
    void testItem(TestItem item);

    /** Visits a waiver. */
    void waiveItem(WaiveItem item);

    /** Visits the greatest weekly rise. */
    void weeklyRise(WeeklyRise item);
  }

  /** {@code for tove}: who the plan is for. */
  record ForItem(int id, List<Word> athletes) implements PlanItem {
    /** Copies the lists. */
    public ForItem {
      athletes = List.copyOf(athletes);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.forItem(this);
    }
  }

  /** {@code from DATE}: the first day. */
  record FromItem(int id, DateText date) implements PlanItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.fromItem(this);
    }
  }

  /** {@code towards DATE "..."}: the goal's day. */
  record Towards(int id, DateText date, @Nullable Text goal) implements PlanItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.towards(this);
    }
  }

  /** {@code taper 2 weeks to 50 % sets}: less work in the weeks before that day. */
  record TaperItem(int id, Amount length, Amount share) implements PlanItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.taperItem(this);
    }
  }

  /** {@code demand half-crimp 45 %, ...}: the share of each grip in the climbing ahead. */
  record Demand(int id, List<Share> shares) implements PlanItem {
    /** Copies the lists. */
    public Demand {
      shares = List.copyOf(shares);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.demand(this);
    }
  }

  /** {@code rules NAME}: rule sets that apply to the plan. */
  record RulesItem(int id, List<Word> names) implements PlanItem {
    /** Copies the lists. */
    public RulesItem {
      names = List.copyOf(names);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.rulesItem(this);
    }
  }

  /** {@code block NAME 4 weeks { ... }}. */
  record BlockItem(int id, Word name, Amount length, List<BlockPart> parts, boolean damaged)
      implements PlanItem {
    /** Copies the lists. */
    public BlockItem {
      parts = List.copyOf(parts);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.blockItem(this);
    }
  }

  /** {@code test GRIP edge 20 mm KIND TIMES { ... }}: a planned test. */
  record TestItem(
      int id,
      List<Word> grips,
      Setup setup,
      PlannedKind kind,
      List<PlannedTime> times,
      TestBody body)
      implements PlanItem {
    /** Copies the lists. */
    public TestItem {
      grips = List.copyOf(grips);
      times = List.copyOf(times);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.testItem(this);
    }
  }

  /**
   * What is written about a planned test.
   *
   * @param parts its statements
   * @param damaged true if one of them could not be read
   */
  record TestBody(List<TestPart> parts, boolean damaged) {
    /** Copies the list. */
    public TestBody {
      parts = List.copyOf(parts);
    }
  }

  /** {@code retest GRIP edge 20 mm hold 7 s every 4 weeks}. */
  record RetestItem(int id, List<Word> grips, Setup setup, Amount hold, Amount every)
      implements PlanItem {
    /** Copies the lists. */
    public RetestItem {
      grips = List.copyOf(grips);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.retestItem(this);
    }
  }

  /** {@code waive RULE in PLACE because "..."}: a finding the coach accepts, with the reason. */
  record WaiveItem(int id, Word rule, Place place, Text because) implements PlanItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.waiveItem(this);
    }
  }

  /** {@code weekly-rise at most 10 %}: how much a week's load may grow. */
  record WeeklyRise(int id, Amount atMost) implements PlanItem {
    @Override
    public void accept(Visitor visitor) {
      visitor.weeklyRise(this);
    }
  }
}
