package handwheel.debrief;

import handwheel.casualty.Casualty;
import handwheel.casualty.Phase;
import handwheel.casualty.PhaseAct;
import java.util.SortedMap;
import java.util.TreeMap;

/** The words of a script's cues. */
final class Cues {
  private final SortedMap<String, String> texts = new TreeMap<>();

  Cues(Casualty casualty) {
    for (Phase phase : casualty.phases()) {
      for (PhaseAct act : phase.acts()) {
        if (act instanceof PhaseAct.Cue c) {
          texts.put(c.id(), c.text());
        }
      }
    }
  }

  String text(String cue) {
    return texts.getOrDefault(cue, cue);
  }
}
