package handwheel.logbook;

/**
 * One line of a record that holds.
 *
 * @param number the line of the file, from 1
 * @param entry what it says
 * @param text the whole line with its {@code h}
 * @param h its {@code h}
 */
public record ChainedLine(int number, Entry entry, String text, String h) {}
