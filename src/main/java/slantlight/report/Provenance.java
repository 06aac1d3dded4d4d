package slantlight.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a result was made from; it is written into every file.
 *
 * @param version version of the program
 * @param sceneHash {@code sha256:} and the hexadecimal digest of the scene file's bytes
 */
public record Provenance(String version, String sceneHash) {
  /** Provenance of a scene file with these bytes, made by this program. */
  public static Provenance of(byte[] sceneFile) {
    return new Provenance(programVersion(), hash(sceneFile));
  }

  /** Provenance of a scene given as text. */
  public static Provenance of(String sceneText) {
    return of(sceneText.getBytes(StandardCharsets.UTF_8));
  }

  /** {@code sha256:} and the hexadecimal digest of these bytes. */
  public static String hash(byte[] bytes) {
    return "sha256:" + HexFormat.of().formatHex(digest(bytes));
  }

  /** The version from the program's manifest, or "unpackaged" when run from class files. */
  public static String programVersion() {
    String version = Provenance.class.getPackage().getImplementationVersion();
    return version == null ? "unpackaged" : version;
  }

  /** The first twelve digits of the hash, enough to tell two scenes apart on paper. */
  public String shortHash() {
    String hex = sceneHash.substring(sceneHash.indexOf(':') + 1);
    return hex.substring(0, Math.min(12, hex.length()));
  }

  private static byte[] digest(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
