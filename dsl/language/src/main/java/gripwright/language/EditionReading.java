package gripwright.language;

import gripwright.diff.Edition;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.season.CompiledPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One state of a coach's plans, read from a file or from all plan files of a folder, to be compared
 * with another. Immutable.
 *
 * <p>In a folder, each file that no other file uses is read with the files it uses, and its plans
 * are compiled. A plan that several of them use counts once, compiled with the one that uses the
 * most files.
 */
public final class EditionReading {

  /** The most plan files that a folder may have. */
  public static final int MOST_FILES = 1000;

  /** How deep folders are searched. */
  public static final int MOST_FOLDERS = 16;

  private final Edition edition;
  private final List<SourceFile> files;
  private final List<LocatedFinding> located;
  private final boolean fileRead;
  private final boolean usable;

  private EditionReading(
      Edition edition,
      List<SourceFile> files,
      List<LocatedFinding> located,
      boolean fileRead,
      boolean usable) {
    this.edition = edition;
    this.files = List.copyOf(files);
    this.located = List.copyOf(located);
    this.fileRead = fileRead;
    this.usable = usable;
  }

  /**
   * Reads and compiles a file, or all files of a folder and the folders in it whose names end in
   * {@code .grip}; links are not followed. All findings are kept.
   *
   * @param place a file or a folder; if it is a folder, {@code use} may read from it, unless the
   *     options say otherwise
   * @throws IOException if the folder can't be read, has no plan file, or more than {@link
   *     #MOST_FILES}; its message says which
   */
  public static EditionReading of(Path place, ReadOptions options) throws IOException {
    ReadOptions all = options.withAllFindings();
    if (!Files.isDirectory(place)) {
      return of(List.of(Gripwright.read(place, all)));
    }
    ReadOptions inFolder = all.root().isPresent() ? all : all.withRoot(place);
    List<Reading> readings = new ArrayList<>();
    for (Path file : files(place)) {
      readings.add(Gripwright.read(file, inFolder));
    }
    return of(mains(readings));
  }

  private static List<Path> files(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> walk = Files.walk(folder, MOST_FOLDERS)) {
      files =
          walk.filter(
                  f ->
                      f.toString().endsWith(".grip")
                          && Files.isRegularFile(f, LinkOption.NOFOLLOW_LINKS))
              .limit(MOST_FILES + 1L)
              .sorted()
              .toList();
    } catch (java.io.UncheckedIOException e) {
      throw new IOException("it can't be read", e);
    }
    if (files.isEmpty() || files.size() > MOST_FILES) {
      throw new IOException(
          files.isEmpty()
              ? "there is no plan file in it: none ends in .grip"
              : "it has more than " + MOST_FILES + " plan files");
    }
    return files;
  }

  /** Returns readings of the files that no other file uses, and of the first file of each cycle. */
  private static List<Reading> mains(List<Reading> readings) {
    Set<String> used = new HashSet<>();
    for (Reading reading : readings) {
      names(reading).stream()
          .filter(name -> !main(reading).equals(Optional.of(name)))
          .forEach(used::add);
    }
    List<Reading> mains =
        new ArrayList<>(
            readings.stream().filter(r -> main(r).filter(used::contains).isEmpty()).toList());
    Set<String> reached = new HashSet<>();
    mains.forEach(reading -> reached.addAll(names(reading)));
    for (Reading reading : readings) {
      if (main(reading).filter(name -> !reached.contains(name)).isPresent()) {
        mains.add(reading);
        reached.addAll(names(reading));
      }
    }
    return mains;
  }

  private static List<String> names(Reading reading) {
    return reading.files().stream().map(SourceFile::name).toList();
  }

  /** Returns the main file, which comes after those it uses; empty if it could not be read. */
  private static Optional<String> main(Reading reading) {
    List<String> names = names(reading);
    return names.isEmpty() ? Optional.empty() : Optional.of(names.get(names.size() - 1));
  }

  /** A compiled plan and the number of files it was compiled with. */
  private record Found(CompiledPlan plan, int files) {}

  private static EditionReading of(List<Reading> readings) {
    Edition.Builder edition = Edition.builder();
    List<LocatedFinding> located = new ArrayList<>();
    SortedMap<String, Found> plans = new TreeMap<>();
    SortedMap<String, SourceFile> files = new TreeMap<>();
    boolean read = true;
    boolean usable = true;
    for (Reading reading : readings) {
      Compilation compilation = reading.compile();
      reading.files().forEach(file -> files.putIfAbsent(file.name(), file));
      read &= reading.fileRead();
      usable &= compilation.usable();
      if (!reading.usable()) {
        edition.incomplete();
      }
      reading.athletes().values().forEach(edition::athlete);
      reading.logs().values().forEach(edition::log);
      reading.grips().values().forEach(edition::grip);
      reading.protocols().values().forEach(edition::protocol);
      reading.ruleSets().values().forEach(edition::rules);
      reading.cohorts().values().forEach(edition::cohort);
      reading.comparisons().values().forEach(edition::comparison);
      compilation.findings().forEach(edition::finding);
      located.addAll(compilation.located());
      for (CompiledPlan plan : compilation.plans()) {
        plans.merge(
            key(plan, reading),
            new Found(plan, reading.files().size()),
            (one, other) -> other.files() > one.files() ? other : one);
      }
    }
    plans.values().forEach(found -> edition.plan(found.plan()));
    return new EditionReading(
        edition.build(),
        List.copyOf(files.values()),
        located.stream().distinct().toList(),
        read,
        read && usable);
  }

  /**
   * Returns a key by file as well as name, since unrelated files may have plans of the same name.
   */
  private static String key(CompiledPlan plan, Reading reading) {
    Finding there = Finding.advice("plan", ModelPath.of("plan", plan.plan().name()));
    return String.join(
        " ", plan.plan().name(), plan.athlete().name(), reading.located(there).file().name());
  }

  /** Returns the compiled edition. */
  public Edition edition() {
    return edition;
  }

  /** Returns the files that were read, by name. */
  public List<SourceFile> files() {
    return files;
  }

  /** Returns the findings with their places in the text, by file, line and column. */
  public List<LocatedFinding> located() {
    return located;
  }

  /** Returns whether every file that was named or found could be read. */
  public boolean fileRead() {
    return fileRead;
  }

  /** Returns whether there is no unwaived error. */
  public boolean usable() {
    return usable;
  }
}
