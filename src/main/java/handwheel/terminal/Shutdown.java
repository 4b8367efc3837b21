package handwheel.terminal;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * What happens when the program is told to stop from outside: the face is asked to leave, so that
 * the terminal is as it was and the record is closed by whoever writes it. If that takes too long
 * the terminal is put back all the same.
 */
public final class Shutdown implements AutoCloseable {
  /** With what follows it stays below a second. */
  private static final long PATIENCE_MS = 800;

  private final CountDownLatch asked = new CountDownLatch(1);
  private final CountDownLatch done = new CountDownLatch(1);
  private volatile Optional<Runnable> lastResort = Optional.empty();
  private volatile Optional<Runnable> afterwards = Optional.empty();
  private final Thread hook = new Thread(this::stop, "shutdown");

  /** Begins to listen. */
  public Shutdown() {
    Runtime.getRuntime().addShutdownHook(hook);
  }

  /**
   * Returns whether the program was told to stop.
   *
   * @return true from then on
   */
  public boolean isAsked() {
    return asked.getCount() == 0;
  }

  /** Asks the face to leave, as the system would. */
  void ask() {
    asked.countDown();
  }

  /** Sets what is done last of all when the system stops the program. */
  void afterwards(Runnable act) {
    afterwards = Optional.of(act);
  }

  /** Sets what is done with the terminal if nobody has done it in time. */
  void lastResort(Runnable act) {
    lastResort = Optional.of(act);
  }

  void noLastResort() {
    lastResort = Optional.empty();
  }

  private void stop() {
    ask();
    if (!isDoneInTime()) {
      lastResort.ifPresent(Runnable::run);
    }
    afterwards.ifPresent(Runnable::run);
  }

  private boolean isDoneInTime() {
    try {
      return done.await(PATIENCE_MS, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Tells that everything is closed; the program may go. */
  @Override
  public void close() {
    done.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The program is going already, and the hook has nothing left to wait for.
      return;
    }
  }
}
