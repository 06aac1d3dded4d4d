package slantlight.view.gl;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import slantlight.scene.WholeFile;

/** A picture in memory, sRGB, top row first. */
public final class Pixels {
  private final int width;
  private final int height;
  private final int[] rgb;

  /**
   * Wraps the values without copying them.
   *
   * @param rgb 0xRRGGBB, row by row from the top
   */
  public Pixels(int width, int height, int[] rgb) {
    this.width = width;
    this.height = height;
    this.rgb = rgb;
  }

  /** Reads a PNG. */
  public static Pixels read(Path file) throws IOException {
    BufferedImage image = ImageIO.read(file.toFile());
    int w = image.getWidth();
    int h = image.getHeight();
    int[] rgb = image.getRGB(0, 0, w, h, null, 0, w);
    for (int i = 0; i < rgb.length; i++) {
      rgb[i] &= 0xffffff;
    }
    return new Pixels(w, h, rgb);
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** 0xRRGGBB at column x, row y from the top. */
  public int at(int x, int y) {
    return rgb[y * width + x];
  }

  /** As an image of the standard library. */
  public BufferedImage image() {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    image.setRGB(0, 0, width, height, rgb, 0, width);
    return image;
  }

  /** Writes a PNG; the file appears whole or not at all. */
  public void write(Path file) throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    WholeFile.write(file, out -> ImageIO.write(image(), "png", out));
  }
}
