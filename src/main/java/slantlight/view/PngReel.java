package slantlight.view;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import slantlight.view.gl.Pixels;

/**
 * An animated PNG that loops for ever: exact colours. Source: W3C, Portable Network Graphics (Third
 * Edition), acTL, fcTL and fdAT chunks; rows filtered by "up" (type 2).
 */
final class PngReel implements Reel {
  private static final byte[] SIGNATURE = {(byte) 137, 80, 78, 71, 13, 10, 26, 10};

  /** Where the acTL chunk begins: after the signature and IHDR. */
  private static final int CONTROL = 8 + 25;

  private final Path out;
  private final Path part;
  private final int millis;
  private final RandomAccessFile file;
  private int frames;
  private int sequence;

  PngReel(Path out, int millis) throws IOException {
    this.out = out;
    this.millis = millis;
    Path folder = out.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    part = folder.resolve("." + out.getFileName() + ".part");
    Files.deleteIfExists(part);
    file = new RandomAccessFile(part.toFile(), "rw");
  }

  @Override
  public void add(Pixels frame) throws IOException {
    if (frames == 0) {
      file.write(SIGNATURE);
      ByteArrayOutputStream head = new ByteArrayOutputStream();
      DataOutputStream data = new DataOutputStream(head);
      data.writeInt(frame.width());
      data.writeInt(frame.height());
      data.write(new byte[] {8, 2, 0, 0, 0});
      chunk("IHDR", head.toByteArray());
      chunk("acTL", new byte[8]);
    }
    control(frame);
    byte[] packed = packed(frame);
    if (frames == 0) {
      chunk("IDAT", packed);
    } else {
      ByteArrayOutputStream body = new ByteArrayOutputStream();
      DataOutputStream data = new DataOutputStream(body);
      data.writeInt(sequence++);
      data.write(packed);
      chunk("fdAT", body.toByteArray());
    }
    frames++;
  }

  private void control(Pixels frame) throws IOException {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(body);
    data.writeInt(sequence++);
    data.writeInt(frame.width());
    data.writeInt(frame.height());
    data.writeInt(0);
    data.writeInt(0);
    data.writeShort(millis);
    data.writeShort(1000);
    data.write(new byte[] {0, 0});
    chunk("fcTL", body.toByteArray());
  }

  private static byte[] packed(Pixels frame) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Deflater deflater = new Deflater(6);
    try (DeflaterOutputStream zip = new DeflaterOutputStream(out, deflater)) {
      byte[] row = new byte[1 + 3 * frame.width()];
      for (int y = 0; y < frame.height(); y++) {
        row[0] = 2;
        for (int x = 0; x < frame.width(); x++) {
          int now = frame.at(x, y);
          int above = y == 0 ? 0 : frame.at(x, y - 1);
          for (int k = 0; k < 3; k++) {
            int shift = 16 - 8 * k;
            row[1 + 3 * x + k] = (byte) ((now >> shift & 255) - (above >> shift & 255));
          }
        }
        zip.write(row);
      }
    } finally {
      deflater.end();
    }
    return out.toByteArray();
  }

  private void chunk(String type, byte[] body) throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(name);
    crc.update(body);
    file.writeInt(body.length);
    file.write(name);
    file.write(body);
    file.writeInt((int) crc.getValue());
  }

  @Override
  public void finish() throws IOException {
    chunk("IEND", new byte[0]);
    file.seek(CONTROL);
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(body);
    data.writeInt(frames);
    data.writeInt(0);
    chunk("acTL", body.toByteArray());
    file.close();
    Files.move(part, out, StandardCopyOption.REPLACE_EXISTING);
  }

  @Override
  public void close() throws IOException {
    file.close();
    Files.deleteIfExists(part);
  }
}
