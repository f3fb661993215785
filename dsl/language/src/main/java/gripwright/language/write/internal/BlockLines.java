package gripwright.language.write.internal;

import gripwright.language.write.Unwritable;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.SessionPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes blocks and their sessions. */
final class BlockLines {

  private final Lines out = new Lines();

  private BlockLines() {}

  static String of(Block block) {
    BlockLines lines = new BlockLines();
    lines.block(block);
    return lines.out.text().stripTrailing();
  }

  private void block(Block block) {
    out.add("block " + block.name() + " " + Written.weeks(block.weeks()) + " {");
    Block.Content all = block.content();
    if (all.isNoTraining()) {
      out.add("no training");
    }
    notes(all.notes());
    sessions(all.sessions());
    rest(all.advances(), all.eases(), all.introductions());
    forWhom(block.only())
        .forEach(
            (content, athletes) -> {
              out.add("\nonly for " + String.join(", ", athletes) + " {");
              if (content.isNoTraining()) {
                out.add("no training");
                notes(own(all.notes(), content.notes()));
                out.add("}");
                return;
              }
              notes(own(all.notes(), content.notes()));
              sessions(own("sessions", all.sessions(), content.sessions()));
              rest(
                  own("advance", all.advances(), content.advances()),
                  own("ease", all.eases(), content.eases()),
                  own("introduce", all.introductions(), content.introductions()));
              out.add("}");
            });
    out.add("}");
  }

  private static <T> Map<T, List<String>> forWhom(Map<String, T> only) {
    Map<T, List<String>> athletes = new LinkedHashMap<>();
    only.forEach(
        (athlete, content) ->
            athletes.computeIfAbsent(content, any -> new ArrayList<>()).add(athlete));
    return athletes;
  }

  /** Returns what has to be written for some athletes if it replaces the rest. */
  private static <T> List<T> own(String what, List<T> all, List<T> own) {
    if (own.isEmpty() && !all.isEmpty()) {
      throw new Unwritable("an athlete without the " + what + " that everybody else has");
    }
    return own.equals(all) ? List.of() : own;
  }

  /** Returns the notes of some athletes beside those of everybody. */
  private static List<String> own(List<String> all, List<String> notes) {
    if (notes.size() < all.size() || !notes.subList(0, all.size()).equals(all)) {
      throw new Unwritable("an athlete without the notes that everybody else has");
    }
    return notes.subList(all.size(), notes.size());
  }

  private void notes(List<String> notes) {
    notes.forEach(note -> out.add(Written.note(note)));
  }

  private void rest(
      List<Advance> advances, List<Block.Ease> eases, List<Block.Introduction> introductions) {
    introductions.forEach(
        i ->
            out.add(
                "introduce "
                    + i.grip().name()
                    + " from "
                    + Written.percent(i.fromFraction())
                    + " max over "
                    + Written.weeks(i.weeks())));
    advances.forEach(advance -> out.add(advance(advance)));
    for (int i = 0; i < eases.size(); ) {
      double share = eases.get(i).setsFraction();
      List<String> weeks = new ArrayList<>();
      while (i < eases.size() && eases.get(i).setsFraction() == share) {
        weeks.add(Integer.toString(eases.get(i++).week()));
      }
      out.list("ease week ", List.of(weeks), w -> String.join(", ", w) + " to " + sets(share));
    }
  }

  private static String sets(double share) {
    return Written.percent(share) + " sets";
  }

  private static String advance(Advance advance) {
    Advance.Progress first = advance.first();
    String on = advance.on().map(grip -> " on " + grip).orElse("");
    Optional<Advance.Progress> then = advance.then();
    if (then.isEmpty()) {
      return "advance "
          + first.change().accept(new Changes())
          + " "
          + first.when().accept(new Paces())
          + on;
    }
    String second = then.get().change().accept(new Changes());
    String pace =
        then.get().when().equals(first.when()) ? "" : " " + then.get().when().accept(new Paces());
    return "advance first "
        + first.change().accept(new Changes())
        + " "
        + first.when().accept(new Paces())
        + " then "
        + second
        + pace
        + on;
  }

  private static final class Changes implements Advance.Change.Visitor<String> {
    @Override
    public String loadByShare(Advance.LoadByShare share) {
      return "load " + Written.percent(share.fraction());
    }

    @Override
    public String loadBy(Advance.LoadBy load) {
      return "load " + Written.load(load.step());
    }

    @Override
    public String setsTo(Advance.SetsTo sets) {
      return "sets to " + sets.limit() + " by " + sets.step();
    }

    @Override
    public String holdTo(Advance.HoldTo hold) {
      return "hold to " + Written.seconds(hold.limit()) + " by " + Written.seconds(hold.step());
    }

