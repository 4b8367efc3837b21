package handwheel.reader;

import handwheel.casualty.Casualty;
import handwheel.casualty.Phase;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.casualty.Variation;
import handwheel.diagnostics.NearestWords;
import handwheel.diagnostics.SourceSpot;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Checks what no single part of a script shows. */
final class ScriptChecks {
  private static final int SHORTEST_WORD = 3;

  private final MapNode map;
  private final Names names;
  private final Findings findings;

  ScriptChecks(MapNode map, Names names) {
    this.map = map;
    this.names = names;
    this.findings = map.findings();
  }

  /** Checks how the phases hang together, if all of them could be read. */
  void phases(List<Phase> phases, boolean isWhole) {
    if (isWhole && !phases.isEmpty()) {
      new PhaseChecks(phases, names, findings).check(spot("phases"));
    }
    if (isWhole && phases.isEmpty() && map.has("phases")) {
      findings.add(FindingId.EMPTY_LIST, spot("phases"), "there are no phases", "Write one.");
      findings.lose();
    }
  }

  /** Checks the steps against each other. */
  void steps(List<Step> steps, List<Variation> vary, boolean isWhole) {
    if (steps.stream().map(Step::id).distinct().count() == steps.size()) {
      AfterCycles.report(steps, findings);
      RedundantAfter.report(steps, findings);
    }
    if (isWhole && map.has("response")) {
      new PointSums(steps, spot("response"), findings).check(vary);
    }
  }

  /** Checks the script as a whole. */
  void whole(Casualty casualty, AmountReader amounts) {
    title(casualty);
    cautions(casualty);
    reports(casualty);
    if (findings.lost() == 0) {
      new StepChecks(casualty, findings).check();
      new GivenAway(casualty, findings).check(spot("brief"));
      Times.report(casualty, names, findings);
    }
    for (Variation variation : casualty.vary()) {
      if (findings.lost() == 0 && !amounts.isUsed(variation.name())) {
        findings.add(
            FindingId.UNUSED_VARIATION,
            names.spot(Named.VARIATION, variation.name()),
            Say.quoted(variation.name()) + " is drawn and used nowhere",
            "Write `vary " + variation.name() + "` where its figure belongs, or take it out.");
      }
    }
    if (!map.has("witness")) {
      findings.add(
          FindingId.NO_WITNESS,
          map.spot(),
          "no witness proves that the script can be done right",
          "Add `witness:`; without it the script cannot be run as scored.");
    }
  }

  private void title(Casualty casualty) {
    List<String> said = List.of(casualty.title().toLowerCase(Locale.ROOT).split("[^\\p{L}]+"));
    Arrays.stream(casualty.family().split("-"))
        .filter(word -> word.length() >= SHORTEST_WORD)
        .filter(word -> said.stream().anyMatch(s -> isSame(s, word)))
        .findFirst()
        .ifPresent(
            word ->
                findings.add(
                    FindingId.TITLE_GIVES_AWAY,
                    spot("title"),
                    "the title says " + Say.quoted(word) + ", a word of the casualty's family",
                    "Say what the trainee knows before it strikes."));
  }

  /** A longer word counts with its endings: leak, leaks, leaking. */
  private static boolean isSame(String said, String word) {
    return said.equals(word) || (word.length() > SHORTEST_WORD && said.startsWith(word));
  }

  private void cautions(Casualty casualty) {
    boolean isListed = map.node("cautions").filter(n -> !n.items().isEmpty()).isPresent();
    List<Step> critical = casualty.response().stream().filter(s -> s.grade().isCritical()).toList();
    if (!isListed && !critical.isEmpty()) {
      findings.add(
          FindingId.NO_CAUTION,
          critical.get(0).grade().spot(),
          "step " + Say.quoted(critical.get(0).id()) + " is critical and the script has no caution",
          "Add `cautions:` with the hazards of this casualty.");
    }
  }

  private void reports(Casualty casualty) {
    List<String> graded =
        casualty.response().stream()
            .map(Step::test)
            .filter(StepTest.Reported.class::isInstance)
            .map(t -> ((StepTest.Reported) t).message())
            .toList();
    for (String report : names.ids(Named.REPORT)) {
      boolean isInResponse =
          map.node("response").stream()
              .flatMap(n -> n.items().stream())
              .flatMap(n -> n.scalarAt("report").stream())
              .anyMatch(s -> s.text().equals(report));
      if (!isInResponse) {
        boolean isMisspelt = !NearestWords.to(report, graded).isEmpty();
        findings.add(
            isMisspelt ? FindingId.UNKNOWN_REPORT : FindingId.REPORT_NOT_GRADED,
            names.spot(Named.REPORT, report),
            "a phase waits for report " + Say.quoted(report) + "; no step asks for it",
            Say.offer(report, graded));
      }
    }
  }

  private SourceSpot spot(String key) {
    return map.node(key).map(YamlNode::spot).orElse(map.spot());
  }
}
