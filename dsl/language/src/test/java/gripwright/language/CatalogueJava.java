package gripwright.language;

import gripwright.grip.Band;
import gripwright.grip.Grip;
import gripwright.grip.Prerequisites;
import gripwright.hand.Finger;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Protocol.Part;
import gripwright.protocol.Term;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes the catalogue's grips and protocols as the Java of core; the formatter does the rest. */
final class CatalogueJava {

  private CatalogueJava() {}

  private static String header(String file) {
    return """
        // Generated from %s by CatalogueTest of the language module, which proves the two equal.
        // Run that test with -Dgripwright.bless=true, then the formatter, to write this file anew;
        // do not edit it.
        """
        .formatted(file);
  }

  static String grips(List<Grip> grips) {
    StringBuilder java = new StringBuilder(header("grips.grip"));
    java.append(
        """
        package gripwright.grip;

        import gripwright.hand.Finger;
        import gripwright.hand.Joint;
        import java.util.Collections;
        import java.util.List;
        import java.util.Map;
        import java.util.Optional;
        import java.util.SortedMap;
        import java.util.TreeMap;

        /** The grips of the catalogue. */
        public final class StandardGrips {
        """);
    for (Grip grip : grips) {
      java.append("\n  /** ").append(sentence(grip.title().orElse(grip.name()))).append(" */\n");
      java.append("  public static final Grip ").append(constant(grip.name())).append(" =\n");
      java.append(grip(grip)).append(";\n");
    }
    String all =
        grips.stream().map(grip -> constant(grip.name())).collect(Collectors.joining(", "));
    java.append(tail("StandardGrips", "Grip", "grip", all));
    return java.toString();
  }

  private static String tail(String type, String element, String word, String all) {
    return """

          private static final List<%2$s> ALL = List.of(%4$s);

          private %1$s() {}

          /** Returns every %3$s of the catalogue, in the order of the names. */
          public static List<%2$s> all() {
            return ALL;
          }

          /** Returns every %3$s of the catalogue by name. */
          public static SortedMap<String, %2$s> byName() {
            TreeMap<String, %2$s> byName = new TreeMap<>();
            ALL.forEach(%3$s -> byName.put(%3$s.name(), %3$s));
            return Collections.unmodifiableSortedMap(byName);
          }
        }
        """
        .formatted(type, element, word, all);
  }

  private static String grip(Grip grip) {
    StringBuilder java = new StringBuilder("Grip.named(" + text(grip.name()) + ")");
    grip.title().ifPresent(title -> java.append(".title(").append(text(title)).append(")"));
    java.append(".family(GripFamily.").append(grip.family().name()).append(")");
    java.append(".fingers(")
        .append(
            grip.fingers().fingers().stream()
                .map((Finger finger) -> "Finger." + finger.name())
                .collect(Collectors.joining(", ")))
        .append(")");
    grip.bands()
        .forEach(
            (at, band) ->
                java.append(".band(Finger.")
                    .append(at.finger().name())
                    .append(", Joint.")
                    .append(at.joint().name())
                    .append(", ")
                    .append(band(band))
                    .append(")"));
    if (!grip.needs().isNone()) {
      java.append(".needs(").append(needs(grip.needs())).append(")");
    }
    grip.cautions().forEach(caution -> java.append(".caution(").append(text(caution)).append(")"));
    grip.notes().forEach(note -> java.append(".note(").append(text(note)).append(")"));
    return java.append(".build()").toString();
  }

  private static String band(Band band) {
    return "Band.degrees(" + band.low().degrees() + ", " + band.high().degrees() + ")";
  }

  private static String needs(Prerequisites needs) {
    if (needs.ability().isPresent()) {
      throw new IllegalStateException("the catalogue asks for no ability beyond the rules so far");
    }
    String familiar =
        new TreeMap<>(needs.familiar())
            .entrySet().stream()
                .map(entry -> text(entry.getKey()) + ", " + entry.getValue())
                .collect(Collectors.joining(", "));
    return "new Prerequisites("
        + needs.trainedMonths()
        + ", Optional.empty(), Map.of("
        + familiar
        + "))";
  }

