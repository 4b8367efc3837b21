package handwheel.archive;

import handwheel.logbook.PublicKeys;
import handwheel.logbook.Signer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.NoSuchAlgorithmException;
import java.security.interfaces.EdECPrivateKey;
import java.security.interfaces.EdECPublicKey;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * Private keys on disk, one a file: {@code handwheel key 1}, then {@code name}, {@code private},
 * {@code public}. Where the system knows owners, only the owner can read the file. Who can read it
 * can sign in that person's name.
 *
 * @param name whose key it is
 * @param signer the key
 */
public record KeyFile(String name, Signer signer) {
  private static final String HEAD = "handwheel key 1";
  private static final String SUFFIX = ".key";
  private static final String NAME = "name: ";
  private static final String PRIVATE = "private: ";
  private static final String PUBLIC = "public: ";
  private static final int LINES = 4;

  /**
   * Makes a new key.
   *
   * @param folder folder of keys, made if it is missing
   * @param name whose key it is, one line
   * @return the key, on the disk
   * @throws IOException if it cannot be written, or there is a key of that name already
   */
  public static KeyFile make(Path folder, String name) throws IOException {
    makePrivateFolder(folder);
    KeyPair pair = pair();
    byte[] seed = ((EdECPrivateKey) pair.getPrivate()).getBytes().orElseThrow();
    String privateHex = HexFormat.of().formatHex(seed);
    String publicHex = PublicKeys.hex((EdECPublicKey) pair.getPublic());
    String text =
        String.join("\n", HEAD, NAME + name, PRIVATE + privateHex, PUBLIC + publicHex) + "\n";
    Path file = folder.resolve(fileName(name));
    Files.createFile(file, onlyOwner(folder, "rw-------"));
    Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.WRITE);
    return new KeyFile(name, Signer.of(privateHex, publicHex));
  }

  /**
   * Reads the key of a name.
   *
   * @param folder folder of keys
   * @param name whose key it is
   * @return the key
   * @throws IOException if there is none, or it is not understood
   */
  public static KeyFile read(Path folder, String name) throws IOException {
    return read(folder.resolve(fileName(name)));
  }

  /**
   * Lists the keys of a folder.
   *
   * @param folder folder of keys
   * @return keys in the order of their file names; none where there is no folder
   * @throws IOException if one cannot be read
   */
  public static List<KeyFile> list(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.filter(f -> f.toString().endsWith(SUFFIX)).sorted().toList();
    }
    List<KeyFile> keys = new java.util.ArrayList<>();
    for (Path file : files) {
      keys.add(read(file));
    }
    return keys;
  }

  private static KeyFile read(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new IOException("there is no key `" + file + "`; `keys make NAME` makes one");
    }
    List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
    if (lines.size() != LINES || !lines.get(0).equals(HEAD)) {
      throw new IOException("`" + file + "` is no key: four lines, the first `" + HEAD + "`");
    }
    try {
      Signer signer =
          Signer.of(value(file, lines.get(2), PRIVATE), value(file, lines.get(3), PUBLIC));
      return new KeyFile(value(file, lines.get(1), NAME), signer);
    } catch (IllegalArgumentException e) {
      throw new IOException("`" + file + "`: " + e.getMessage(), e);
    }
  }

  private static String value(Path file, String line, String key) throws IOException {
    if (!line.startsWith(key)) {
      throw new IOException("`" + file + "`: a line `" + key + "...` was expected");
    }
    return line.substring(key.length());
  }

  private static KeyPair pair() {
    try {
      return KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
    } catch (NoSuchAlgorithmException e) {
      // Every Java from 15 on has Ed25519.
      throw new IllegalStateException(e);
    }
  }

  private static void makePrivateFolder(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Path above = FileDrain.folderOf(folder);
      FileDrain.makeFolder(above);
      Files.createDirectory(folder, onlyOwner(above, "rwx------"));
    }
  }

  /** Systems without such permissions have their own; there nothing is set. */
  private static FileAttribute<?>[] onlyOwner(Path folder, String permissions) throws IOException {
    return Files.getFileStore(folder).supportsFileAttributeView("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
        }
        : new FileAttribute<?>[0];
  }

  private static String fileName(String name) {
    return name.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-") + SUFFIX;
  }
}
