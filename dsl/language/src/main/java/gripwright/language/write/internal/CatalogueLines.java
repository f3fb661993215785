package gripwright.language.write.internal;

import gripwright.grip.Band;
import gripwright.grip.Grip;
import gripwright.grip.Prerequisites;
import gripwright.hand.Finger;
import gripwright.protocol.Argument;
import gripwright.protocol.Extent;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Term;
import gripwright.quantity.Load;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes grips and protocols. */
final class CatalogueLines {

  private final Lines out = new Lines();

  private CatalogueLines() {}

  static String of(Grip grip, boolean replaces) {
    CatalogueLines lines = new CatalogueLines();
    lines.grip(grip, replaces);
    return lines.out.text();
  }

  static String of(Protocol protocol, boolean replaces) {
    CatalogueLines lines = new CatalogueLines();
    lines.protocol(protocol, replaces);
    return lines.out.text();
  }

  private void grip(Grip grip, boolean replaces) {
    out.add(
        "grip "
            + grip.name()
            + (replaces ? " replaces" : "")
            + Written.quotedIfPresent(grip.title())
            + " {");
    out.add("fingers " + grip.fingers());
    out.add("family " + grip.family().word());
    for (Finger finger : Finger.values()) {
      List<String> bands = new ArrayList<>();
      grip.bands()
          .forEach(
              (at, band) -> {
                if (at.finger() == finger) {
                  bands.add(at.joint().word() + " " + band(band));
                }
              });
      out.list(finger.word() + " ", bands, b -> b);
    }
    out.list("needs ", needs(grip.needs()), n -> n);
    grip.cautions().forEach(caution -> out.add("caution " + Written.quoted(caution)));
    grip.notes().forEach(note -> out.add(Written.note(note)));
    out.add("}");
  }

  private static String band(Band band) {
    return Written.angle(band.low()) + " to " + Written.angle(band.high());
  }

  private static List<String> needs(Prerequisites needs) {
    List<String> all = new ArrayList<>();
    if (needs.trainedMonths() != 0) {
      all.add("trained " + Written.months(needs.trainedMonths()));
    }
    needs.ability().ifPresent(ability -> all.add("ability " + ability));
    needs
        .familiar()
        .forEach((grip, months) -> all.add("familiar " + grip + " " + Written.months(months)));
    return all;
  }

  private void protocol(Protocol protocol, boolean replaces) {
    out.add(
        "protocol "
            + protocol.name()
            + (replaces ? " replaces" : "")
            + Written.quotedIfPresent(protocol.title())
            + " {");
    protocol.aim().ifPresent(aim -> out.add("aim " + aim));
    out.list("given ", protocol.parameters().entrySet(), CatalogueLines::parameter);
    protocol.reports().forEach(report -> out.add(Written.report(report)));
    protocol.notes().forEach(note -> out.add(Written.note(note)));
    steps(protocol.steps());
    out.add("}");
  }

  private void steps(List<Protocol.Part> steps) {
    lines(steps).forEach(out::add);
  }

  private static List<String> lines(List<Protocol.Part> steps) {
    return steps.stream().flatMap(step -> step.accept(new Steps()).stream()).toList();
  }

  private static final class Steps implements Protocol.Part.Visitor<List<String>> {
    @Override
    public List<String> repeat(Protocol.Part.Repeat repeat) {
      boolean rests = !repeat.resting().equals(Term.of(Duration.ZERO));
      List<String> lines = new ArrayList<>();
      lines.add(
          "repeat "
              + (repeat.upTo() ? "up to " : "")
              + term(repeat.times(), t -> Integer.toString(t))
              + (rests ? " resting " + term(repeat.resting(), Written::time) : "")
              + " {");
      lines.addAll(lines(repeat.steps()));
      lines.add("}");
      return lines;
    }

    @Override
    public List<String> hold(Protocol.Part.Hold hold) {
      return List.of(
          "hold "
              + bound(hold.extent())
              + term(hold.time(), Written::seconds)
              + " at "
              + term(hold.level(), CatalogueLines::level));
    }

    @Override
    public List<String> rest(Protocol.Part.Rest rest) {
      return List.of(
          "rest " + term(rest.time(), Written::time) + Written.quotedIfPresent(rest.text()));
    }

    private static String bound(Extent extent) {
      return switch (extent) {
        case WHOLE -> "";
        case UP_TO -> "up to ";
        case TO_FAILURE -> "to-failure up to ";
      };
    }
  }

  private static <T> String term(Term<T> term, java.util.function.Function<T, String> fixed) {
    return term instanceof Term.Given<T> given
        ? given.parameter()
        : fixed.apply(((Term.Fixed<T>) term).value());
  }

  /** Returns a parameter and its value. */
  static String parameter(Map.Entry<String, Argument> parameter) {
    return parameter.getKey() + " " + argument(parameter.getValue());
  }

  private static String argument(Argument argument) {
    return argument.accept(
        new Argument.Visitor<String>() {
          @Override
          public String count(Argument.Count count) {
            return Integer.toString(count.times());
          }

          @Override
          public String time(Argument.Time time) {
            return Written.time(time.time());
          }

          @Override
          public String atLevel(Argument.AtLevel at) {
            return level(at.level());
          }
        });
  }

  static String level(Level level) {
    return level.accept(new Levels());
  }

  private static final class Levels implements Level.Visitor<String> {
    @Override
    public String ofMax(Level.OfMax share) {
      return Written.percent(share.fraction()) + " max";
    }

    @Override
    public String ofTest(Level.OfTest share) {
      return Written.percent(share.fraction()) + " of test";
    }

    @Override
    public String total(Level.Total total) {
      return Written.load(total.load());
    }

    @Override
    public String bodyMass(Level.BodyMass body) {
      double added = body.added().kilograms();
      String amount = Written.load(Load.ofKilograms(Math.abs(added)));
      return "body-mass" + (added == 0 ? "" : (added > 0 ? " + " : " - ") + amount);
    }

    @Override
    public String reserve(Level.Reserve reserve) {
      return "reserve " + Written.seconds(reserve.time());
    }

    @Override
    public String effort(Level.Effort effort) {
      return "effort " + Written.number(effort.outOfTen());
    }
  }
}
