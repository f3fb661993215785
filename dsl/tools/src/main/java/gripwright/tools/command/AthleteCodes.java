package gripwright.tools.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;

/**
 * Codes that stand for athletes in exports. The key file is a CSV with the line {@code
 * athlete,code} first, and lies outside the folder that is exported.
 */
final class AthleteCodes {

  private static final String HEADING = "athlete,code";
  private static final int BYTES = 4;

  private AthleteCodes() {}

  /**
   * Returns the code of each athlete. A key file that doesn't exist is made with random codes.
   *
   * @throws UsageException if the file lies in the folder, can't be read, or lacks an athlete
   */
  static Map<String, String> of(Arguments given, Path folder, SortedSet<String> athletes)
      throws UsageException {
    String written = given.value(Arguments.CODES).orElseThrow();
    Path file = given.path(written);
    if (file.toAbsolutePath().normalize().startsWith(folder.toAbsolutePath().normalize())) {
      throw new UsageException(
          "`" + written + "` lies in the exported folder; keep the key file elsewhere");
    }
    if (!Files.exists(file)) {
      Output.replace(file, fresh(athletes));
    }
    Map<String, String> codes = read(file, written);
    for (String athlete : athletes) {
      if (!codes.containsKey(athlete)) {
        throw new UsageException(
            "`"
                + written
                + "` has no code for `"
                + athlete
                + "`; add a line `"
                + athlete
                + ",CODE`");
      }
    }
    return codes;
  }

  private static String fresh(SortedSet<String> athletes) {
    SecureRandom random = new SecureRandom();
    StringBuilder text = new StringBuilder(HEADING).append('\n');
    Set<String> used = new HashSet<>();
    for (String athlete : athletes) {
      String code;
      do {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        code = "p-" + HexFormat.of().formatHex(bytes);
      } while (!used.add(code));
      text.append(athlete).append(',').append(code).append('\n');
    }
    return text.toString();
  }

  private static Map<String, String> read(Path file, String written) throws UsageException {
    Map<String, String> codes = new LinkedHashMap<>();
    try {
      int number = 0;
      for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
        number++;
        String[] parts = line.strip().split(",", -1);
        boolean heading = number == 1 && line.strip().equals(HEADING);
        if (heading || line.isBlank()) {
          continue;
        }
        boolean right = parts.length == 2 && parts[1].matches("[A-Za-z0-9-]{1,40}");
        if (!right || codes.put(parts[0].strip(), parts[1]) != null) {
          throw new UsageException(
              "line "
                  + number
                  + " of `"
                  + written
                  + "` is not `athlete,code`, or an athlete"
                  + " comes twice; codes have letters, digits and hyphens");
        }
      }
    } catch (IOException e) {
      throw new UsageException("cannot read `" + written + "`: " + e.getMessage());
    }
    return codes;
  }
}
