package gripwright.export.text;

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

/** The last sessions of a review, each with its exercises. */
final class SessionTable {

  private static final int MOST = 12;

  private final Review review;

  SessionTable(Review review) {
    this.review = review;
  }

  void add(Page page) {
    List<ReviewedSession> all = review.sessions();
    List<ReviewedSession> shown = all.subList(Math.max(0, all.size() - MOST), all.size());
    if (shown.size() < all.size()) {
      page.wrapped(
          "",
          "The last " + MOST + "; " + (all.size() - MOST) + " earlier ones are in JSON and CSV.");
    }
    for (ReviewedSession session : shown) {
      page.wrapped("", head(session));
      for (ReviewedSession.Work work : session.work()) {
        page.wrapped("  ", line(work.match()));
      }
    }
  }

  private static String head(ReviewedSession session) {
    List<String> parts = new ArrayList<>();
    parts.add(outcome(session));
    if (session.planned().isPresent() && session.logged().isPresent()) {
      long days =
          ChronoUnit.DAYS.between(session.planned().get().date(), session.logged().get().date());
      if (days != 0) {
        parts.add(
            "planned for "
                + Page.day(session.planned().get().date())
                + ", "
                + Page.count(Math.abs(days), "day")
                + (days > 0 ? " later" : " earlier"));
      }
    }
    if (session.trained()) {
      parts.add(Numbers.plain(session.minutes(), 0) + " min");
      parts.add(
          session.load().isPresent()
              ? "effort "
                  + Numbers.plain(session.effort().orElse(0), 1)
                  + ", load "
                  + Numbers.plain(session.load().getAsDouble(), 0)
              : "no effort written");
    }
    return Page.day(session.date())
        + " "
        + Page.clean(session.name())
        + ": "
        + String.join(", ", parts);
  }

  private static String outcome(ReviewedSession session) {
    return switch (session.outcome()) {
      case DONE -> "as asked";
      case PARTLY -> "in part";
      case SKIPPED -> "skipped";
      case UNLOGGED -> "no line in the log";
      case UNPLANNED -> "not planned";
    };
  }

  private static String line(ExerciseMatch match) {
    String name =
        match
            .done()
            .map(done -> done.protocol() + " on " + done.setup())
            .or(() -> match.asked().map(asked -> asked.protocol() + " on " + asked.setup()))
            .orElse("");
    List<String> parts = new ArrayList<>();
    if (match.done().isEmpty()) {
      parts.add("not done");
    } else {
      Done done = match.done().get();
      parts.add(sets(match));
      done.load().ifPresent(load -> parts.add(load(load, match)));
      score("effort", done.effort(), parts);
      score("pain", done.pain(), parts);
      if (match.asked().isEmpty()) {
        parts.add("not asked");
      }
    }
    parts.removeIf(String::isEmpty);
    return parts.isEmpty() ? name : name + ": " + String.join(", ", parts);
  }

  private static String sets(ExerciseMatch match) {
    if (match.setsDone().isEmpty()) {
      return "";
    }
    int done = match.setsDone().getAsInt();
    return match.setsAsked().isPresent()
        ? done + " of " + Page.count(match.setsAsked().getAsInt(), "set")
        : Page.count(done, "set");
  }

  private static String load(Load load, ExerciseMatch match) {
    String done = Numbers.plain(load.kilograms(), 1) + " kg";
    return match
        .asked()
        .map(asked -> done + " of " + Numbers.plain(asked.totalLoad().kilograms(), 1) + " kg asked")
        .orElse(done);
  }

  private static void score(String what, OptionalDouble value, List<String> parts) {
    if (value.isPresent()) {
      parts.add(what + " " + Numbers.plain(value.getAsDouble(), 1));
    }
  }
}
