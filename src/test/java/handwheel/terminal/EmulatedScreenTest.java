package handwheel.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.Entry;
import handwheel.screen.Desk;
import handwheel.screen.SteamLeak;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.utils.ScreenTerminal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * From key bytes to the cells of a screen, through a terminal emulator of another hand: what is
 * typed, decoded, drawn and sent is what stands there.
 */
final class EmulatedScreenTest {
  private static final long PATIENCE_NS = 20_000_000_000L;

  private final List<Entry> entries = new CopyOnWriteArrayList<>();
  private ScreenTerminal.VirtualTerminal emulator;
  private Shutdown shutdown;
  private CompletableFuture<Void> running;

  @BeforeEach
  void begin() throws Exception {
    emulator = ScreenTerminal.withTerminal("test", "xterm-256color", 80, 24);
    shutdown = new Shutdown();
    Conditions conditions = new Conditions(System::nanoTime, 1, false, shutdown);
    Desk desk = new Desk(SteamLeak.script(entries::add));
    running =
        CompletableFuture.runAsync(
            () -> {
              try {
                FullScreen.on(emulator.terminal(), desk, conditions);
              } catch (java.io.IOException e) {
                throw new java.io.UncheckedIOException(e);
              }
            });
    until("Superheated steam");
    while (!screen().contains("heard and said")) {
      Thread.sleep(300);
      type("\r");
    }
  }

  @AfterEach
  void end() throws Exception {
    shutdown.ask();
    running.get(5, TimeUnit.SECONDS);
    shutdown.close();
  }

  private String screen() {
    return emulator.screen().toString();
  }

  private void type(String bytes) throws Exception {
    emulator.terminal().processInputBytes(bytes.getBytes(StandardCharsets.UTF_8));
  }

  private void until(String text) throws Exception {
    long end = System.nanoTime() + PATIENCE_NS;
    while (!screen().contains(text) && System.nanoTime() < end) {
      Thread.sleep(10);
    }
    assertThat(screen()).contains(text);
  }

  @Test
  void keysGiveOrdersAndArrowsPagesAndInterruptsAreDecoded() throws Exception {
    assertThat(screen()).contains("DRILL").contains("drum pressure").contains("at gauge board");
    type("xx");
    until("Enter: burnerman-superheater trip fuel-trip-superheater");
    type("\r");
    until("You to burnerman superheater side: trip superheater fuel trip.");
    assertThat(entries.stream().filter(Entry.OrderSaid.class::isInstance)).hasSize(2);
    type("\u001b[A");
    until("> xx");
    type("\u0015\u001b[6~");
    until("Watching drum level");
    type("\u0003");
    until("Ctrl-C again ends the drill");
    type("\u0003");
    until("score sheet");
    assertThat(entries).anyMatch(Entry.Ended.class::isInstance);
  }

  @Test
  void aSmallerWindowSaysSoAndALargerOneShowsItAllAgain() throws Exception {
    resize(60, 20);
    until("80 by 24 is needed");
    resize(160, 50);
    until("0..800");
    assertThat(screen()).contains("┃~~~┃");
  }

  private void resize(int width, int height) {
    Size size = Size.of(width, height);
    emulator.screen().setSize(size);
    emulator.terminal().setSize(size);
    emulator.terminal().raise(Terminal.Signal.WINCH);
  }
}
