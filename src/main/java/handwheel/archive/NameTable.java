package handwheel.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Who is behind a pseudonym: {@code names} in the records folder, {@code PSEUDONYM tab NAME} a
 * line. Records hold pseudonyms only, so a name can be erased here and every chain, signature and
 * ledger stays as it was. A pseudonym that was given once is never given to somebody else.
 */
public final class NameTable {
  private static final String FILE = "names";
  private static final String PREFIX = "P-";
  private static final char ERASED = '-';

  private final Path folder;
  private final FolderLock lock;

  /**
   * Names the table of a folder; nothing is read or made yet.
   *
   * @param folder the records folder
   */
  public NameTable(Path folder) {
    this.folder = folder;
    this.lock = new FolderLock(folder.resolve("names.lock"));
  }

  /**
   * Returns a person's pseudonym, and gives one to a person that has none. A pseudonym stands for
   * itself.
   *
   * @param name name of a person; an empty one stays empty
   * @return such as {@code P-0007}
   * @throws IOException if the table cannot be read or written
   */
  public String pseudonym(String name) throws IOException {
    String clean = clean(name);
    if (clean.isEmpty() || clean.startsWith(PREFIX)) {
      return clean;
    }
    FileDrain.makeFolder(folder);
    return lock.holding(() -> find(clean));
  }

  private String find(String name) throws IOException {
    Map<String, String> table = read();
    for (Map.Entry<String, String> row : table.entrySet()) {
      if (row.getValue().equals(name)) {
        return row.getKey();
      }
    }
    String number = String.valueOf(table.size() + 1);
    String pseudonym = PREFIX + "0".repeat(Math.max(0, 4 - number.length())) + number;
    table.put(pseudonym, name);
    write(table);
    return pseudonym;
  }

  /**
   * Returns the name behind a pseudonym.
   *
   * @param pseudonym pseudonym of a record
   * @return the name; empty if it was erased or is not known here
   * @throws IOException if the table cannot be read
   */
  public Optional<String> name(String pseudonym) throws IOException {
    return Optional.ofNullable(read().get(pseudonym)).filter(n -> n.charAt(0) != ERASED);
  }

  /**
   * Erases a name. The pseudonym stays taken.
   *
   * @param pseudonym pseudonym of a record
   * @return false if there was no such name
   * @throws IOException if the table cannot be read or written
   */
  public boolean erase(String pseudonym) throws IOException {
    if (name(pseudonym).isEmpty()) {
      return false;
    }
    return lock.holding(
        () -> {
          Map<String, String> table = read();
          table.put(pseudonym, String.valueOf(ERASED));
          write(table);
          return true;
        });
  }

  private Map<String, String> read() throws IOException {
    Map<String, String> table = new LinkedHashMap<>();
    Path file = folder.resolve(FILE);
    if (Files.exists(file)) {
      for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
        int tab = line.indexOf('\t');
        if (tab > 0 && tab + 1 < line.length()) {
          table.put(line.substring(0, tab), line.substring(tab + 1));
        }
      }
    }
    return table;
  }

  /** Another file takes the old one's place at once, so that a kill leaves one of the two. */
  private void write(Map<String, String> table) throws IOException {
    StringBuilder text = new StringBuilder();
    table.forEach((p, n) -> text.append(p).append('\t').append(n).append('\n'));
    Path fresh = folder.resolve(FILE + ".new");
    Files.deleteIfExists(fresh);
    FileDrain drain = FileDrain.create(fresh);
    drain.write(text.toString().getBytes(StandardCharsets.UTF_8));
    drain.force();
    drain.close();
    Files.move(
        fresh,
        folder.resolve(FILE),
        StandardCopyOption.REPLACE_EXISTING,
        StandardCopyOption.ATOMIC_MOVE);
  }

  private static String clean(String name) {
    return name.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
  }
}
