package handwheel.reader;

import handwheel.diagnostics.SourceSpot;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * The text of a file: UTF-8, a byte order mark and any of the three line ends accepted, without a
 * character nobody can see.
 *
 * @param text the text; odd blanks are plain blanks in it
 * @param lines its lines
 */
record SourceText(String text, List<String> lines) {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  /** Reads the bytes; empty if nothing behind a finding could be trusted. */
  static Optional<SourceText> of(String file, byte[] bytes, Findings findings) {
    if (bytes.length > Limits.FILE_BYTES) {
      findings.add(
          FindingId.TOO_LARGE,
          SourceSpot.wholeFile(file),
          "the file has " + bytes.length + " bytes; at most " + Limits.FILE_BYTES + " are read",
          "Split it or leave texts out.");
      return Optional.empty();
    }
    return decoded(file, bytes, findings)
        .map(SourceText::withoutMark)
        .flatMap(text -> new CharacterScan(file, text, findings).cleaned())
        .map(text -> new SourceText(text, List.of(text.split("\r\n|\r|\n", -1))));
  }

  /** Returns a line by its number from 1; empty outside the file. */
  String line(int number) {
    return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
  }

  private static Optional<String> decoded(String file, byte[] bytes, Findings findings) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (!result.isError()) {
      return Optional.of(text);
    }
    findings.add(
        FindingId.NOT_UTF_8,
        endOf(file, withoutMark(text)),
        isUtf16(bytes)
            ? "the file is written in UTF-16; UTF-8 was expected"
            : "a byte that is no UTF-8 stands here",
        "Save the file as UTF-8.");
    return Optional.empty();
  }

  private static boolean isUtf16(byte[] bytes) {
    return bytes.length >= 2
        && ((bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF)
            || (bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE));
  }

  private static SourceSpot endOf(String file, String text) {
    String[] lines = text.split("\r\n|\r|\n", -1);
    String last = lines[lines.length - 1];
    return new SourceSpot(file, lines.length, last.codePointCount(0, last.length()) + 1);
  }

  private static String withoutMark(String text) {
    return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
  }
}
