package handwheel.screen;

import handwheel.drill.Sight;
import handwheel.logbook.Entry;
import handwheel.ship.Ship;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What reaches the trainee where he stands. Men report what they were told to do, by voice or
 * phone; where a man is whom nobody sent and nobody sees, a head count must find out.
 */
final class Earshot {
  private final TreeSet<String> sent = new TreeSet<>();

  /**
   * Returns whether an entry reaches him.
   *
   * @param entry the next entry of the run
   * @param sight what he sees; empty before the first tick
   */
  boolean reaches(Entry entry, Optional<Sight> sight) {
    if (entry instanceof Entry.OrderSaid o) {
      note(o.say().split(" ", -1));
      return true;
    }
    if (entry instanceof Entry.Arrived a) {
      return sent.remove(a.who()) || isSeen(a.who(), sight);
    }
    if (entry instanceof Entry.Person p) {
      return isSeen(p.who(), sight);
    }
    return !(entry instanceof Entry.Moved m) || m.n() > 0 || isSeen(m.who(), sight);
  }

  private void note(String[] words) {
    if (words.length > 1 && words[1].equals("go")) {
      sent.add(words[0]);
    }
  }

  private static boolean isSeen(String who, Optional<Sight> sight) {
    return who.equals(Ship.SUPERVISOR) || sight.map(s -> s.sees(who)).orElse(false);
  }
}
