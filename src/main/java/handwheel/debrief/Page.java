package handwheel.debrief;

import java.util.List;

/**
 * A page: sections of blocks, printed as text or as HTML.
 *
 * @param title of the whole
 * @param sections in their order
 */
record Page(String title, List<Section> sections) {
  Page {
    sections = List.copyOf(sections);
  }

  /**
   * A section of a page.
   *
   * @param title its heading
   * @param blocks in their order
   */
  record Section(String title, List<Block> blocks) {
    Section {
      blocks = List.copyOf(blocks);
    }
  }
}
