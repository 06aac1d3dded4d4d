package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slantlight.units.Progress;
import slantlight.view.gl.Pixels;

class FilmTest {
  private static Film.Options options(boolean asLit, Film.Span span) {
    return new Film.Options(span, Optional.empty(), Optional.of("room"), asLit, 480, 270, 3, 80);
  }

  @Test
  void anAnimatedPngHoldsEveryFrame(@TempDir Path folder) throws Exception {
    Path out = folder.resolve("day.png");
    Film.render(Studio.SCORED, Studio.light(), options(true, Film.Span.DAY), out, Progress.NONE);
    List<String> chunks = new ArrayList<>();
    int said = 0;
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(Files.readAllBytes(out)));
    in.skipBytes(8);
    while (in.available() > 0) {
      byte[] body = new byte[in.readInt()];
      byte[] name = new byte[4];
      in.readFully(name);
      in.readFully(body);
      CRC32 crc = new CRC32();
      crc.update(name);
      crc.update(body);
      assertThat(in.readInt()).isEqualTo((int) crc.getValue());
      String type = new String(name, StandardCharsets.US_ASCII);
      chunks.add(type);
      if (type.equals("acTL")) {
        said = body[3];
      }
    }
    assertThat(said).isEqualTo(3);
    assertThat(chunks)
        .containsExactly("IHDR", "acTL", "fcTL", "IDAT", "fcTL", "fdAT", "fcTL", "fdAT", "IEND");
    // Midnight is the first frame: any reader of plain PNG sees it.
    assertThat(Pixels.read(out).width()).isEqualTo(480);
  }

  @Test
  void aGifHoldsEveryFrame(@TempDir Path folder) throws Exception {
    Path out = folder.resolve("year.gif");
    Film.render(Studio.SCORED, Studio.light(), options(false, Film.Span.YEAR), out, Progress.NONE);
    ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(out.toFile())) {
      reader.setInput(in);
      assertThat(reader.getNumImages(true)).isEqualTo(3);
      assertThat(reader.read(2).getWidth()).isEqualTo(480);
    } finally {
      reader.dispose();
    }
    try (var files = Files.list(folder)) {
      assertThat(files.toList()).containsExactly(out);
    }
  }

  @Test
  void aFolderHoldsNumberedFrames(@TempDir Path folder) throws Exception {
    Path out = folder.resolve("frames");
    Film.render(Studio.SCORED, Studio.light(), options(false, Film.Span.DAY), out, Progress.NONE);
    assertThat(out.resolve("frame-0001.png")).exists();
    assertThat(out.resolve("frame-0003.png")).exists();
    assertThat(out.resolve("frame-0004.png")).doesNotExist();
  }
}
