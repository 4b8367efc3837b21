package handwheel.logbook;

import java.util.List;
import java.util.stream.Stream;

/** The forms of what people do, say and suffer. */
final class CrewForms {
  private static final List<LineForm<? extends Entry>> ANSWERS =
      List.of(
          new LineForm<>(
              "repeat",
              Entry.Repeated.class,
              (o, e) ->
                  o.number("t", e.t()).number("n", e.n()).text("who", e.who()).text("say", e.say()),
              i -> new Entry.Repeated(i.number("t"), i.count("n"), i.text("who"), i.text("say"))),
          new LineForm<>(
              "refused",
              Entry.Refused.class,
              (o, e) ->
                  o.number("t", e.t())
                      .number("n", e.n())
                      .text("who", e.who())
                      .text("fitting", e.fitting())
                      .text("why", e.why())
                      .flag("fault", e.fault()),
              i ->
                  new Entry.Refused(
                      i.number("t"),
                      i.count("n"),
                      i.text("who"),
                      i.text("fitting"),
                      i.text("why"),
                      i.flag("fault"))),
          new LineForm<>(
              "read",
              Entry.Reading.class,
              (o, e) ->
                  o.number("t", e.t())
                      .number("n", e.n())
                      .text("who", e.who())
                      .text("gauge", e.gauge())
                      .number("milli", e.milli()),
              i ->
                  new Entry.Reading(
                      i.number("t"),
                      i.count("n"),
                      i.text("who"),
                      i.text("gauge"),
                      i.number("milli"))),
          new LineForm<>(
              "looked",
              Entry.Looked.class,
              (o, e) ->
                  o.number("t", e.t())
                      .number("n", e.n())
                      .text("who", e.who())
                      .text("place", e.place())
                      .text("say", e.say()),
              i ->
                  new Entry.Looked(
                      i.number("t"), i.count("n"), i.text("who"), i.text("place"), i.text("say"))),
          new LineForm<>(
              "passed",
              Entry.Passed.class,
              (o, e) ->
                  o.number("t", e.t())
                      .number("n", e.n())
                      .text("message", e.message())
                      .text("to", e.to()),
              i -> new Entry.Passed(i.number("t"), i.count("n"), i.text("message"), i.text("to"))),
          new LineForm<>(
              "counted",
              Entry.Counted.class,
              (o, e) ->
                  o.number("t", e.t())
                      .number("n", e.n())
                      .number("present", e.present())
                      .number("of", e.of())
                      .text("missing", e.missing()),
              i ->
                  new Entry.Counted(
                      i.number("t"),
                      i.count("n"),
                      i.count("present"),
                      i.count("of"),
                      i.text("missing"))));

  private static final List<LineForm<? extends Entry>> DEEDS =
      List.of(
          new LineForm<>(
              "began",
              Entry.Began.class,
              (o, e) ->
                  o.number("t", e.t())
                      .number("n", e.n())
                      .text("who", e.who())
                      .text("fitting", e.fitting())
                      .text("at", e.at()),
              i ->
                  new Entry.Began(
                      i.number("t"), i.count("n"), i.text("who"), i.text("fitting"), i.text("at"))),
          new LineForm<>(
              "moved",
              Entry.Moved.class,
              (o, e) ->
                  o.number("t", e.t())
                      .number("n", e.n())
                      .text("who", e.who())
                      .text("fitting", e.fitting())
                      .text("at", e.at())
                      .number("pos", e.pos()),
              i ->
                  new Entry.Moved(
                      i.number("t"),
                      i.count("n"),
                      i.text("who"),
                      i.text("fitting"),
                      i.text("at"),
                      i.count("pos"))),
          new LineForm<>(
              "arrived",
              Entry.Arrived.class,
              (o, e) -> o.number("t", e.t()).text("who", e.who()).text("place", e.place()),
              i -> new Entry.Arrived(i.number("t"), i.text("who"), i.text("place"))),
          new LineForm<>(
              "person",
              Entry.Person.class,
              (o, e) ->
                  o.number("t", e.t())
                      .text("who", e.who())
                      .text("is", e.is())
                      .number("dose", e.dose()),
              i -> new Entry.Person(i.number("t"), i.text("who"), i.text("is"), i.number("dose"))));

  static final List<LineForm<? extends Entry>> ALL =
      Stream.of(ANSWERS, DEEDS).<LineForm<? extends Entry>>flatMap(List::stream).toList();

  private CrewForms() {}
}
