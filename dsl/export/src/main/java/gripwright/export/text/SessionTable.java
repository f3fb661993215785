package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.grip.Setup;
import gripwright.history.ExerciseMatch;
import gripwright.log.LogEntry.Done;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.review.Review;
import gripwright.review.ReviewedSession;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Writes the last sessions of a review, each with its exercises. */
final class SessionTable {

  private static final int MOST = 12;

  private final Review review;
  private final Words words;

  SessionTable(Review review, Words words) {
    this.review = review;
    this.words = words;
  }

  void add(Page page) {
    List<ReviewedSession> all = review.sessions();
    List<ReviewedSession> shown = all.subList(Math.max(0, all.size() - MOST), all.size());
    if (shown.size() < all.size()) {
      page.wrapped("", words.say("reviewed.earlier", "shown", MOST, "earlier", all.size() - MOST));
    }
    for (ReviewedSession session : shown) {
      page.wrapped("", head(session));
      for (ReviewedSession.Work work : session.work()) {
        page.wrapped("  ", line(work.match()));
      }
    }
  }

  private String head(ReviewedSession session) {
    List<String> parts = new ArrayList<>();
    parts.add(
        session.outcome() == ReviewedSession.Outcome.PARTLY
            ? words.say("reviewed.outcome-partly", "short", words.commas(differences(session)))
            : words.of("reviewed.outcome", session.outcome()));
    if (session.planned().isPresent() && session.logged().isPresent()) {
      long days =
          ChronoUnit.DAYS.between(session.planned().get().date(), session.logged().get().date());
      if (days != 0) {
        parts.add(
            words.say(
                days > 0 ? "reviewed.planned-later" : "reviewed.planned-earlier",
                "date",
                words.day(session.planned().get().date()),
                "days",
                words.count("page.days", Math.abs(days))));
      }
    }
    if (session.trained()) {
      parts.add(words.say("reviewed.minutes", "minutes", Numbers.plain(session.minutes(), 0)));
      parts.add(
          session.load().isPresent()
              ? words.say(
                  "reviewed.session-load",
                  "effort",
                  Numbers.plain(session.effort().orElse(0), 1),
                  "load",
                  Numbers.plain(session.load().getAsDouble(), 0))
              : words.say("reviewed.no-effort"));
    }
    return words.say(
        "reviewed.session",
        "date",
        words.day(session.date()),
        "session",
        Page.clean(session.name()),
        "facts",
        words.commas(parts));
  }

  /** Returns how a session differs from the plan: in exercises, sets or load. */
  private List<String> differences(ReviewedSession session) {
    List<ExerciseMatch> lacking =
        session.work().stream()
            .map(ReviewedSession.Work::match)
            .filter(match -> match.planned().isPresent() && !match.asPlanned())
            .toList();
    long leftOut = lacking.stream().filter(match -> match.setsDone().orElse(0) == 0).count();
    long fewerSets =
        lacking.stream()
            .filter(match -> match.setsDone().orElse(0) > 0)
            .filter(ExerciseMatch::missedSets)
            .count();
    List<String> parts = new ArrayList<>();
    if (leftOut > 0) {
      parts.add(words.count("reviewed.lacking-exercise", leftOut));
    }
    if (fewerSets > 0) {
      parts.add(words.say("reviewed.lacking-sets"));
    }
    if (lacking.size() > leftOut + fewerSets) {
      parts.add(words.say("reviewed.lacking-load"));
    }
    if (session.work().stream().anyMatch(work -> work.match().heavier())) {
      parts.add(words.say("reviewed.more-load"));
    }
    return parts;
  }

  private String line(ExerciseMatch match) {
    String name =
        match
            .done()
            .map(done -> exercise(done.protocol(), done.setup()))
            .or(() -> match.planned().map(asked -> exercise(asked.protocol(), asked.setup())))
            .orElse("");
    List<String> parts = new ArrayList<>();
    if (match.done().isEmpty()) {
      parts.add(
          words.say(
              match.isUnloggedWarmUp() ? "reviewed.warm-up-not-logged" : "reviewed.not-done"));
    } else {
      Done done = match.done().get();
      parts.add(sets(match));
      done.load().ifPresent(load -> parts.add(load(load, match)));
      score("reviewed.effort", done.effort(), parts);
      score("reviewed.pain", done.pain(), parts);
      if (match.planned().isEmpty()) {
        parts.add(words.say("reviewed.not-asked"));
      }
    }
    parts.removeIf(String::isEmpty);
    return parts.isEmpty()
        ? name
        : words.say("page.said-of", "what", name, "sentence", words.commas(parts));
  }

  private String exercise(String protocol, Setup setup) {
    return words.say("reviewed.exercise", "protocol", protocol, "setup", setup);
  }

  private String sets(ExerciseMatch match) {
    if (match.setsDone().isEmpty()) {
      return "";
    }
    int done = match.setsDone().getAsInt();
    return match.setsPlanned().isPresent()
        ? words.say(
            match.planned().filter(asked -> asked.scheme().setsUpTo()).isPresent()
                ? "reviewed.sets-of-up-to"
                : "reviewed.sets-of",
            "done",
            done,
            "asked",
            words.count("page.sets", match.setsPlanned().getAsInt()))
        : words.count("page.sets", done);
  }

  private String load(Load load, ExerciseMatch match) {
    String done = Numbers.plain(load.kilograms(), 1) + " kg";
    return match
        .planned()
        .map(
            asked ->
                words.say(
                    "reviewed.load-of",
                    "done",
                    done,
                    "asked",
                    Numbers.plain(asked.totalLoad().kilograms(), 1) + " kg"))
        .orElse(done);
  }

  private void score(String key, OptionalDouble value, List<String> parts) {
    if (value.isPresent()) {
      parts.add(words.say(key, "score", Numbers.plain(value.getAsDouble(), 1)));
    }
  }
}
