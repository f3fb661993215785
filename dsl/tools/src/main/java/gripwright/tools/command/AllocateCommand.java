package gripwright.tools.command;

import gripwright.compare.Arm;
import gripwright.compare.Comparison;
import gripwright.export.csv.CsvRows;
import gripwright.finding.Nearest;
import gripwright.language.Gripwright;
import gripwright.language.Reading;
import gripwright.quantity.Numbers;
import gripwright.trial.Allocation;
import gripwright.trial.Allocation.Design;
import gripwright.trial.Allocation.Label;
import gripwright.trial.Allocation.Line;
import gripwright.trial.DetectableChange;
import gripwright.trial.SampleSize;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** {@code allocate}: sample size, and who of a trial gets which arm. */
public final class AllocateCommand {

  /** What {@code allocate --help} prints. */
  public static final String HELP =
      """
      gripwright allocate --new-key KEYFILE
      gripwright allocate --effect D [--power P] [--alpha A] [--correlation R]
                          [--dropout SHARE] [--noise CV]
      gripwright allocate FILE NAME --key KEYFILE --participants N [--strata A,B,...]
                          [--reveal NUMBER [--stratum A] --log FILE] [--list]
                          [--labels] [--assessor FOLDER [--visits A,B,...]]

      Plans a trial of the arms of a comparison. Allocation is by permuted blocks of two
      or three times the number of arms, in random order, within strata. It follows from
      a secret key: without it nobody can foresee who is next. Without --reveal, --list,
      --labels and --assessor it prints the commitment, which can be published
      beforehand: the SHA-256 of key, salt and list.

        --new-key KEYFILE   writes a new random key; keep it outside the project
        --effect D          smallest difference of interest, in standard deviations:
                            prints the number of participants of an arm
        --power P           0.8 by default
        --alpha A           two-sided level, 0.05 by default
        --correlation R     of the outcome with a test before the trial; 0 by default
        --dropout SHARE     share of the participants who leave, such as 0.2
        --noise CV          typical error of the test as a share of its value, such as
                            0.056: prints the change of one person that is not noise
        --key KEYFILE       the key
        --participants N    of each stratum
        --strata A,B        names of the strata; one stratum `all` by default
        --reveal NUMBER     prints the arm of the next participant of a stratum
        --stratum A         which stratum; needed if there are several
        --log FILE          keeps who was revealed: a participant is revealed only after
                            the one before, and is written there
        --list              prints the whole list, for the end of the trial
        --labels            prints the label of each participant, without arms, for
                            those who include: the participant brings it to every visit
        --assessor FOLDER   writes the participants by label with their visits, for
                            those who measure, with `datapackage.json`: no arm, stratum
                            or order of inclusion; an existing folder must be empty or
                            ours
        --visits A,B        the visits in their order, the same for everybody: days such
                            as 2027-01-31, or names; `before,after` by default
        --root DIR          the folder that `use` may read from; the file's own by
                            default

      Exit: 0 no errors, 1 errors in the files, 2 wrong usage or a file that can't be
      read.
      """;

  private AllocateCommand() {}

  /**
   * Runs the command and returns the exit code.
   *
   * @throws UsageException if the arguments are wrong
   */
  public static int run(List<String> arguments, Console console) throws UsageException {
    Arguments given =
        Arguments.parse(
            arguments,
            console,
            Arguments.NEW_KEY,
            Arguments.EFFECT,
            Arguments.POWER,
            Arguments.ALPHA,
            Arguments.CORRELATION,
            Arguments.DROPOUT,
            Arguments.NOISE,
            Arguments.KEY,
            Arguments.PARTICIPANTS,
            Arguments.STRATA,
            Arguments.REVEAL,
            Arguments.STRATUM,
            Arguments.LOG,
            Arguments.LIST,
            Arguments.LABELS,
            Arguments.ASSESSOR,
            Arguments.VISITS,
            Arguments.ROOT);
    AssessorFolder.checkOptions(given);
    if (given.value(Arguments.NEW_KEY).isPresent()) {
      String written = given.value(Arguments.NEW_KEY).get();
      AllocationKey.create(given.path(written), written);
      console.out(
          "A new key is in " + written + ". Keep it outside the project, and in one place.\n");
      return Exit.FINE;
    }
    if (given.value(Arguments.EFFECT).isPresent()) {
      console.out(sizes(given));
      return Exit.FINE;
    }
    if (given.rest().size() != 2) {
      throw new UsageException(
          "allocate needs a file and the name of a comparison: gripwright allocate FILE NAME"
              + " --key KEYFILE --participants N");
    }
    String file = given.rest().get(0);
    Reading reading = Gripwright.read(given.path(file), given.readOptions());
    if (!reading.usable()) {
      Refusal.write(reading.files(), reading.findings(), reading.located(), given, console);
      return reading.fileRead() ? Exit.ERRORS : Exit.USAGE;
    }
    Allocation allocation = allocation(given, comparison(reading, given, file));
    if (given.has(Arguments.ASSESSOR)) {
      console.out(AssessorFolder.write(allocation, given));
    } else if (given.value(Arguments.REVEAL).isPresent()) {
      console.out(reveal(allocation, given));
    } else if (given.has(Arguments.LABELS)) {
      console.out(labels(allocation));
    } else if (given.has(Arguments.LIST)) {
      console.out(allocation.text());
      console.err("commitment " + allocation.commitment() + "\n");
    } else {
      console.out(described(allocation));
    }
    return Exit.FINE;
  }

