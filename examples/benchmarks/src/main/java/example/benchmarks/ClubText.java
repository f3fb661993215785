package example.benchmarks;

/** What all athletes of the invented club share. */
final class ClubText {

  static final String PROTOCOLS =
      """
      protocol club-tens "ten-second holds, long rests" {
        aim    maximal-strength
        given  work 10 s, level 70 % max, sets 4, pause 3 min
        repeat sets resting pause {
          hold work at level
        }
      }

      protocol club-repeats "seven on, three off" {
        aim    strength-endurance
        given  level 55 % max, sets 3
        repeat sets resting 4 min {
          repeat 6 resting 3 s {
            hold 7 s at level
          }
        }
      }

      protocol quiet-holds "long light holds" {
        aim    tissue-tolerance
        given  level 35 % max, sets 4
        repeat sets resting 60 s {
          hold 20 s at level
        }
        note   "nothing here should feel like work"
      }

      """;

  static final String GRIPS =
      """
      # Angles are flexion: 0 deg is a straight joint, 90 deg a right angle.
      grip club-open-four "four fingers, index and little as open as they go" {
        fingers  index, middle, ring, little
        family   open
        index    pip 40 deg within 20 deg, mcp 60 deg to 120 deg
        middle   pip 80 deg within 20 deg
        ring     pip 55 deg to 100 deg
        little   pip 0 deg to 30 deg
        caution  "slides out rather than holding on: let it"
      }

      """;

  static final String RULES =
      """
      # What the club asks on top of the built-in rules.
      rules club-rules "Skarvdal Climbing Club" {

        rule split-grips-late {
          severity error
          for      exercise
          when     grip.family is split
          require  athlete.trained >= 36 months and athlete.ability >= french 7b
          message  "split grips come after three years of finger training"
          source   "club rule"
        }

        rule small-edges {
          severity warning
          for      exercise
          when     not lifting
          require  edge >= 18 mm
          message  "an edge below 18 mm"
          source   "club rule"
        }

        rule short-evenings {
          severity warning
          for      session
          when     weekday is not sat
          require  minutes <= 90 min and count(exercises) <= 6
          message  "longer than the hall is ours"
          source   "club rule"
        }

        rule calm-weeks {
          severity warning
          for      week
          when     has previous and not previous.eased and not eased
          require  load <= 130 % of previous.load
          message  "the week grows by more than 30 %"
          source   "club rule"
        }

        rule split-volume {
          severity warning
          for      week
          require  sum(time-under-load of exercises where grip.family is split) <= 25 s
          message  "more than 25 s a week on split grips"
          source   "club rule"
        }

        rule an-easy-week-a-month {
          severity warning
          for      block
          when     length >= 4 weeks
          require  any(weeks where eased)
          message  "four weeks or more without an eased one"
          source   "club rule"
        }

        rule rest-after-hard-days {
          severity warning
          for      pair of sessions
          when     earlier.intensity is high and later.intensity is high and shared-fingers
          require  gap >= 48 h
          message  "two hard finger days closer than 48 hours"
          source   "club rule"
        }
      }

      """;

  private ClubText() {}
}
