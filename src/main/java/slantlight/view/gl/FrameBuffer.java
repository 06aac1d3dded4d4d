package slantlight.view.gl;

import static org.lwjgl.opengl.GL11C.GL_COLOR_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.GL_NEAREST;
import static org.lwjgl.opengl.GL11C.GL_RGBA;
import static org.lwjgl.opengl.GL11C.GL_TEXTURE_2D;
import static org.lwjgl.opengl.GL11C.GL_TEXTURE_MAG_FILTER;
import static org.lwjgl.opengl.GL11C.GL_TEXTURE_MIN_FILTER;
import static org.lwjgl.opengl.GL11C.GL_UNSIGNED_BYTE;
import static org.lwjgl.opengl.GL11C.glBindTexture;
import static org.lwjgl.opengl.GL11C.glDeleteTextures;
import static org.lwjgl.opengl.GL11C.glGenTextures;
import static org.lwjgl.opengl.GL11C.glGetInteger;
import static org.lwjgl.opengl.GL11C.glTexImage2D;
import static org.lwjgl.opengl.GL11C.glTexParameteri;
import static org.lwjgl.opengl.GL11C.glViewport;
import static org.lwjgl.opengl.GL13C.GL_TEXTURE0;
import static org.lwjgl.opengl.GL13C.glActiveTexture;
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
import static org.lwjgl.opengl.GL30C.glFramebufferTexture2D;
import static org.lwjgl.opengl.GL30C.glGenFramebuffers;
import static org.lwjgl.opengl.GL30C.glGenRenderbuffers;
import static org.lwjgl.opengl.GL30C.glRenderbufferStorageMultisample;

import java.nio.ByteBuffer;

/** A framebuffer with its colour, as a texture or not, and perhaps depth and stencil. */
final class FrameBuffer implements AutoCloseable {
  /** No such object; OpenGL ignores it when it is deleted. */
  private static final int NONE = 0;

  private final int width;
  private final int height;
  private final int id = glGenFramebuffers();
  private final int texture;
  private final int colour;
  private final int depth;

  private FrameBuffer(
      int width, int height, int format, int samples, boolean textured, boolean deep) {
    this.width = width;
    this.height = height;
    texture = textured ? texture(format) : NONE;
    colour = textured ? NONE : storage(format, samples);
    depth = deep ? storage(GL_DEPTH24_STENCIL8, samples) : NONE;
    glBindFramebuffer(GL_FRAMEBUFFER, id);
    if (textured) {
      glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, texture, 0);
    } else {
      glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_RENDERBUFFER, colour);
    }
    if (deep) {
      glFramebufferRenderbuffer(
          GL_FRAMEBUFFER, GL_DEPTH_STENCIL_ATTACHMENT, GL_RENDERBUFFER, depth);
    }
    int status = glCheckFramebufferStatus(GL_FRAMEBUFFER);
    if (status != GL_FRAMEBUFFER_COMPLETE) {
      throw new IllegalStateException("framebuffer status 0x" + Integer.toHexString(status));
    }
  }

  /**
   * One whose colour can be read as a texture.
   *
   * @param format such as {@code GL_RGBA8}
   * @param deep with depth and stencil
   */
  static FrameBuffer texture(int width, int height, int format, boolean deep) {
    return new FrameBuffer(width, height, format, 0, true, deep);
  }

  /**
   * One to draw into and to copy from.
   *
   * @param samples samples a pixel, lowered to what the card has; 1 for none
   */
  static FrameBuffer plain(int width, int height, int format, int samples, boolean deep) {
    int many = samples <= 1 ? 0 : Math.min(samples, glGetInteger(GL_MAX_SAMPLES));
    return new FrameBuffer(width, height, format, many, false, deep);
  }

  private int texture(int format) {
    int name = glGenTextures();
    glBindTexture(GL_TEXTURE_2D, name);
    glTexImage2D(
        GL_TEXTURE_2D, 0, format, width, height, 0, GL_RGBA, GL_UNSIGNED_BYTE, (ByteBuffer) null);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_NEAREST);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_NEAREST);
    return name;
  }

  private int storage(int format, int samples) {
    int name = glGenRenderbuffers();
    glBindRenderbuffer(GL_RENDERBUFFER, name);
    glRenderbufferStorageMultisample(GL_RENDERBUFFER, samples, format, width, height);
    return name;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** Sends drawing here and reads from here. */
  void bind() {
    glBindFramebuffer(GL_FRAMEBUFFER, id);
    glViewport(0, 0, width, height);
  }

  /** Puts its colour on texture unit 0. */
  void read() {
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, texture);
  }

  /** Copies its colour into another, with its lower left corner at a pixel of that. */
  void copyTo(FrameBuffer other, int left, int bottom) {
    copyTo(other.id, left, bottom);
  }

  /** Copies its colour into the window. */
  void toWindow() {
    copyTo(0, 0, 0);
  }

  private void copyTo(int other, int left, int bottom) {
    glBindFramebuffer(GL_READ_FRAMEBUFFER, id);
    glBindFramebuffer(GL_DRAW_FRAMEBUFFER, other);
    int right = left + width;
    int top = bottom + height;
    glBlitFramebuffer(
        0, 0, width, height, left, bottom, right, top, GL_COLOR_BUFFER_BIT, GL_NEAREST);
  }

  @Override
  public void close() {
    glDeleteFramebuffers(id);
    glDeleteTextures(texture);
    glDeleteRenderbuffers(colour);
    glDeleteRenderbuffers(depth);
  }
}