  private static String sizes(Arguments given) throws UsageException {
    double effect = number(given, Arguments.EFFECT).orElseThrow();
    try {
      SampleSize size =
          SampleSize.of(effect)
              .power(number(given, Arguments.POWER).orElse(0.8))
              .alpha(number(given, Arguments.ALPHA).orElse(0.05))
              .covariate(number(given, Arguments.CORRELATION).orElse(0))
              .dropout(number(given, Arguments.DROPOUT).orElse(0));
      StringBuilder text = new StringBuilder();
      text.append(size.completing()).append(" participants of each arm who complete the trial\n");
      text.append(size.beginning()).append(" participants of each arm to begin with\n");
      OptionalDouble noise = number(given, Arguments.NOISE);
      if (noise.isPresent()) {
        DetectableChange change = DetectableChange.ofVariation(noise.getAsDouble());
        text.append("minimal detectable change of one person: ")
            .append(Numbers.plain(change.at95() * 100, 2))
            .append(" % of the value\n")
            .append(
                """
                An effect in a group may be smaller. Where it is, single persons can't be
                classified as having changed or not.
                """);
      }
      return text.toString();
    } catch (IllegalArgumentException e) {
      throw new UsageException("these numbers don't go together: " + e.getMessage());
    }
  }

  private static OptionalDouble number(Arguments given, Arguments.Spec spec) throws UsageException {
    Optional<String> written = given.value(spec);
    if (written.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (written.get().matches("-?\\d+(\\.\\d+)?")) {
      return OptionalDouble.of(Double.parseDouble(written.get()));
    }
    throw new UsageException(
        "--" + spec.name() + " is a number such as 0.5, not `" + written.get() + "`");
  }

  private static Comparison comparison(Reading reading, Arguments given, String file)
      throws UsageException {
    String name = given.rest().get(1);
    Set<String> names = reading.comparisons().keySet();
    Comparison comparison = reading.comparisons().get(name);
    if (comparison == null) {
      throw new UsageException(
          "there is no comparison `"
              + name
              + "` in "
              + file
              + Nearest.to(name, names)
                  .map(nearest -> "; did you mean `" + nearest + "`?")
                  .orElse(names.isEmpty() ? "" : "; it has " + String.join(", ", names)));
    }
    return comparison;
  }

  private static Allocation allocation(Arguments given, Comparison comparison)
      throws UsageException {
    Optional<String> written = given.value(Arguments.KEY);
    Optional<Integer> participants = given.count(Arguments.PARTICIPANTS, 1, Allocation.MOST);
    if (written.isEmpty() || participants.isEmpty()) {
      throw new UsageException("allocate needs --key KEYFILE and --participants N");
    }
    Path project = given.path(given.rest().get(0)).toAbsolutePath().normalize().getParent();
    AllocationKey key = AllocationKey.read(given.path(written.get()), written.get(), project);
    List<String> strata =
        given
            .value(Arguments.STRATA)
            .map(names -> List.of(names.split(",", -1)))
            .orElse(List.of("all"));
    List<String> arms = new ArrayList<>();
    comparison.arms().stream().map(Arm::name).forEach(arms::add);
    try {
      return Allocation.of(new Design(arms, strata, participants.get()), key.key(), key.salt());
    } catch (IllegalArgumentException e) {
      throw new UsageException("such an allocation can't be made: " + e.getMessage());
    }
  }

  private static String labels(Allocation allocation) {
    List<List<String>> rows = new ArrayList<>(List.of(List.of("stratum", "number", "label")));
    for (Label label : allocation.labels()) {
      rows.add(List.of(label.stratum(), Integer.toString(label.number()), label.text()));
    }
    return CsvRows.lines(rows);
  }

  private static String described(Allocation allocation) {
    Design design = allocation.design();
    return "arms: "
        + String.join(", ", design.arms())
        + "\nstrata: "
        + String.join(", ", design.strata())
        + ", "
        + design.participants()
        + " participants each\nblocks: 2 or 3 times the number of arms, in random order\n"
        + "commitment: "
        + allocation.commitment()
        + "\n\nPublish the commitment before the trial. Reveal one participant at a time with\n"
        + "--reveal NUMBER --log FILE, after the participant is included.\n";
  }

  private static String reveal(Allocation allocation, Arguments given) throws UsageException {
    Design design = allocation.design();
    int number = given.count(Arguments.REVEAL, 1, design.participants()).orElseThrow();
    String stratum =
        given
            .value(Arguments.STRATUM)
            .orElse(design.strata().size() == 1 ? design.strata().get(0) : "");
    if (!design.strata().contains(stratum)) {
      throw new UsageException("--stratum is one of " + String.join(", ", design.strata()));
    }
    Optional<String> written = given.value(Arguments.LOG);
    if (written.isEmpty()) {
      throw new UsageException("--reveal needs --log FILE, which keeps who was revealed");
    }
    RevealedLog log = RevealedLog.read(given.path(written.get()), written.get());
    log.checkList(allocation.commitment());
    int last = log.last(stratum);
    if (number > last + 1) {
      throw new UsageException(
          "participant "
              + (last + 1)
              + " of `"
              + stratum
              + "` is next: participants are revealed one after the other");
    }
    Line line = allocation.line(stratum, number);
    if (number == last + 1) {
      log.append(line, allocation.commitment());
    }
    return "participant " + number + " of " + stratum + ": " + line.arm() + "\n";
  }
}
