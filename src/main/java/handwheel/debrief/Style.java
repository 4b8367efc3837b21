package handwheel.debrief;

/** How the page looks on a screen and on paper. Dark on light; no colour carries a meaning. */
final class Style {
  static final String CSS =
      """

      :root { color-scheme: light; }
      body { margin: 0 auto; padding: 1rem; max-width: 60rem; background: #fff; color: #1a1a1a;
        font: 1rem/1.5 system-ui, sans-serif; }
      .drill { display: inline-block; margin: 0; padding: .1rem .7rem; border: 3px solid #1a1a1a;
        font-weight: 700; letter-spacing: .2em; }
      h1 { font-size: 1.6rem; line-height: 1.2; margin: .6rem 0; }
      h2 { font-size: 1.25rem; margin: 2rem 0 .5rem; border-bottom: 2px solid #1a1a1a; }
      h3 { font-size: 1.05rem; margin: 0 0 .4rem; }
      nav ul { display: flex; flex-wrap: wrap; gap: .2rem 1.2rem; margin: .5rem 0; padding: 0;
        list-style: none; }
      nav a { display: inline-block; padding: .25rem 0; color: #003f7d; }
      a:focus, .wide:focus { outline: 3px solid #003f7d; outline-offset: 2px; }
      p, ul { margin: .5rem 0; }
      code { font-family: ui-monospace, monospace; font-size: .92em; background: #efefef;
        padding: 0 .2em; overflow-wrap: anywhere; }
      .note { margin: 1rem 0; padding: .6rem .9rem; border: 1px solid #6b6b6b;
        border-left-width: 6px; break-inside: avoid; }
      dl { margin: 0; }
      dl div { display: grid; grid-template-columns: 9rem 1fr; gap: 0 1rem; }
      dt { font-weight: 600; }
      dd { margin: 0; overflow-wrap: anywhere; }
      .wide { overflow-x: auto; margin: .8rem 0; }
      table { border-collapse: collapse; }
      caption { text-align: left; font-weight: 600; padding-bottom: .3rem; }
      th, td { text-align: left; vertical-align: top; padding: .3rem .7rem .3rem 0;
        border-bottom: 1px solid #8a8a8a; }
      thead th { border-bottom: 2px solid #1a1a1a; }
      tbody th { font-weight: 400; }
      .figure { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
      svg { display: block; width: 100%; height: auto; margin: 1.4rem 0 .4rem; }
      footer { margin-top: 2rem; border-top: 2px solid #1a1a1a; }
      @media (max-width: 40rem) {
        dl div { grid-template-columns: 1fr; margin-bottom: .4rem; }
        h1 { font-size: 1.3rem; }
      }
      @media print {
        body { max-width: none; padding: 0; font-size: 10pt; }
        nav { display: none; }
        h2 { break-after: avoid; }
        svg, tr { break-inside: avoid; }
        .wide { overflow: visible; }
      }
      """;

  private Style() {}
}
