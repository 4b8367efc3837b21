package handwheel.debrief;

import java.util.List;

/** A piece of a page, the same as text and as HTML. */
sealed interface Block {
  /** Calls the visitor's method for this kind of block. */
  void accept(Visitor visitor);

  /** One method for each kind of block. */
  interface Visitor {
    void paragraph(Paragraph block);

    void bullets(Bullets block);

    void table(Table block);

    void notes(Notes block);

    void chart(Chart block);
  }

  /** Running text. */
  record Paragraph(String text) implements Block {
    @Override
    public void accept(Visitor visitor) {
      visitor.paragraph(this);
    }
  }

  /** A list. */
  record Bullets(List<String> items) implements Block {
    public Bullets {
      items = List.copyOf(items);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.bullets(this);
    }
  }

  /** A table; the first cell of each row names the row. */
  record Table(String caption, List<String> head, List<List<String>> rows) implements Block {
    public Table {
      head = List.copyOf(head);
      rows = List.copyOf(rows);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.table(this);
    }
  }

  /** A heading with labelled texts under it. */
  record Notes(String heading, List<Labelled> texts) implements Block {
    public Notes {
      texts = List.copyOf(texts);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.notes(this);
    }
  }

  /** A text with its label. */
  record Labelled(String label, String text) {}

  /** What a gauge showed, with events on it. Figures are thousandths of the unit. */
  record Chart(String title, String unit, List<Point> points, List<Mark> marks) implements Block {
    public Chart {
      points = List.copyOf(points);
      marks = List.copyOf(marks);
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.chart(this);
    }

    long low() {
      return points.stream().mapToLong(Point::milli).min().orElse(0);
    }

    long high() {
      return points.stream().mapToLong(Point::milli).max().orElse(0);
    }

    long first() {
      return points.get(0).tick();
    }

    long last() {
      return points.get(points.size() - 1).tick();
    }

    /** What it showed at a tick. */
    long at(long tick) {
      long shown = points.get(0).milli();
      for (Point p : points) {
        if (p.tick() > tick) {
          return shown;
        }
        shown = p.milli();
      }
      return shown;
    }
  }

  /** What a gauge showed at a tick. */
  record Point(long tick, long milli) {}

  /** An event on a chart: its letter, its tick, its words. */
  record Mark(String letter, long tick, String clock, String text) {}
}