  static String protocols(List<Protocol> protocols) {
    StringBuilder java = new StringBuilder(header("protocols.grip"));
    java.append(
        """
        package gripwright.protocol;

        import gripwright.protocol.Protocol.Part;
        import java.time.Duration;
        import java.util.Collections;
        import java.util.List;
        import java.util.SortedMap;
        import java.util.TreeMap;

        /** The protocols of the catalogue. */
        public final class StandardProtocols {
        """);
    for (Protocol protocol : protocols) {
      java.append("\n  /** ")
          .append(sentence(protocol.title().orElse(protocol.name())))
          .append(" */\n");
      java.append("  public static final Protocol ")
          .append(constant(protocol.name()))
          .append(" =\n");
      java.append(protocol(protocol)).append(";\n");
    }
    String all = protocols.stream().map(p -> constant(p.name())).collect(Collectors.joining(", "));
    java.append(tail("StandardProtocols", "Protocol", "protocol", all));
    return java.toString();
  }

  private static String protocol(Protocol protocol) {
    StringBuilder java = new StringBuilder("Protocol.named(" + text(protocol.name()) + ")");
    protocol.title().ifPresent(title -> java.append(".title(").append(text(title)).append(")"));
    protocol.aim().ifPresent(aim -> java.append(".aim(").append(text(aim)).append(")"));
    protocol.notes().forEach(note -> java.append(".note(").append(text(note)).append(")"));
    protocol
        .parameters()
        .forEach(
            (name, value) ->
                java.append(".given(")
                    .append(text(name))
                    .append(", ")
                    .append(argument(value))
                    .append(")"));
    protocol.steps().forEach(part -> java.append(".step(").append(part(part)).append(")"));
    return java.append(".build()").toString();
  }

  private static String argument(Argument argument) {
    if (argument instanceof Argument.Count count) {
      return Integer.toString(count.times());
    }
    return argument instanceof Argument.Time time
        ? duration(time.time())
        : level(((Argument.AtLevel) argument).level());
  }

  private static String part(Part part) {
    if (part instanceof Part.Hold hold) {
      return "new Part.Hold(" + term(hold.time()) + ", " + term(hold.level()) + ")";
    }
    if (part instanceof Part.Rest rest) {
      return "new Part.Rest(" + term(rest.time()) + ")";
    }
    Part.Repeat repeat = (Part.Repeat) part;
    return "new Part.Repeat("
        + term(repeat.times())
        + ", "
        + term(repeat.resting())
        + ", List.of("
        + repeat.steps().stream().map(CatalogueJava::part).collect(Collectors.joining(", "))
        + "))";
  }

  private static String term(Term<?> term) {
    if (term instanceof Term.Given<?> given) {
      return "Term.given(" + text(given.parameter()) + ")";
    }
    Object value = ((Term.Fixed<?>) term).value();
    String java =
        value instanceof Duration duration
            ? duration(duration)
            : value instanceof Level level ? level(level) : value.toString();
    return "Term.of(" + java + ")";
  }

  private static String duration(Duration duration) {
    return duration.toMillis() % 60_000 == 0 && !duration.isZero()
        ? "Duration.ofMinutes(" + duration.toMinutes() + ")"
        : "Duration.ofMillis(" + duration.toMillis() + ")";
  }

  private static String level(Level level) {
    if (level instanceof Level.OfMax share) {
      return "Level.ofMax("
          + BigDecimal.valueOf(share.fraction())
              .movePointRight(2)
              .stripTrailingZeros()
              .toPlainString()
          + ")";
    }
    if (level instanceof Level.Reserve reserve) {
      return "Level.reserve(" + duration(reserve.time()) + ")";
    }
    throw new IllegalStateException("not in the catalogue so far: " + level);
  }

  private static String constant(String name) {
    return name.toUpperCase(Locale.ROOT).replace('-', '_');
  }

  private static String sentence(String title) {
    return title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1) + ".";
  }

  private static String text(String value) {
    return "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
