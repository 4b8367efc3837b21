package handwheel.casualty;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A casualty script.
 *
 * @param id lower-kebab id
 * @param title neutral, never gives the answer away
 * @param family what casualties it belongs to
 * @param ship id of the ship
 * @param objective what the drill teaches
 * @param sha256 hash of the script's bytes, lower-case hex
 * @param cautions shown before the drill starts
 * @param brief what the trainee is told
 * @param start how it starts
 * @param limitTicks longest run
 * @param vary what is drawn for each run
 * @param phases the states of the casualty; the first is the start
 * @param response the graded steps
 * @param nevers the forbidden acts
 * @param outcomes what outcomes cost
 * @param passPoints points needed to pass
 * @param witness a player that does it right
 * @param questions to be asked after the drill
 * @param otherReports ids of reports that may be passed and are not graded
 */
public record Casualty(
    String id,
    String title,
    String family,
    String ship,
    String objective,
    String sha256,
    List<Caution> cautions,
    String brief,
    Start start,
    long limitTicks,
    List<Variation> vary,
    List<Phase> phases,
    List<Step> response,
    List<Never> nevers,
    List<OutcomeRule> outcomes,
    int passPoints,
    List<WitnessLine> witness,
    List<Question> questions,
    List<String> otherReports) {
  /**
   * Copies the lists.
   *
   * @param id lower-kebab id
   * @param title neutral, never gives the answer away
   * @param family what casualties it belongs to
   * @param ship id of the ship
   * @param objective what the drill teaches
   * @param sha256 hash of the script's bytes, lower-case hex
   * @param cautions shown before the drill starts
   * @param brief what the trainee is told
   * @param start how it starts
   * @param limitTicks longest run
   * @param vary what is drawn for each run
   * @param phases the states of the casualty; the first is the start
   * @param response the graded steps
   * @param nevers the forbidden acts
   * @param outcomes what outcomes cost
   * @param passPoints points needed to pass
   * @param witness a player that does it right
   * @param questions to be asked after the drill
   * @param otherReports ids of reports that may be passed and are not graded
   */
  public Casualty {
    cautions = List.copyOf(cautions);
    vary = List.copyOf(vary);
    phases = List.copyOf(phases);
    response = List.copyOf(response);
    nevers = List.copyOf(nevers);
    outcomes = List.copyOf(outcomes);
    witness = List.copyOf(witness);
    questions = List.copyOf(questions);
    otherReports = List.copyOf(otherReports);
  }

  /**
   * Makes a casualty without questions.
   *
   * @param id lower-kebab id
   * @param title neutral, never gives the answer away
   * @param family what casualties it belongs to
   * @param ship id of the ship
   * @param objective what the drill teaches
   * @param sha256 hash of the script's bytes, lower-case hex
   * @param cautions shown before the drill starts
   * @param brief what the trainee is told
   * @param start how it starts
   * @param limitTicks longest run
   * @param vary what is drawn for each run
   * @param phases the states of the casualty; the first is the start
   * @param response the graded steps
   * @param nevers the forbidden acts
   * @param outcomes what outcomes cost
   * @param passPoints points needed to pass
   * @param witness a player that does it right
   */
  public Casualty(
      String id,
      String title,
      String family,
      String ship,
      String objective,
      String sha256,
      List<Caution> cautions,
      String brief,
      Start start,
      long limitTicks,
      List<Variation> vary,
      List<Phase> phases,
      List<Step> response,
      List<Never> nevers,
      List<OutcomeRule> outcomes,
      int passPoints,
      List<WitnessLine> witness) {
    this(
        id,
        title,
        family,
        ship,
        objective,
        sha256,
        cautions,
        brief,
        start,
        limitTicks,
        vary,
        phases,
        response,
        nevers,
        outcomes,
        passPoints,
        witness,
        List.of(),
        List.of());
  }

  /**
   * Returns what a run with these draws asks for: without the steps and the witness's lines that
   * belong to another drawn word.
   *
   * @param drawn what was drawn, by name
   * @return the casualty of that run
   */
  public Casualty inRun(SortedMap<String, Double> drawn) {
    List<Step> steps = response.stream().filter(s -> isIn(s.only(), drawn)).toList();
    List<String> ids = steps.stream().map(Step::id).toList();
    return new Casualty(
        id,
        title,
        family,
        ship,
        objective,
        sha256,
        cautions,
        brief,
        start,
        limitTicks,
        vary,
        phases,
        steps.stream().map(s -> s.following(ids)).toList(),
        nevers,
        outcomes,
        passPoints,
        witness.stream().filter(l -> isIn(l.only(), drawn)).toList(),
        questions,
        otherReports);
  }

  private static boolean isIn(Optional<When.DrawnIs> only, SortedMap<String, Double> drawn) {
    return only.isEmpty() || only.get().holds(drawn);
  }

  /**
   * Finds a phase.
   *
   * @param phaseId its id
   * @return the phase, or empty
   */
  public Optional<Phase> phase(String phaseId) {
    return phases.stream().filter(p -> p.id().equals(phaseId)).findFirst();
  }

  /**
   * Finds a step.
   *
   * @param stepId its id
   * @return the step, or empty
   */
  public Optional<Step> step(String stepId) {
    return response.stream().filter(s -> s.id().equals(stepId)).findFirst();
  }

  /**
   * Returns the reports that can be passed: those graded and those a phase waits for.
   *
   * @return ids in the order of the script, each once
   */
  public List<String> messages() {
    LinkedHashSet<String> ids = new LinkedHashSet<>();
    for (Step step : response) {
      if (step.test() instanceof StepTest.Reported r) {
        ids.add(r.message());
      }
    }
    for (Phase phase : phases) {
      for (Phase.Transition t : phase.next()) {
        t.when()
            .filter(When.ReportPassed.class::isInstance)
            .ifPresent(w -> ids.add(((When.ReportPassed) w).message()));
      }
    }
    ids.addAll(otherReports);
    return List.copyOf(ids);
  }
}
