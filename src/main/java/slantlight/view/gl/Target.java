package slantlight.view.gl;

import static org.lwjgl.opengl.GL11C.GL_COLOR_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.GL_NEAREST;
import static org.lwjgl.opengl.GL11C.GL_PACK_ALIGNMENT;
import static org.lwjgl.opengl.GL11C.GL_RGBA;
import static org.lwjgl.opengl.GL11C.GL_RGBA8;
import static org.lwjgl.opengl.GL11C.GL_UNSIGNED_BYTE;
import static org.lwjgl.opengl.GL11C.glGetInteger;
import static org.lwjgl.opengl.GL11C.glPixelStorei;
import static org.lwjgl.opengl.GL11C.glReadPixels;
import static org.lwjgl.opengl.GL11C.glViewport;
import static org.lwjgl.opengl.GL30C.GL_COLOR_ATTACHMENT0;
import static org.lwjgl.opengl.GL30C.GL_DEPTH24_STENCIL8;
import static org.lwjgl.opengl.GL30C.GL_DEPTH_STENCIL_ATTACHMENT;
import static org.lwjgl.opengl.GL30C.GL_DRAW_FRAMEBUFFER;
import static org.lwjgl.opengl.GL30C.GL_FRAMEBUFFER;
import static org.lwjgl.opengl.GL30C.GL_FRAMEBUFFER_COMPLETE;
import static org.lwjgl.opengl.GL30C.GL_MAX_SAMPLES;
import static org.lwjgl.opengl.GL30C.GL_READ_FRAMEBUFFER;
import static org.lwjgl.opengl.GL30C.GL_RENDERBUFFER;
import static org.lwjgl.opengl.GL30C.glBindFramebuffer;
import static org.lwjgl.opengl.GL30C.glBindRenderbuffer;
import static org.lwjgl.opengl.GL30C.glBlitFramebuffer;
import static org.lwjgl.opengl.GL30C.glCheckFramebufferStatus;
import static org.lwjgl.opengl.GL30C.glDeleteFramebuffers;
import static org.lwjgl.opengl.GL30C.glDeleteRenderbuffers;
import static org.lwjgl.opengl.GL30C.glFramebufferRenderbuffer;
import static org.lwjgl.opengl.GL30C.glGenFramebuffers;
import static org.lwjgl.opengl.GL30C.glGenRenderbuffers;
import static org.lwjgl.opengl.GL30C.glRenderbufferStorageMultisample;

import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;

/**
 * A picture to draw into: colour, depth and stencil, with several samples a pixel when asked for.
 */
public final class Target implements AutoCloseable {
  private final int width;
  private final int height;
  private final int[] buffers = new int[3];
  private final int drawn = glGenFramebuffers();
  private final int resolved = glGenFramebuffers();

  /**
   * A new picture.
   *
   * @param samples samples a pixel, lowered to what the card has; 1 for none
   */
  public Target(int width, int height, int samples) {
    this.width = width;
    this.height = height;
    int many = samples <= 1 ? 0 : Math.min(samples, glGetInteger(GL_MAX_SAMPLES));
    buffers[0] = storage(GL_RGBA8, many);
    buffers[1] = storage(GL_DEPTH24_STENCIL8, many);
    buffers[2] = storage(GL_RGBA8, 0);
    glBindFramebuffer(GL_FRAMEBUFFER, drawn);
    attach(GL_COLOR_ATTACHMENT0, buffers[0]);
    attach(GL_DEPTH_STENCIL_ATTACHMENT, buffers[1]);
    complete();
    glBindFramebuffer(GL_FRAMEBUFFER, resolved);
    attach(GL_COLOR_ATTACHMENT0, buffers[2]);
    complete();
  }

  private int storage(int format, int samples) {
    int id = glGenRenderbuffers();
    glBindRenderbuffer(GL_RENDERBUFFER, id);
    glRenderbufferStorageMultisample(GL_RENDERBUFFER, samples, format, width, height);
    return id;
  }

  private static void attach(int where, int buffer) {
    glFramebufferRenderbuffer(GL_FRAMEBUFFER, where, GL_RENDERBUFFER, buffer);
  }

  private static void complete() {
    int status = glCheckFramebufferStatus(GL_FRAMEBUFFER);
    if (status != GL_FRAMEBUFFER_COMPLETE) {
      throw new IllegalStateException("framebuffer status 0x" + Integer.toHexString(status));
    }
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** Sends drawing here. */
  public void bind() {
    glBindFramebuffer(GL_FRAMEBUFFER, drawn);
    glViewport(0, 0, width, height);
  }

  /** Copies the finished picture to the window. */
  public void toWindow() {
    glBindFramebuffer(GL_READ_FRAMEBUFFER, drawn);
    glBindFramebuffer(GL_DRAW_FRAMEBUFFER, 0);
    blit();
    glBindFramebuffer(GL_FRAMEBUFFER, 0);
  }

  /**
   * Copies the finished picture into another, which has one sample a pixel, and binds that.
   *
   * @param place left, bottom, width and height there, pixels; as large as this picture
   */
  public void copyTo(Target other, int[] place) {
    glBindFramebuffer(GL_READ_FRAMEBUFFER, drawn);
    glBindFramebuffer(GL_DRAW_FRAMEBUFFER, other.drawn);
    int right = place[0] + width;
    int top = place[1] + height;
    glBlitFramebuffer(
        0, 0, width, height, place[0], place[1], right, top, GL_COLOR_BUFFER_BIT, GL_NEAREST);
    other.bind();
  }

  private void blit() {
    glBlitFramebuffer(0, 0, width, height, 0, 0, width, height, GL_COLOR_BUFFER_BIT, GL_NEAREST);
  }

  /** Reads the finished picture back. */
  public Pixels read() {
    glBindFramebuffer(GL_READ_FRAMEBUFFER, drawn);
    glBindFramebuffer(GL_DRAW_FRAMEBUFFER, resolved);
    blit();
    glBindFramebuffer(GL_FRAMEBUFFER, resolved);
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
    glDeleteFramebuffers(drawn);
    glDeleteFramebuffers(resolved);
    for (int b : buffers) {
      glDeleteRenderbuffers(b);
    }
  }
}
