package gripwright.language.write.internal;

import gripwright.language.write.Unwritable;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Writes logs. */
final class LogLines {

  private final Lines out = new Lines();

  private LogLines() {}

  static String of(Log log) {
    LogLines lines = new LogLines();
    lines.out.add("log " + log.athlete() + " {");
    Entries entries = new Entries();
    log.entries().forEach(entry -> entry.accept(entries).forEach(lines.out::add));
    lines.out.add("}");
    return lines.out.text();
  }

  /** Returns the lines of an entry. */
  private static final class Entries implements LogEntry.Visitor<List<String>> {
    @Override
    public List<String> tested(LogEntry.Tested tested) {
      StrengthTest test = tested.test();
      return List.of(
          tested.date()
              + " "
              + "test "
              + Written.setup(test.setup())
              + " "
              + test.result().accept(Results.of(test))
              + Written.quotedIfPresent(tested.note()));
    }

    @Override
    public List<String> trained(LogEntry.Trained trained) {
      List<String> lines = new ArrayList<>();
      lines.add(
          trained.date()
              + " session "
              + trained.session()
              + Written.quotedIfPresent(trained.note())
              + " {");
      trained.done().forEach(done -> lines.add(done(done)));
      lines.add("}");
      return lines;
    }

    @Override
    public List<String> climbed(LogEntry.Climbed climbed) {
      return List.of(
          climbed.date()
              + " "
              + "climbing "
              + climbed.how()
              + " "
              + Written.time(climbed.time())
              + score(" effort ", climbed.effort())
              + score(" pain ", climbed.pain())
              + Written.quotedIfPresent(climbed.note()));
    }

    @Override
    public List<String> skipped(LogEntry.Skipped skipped) {
      return List.of(
          skipped.date()
              + " "
              + "skipped "
              + skipped.session()
              + Written.quotedIfPresent(skipped.note()));
    }

    @Override
    public List<String> bodyMass(LogEntry.BodyMass weighed) {
      return List.of(weighed.date() + " " + "body-mass " + Written.load(weighed.mass()));
    }

    @Override
    public List<String> pain(LogEntry.Pain pain) {
      return List.of(pain.date() + " " + LogLines.pain(pain));
    }
  }

  private static String pain(LogEntry.Pain pain) {
    boolean dull = pain.kind() == LogEntry.Pain.Kind.DULL;
    return "pain "
        + pain.finger().word()
        + pain.structure().map(s -> " " + s.word()).orElse("")
        + pain.side().map(s -> " " + s.word()).orElse("")
        + " "
        + Written.number(pain.score())
        + (dull ? "" : " " + pain.kind().name().toLowerCase(Locale.ROOT))
        + Written.quotedIfPresent(pain.note());
  }

  private static String score(String word, OptionalDouble score) {
    return score.isPresent() ? word + Written.number(score.getAsDouble()) : "";
  }

  /**
   * Writes what was measured.
   *
   * @param force true if in N
   */
  private record Results(boolean force) implements StrengthTest.Result.Visitor<String> {
    /** Returns what writes a test: in N, if its forces read back the same. */
    static Results of(StrengthTest test) {
      return new Results(test.inForce() && loads(test).stream().allMatch(l -> Force.isExact(l)));
    }

    private static List<Load> loads(StrengthTest test) {
      return test.result() instanceof StrengthTest.Series series
          ? series.means()
          : List.of(test.result().greatest());
    }

    private String load(Load load) {
      return force ? Force.newtons(load) + " N" : Written.load(load);
    }

    @Override
    public String held(StrengthTest.Held held) {
      return "hold "
          + Written.seconds(held.hold())
          + (force ? " force " : " load ")
          + load(held.load());
    }

    @Override
    public String toFailure(StrengthTest.ToFailure failure) {
      return "to-failure "
          + load(failure.load())
          + " lasting "
          + Written.seconds(failure.lasting());
    }

    @Override
    public String series(StrengthTest.Series series) {
      return "series "
          + series.means().size()
          + " x "
          + Written.seconds(series.work())
          + " / "
          + Written.seconds(series.rest())
          + " mean "
          + series.means().stream()
              .map(mean -> force ? Force.newtons(mean) : Written.number(mean.kilograms()))
              .collect(Collectors.joining(", "))
          + (force ? " N" : " kg");
    }
  }

  private static String done(LogEntry.Done done) {
    List<String> parts = new ArrayList<>();
    if (done.sets().isPresent()) {
      String of = done.setsPlanned().isPresent() ? " of " + done.setsPlanned().getAsInt() : "";
      parts.add("sets " + done.sets().getAsInt() + of);
    } else if (done.setsPlanned().isPresent()) {
      throw new Unwritable("sets that were asked for without those that were done");
    }
    done.load().ifPresent(load -> parts.add("load " + Written.load(load)));
    done.effort().ifPresent(effort -> parts.add("effort " + Written.number(effort)));
    done.pain().ifPresent(pain -> parts.add("pain " + Written.number(pain)));
    if (parts.isEmpty()) {
      throw new Unwritable("an exercise in a log of which nothing is known");
    }
    return done.protocol() + " on " + Written.setup(done.setup()) + ": " + String.join(", ", parts);
  }
}