    @Override
    public String edgeTo(Advance.EdgeTo edge) {
      return "edge to " + Written.length(edge.limit()) + " by " + Written.length(edge.step());
    }
  }

  private static final class Paces implements Advance.Pace.Visitor<String> {
    @Override
    public String everyWeeks(Advance.EveryWeeks every) {
      return every.weeks() == 1 ? "weekly" : "every " + Written.weeks(every.weeks());
    }

    @Override
    public String whenLogged(Advance.WhenLogged logged) {
      List<String> clauses = new ArrayList<>();
      if (logged.doneInFull()) {
        clauses.add("done in full");
      }
      logged
          .effortAtMost()
          .ifPresent(effort -> clauses.add("effort at most " + Written.number(effort)));
      logged.painAtMost().ifPresent(pain -> clauses.add("pain at most " + Written.number(pain)));
      if (logged.sessions() < 1 || logged.sessions() > 2) {
        throw new Unwritable("a step after " + logged.sessions() + " sessions: one or two can be");
      }
      return "when " + String.join(" and ", clauses) + (logged.sessions() == 2 ? " twice" : "");
    }
  }

  private void sessions(List<SessionPlan> sessions) {
    sessions.forEach(this::session);
  }

  private void session(SessionPlan session) {
    boolean standard = session.gap().equals(SessionPlan.STANDARD_GAP);
    out.add(
        "session "
            + session.name()
            + " "
            + session.perWeek()
            + " per week"
            + (standard ? "" : " at least " + Written.gap(session.gap()) + " apart")
            + " {");
    out.list("prefer ", session.prefer(), Written::weekday);
    out.list("only on ", session.onlyOn(), Written::weekday);
    out.list("only at ", session.onlyAt(), place -> place);
    session
        .share()
        .ifPresent(time -> out.add("share days at least " + Written.gap(time) + " apart"));
    session.supervisedBy().ifPresent(who -> out.add("supervised by " + Written.quoted(who)));
    SessionPlan.Content all = session.content();
    content(all.exercises(), warming(all), all.restBetween(), weights(all.exercises()));
    notes(all.notes());
    forWhom(session.only())
        .forEach(
            (content, athletes) -> {
              out.add("\nonly for " + String.join(", ", athletes) + " {");
              List<Exercise> exercises = own("exercises", all.exercises(), content.exercises());
              Optional<Exercise.Weights> weights = weights(content.exercises());
              content(
                  exercises,
                  warming(content).filter(w -> !warming(content).equals(warming(all))),
                  content
                      .restBetween()
                      .filter(r -> !content.restBetween().equals(all.restBetween())),
                  weights.filter(w -> !weights.equals(weights(all.exercises()))));
              notes(own(all.notes(), content.notes()));
              out.add("}");
            });
    out.add("}");
  }

  private void content(
      List<Exercise> exercises,
      Optional<String> warming,
      Optional<java.time.Duration> restBetween,
      Optional<Exercise.Weights> weights) {
    warming.ifPresent(out::add);
    restBetween.ifPresent(time -> out.add("rest between exercises " + Written.time(time)));
    weights.ifPresent(w -> out.add(PlanLines.weigh(w)));
    exercises.forEach(exercise -> out.add(exercise(exercise)));
  }

  private static Optional<String> warming(SessionPlan.Content content) {
    return content
        .warmUp()
        .map(
            time ->
                "warm-up " + Written.time(time) + Written.quotedIfPresent(content.warmUpText()));
  }

  /** Returns the weights that a session uses to choose grips. */
  private static Optional<Exercise.Weights> weights(List<Exercise> exercises) {
    Set<Optional<Exercise.Weights>> all =
        exercises.stream()
            .map(Exercise::target)
            .filter(Exercise.BestOf.class::isInstance)
            .map(target -> ((Exercise.BestOf) target).weights())
            .collect(Collectors.toSet());
    if (all.size() > 1) {
      throw new Unwritable("two ways to choose grips in one session");
    }
    return all.stream().findFirst().flatMap(weights -> weights);
  }

  static String exercise(Exercise exercise) {
    String with =
        exercise.with().entrySet().stream()
            .map(CatalogueLines::parameter)
            .collect(Collectors.joining(", "));
    String on =
        exercise.target() instanceof Exercise.On one
            ? one.grip().name()
            : "best of "
                + ((Exercise.BestOf) exercise.target())
                    .grips().stream().map(g -> g.name()).collect(Collectors.joining(", "));
    return "do "
        + exercise.protocol().name()
        + (with.isEmpty() ? "" : " with " + with)
        + " on "
        + on
        + " "
        + Written.place(exercise)
        + (exercise.warmUp() ? " as warm-up" : "")
        + exercise.rehabilitation().map(r -> " rehabilitation " + Written.quoted(r)).orElse("")
        + Written.quotedIfPresent(exercise.note());
  }
}
