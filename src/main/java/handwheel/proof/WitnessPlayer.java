package handwheel.proof;

import handwheel.casualty.Casualty;
import handwheel.casualty.Upon;
import handwheel.casualty.WitnessLine;
import handwheel.drill.Input;
import handwheel.drill.Player;
import handwheel.logbook.Entry;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plays a script's witness: each line waits for what it waits for, then a while, then says its
 * order. A man who repeats something else is belayed and told again, unless the script has a line
 * for that.
 */
public final class WitnessPlayer implements Player {
  private static final long BELAY_TICKS = 20;
  private static final long AGAIN_TICKS = 30;

  private final List<WitnessLine> lines;
  private final OrderText reader;
  private final Heard heard;
  private final List<Due> due = new ArrayList<>();
  private int line;
  private long saidTick;

  /** When what the present line waits for was noticed; -1 not yet. */
  private long noticedTick = -1;

  /** An order the witness will say. */
  private record Due(long tick, String say) {}

  /**
   * Makes a player.
   *
   * @param casualty whose witness plays
   * @param ship on which ship
   */
  public WitnessPlayer(Casualty casualty, Ship ship) {
    this.lines = casualty.witness();
    this.reader = new OrderText(ship, casualty.messages());
    this.heard = new Heard(ship);
    turnTo(0);
  }

  @Override
  public void note(Entry entry) {
    heard.note(entry);
    if (noticedTick < 0 && line < lines.size()) {
      noticedTick = heard.noticed(lines.get(line).upon(), entry).orElse(-1L);
    }
    if (entry instanceof Entry.Repeated r) {
      heard.wrongly(r).ifPresent(said -> correct(r, said));
    }
  }

  private void correct(Entry.Repeated repeated, String said) {
    Optional<WitnessLine> own =
        lines.stream()
            .filter(l -> l.upon() instanceof Upon.Wrong w && w.who().equals(repeated.who()))
            .findFirst();
    if (own.isPresent()) {
      due.add(new Due(repeated.t() + own.get().waitTicks(), own.get().say()));
    } else {
      due.add(new Due(repeated.t() + BELAY_TICKS, "belay " + repeated.who()));
      due.add(new Due(repeated.t() + AGAIN_TICKS, said));
    }
  }

  @Override
  public List<Input> inputs(long now) {
    List<Input> inputs = new ArrayList<>();
    for (Due d : List.copyOf(due)) {
      if (now >= d.tick()) {
        due.remove(d);
        inputs.add(said(d.say(), now));
      }
    }
    while (line < lines.size() && isDue(lines.get(line), now)) {
      inputs.add(said(lines.get(line).say(), now));
      saidTick = now;
      turnTo(line + 1);
    }
    return inputs;
  }

  /** Turns to the next line that takes its turn; lines for a wrong repeat-back stand by. */
  private void turnTo(int next) {
    line = next;
    while (line < lines.size() && lines.get(line).upon() instanceof Upon.Wrong) {
      line++;
    }
    noticedTick = line < lines.size() ? heard.tickOf(lines.get(line).upon()).orElse(-1L) : -1;
  }

  private boolean isDue(WitnessLine next, long now) {
    long since = next.upon() instanceof Upon.Said ? saidTick : noticedTick;
    return since >= 0 && now >= Math.max(since, saidTick) + next.waitTicks();
  }

  private Input said(String text, long now) {
    OrderResult result = reader.read(text);
    if (result instanceof OrderResult.Understood u) {
      return new Input.Said(u.order(), now);
    }
    throw new IllegalArgumentException(
        "the witness says `" + text + "`: " + ((OrderResult.NotUnderstood) result).message());
  }
}
