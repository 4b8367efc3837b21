package handwheel.archive;

import handwheel.logbook.Chain;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the ledger gave a run before it began. */
public final class Numbering {
  private final int no;
  private final String file;
  private final String before;
  private final @Nullable String trouble;

  private Numbering(int no, String file, String before, @Nullable String trouble) {
    this.no = no;
    this.file = file;
    this.before = before;
    this.trouble = trouble;
  }

  static Numbering given(int no, String file, String before) {
    return new Numbering(no, file, before, null);
  }

  static Numbering failed(String file, String trouble) {
    return new Numbering(0, file, Chain.START, trouble);
  }

  /**
   * Returns the number of the run in this installation.
   *
   * @return 1 or more; 0 where it could not be numbered
   */
  public int no() {
    return no;
  }

  /**
   * Returns the name of the record's file in the records folder.
   *
   * @return such as {@code 0041-steam-leak-7.hwr}
   */
  public String file() {
    return file;
  }

  /**
   * Returns the digest of the run before.
   *
   * @return 64 lower-case hex digits; zeros if there was none or it is not finished
   */
  public String before() {
    return before;
  }

  /**
   * Returns why the run could not be numbered.
   *
   * @return a sentence for people, or empty if it was
   */
  public Optional<String> trouble() {
    return Optional.ofNullable(trouble);
  }
}
