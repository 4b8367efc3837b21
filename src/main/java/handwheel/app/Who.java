package handwheel.app;

import handwheel.archive.KeyFile;
import handwheel.archive.NameTable;
import handwheel.logbook.Signer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The people of one run, as its record names them, and the key that signs it.
 *
 * @param trainee pseudonym of the trainee
 * @param keyed pseudonym of who keyed
 * @param attests pseudonym of who attests that it was the trainee; may be empty
 * @param coached help given; may be empty
 * @param signer signs the record; empty: it stays unsigned
 */
record Who(String trainee, String keyed, String attests, String coached, Optional<Signer> signer) {
  /** The options that say it. */
  static final List<String> OPTIONS =
      List.of("--trainee", "--keyed", "--attests", "--coached", "--key");

  /**
   * Reads the options. Names are put into the table of the folder, and the record gets pseudonyms.
   *
   * @throws IOException if the key or the table cannot be read
   */
  static Who of(Arguments args, Path folder, String otherwise) throws IOException {
    NameTable names = new NameTable(folder);
    String trainee = named(names, args.value("--trainee"), otherwise);
    Optional<String> key = args.value("--key");
    Optional<Signer> signer =
        key.isPresent()
            ? Optional.of(KeyFile.read(KeysCommand.usualFolder(), key.get()).signer())
            : Optional.empty();
    return new Who(
        trainee,
        named(names, args.value("--keyed"), trainee),
        named(names, args.value("--attests"), ""),
        args.value("--coached").orElse(""),
        signer);
  }

  private static String named(NameTable names, Optional<String> name, String otherwise) {
    try {
      return name.isPresent() ? names.pseudonym(name.get()) : otherwise;
    } catch (IOException e) {
      // A folder that takes no table takes no record either; the record's trouble tells it.
      return otherwise;
    }
  }
}
