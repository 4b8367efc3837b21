package handwheel.reader;

import handwheel.casualty.Bound;
import handwheel.casualty.When;
import java.util.ArrayList;
import java.util.List;

/** Can conditions hold in the same tick, as far as their texts tell? */
final class Compatible {
  private Compatible() {}

  /** Returns whether no two of them exclude each other. */
  static boolean together(List<When> conditions) {
    List<When> parts = new ArrayList<>();
    conditions.forEach(c -> flatten(c, parts));
    for (int i = 0; i < parts.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (excludes(parts.get(i), parts.get(j))) {
          return false;
        }
      }
    }
    return true;
  }

  private static void flatten(When when, List<When> parts) {
    if (when instanceof When.All all) {
      all.parts().forEach(p -> flatten(p, parts));
    } else {
      parts.add(when);
    }
  }

  private static boolean excludes(When one, When other) {
    if (one instanceof When.PlantIs a && other instanceof When.PlantIs b) {
      return a.truth().equals(b.truth()) && apart(a.bound(), b.bound());
    }
    if (one instanceof When.GaugeIs a && other instanceof When.GaugeIs b) {
      return a.gauge().equals(b.gauge()) && apart(a.bound(), b.bound());
    }
    if (one instanceof When.CueGiven a && other instanceof When.CueGiven b) {
      return a.cue().equals(b.cue()) && a.is() != b.is();
    }
    if (one instanceof When.ReportPassed a && other instanceof When.ReportPassed b) {
      return a.message().equals(b.message()) && a.is() != b.is();
    }
    if (one instanceof When.DrawnIs a && other instanceof When.DrawnIs b) {
      return a.variation().equals(b.variation()) && a.index() != b.index();
    }
    return one instanceof When.CountDone a && other instanceof When.CountDone b && a.is() != b.is();
  }

  private static boolean apart(Bound a, Bound b) {
    if (a.isUpper() == b.isUpper()) {
      return false;
    }
    double upper = a.isUpper() ? a.si() : b.si();
    double lower = a.isUpper() ? b.si() : a.si();
    return lower >= upper;
  }
}
