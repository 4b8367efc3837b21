package handwheel.logbook;

import handwheel.logbook.LedgerLine.Finished;
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
                  (o, l) -> o.number("no", l.no()).text("digest", l.digest()),
                  i -> new Finished(i.count("no"), i.text("digest")))),
          LedgerLine::kind);

  private LedgerForms() {}
}
