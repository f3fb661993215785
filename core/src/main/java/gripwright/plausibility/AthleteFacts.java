package gripwright.plausibility;

import gripwright.athlete.Athlete;
import gripwright.athlete.Athlete.Experience;
import gripwright.athlete.Injury;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Severity;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Checks an athlete's training history and injuries for implausible dates. */
final class AthleteFacts {

  /** Minimum age for finger training, in months; the library's own choice. */
  private static final int YOUNGEST = 60;

  private final Known known;
  private final Athlete athlete;
  private final List<Finding> findings = new ArrayList<>();

  AthleteFacts(Known known) {
    this.known = known;
    this.athlete = known.athlete();
  }

  List<Finding> findings() {
    experience(athlete.trained(), athlete.path().then("trained", 1), Optional.empty());
    athlete
        .familiar()
        .forEach(
            each ->
                experience(
                    each.experience(),
                    athlete.path().then("familiar", each.grip()),
                    Optional.of(each.grip())));
    for (int i = 0; i < athlete.injuries().size(); i++) {
      injury(athlete.injuries().get(i), athlete.path().then("injury", i + 1));
    }
    return findings;
  }

  private void experience(Experience experience, ModelPath place, Optional<String> grip) {
    Optional<LocalDate> day = experience.asOf().or(known::writtenOn);
    if (day.isEmpty() || day.get().isBefore(athlete.born())) {
      return;
    }
    long age = athlete.ageInMonths(day.get());
    if (experience.months() <= Math.max(0, age - YOUNGEST)) {
      return;
    }
    Finding finding =
        known
            .ofAthlete("athlete.experience", Severity.ERROR, place)
            .with("months", Numbers.plain(experience.months(), 1))
            .with("date", day.get())
            .with("years", age / 12)
            .with("most", Math.max(0, age - YOUNGEST));
    findings.add(grip.map(name -> finding.with("grip", name)).orElse(finding));
  }

  private void injury(Injury injury, ModelPath place) {
    known
        .lastDay()
        .filter(last -> injury.from().isAfter(last))
        .ifPresent(
            last ->
                findings.add(
                    known
                        .ofAthlete("athlete.injury-later", Severity.ADVICE, place)
                        .with("injury", injury)
                        .with("date", injury.from())
                        .with("last", last)));
  }
}
