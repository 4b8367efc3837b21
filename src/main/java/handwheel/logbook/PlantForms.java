package handwheel.logbook;

import java.util.List;

/** The forms of what the casualty and the plant do, and of the rules that were broken. */
final class PlantForms {
  static final List<LineForm<? extends Entry>> ALL =
      List.of(
          new LineForm<>(
              "cue",
              Entry.CueGiven.class,
              (o, e) -> o.number("t", e.t()).text("id", e.id()).flag("noticed", e.noticed()),
              i -> new Entry.CueGiven(i.number("t"), i.text("id"), i.flag("noticed"))),
          new LineForm<>(
              "phase",
              Entry.PhaseEntered.class,
              (o, e) -> o.number("t", e.t()).text("id", e.id()),
              i -> new Entry.PhaseEntered(i.number("t"), i.text("id"))),
          new LineForm<>(
              "plant",
              Entry.PlantEvent.class,
              (o, e) -> o.number("t", e.t()).text("what", e.what()),
              i -> new Entry.PlantEvent(i.number("t"), i.text("what"))),
          new LineForm<>(
              "inside",
              Entry.Inside.class,
              (o, e) ->
                  o.number("t", e.t())
                      .number("n", e.n())
                      .text("who", e.who())
                      .number("need", e.need())
                      .number("hurt", e.hurt()),
              i ->
                  new Entry.Inside(
                      i.number("t"),
                      i.count("n"),
                      i.text("who"),
                      i.number("need"),
                      i.number("hurt"))),
          new LineForm<>(
              "broke",
              Entry.Broke.class,
              (o, e) ->
                  o.number("t", e.t())
                      .number("n", e.n())
                      .text("never", e.never())
                      .text("what", e.what())
                      .number("milli", e.milli()),
              i ->
                  new Entry.Broke(
                      i.number("t"),
                      i.count("n"),
                      i.text("never"),
                      i.text("what"),
                      i.number("milli"))),
          new LineForm<>(
              "state",
              Entry.State.class,
              (o, e) -> o.number("t", e.t()).text("sha", e.sha()).numbers("gauge", e.gauge()),
              i -> new Entry.State(i.number("t"), i.text("sha"), i.numbers("gauge"))));

  private PlantForms() {}
}
