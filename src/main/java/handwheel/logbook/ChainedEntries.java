package handwheel.logbook;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Turns the entries of one run into chained lines. The digest comes from here, so that a run
 * without a file has the same one as a run with a file.
 */
public final class ChainedEntries implements EntrySink {
  private final Chain chain = new Chain();
  private final LineSink out;
  private Stage stage = Stage.RUN;
  private @Nullable String digest;

  /**
   * Starts a run.
   *
   * @param out takes the lines
   */
  public ChainedEntries(LineSink out) {
    this.out = out;
  }

  /**
   * Returns the digest of a whole run.
   *
   * @param entries from {@code run} to {@code score}
   * @return the digest, or empty if there is no score
   */
  public static Optional<String> digestOf(List<? extends Entry> entries) {
    ChainedEntries chained = new ChainedEntries(line -> {});
    entries.forEach(chained::accept);
    return chained.digest();
  }

  /**
   * Takes the next entry.
   *
   * @param entry {@code run} first, {@code score} last
   * @throws IllegalStateException if the entry is out of place
   */
  @Override
  public void accept(Entry entry) {
    if (!stage.admits(entry)) {
      throw new IllegalStateException("out of place (" + stage + "): " + entry);
    }
    out.accept(chain.append(EntryLine.write(entry)));
    stage = Stage.after(entry);
    if (stage == Stage.SCORED) {
      digest = chain.last();
    }
  }

  /**
   * Closes the record.
   *
   * @param end the end line
   * @throws IllegalStateException if it does not follow on the score
   */
  public void end(End end) {
    if (stage != Stage.SCORED) {
      throw new IllegalStateException("out of place (" + stage + "): " + end);
    }
    out.accept(chain.append(end.line()));
    stage = Stage.OVER;
  }

  /**
   * Signs the closed record.
   *
   * @param signer whose public key stands in the about line
   * @throws IllegalStateException if it does not follow on the end
   */
  public void sign(Signer signer) {
    if (stage != Stage.OVER) {
      throw new IllegalStateException("out of place (" + stage + "): signed");
    }
    String sig = signer.sign(Signed.message(chain.last()));
    out.accept(chain.append(new Signed(sig).line()));
    stage = Stage.SIGNED;
  }

  /**
   * Returns the {@code h} of the last line so far.
   *
   * @return 64 lower-case hex digits
   */
  public String lastH() {
    return chain.last();
  }

  /**
   * Returns the digest of the run: the {@code h} of its score.
   *
   * @return 64 lower-case hex digits, or empty before the score
   */
  public Optional<String> digest() {
    return Optional.ofNullable(digest);
  }
}
