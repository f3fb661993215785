package gripwright.language.write.internal;

import gripwright.athlete.Athlete;
import gripwright.athlete.Athlete.Experience;
import gripwright.athlete.Equipment;
import gripwright.athlete.Injury;
import gripwright.athlete.Slot;
import gripwright.athlete.Span;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.quantity.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

/** Writes athletes. */
final class AthleteLines {

  private final Lines out = new Lines();

  private AthleteLines() {}

  static String of(Athlete athlete) {
    AthleteLines lines = new AthleteLines();
    lines.athlete(athlete);
    return lines.out.text();
  }

  private void athlete(Athlete athlete) {
    String title = athlete.title().equals(athlete.name()) ? "" : " " + quoted(athlete.title());
    out.add("athlete " + athlete.name() + title + " {");
    out.add("born " + athlete.born());
    athlete.sex().ifPresent(sex -> out.add("sex " + sex.word()));
    out.add("body-mass " + Written.load(athlete.bodyMass()));
    out.add("trained " + experience(athlete.trained()));
    out.add("ability " + athlete.ability());
    hands(athlete.left(), athlete.right());
    for (Athlete.Familiarity grip : athlete.familiar()) {
      out.add("familiar " + grip.grip() + " " + experience(grip.experience()));
    }
    athlete.injuries().forEach(this::injury);
    available(athlete.available());
    out.list(
        "climbing ",
        athlete.climbing(),
        day -> Written.weekday(day.day()) + " " + day.how() + " " + Written.time(day.time()));
    for (Athlete.Absence away : athlete.away()) {
      String to = away.to().equals(away.from()) ? "" : " to " + away.to();
      out.add("away " + away.from() + to + Written.quotedIfPresent(away.note()));
    }
    athlete.plainEquipment().ifPresent(plain -> equipment("equipment {", plain));
    athlete.equipmentAt().forEach((place, own) -> equipment("equipment at " + place + " {", own));
    out.add("}");
  }

  /** Writes a line for the weekdays, for each time that is in force for a while, and for dates. */
  private void available(List<Slot> slots) {
    out.list(
        "available ",
        slots.stream().filter(s -> s.on().span().isEmpty() && s.on().date().isEmpty()).toList(),
        AthleteLines::slot);
    slots.stream()
        .flatMap(s -> s.on().span().stream())
        .distinct()
        .forEach(
            span ->
                out.list(
                    "available " + span(span) + " ",
                    slots.stream().filter(s -> s.on().span().equals(Optional.of(span))).toList(),
                    AthleteLines::slot));
    out.list(
        "available ",
        slots.stream().filter(s -> s.on().date().isPresent()).toList(),
        AthleteLines::slot);
  }

  private static String span(Span span) {
    return "from "
        + span.from()
        + span.to().map(day -> " to " + day).orElse("")
        + (span.everyWeeks() > 1 ? " every " + span.everyWeeks() + " weeks" : "");
  }

  private static String slot(Slot slot) {
    return slot.on()
            .date()
            .map(LocalDate::toString)
            .orElseGet(() -> Written.weekday(slot.on().weekday()))
        + slot.at().map(time -> " " + time).orElse("")
        + " "
        + Written.time(slot.time())
        + slot.place().map(place -> " at " + place).orElse("");
  }

  private static String quoted(String text) {
    return Written.quoted(text);
  }

  private static String experience(Experience experience) {
    return Written.months(experience.months())
        + experience.asOf().map(day -> " as of " + day).orElse("");
  }

  private void injury(Injury injury) {
    out.add(
        "injury "
            + injury.finger().word()
            + " "
            + injury.structure().word()
            + injury.side().map(side -> " " + side.word()).orElse("")
            + " from "
            + injury.from()
            + injury.cleared().map(day -> " cleared " + day).orElse("")
            + injury.clearedBy().map(who -> " by " + Written.quoted(who)).orElse("")
            + Written.quotedIfPresent(injury.note()));
  }

  private void equipment(String heading, Equipment equipment) {
    out.add(heading);
    out.list("edges ", equipment.edges(), Written::length);
    equipment.added().ifPresent(steps -> steps("added ", steps));
    equipment.assist().ifPresent(steps -> steps("assist ", steps));
    out.add("}");
  }

  private void steps(String kind, Equipment.Steps steps) {
    out.add(kind + Written.load(steps.step()) + " steps to " + Written.load(steps.limit()));
  }

  /** Writes the measures that both hands share, and then those of each hand. */
  private void hands(Hand left, Hand right) {
    out.add("hand {");
    measures(left, (hand, what) -> what.apply(left).equals(what.apply(right)));
    if (!left.equals(right)) {
      side("left {", left, right);
      side("right {", right, left);
    }
    out.add("}");
  }

  private void side(String heading, Hand own, Hand other) {
    out.add(heading);
    measures(own, (hand, what) -> !what.apply(own).equals(what.apply(other)));
    out.add("}");
  }

  /** One measure of a hand. */
  private interface Measure {
    Optional<?> apply(Hand hand);
  }

  private void measures(Hand hand, BiPredicate<Hand, Measure> wanted) {
    if (wanted.test(hand, h -> Optional.of(h.length()))) {
      out.add("length " + Written.length(hand.length()));
    }
    if (wanted.test(hand, Hand::breadth)) {
      hand.breadth().ifPresent(breadth -> out.add("breadth " + Written.length(breadth)));
    }
    for (Finger finger : Finger.values()) {
      List<String> parts = new ArrayList<>();
      for (Segment segment : Segment.values()) {
        Measure bone = h -> Optional.ofNullable(h.bones().get(new Hand.Bone(finger, segment)));
        if (wanted.test(hand, bone)) {
          bone.apply(hand).ifPresent(l -> parts.add(segment + " " + Written.length((Length) l)));
        }
      }
      for (Joint joint : Joint.values()) {
        Measure limit = h -> h.limits().of(finger, joint);
        if (wanted.test(hand, limit)) {
          limit.apply(hand).ifPresent(r -> parts.add(joint + " " + range((FlexionRange) r)));
        }
      }
      if (!parts.isEmpty()) {
        out.add(finger.word() + " " + String.join(", ", parts));
      }
    }
    List<String> knuckles = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      Measure knuckle = h -> Optional.ofNullable(h.knuckles().get(finger));
      if (wanted.test(hand, knuckle)) {
        knuckle
            .apply(hand)
            .ifPresent(l -> knuckles.add(finger.word() + " " + Written.length((Length) l)));
      }
    }
    out.list("knuckles ", knuckles, k -> k);
  }

  private static String range(FlexionRange range) {
    return Written.angle(range.low()) + " to " + Written.angle(range.high());
  }
}
