package slantlight.view.gl;

import static org.lwjgl.opengl.GL30C.GL_RGBA16F;

/** Linear light in half floats, with depth and stencil, to be read as a texture when done. */
public final class LightBuffer implements AutoCloseable {
  private final FrameBuffer drawn;
  private final FrameBuffer resolved;

  /** A new buffer; {@code samples} a pixel, lowered to what the card has. */
  public LightBuffer(int width, int height, int samples) {
    boolean several = samples > 1;
    resolved = FrameBuffer.texture(width, height, GL_RGBA16F, !several);
    drawn = several ? FrameBuffer.plain(width, height, GL_RGBA16F, samples, true) : resolved;
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

  /** Puts the finished light on texture unit 0. */
  public void read() {
    if (drawn != resolved) {
      drawn.copyTo(resolved, 0, 0);
    }
    resolved.read();
  }

  @Override
  public void close() {
    resolved.close();
    if (drawn != resolved) {
      drawn.close();
    }
  }
}
