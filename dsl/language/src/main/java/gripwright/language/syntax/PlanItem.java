package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A statement of a plan. */
public sealed interface PlanItem extends Syntax
    permits Note,
        WarmUp,
        RestBetween,
        Weigh,
        PlanItem.ForItem,
        PlanItem.FromItem,
        PlanItem.Towards,
        PlanItem.TaperItem,
        PlanItem.Demand,
        PlanItem.RulesItem,
        PlanItem.BlockItem,
        PlanItem.RetestItem,
        PlanItem.WaiveItem,
        PlanItem.WeeklyRise {

  /** {@code for tove}: who the plan is for. */
  record ForItem(int id, List<Word> athletes) implements PlanItem {
    /** Copies the lists. */
    public ForItem {
      athletes = List.copyOf(athletes);
    }
  }

  /** {@code from DATE}: the first day. */
  record FromItem(int id, DateText date) implements PlanItem {}

  /** {@code towards DATE "..."}: the day it works towards. */
  record Towards(int id, DateText date, @Nullable Text goal) implements PlanItem {}

  /** {@code taper 2 weeks to 50 % sets}: less work in the weeks before that day. */
  record TaperItem(int id, Amount length, Amount share) implements PlanItem {}

  /** {@code demand half-crimp 45 %, ...}: which grips the climbing ahead asks for. */
  record Demand(int id, List<Share> shares) implements PlanItem {
    /** Copies the lists. */
    public Demand {
      shares = List.copyOf(shares);
    }
  }

  /** {@code rules NAME}: rule sets the plan is held to. */
  record RulesItem(int id, List<Word> names) implements PlanItem {
    /** Copies the lists. */
    public RulesItem {
      names = List.copyOf(names);
    }
  }

  /** {@code block NAME 4 weeks { ... }}. */
  record BlockItem(int id, Word name, Amount length, List<BlockPart> parts, boolean damaged)
      implements PlanItem {
    /** Copies the lists. */
    public BlockItem {
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
  }

  /** {@code waive RULE in PLACE because "..."}: a finding the coach accepts, with the reason. */
  record WaiveItem(int id, Word rule, Place place, Text because) implements PlanItem {}

  /** {@code weekly-rise at most 10 %}: how much a week's load may grow. */
  record WeeklyRise(int id, Amount atMost) implements PlanItem {}
}
