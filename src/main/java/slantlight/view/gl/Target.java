package slantlight.view.gl;

import static org.lwjgl.opengl.GL11C.GL_PACK_ALIGNMENT;
import static org.lwjgl.opengl.GL11C.GL_RGBA;
import static org.lwjgl.opengl.GL11C.GL_RGBA8;
import static org.lwjgl.opengl.GL11C.GL_UNSIGNED_BYTE;
import static org.lwjgl.opengl.GL11C.glPixelStorei;
import static org.lwjgl.opengl.GL11C.glReadPixels;
import static org.lwjgl.opengl.GL30C.GL_FRAMEBUFFER;
import static org.lwjgl.opengl.GL30C.glBindFramebuffer;

import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;

/**
 * A picture to draw into: colour, depth and stencil, with several samples a pixel when asked for.
 */
public final class Target implements AutoCloseable {
  private final FrameBuffer drawn;
  private final FrameBuffer resolved;

  /**
   * A new picture.
   *
   * @param samples samples a pixel, lowered to what the card has; 1 for none
   */
  public Target(int width, int height, int samples) {
    drawn = FrameBuffer.plain(width, height, GL_RGBA8, samples, true);
    resolved = FrameBuffer.plain(width, height, GL_RGBA8, 1, false);
  }

  public int width() {
    return drawn.width();
  }

  public int height() {
    return drawn.height();
  }

  /** Sends drawing here. */
  public void bind() {
    drawn.bind();
  }

  /** Copies the finished picture to the window. */
  public void toWindow() {
    drawn.toWindow();
    glBindFramebuffer(GL_FRAMEBUFFER, 0);
  }

  /**
   * Copies the finished picture into another, which has one sample a pixel, and binds that.
   *
   * @param place left, bottom, width and height there, pixels; as large as this picture
   */
  public void copyTo(Target other, int[] place) {
    drawn.copyTo(other.drawn, place[0], place[1]);
    other.bind();
  }

  /** Reads the finished picture back. */
  public Pixels read() {
    drawn.copyTo(resolved, 0, 0);
    resolved.bind();
    int width = width();
    int height = height();
    glPixelStorei(GL_PACK_ALIGNMENT, 1);
    ByteBuffer bytes = MemoryUtil.memAlloc(width * height * 4);
    int[] rgb = new int[width * height];
    glReadPixels(0, 0, width, height, GL_RGBA, GL_UNSIGNED_BYTE, bytes);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int at = 4 * ((height - 1 - y) * width + x);
        int r = bytes.get(at) & 255;
        int g = bytes.get(at + 1) & 255;
        int b = bytes.get(at + 2) & 255;
        rgb[y * width + x] = r << 16 | g << 8 | b;
      }
    }
    MemoryUtil.memFree(bytes);
    bind();
    return new Pixels(width, height, rgb);
  }

  @Override
  public void close() {
    drawn.close();
    resolved.close();
  }
}
