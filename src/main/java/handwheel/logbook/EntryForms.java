package handwheel.logbook;

import handwheel.logbook.Entry.Loss;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;

/** The forms of all entries. */
final class EntryForms {
  private static final List<LineForm<? extends Entry>> BEFORE =
      List.of(
          new LineForm<>(
              "run",
              Entry.Run.class,
              (o, e) ->
                  o.number("v", e.v())
                      .text("engine", e.engine())
                      .text("ship", e.ship())
                      .text("shipSha", e.shipSha())
                      .text("script", e.script())
                      .text("scriptSha", e.scriptSha())
                      .number("seed", e.seed())
                      .text("mode", e.mode()),
              i ->
                  new Entry.Run(
                      i.count("v"),
                      i.text("engine"),
                      i.text("ship"),
                      i.text("shipSha"),
                      i.text("script"),
                      i.text("scriptSha"),
                      i.number("seed"),
                      i.text("mode"))),
          new LineForm<>(
              "drawn",
              Entry.Drawn.class,
              (o, e) -> o.text("name", e.name()).number("nano", e.nano()),
              i -> new Entry.Drawn(i.text("name"), i.number("nano"))),
          new LineForm<>(
              "caution",
              Entry.CautionShown.class,
              (o, e) -> o.text("id", e.id()),
              i -> new Entry.CautionShown(i.text("id"))));

  private static final List<LineForm<? extends Entry>> INPUTS =
      List.of(
          new LineForm<>(
              "order",
              Entry.OrderSaid.class,
              (o, e) ->
                  o.number("t", e.t())
                      .number("from", e.from())
                      .number("n", e.n())
                      .text("say", e.say())
                      .number("need", e.need())
                      .number("hurt", e.hurt())
                      .flag("jet", e.jet()),
              i ->
                  new Entry.OrderSaid(
                      i.number("t"),
                      i.number("from"),
                      i.count("n"),
                      i.text("say"),
                      i.number("need"),
                      i.number("hurt"),
                      i.flag("jet"))),
          new LineForm<>(
              "heard",
              Entry.Acknowledged.class,
              (o, e) -> o.number("t", e.t()),
              i -> new Entry.Acknowledged(i.number("t"))),
          new LineForm<>(
              "stop",
              Entry.Stopped.class,
              (o, e) -> o.number("t", e.t()),
              i -> new Entry.Stopped(i.number("t"))),
          new LineForm<>(
              "resume",
              Entry.Resumed.class,
              (o, e) -> o.number("t", e.t()),
              i -> new Entry.Resumed(i.number("t"))),
          new LineForm<>(
              "ended",
              Entry.Ended.class,
              (o, e) -> o.number("t", e.t()).text("why", e.why()),
              i -> new Entry.Ended(i.number("t"), i.text("why"))));

  private static final List<LineForm<? extends Entry>> SCORE =
      List.of(
          new LineForm<>(
              "score",
              Entry.Score.class,
              (o, e) ->
                  o.number("points", e.points())
                      .text("verdict", e.verdict())
                      .list("lost", e.lost(), EntryForms::putLoss),
              i ->
                  new Entry.Score(
                      i.count("points"), i.text("verdict"), i.list("lost", EntryForms::takeLoss))));

  static final List<LineForm<? extends Entry>> ALL =
      Stream.of(BEFORE, INPUTS, CrewForms.ALL, PlantForms.ALL, SCORE)
          .<LineForm<? extends Entry>>flatMap(List::stream)
          .toList();

  private EntryForms() {}

  private static void putLoss(FieldWriter out, Loss loss) throws IOException {
    out.number("points", loss.points())
        .text("type", loss.type())
        .text("step", loss.step())
        .number("tick", loss.tick())
        .text("why", loss.why())
        .text("basis", loss.basis());
  }

  private static Loss takeLoss(FieldReader in) throws IOException {
    return new Loss(
        in.count("points"),
        in.text("type"),
        in.text("step"),
        in.number("tick"),
        in.text("why"),
        in.text("basis"));
  }
}
