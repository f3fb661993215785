package gripwright.language.resolve;

import gripwright.budget.Meter;
import gripwright.budget.Stage;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.Limits;
import gripwright.language.source.SourceFile;
import gripwright.language.source.SourceLoader;
import gripwright.language.source.SourceLoader.Loaded;
import gripwright.language.source.Span;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Reader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads a file and all files it uses, each once, and collects their declarations. */
public final class Resolver {

  /** The most files that one project may have. */
  public static final int MOST_FILES = 500;

  /** The most characters, in UTF-16 units, that the files of one project may have in all. */
  public static final int MOST_CHARACTERS = 16 << 20;

  private final SourceLoader loader;
  private final Limits limits;
  private final List<LocatedFinding> findings = new ArrayList<>();
  private final List<ParsedFile> files = new ArrayList<>();
  private final Map<String, String> trueNames = new HashMap<>();
  private final List<String> open = new ArrayList<>();
  private final Set<String> seen = new HashSet<>();
  private boolean complete = true;
  private long characters;

  private final Meter meter;

  private Resolver(SourceLoader loader, Limits limits, Meter meter) {
    this.meter = meter;
    this.loader = loader;
    this.limits = limits;
  }

  /** The {@code use} line that requests a file: its file, and the place of its path. */
  private record Request(SourceFile by, Span at) {}

  /**
   * Reads a file and what it uses.
   *
   * @param main the file, relative to the loader's root
   * @param loader where files come from
   * @param limits how much of each file is read
   * @param standard names of the catalogue
   */
  public static Project resolve(
      String main, SourceLoader loader, Limits limits, StandardNames standard) {
    return resolve(main, loader, limits, standard, Meter.unbounded());
  }

  /**
   * Reads a file and what it uses, within a budget.
   *
   * @param main the file, relative to the loader's root
   * @param loader where files come from
   * @param limits how much of each file is read
   * @param standard names of the catalogue
   * @param meter stops reading that is cancelled or out of time
   * @throws gripwright.budget.OverBudget if it does
   */
  public static Project resolve(
      String main, SourceLoader loader, Limits limits, StandardNames standard, Meter meter) {
    Resolver resolver = new Resolver(loader, limits, meter);
    SourceFile nobody = SourceFile.of(main, "");
    resolver.visit(main, new Request(nobody, new Span(0, 0)));
    boolean mainRead =
        resolver.complete || resolver.findings.stream().noneMatch(f -> f.file() == nobody);
    NameTable table = new NameTable(standard);
    resolver.files.forEach(table::add);
    resolver.findings.addAll(table.findings());
    return new Project(
        resolver.files, table.names(), resolver.complete, mainRead, resolver.findings);
  }

  private void visit(String path, Request request) {
    String known = trueNames.get(path);
    if (known != null) {
      enter(known, null, request);
      return;
    }
    Loaded loaded = loader.load(path, limits.maxCharacters());
    if (loaded instanceof Loaded.Found found) {
      trueNames.put(path, found.name());
      enter(found.name(), found.text(), request);
    } else {
      boolean reported = loaded instanceof Loaded.NotUtf8 broken && !seen.add(broken.name());
      if (loaded instanceof Loaded.NotUtf8 broken) {
        trueNames.put(path, broken.name());
      }
      LoadProblem.of(loaded, path, request.by(), request.at(), limits)
          .filter(problem -> !reported)
          .ifPresent(
              problem -> {
                complete = false;
                findings.add(problem);
              });
    }
  }

  private static Finding error(String code) {
    return Finding.error(code, ModelPath.ROOT);
  }

  private void report(Request request, Finding finding) {
    complete = false;
    findings.add(LocatedFinding.at(request.by(), request.at(), finding));
  }

  /** Starts a file unless it was read before; text is null only in that case. */
  private void enter(String name, @Nullable String text, Request request) {
    if (open.contains(name)) {
      List<String> cycle = new ArrayList<>(open.subList(open.indexOf(name), open.size()));
      cycle.add(name);
      findings.add(
          LocatedFinding.at(
              request.by(),
              request.at(),
              error("name.cycle").with("cycle", String.join(" → ", cycle))));
      return;
    }
    if (text == null || seen.contains(name)) {
      return;
    }
    if (seen.size() >= MOST_FILES) {
      report(request, error("name.too-many-files").with("limit", MOST_FILES));
      return;
    }
    characters += text.length();
    if (characters > MOST_CHARACTERS) {
      characters -= text.length();
      report(request, error("name.too-many-files").with("mebibytes", MOST_CHARACTERS >> 20));
      return;
    }
    seen.add(name);
    meter.progress(Stage.READING, files.size(), seen.size());
    ParsedFile file = Reader.parse(SourceFile.of(name, text), limits, meter);
    findings.addAll(file.findings());
    open.add(name);
    for (Declaration declaration : file.declarations()) {
      if (declaration instanceof Declaration.Use use) {
        follow(file, use);
      }
    }
    open.remove(open.size() - 1);
    files.add(file);
    meter.progress(Stage.READING, files.size(), seen.size());
  }

  private void follow(ParsedFile file, Declaration.Use use) {
    String wanted = use.path().value();
    Request request = new Request(file.source(), file.span(use.path().id()));
    if (wanted.indexOf('\\') >= 0) {
      report(request, error("name.backslash").with("file", wanted));
      return;
    }
    String path = inRoot(file.source().name(), wanted);
    if (path == null) {
      report(request, error("name.outside-root").with("file", wanted));
    } else {
      visit(path, request);
    }
  }

  private static boolean isOnDrive(String path) {
    char first = path.isEmpty() ? ' ' : Character.toLowerCase(path.charAt(0));
    return path.startsWith(":", 1) && first >= 'a' && first <= 'z';
  }

  /** Returns a path relative to the root, or null if it leads out of it. Touches no file. */
  private static @Nullable String inRoot(String from, String wanted) {
    if (wanted.startsWith("/") || isOnDrive(wanted)) {
      return null;
    }
    List<String> way = new ArrayList<>();
    int folder = from.lastIndexOf('/');
    String joined = (folder < 0 ? "" : from.substring(0, folder + 1)) + wanted;
    for (String step : joined.split("/", -1)) {
      if (step.equals("..")) {
        if (way.isEmpty()) {
          return null;
        }
        way.remove(way.size() - 1);
      } else if (!step.isEmpty() && !step.equals(".")) {
        way.add(step);
      }
    }
    return String.join("/", way);
  }
}
