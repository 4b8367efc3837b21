package handwheel.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import handwheel.logbook.PublicKeys;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Keys that only their owner reads, and names that can be erased. */
class KeysAndNamesTest {
  @TempDir Path folder;

  @Test
  void aKeyIsMadeOnceAndReadsBack() throws IOException {
    Path keys = folder.resolve("keys");
    KeyFile made = KeyFile.make(keys, "T. Orme");
    KeyFile read = KeyFile.read(keys, "T. Orme");
    String sig = read.signer().sign("text");
    assertThat(read.name()).isEqualTo("T. Orme");
    assertThat(PublicKeys.verifies(made.signer().publicHex(), "text", sig)).isTrue();
    assertThat(KeyFile.list(keys)).extracting(KeyFile::name).isEqualTo(List.of("T. Orme"));
    assertThatThrownBy(() -> KeyFile.make(keys, "T. Orme")).isInstanceOf(IOException.class);
  }

  @Test
  void onlyTheOwnerReadsAKey() throws IOException {
    Path keys = folder.resolve("keys");
    KeyFile.make(keys, "a");
    if (Files.getFileStore(keys).supportsFileAttributeView("posix")) {
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(keys)))
          .isEqualTo("rwx------");
      assertThat(
              PosixFilePermissions.toString(Files.getPosixFilePermissions(keys.resolve("a.key"))))
          .isEqualTo("rw-------");
    }
  }

  @Test
  void aFileThatIsNoKeyIsTold() throws IOException {
    Files.writeString(folder.resolve("a.key"), "something else");
    assertThatThrownBy(() -> KeyFile.read(folder, "a")).hasMessageContaining("is no key");
    assertThatThrownBy(() -> KeyFile.read(folder, "b")).hasMessageContaining("keys make");
  }

  @Test
  void aNameIsErasedAndItsPseudonymStaysTaken() throws IOException {
    NameTable names = new NameTable(folder);
    assertThat(names.pseudonym("T. Vale")).isEqualTo("P-0001");
    assertThat(names.pseudonym("A.\tFerrar")).isEqualTo("P-0002");
    assertThat(names.pseudonym("T. Vale")).isEqualTo("P-0001");
    assertThat(names.pseudonym("P-0001")).isEqualTo("P-0001");
    assertThat(names.name("P-0002")).contains("A. Ferrar");
    assertThat(names.erase("P-0001")).isTrue();
    assertThat(names.erase("P-0001")).isFalse();
    assertThat(names.name("P-0001")).isEmpty();
    assertThat(names.pseudonym("T. Vale")).isEqualTo("P-0003");
    assertThat(Files.readString(folder.resolve("names"))).doesNotContain("P-0001\tT. Vale");
  }
}
