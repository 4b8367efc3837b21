package handwheel.logbook;

import handwheel.logbook.LedgerLine.Finished;
import handwheel.logbook.LedgerLine.Noted;
import handwheel.logbook.LedgerLine.Numbered;
import java.util.List;

/** The forms of a ledger's lines. */
final class LedgerForms {
  static final LineCodec<LedgerLine> CODEC =
      new LineCodec<>(
          List.of(
              new LineForm<>(
                  "numbered",
                  Numbered.class,
                  (o, l) ->
                      o.number("no", l.no()).text("file", l.file()).text("before", l.before()),
                  i -> new Numbered(i.count("no"), i.text("file"), i.text("before"))),
              new LineForm<>(
                  "finished",
                  Finished.class,
                  (o, l) -> o.number("no", l.no()).text("digest", l.digest()).text("end", l.end()),
                  i -> new Finished(i.count("no"), i.text("digest"), i.text("end"))),
              new LineForm<>(
                  "noted",
                  Noted.class,
                  (o, l) ->
                      o.number("no", l.no())
                          .text("what", l.what())
                          .text("why", l.why())
                          .text("by", l.by()),
                  i -> new Noted(i.count("no"), i.text("what"), i.text("why"), i.text("by")))),
          LedgerLine::kind);

  private LedgerForms() {}
}
