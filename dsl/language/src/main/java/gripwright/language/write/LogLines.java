package gripwright.language.write;

import gripwright.compare.Comparison;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.protocol.Protocol;
import gripwright.strength.StrengthTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Writes logs and comparisons. */
final class LogLines {

  private final Lines out = new Lines();

  private LogLines() {}

  static String of(Log log) {
    LogLines lines = new LogLines();
    lines.out.add("log " + log.athlete() + " {");
    log.entries().forEach(lines::entry);
    lines.out.add("}");
    return lines.out.text();
  }

  static String of(Comparison comparison) {
    Lines out = new Lines();
    out.add("compare " + comparison.name() + Written.remark(comparison.title()) + " {");
    out.add("for " + comparison.athlete());
    out.add("on " + Written.setup(comparison.setup()));
    out.list("between ", comparison.protocols(), Protocol::name);
    comparison
        .match()
        .ifPresent(match -> out.add("match " + match.quantity() + " by " + match.by()));
    out.add("each " + comparison.perWeek() + " per week");
    out.add("over " + Written.weeks(comparison.weeks()));
    out.list("measure ", comparison.measures(), m -> m.word());
    out.add("}");
    return out.text();
  }

  private void entry(LogEntry entry) {
    String day = entry.date() + " ";
    if (entry instanceof LogEntry.Tested tested) {
      StrengthTest test = tested.test();
      out.add(
          day
              + "test "
              + Written.setup(test.setup())
              + " "
              + result(test.result())
              + Written.remark(tested.note()));
    } else if (entry instanceof LogEntry.Trained trained) {
      out.add(day + "session " + trained.session() + Written.remark(trained.note()) + " {");
      trained.done().forEach(done -> out.add(done(done)));
      out.add("}");
    } else if (entry instanceof LogEntry.Climbed climbed) {
      out.add(
          day
              + "climbing "
              + climbed.how()
              + " "
              + Written.time(climbed.time())
              + score(" effort ", climbed.effort())
              + score(" pain ", climbed.pain())
              + Written.remark(climbed.note()));
    } else if (entry instanceof LogEntry.Skipped skipped) {
      out.add(day + "skipped " + skipped.session() + Written.remark(skipped.note()));
    } else if (entry instanceof LogEntry.BodyMass weighed) {
      out.add(day + "body-mass " + Written.load(weighed.mass()));
    } else if (entry instanceof LogEntry.Pain pain) {
      out.add(day + pain(pain));
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
        + Written.remark(pain.note());
  }

  private static String score(String word, OptionalDouble score) {
    return score.isPresent() ? word + Written.number(score.getAsDouble()) : "";
  }

  private static String result(StrengthTest.Result result) {
    if (result instanceof StrengthTest.Held held) {
      return "hold " + Written.seconds(held.hold()) + " load " + Written.load(held.load());
    }
    if (result instanceof StrengthTest.ToFailure failure) {
      return "to-failure "
          + Written.load(failure.load())
          + " lasting "
          + Written.seconds(failure.lasting());
    }
    StrengthTest.Series series = (StrengthTest.Series) result;
    return "series "
        + series.means().size()
        + " x "
        + Written.seconds(series.work())
        + " / "
        + Written.seconds(series.rest())
        + " mean "
        + series.means().stream()
            .map(mean -> Written.number(mean.kilograms()))
            .collect(Collectors.joining(", "))
        + " kg";
  }

  private static String done(LogEntry.Done done) {
    List<String> parts = new ArrayList<>();
    if (done.sets().isPresent()) {
      String of = done.setsAsked().isPresent() ? " of " + done.setsAsked().getAsInt() : "";
      parts.add("sets " + done.sets().getAsInt() + of);
    } else if (done.setsAsked().isPresent()) {
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
