package org.counterpull.reading;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The text of a file: UTF-8, of a bearable size, without control characters. */
final class FileText {
  static final int LARGEST_BYTES = 5_000_000;
  private static final String SAVE_AS_UTF8 =
      "save the file as UTF-8 text; most editors have that under \"save with encoding\"";

  private FileText() {}

  static String read(Path path, String shownAs) throws FaultyText {
    Place start = new Place(shownAs, 1, 1);
    if (!Files.exists(path)) {
      throw new FaultyText(start, "there is no such file", "check the name and the folder");
    }
    if (!Files.isRegularFile(path)) {
      throw new FaultyText(start, "this is no file", "name a weldment file in it");
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(path)) {
      bytes = in.readNBytes(LARGEST_BYTES + 1);
    } catch (IOException e) {
      throw new FaultyText(start, "the file can't be read", "check who may read it");
    }
    return decode(bytes, shownAs);
  }

  static String decode(byte[] bytes, String shownAs) throws FaultyText {
    Place start = new Place(shownAs, 1, 1);
    if (bytes.length > LARGEST_BYTES) {
      throw new FaultyText(
          start, "the file is larger than 5 MB", "a weldment file; they have some kilobytes");
    }
    if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE) || everyOtherIsZero(bytes)) {
      throw new FaultyText(start, "the text is UTF-16, not UTF-8", SAVE_AS_UTF8);
    }
    if (isBinary(bytes)) {
      throw new FaultyText(
          start, "this is no text but a binary file", "name a weldment file in YAML or JSON");
    }
    String text = utf8(bytes, shownAs);
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    refuseControlCharacters(plain, shownAs);
    return plain;
  }

  private static String utf8(byte[] bytes, String shownAs) throws FaultyText {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    out.flip();
    if (result.isError()) {
      int found = bytes[in.position()] & 0xFF;
      throw new FaultyText(
          placeBehind(out.toString(), shownAs),
          String.format(Locale.ROOT, "byte %02X is not UTF-8 text", found),
          SAVE_AS_UTF8);
    }
    return out.toString();
  }

  private static void refuseControlCharacters(String text, String shownAs) throws FaultyText {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (forbidden(c)) {
        throw new FaultyText(
            placeBehind(text.substring(0, i), shownAs),
            String.format(Locale.ROOT, "there is a control character (U+%04X)", (int) c),
            "delete it, or type the line anew");
      }
    }
  }

  private static boolean forbidden(char c) {
    boolean control = c < 0x20 && c != '\t' && c != '\n' && c != '\r';
    return control || c >= 0x7F && c < 0xA0 || c == 0xFEFF || c == 0xFFFE || c == 0xFFFF;
  }

  /** Place of the character behind a text. */
  private static Place placeBehind(String text, String shownAs) {
    int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
    return new Place(shownAs, line, text.length() - text.lastIndexOf('\n'));
  }

  private static boolean startsWith(byte[] bytes, int first, int second) {
    return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
  }

  /** Plain text in UTF-16 without a mark: a zero beside each of the first letters. */
  private static boolean everyOtherIsZero(byte[] bytes) {
    int looked = Math.min(bytes.length, 16) / 2 * 2;
    int zeros = 0;
    for (int i = 0; i < looked; i += 2) {
      zeros += (bytes[i] == 0) != (bytes[i + 1] == 0) ? 1 : 0;
    }
    return looked >= 4 && zeros == looked / 2;
  }

  /** A zero byte, or more control characters than slips of a keyboard make. */
  private static boolean isBinary(byte[] bytes) {
    int control = 0;
    for (byte signed : bytes) {
      int b = signed & 0xFF;
      if (b == 0) {
        return true;
      }
      control += b < 0x20 && b != '\t' && b != '\n' && b != '\r' ? 1 : 0;
    }
    return control > 1 + bytes.length / 100;
  }
}
