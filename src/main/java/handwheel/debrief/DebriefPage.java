package handwheel.debrief;

import handwheel.casualty.Basis;
import handwheel.casualty.Casualty;
import handwheel.logbook.Entry;
import handwheel.scoring.Charge;
import handwheel.scoring.CriticalAct;
import handwheel.scoring.Note;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Lays a debrief out: own words first, then the lesson, people, points, and what to do now. */
final class DebriefPage {
  private final Debrief debrief;
  private final boolean isText;
  private final Casualty casualty;
  private final Times times;
  private final Plain plain;
  private final Lost lost;
  private final List<Page.Section> sections = new ArrayList<>();

  DebriefPage(Debrief debrief, boolean isText) {
    this.debrief = debrief;
    this.isText = isText;
    this.casualty = debrief.request().found().casualty();
    this.times = Times.of(debrief.run());
    this.lost = debrief.lost();
    this.plain = new Plain(debrief.request().found().ship(), casualty, debrief.words());
  }

  Page page() {
    troubles();
    run();
    own();
    lesson();
    delays();
    critical();
    sections.add(new OutcomeSection(debrief, times, plain).section());
    sections.add(points());
    debrief.simulated().ifPresent(s -> sections.add(new CostSection(s, lost, times).section()));
    crew();
    charts();
    timeline();
    actions();
    return new Page("DRILL - debrief: " + casualty.title(), sections);
  }

  private void add(String title, List<Block> blocks) {
    sections.add(new Page.Section(title, blocks));
  }

  private void troubles() {
    List<String> troubles = debrief.request().troubles();
    if (!troubles.isEmpty()) {
      add(
          "This record does not hold",
          List.of(
              new Block.Paragraph(
                  "What follows is told from those of its lines that can be read. Nothing here may"
                      + " count for or against anybody. It is not simulated again."),
              new Block.Bullets(troubles)));
    }
  }

  private void run() {
    Entry.Run head = (Entry.Run) debrief.run().get(0);
    String text =
        "DRILL on ship "
            + head.ship()
            + ", script "
            + head.script()
            + ", seed "
            + head.seed()
            + ", mode "
            + head.mode()
            + ", engine "
            + head.engine()
            + ". Times are minutes:seconds from the first cue; before it with a minus sign. "
            + casualty.objective();
    add("The run", List.of(new Block.Paragraph(text)));
  }

  private void own() {
    List<Block> blocks =
        debrief
            .request()
            .own()
            .<List<Block>>map(
                o ->
                    List.of(
                        new Block.Notes(
                            "Before reading on",
                            List.of(
                                new Block.Labelled("Saw first", o.saw()),
                                new Block.Labelled("Thought", o.thought()),
                                new Block.Labelled("Differently", o.differently())))))
            .orElse(
                List.of(
                    new Block.Paragraph(
                        "Not given. Before you read on, say them aloud: what did you see or hear"
                            + " first, what did you think it was, what would you do differently?")));
    add("Your own three lines", blocks);
  }

  private void lesson() {
    Lesson l = debrief.lesson();
    add(
        "In three lines",
        List.of(
            new Block.Bullets(
                List.of(
                    "Where it turned: " + l.turned(),
                    "Next time: " + l.next(),
                    "What was right: " + l.right()))));
    if (!l.behaviours().isEmpty()) {
      add("What to change, at most three", List.of(new Block.Bullets(l.behaviours())));
    }
  }

  private void delays() {
    List<List<String>> rows = new ArrayList<>();
    for (Delay d : new Delays(debrief).all()) {
      rows.add(
          List.of(
              casualty.step(d.step()).map(debrief.words()::act).orElse(d.step()),
              span(d.lookedTicks()),
              span(d.decidedTicks()),
              span(d.typedTicks()),
              span(d.crewTicks()),
              span(d.gearTicks()),
              span(d.plantTicks()),
              d.verdict()));
    }
    String how =
        "Looked: from the cue to the last reading or look before the order. Decided: from there to"
            + " the order's first key. Typed: to Enter. Crew: until a hand is on it or the man"
            + " answers. Gear: until it has got there. Plant: to the next event in the plant, if"
            + " one came within 5 s. A dash: no such span in the record.";
    List<String> head =
        List.of("Act", "Looked", "Decided", "Typed", "Crew", "Gear", "Plant", "What it was");
    add(
        "Where the time went",
        List.of(new Block.Paragraph(how), new Block.Table("Seconds from the cue on", head, rows)));
  }

  private static String span(long ticks) {
    return ticks < 0 ? "-" : Times.span(ticks).replace(" s", "");
  }

