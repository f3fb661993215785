package gripwright.tools.command;

import gripwright.trial.Allocation;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The secret key of an allocation and its salt, in a file of two lines. */
final class AllocationKey {

  private static final int BYTES = 32;
  private static final Pattern FORM =
      Pattern.compile("key ([0-9a-f]{32,})\\s+salt ([0-9a-f]{32,})\\s*");

  private final byte[] key;
  private final byte[] salt;

  private AllocationKey(byte[] key, byte[] salt) {
    this.key = key;
    this.salt = salt;
  }

  byte[] key() {
    return key.clone();
  }

  byte[] salt() {
    return salt.clone();
  }

  /**
   * Writes a new key.
   *
   * @throws UsageException if the file exists, since a key must not be lost, or can't be written
   */
  static void create(Path file, String written) throws UsageException {
    if (Files.exists(file)) {
      throw new UsageException(
          "`" + written + "` exists; a key is never overwritten, since its list would be lost");
    }
    SecureRandom random = new SecureRandom();
    byte[] bytes = new byte[2 * BYTES];
    random.nextBytes(bytes);
    String hex = HexFormat.of().formatHex(bytes);
    Output.replace(
        file, "key " + hex.substring(0, 2 * BYTES) + "\nsalt " + hex.substring(2 * BYTES) + "\n");
  }

  /**
   * Reads a key.
   *
   * @param project the folder of the plan file, in which no key may lie
   * @throws UsageException if it lies there, can't be read, or isn't a key
   */
  static AllocationKey read(Path file, String written, @Nullable Path project)
      throws UsageException {
    if (project != null && file.toAbsolutePath().normalize().startsWith(project)) {
      throw new UsageException("`" + written + "` lies in the project; keep the key outside it");
    }
    try {
      Matcher found = FORM.matcher(Files.readString(file, StandardCharsets.UTF_8));
      if (found.matches()
          && found.group(1).length() % 2 == 0
          && found.group(2).length() % 2 == 0
          && found.group(1).length() >= 2 * Allocation.SHORTEST_SECRET) {
        return new AllocationKey(
            HexFormat.of().parseHex(found.group(1)), HexFormat.of().parseHex(found.group(2)));
      }
    } catch (IOException e) {
      throw new UsageException("cannot read `" + written + "`: " + e.getMessage());
    }
    throw new UsageException(
        "`" + written + "` is not a key; write one with gripwright allocate --new-key FILE");
  }
}
