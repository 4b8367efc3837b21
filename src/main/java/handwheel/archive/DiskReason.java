package handwheel.archive;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Objects;

/** Says why a disk refused, for people. */
final class DiskReason {
  private DiskReason() {}

  static String of(IOException e) {
    if (e instanceof FileAlreadyExistsException) {
      return "something of this name is there already";
    }
    if (e instanceof NoSuchFileException) {
      return "there is no such file or folder";
    }
    if (e instanceof NotDirectoryException) {
      return "part of its path is not a folder";
    }
    if (e instanceof AccessDeniedException) {
      return "you may not read or write there";
    }
    return Objects.requireNonNullElse(e.getMessage(), e.getClass().getSimpleName());
  }
}