  private void critical() {
    List<List<String>> rows = new ArrayList<>();
    long kept = 0;
    for (CriticalAct c : debrief.sheet().critical()) {
      boolean isRuleKept =
          !c.isFailure() && casualty.nevers().stream().anyMatch(n -> n.id().equals(c.id()));
      kept += isRuleKept ? 1 : 0;
      if (!isRuleKept) {
        String when = c.tick() < 0 ? "-" : times.at(c.tick());
        String standing = c.isFailure() ? "NOT MET" : c.standing().words();
        rows.add(List.of(name(c.id()), standing, when, plain.text(c.why())));
      }
    }
    String rules = kept + " rules against a forbidden act were kept.";
    add(
        "Critical acts",
        List.of(
            new Block.Table(
                "Critical acts, met or not met", List.of("Act", "Standing", "When", "Why"), rows),
            new Block.Paragraph(rules)));
  }

  private String name(String id) {
    return casualty.step(id).map(debrief.words()::act).orElse(id.replace('-', ' '));
  }

  private Page.Section points() {
    List<Block> blocks = new ArrayList<>();
    debrief.sheet().charges().stream()
        .sorted(Comparator.comparingLong(Charge::tick))
        .forEach(c -> blocks.add(lost(c)));
    if (blocks.isEmpty()) {
      blocks.add(new Block.Paragraph("No points were lost."));
    }
    long failed = debrief.sheet().critical().stream().filter(CriticalAct::isFailure).count();
    String verdict =
        debrief.sheet().points()
            + " of 100, "
            + casualty.passPoints()
            + " to pass: "
            + (debrief.sheet().isPass() ? "PASS." : "FAIL.")
            + (failed == 0 ? "" : " Critical acts not met: " + failed + ", which fails the run.");
    blocks.add(new Block.Paragraph(verdict + " The machine advises; the board decides."));
    return new Page.Section("Points, each with its reason", blocks);
  }

  private Block lost(Charge c) {
    String points = c.points() == 0 ? "0" : "-" + c.points();
    String critical = c.isCritical() ? ", critical" : "";
    String heading =
        points
            + "  "
            + lost.name(c)
            + ": "
            + c.type().word()
            + critical
            + ", at "
            + times.at(c.tick())
            + " (tick "
            + c.tick()
            + ")";
    List<Block.Labelled> texts = new ArrayList<>();
    texts.add(new Block.Labelled("Happened", lost.happened(c)));
    texts.add(new Block.Labelled("Should be", lost.should(c)));
    texts.add(new Block.Labelled("Because", lost.why(c)));
    texts.add(new Block.Labelled("Next time", next(c)));
    lost.reading(c).ifPresent(r -> texts.add(new Block.Labelled("Reading", r)));
    texts.add(new Block.Labelled("Basis", basis(c.basis()) + ", " + c.spot()));
    return new Block.Notes(heading, texts);
  }

  /** What came of it is kept away by the act without which it would not have come to it. */
  private String next(Charge c) {
    List<String> acts =
        debrief.simulated().map(Debrief.Simulated::costs).orElse(List.of()).stream()
            .filter(cost -> cost.spared().contains(c.step()))
            .map(cost -> lost.name(cost.charge()))
            .distinct()
            .toList();
    return acts.isEmpty()
        ? lost.next(c)
        : "In the model one act alone would have spared this: " + String.join("; or ", acts) + ".";
  }

  private static String basis(Basis basis) {
    return switch (basis) {
      case TRADE_RULE -> "a rule of the trade";
      case SHIP_FIGURE -> "a figure of this ship";
      case MODEL_ONLY -> "a figure of the model alone";
    };
  }

  private void crew() {
    List<String> notes =
        debrief.sheet().notes().stream()
            .filter(n -> n.kind() == Note.Kind.CREW_OR_GEAR || n.kind() == Note.Kind.REMARK)
            .map(n -> times.at(n.tick()) + "  " + plain.text(n.text()))
            .toList();
    if (!notes.isEmpty()) {
      add("Crew, gear and remarks (nobody's points)", List.of(new Block.Bullets(notes)));
    }
  }

  private void charts() {
    Charts charts =
        new Charts(debrief.request().found(), debrief.run(), debrief.sheet(), debrief.words());
    List<Block> blocks = new ArrayList<>();
    if (isText) {
      blocks.add(
          new Block.Table(
              "Events, with their letters on the plots",
              List.of("Event", "When", "What happened"),
              charts.marks().stream().map(m -> List.of(m.letter(), m.clock(), m.text())).toList()));
    }
    blocks.addAll(charts.all());
    add("What the gauges showed", blocks);
  }

  private void timeline() {
    Sentences sentences = new Sentences(debrief.request().found());
    List<List<String>> rows = new ArrayList<>();
    for (Entry e : debrief.run()) {
      sentences.told(e).ifPresent(s -> rows.add(List.of(times.at(e.t()), s)));
    }
    add(
        "What happened",
        List.of(
            new Block.Table(
                "Everything, also what you could not know", List.of("When", "What"), rows)));
  }

  private void actions() {
    add(
        "Now do this",
        List.of(
            new Block.Bullets(
                Stream.concat(
                        debrief.request().actions().stream()
                            .map(a -> a.replace(Debrief.TURNED, debrief.lesson().at())),
                        debrief.due().lines(debrief.request().day()).stream())
                    .toList())));
  }
}
