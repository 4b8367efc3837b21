package handwheel.debrief;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints a page as lines of at most 80 characters. */
final class PageText implements Block.Visitor {
  static final int WIDTH = 80;
  private static final int LABEL = 14;

  private final List<String> lines = new ArrayList<>();

  private boolean isAfterNotes;

  private PageText() {}

  static List<String> lines(Page page) {
    PageText text = new PageText();
    text.wrapped("", "", page.title());
    page.sections().forEach(text::section);
    return List.copyOf(text.lines);
  }

  private void section(Page.Section section) {
    lines.add("");
    wrapped("", "", section.title().toUpperCase(Locale.ROOT));
    isAfterNotes = false;
    section.blocks().forEach(b -> b.accept(this));
  }

  private void wrapped(String first, String then, String text) {
    String before = first;
    for (String row : Wrap.rows(text, WIDTH - Math.max(first.length(), then.length()))) {
      lines.add((before + row).stripTrailing());
      before = then;
    }
  }

  @Override
  public void paragraph(Block.Paragraph block) {
    if (isAfterNotes) {
      lines.add("");
      isAfterNotes = false;
    }
    wrapped("  ", "  ", block.text());
  }

  @Override
  public void bullets(Block.Bullets block) {
    block.items().forEach(item -> wrapped("  - ", "    ", item));
  }

  @Override
  public void notes(Block.Notes block) {
    lines.add("");
    wrapped("  ", "    ", block.heading());
    for (Block.Labelled l : block.texts()) {
      String label = Wrap.left("    " + l.label(), 4 + LABEL);
      wrapped(label, " ".repeat(4 + LABEL), l.text());
    }
    isAfterNotes = true;
  }

  @Override
  public void table(Block.Table block) {
    lines.add("");
    wrapped("  ", "  ", block.caption());
    lines.addAll(TableText.lines(block, WIDTH));
    isAfterNotes = true;
  }

  @Override
  public void chart(Block.Chart block) {
    lines.add("");
    lines.addAll(ChartText.lines(block));
  }
}
