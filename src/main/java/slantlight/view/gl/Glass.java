package slantlight.view.gl;

import static org.lwjgl.opengl.GL11C.GL_BLEND;
import static org.lwjgl.opengl.GL11C.GL_COLOR_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.GL_ONE;
import static org.lwjgl.opengl.GL11C.GL_ONE_MINUS_SRC_ALPHA;
import static org.lwjgl.opengl.GL11C.GL_RGBA8;
import static org.lwjgl.opengl.GL11C.GL_SCISSOR_TEST;
import static org.lwjgl.opengl.GL11C.GL_STENCIL_BUFFER_BIT;
import static org.lwjgl.opengl.GL11C.GL_TRIANGLES;
import static org.lwjgl.opengl.GL11C.glBlendFunc;
import static org.lwjgl.opengl.GL11C.glClear;
import static org.lwjgl.opengl.GL11C.glClearColor;
import static org.lwjgl.opengl.GL11C.glDisable;
import static org.lwjgl.opengl.GL11C.glDrawArrays;
import static org.lwjgl.opengl.GL11C.glEnable;
import static org.lwjgl.opengl.GL11C.glScissor;
import static org.lwjgl.opengl.GL30C.glBindVertexArray;
import static org.lwjgl.opengl.GL30C.glDeleteVertexArrays;
import static org.lwjgl.opengl.GL30C.glGenVertexArrays;

/** A see-through picture as large as a target, kept from frame to frame and laid over it. */
public final class Glass implements AutoCloseable {
  private final FrameBuffer kept;
  private final int nothing = glGenVertexArrays();
  private final Program over = new Program("tone", "kept");

  /** A new picture; what is in it is not defined until {@link #wipe}. */
  public Glass(int width, int height) {
    kept = FrameBuffer.texture(width, height, GL_RGBA8, true);
  }

  public int width() {
    return kept.width();
  }

  public int height() {
    return kept.height();
  }

  /**
   * Sends drawing here and empties a rectangle.
   *
   * @param r left, bottom, width and height, pixels
   */
  public void wipe(int[] r) {
    kept.bind();
    glEnable(GL_SCISSOR_TEST);
    glScissor(r[0], r[1], r[2], r[3]);
    glClearColor(0, 0, 0, 0);
    glClear(GL_COLOR_BUFFER_BIT | GL_STENCIL_BUFFER_BIT);
    glDisable(GL_SCISSOR_TEST);
  }

  /** Lays rectangles of it over the framebuffer that is bound, which must be of the same size. */
  public void lay(Iterable<int[]> rectangles) {
    kept.read();
    glEnable(GL_BLEND);
    glBlendFunc(GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
    over.use().set("picture", 0);
    glBindVertexArray(nothing);
    glEnable(GL_SCISSOR_TEST);
    for (int[] r : rectangles) {
      glScissor(r[0], r[1], r[2], r[3]);
      glDrawArrays(GL_TRIANGLES, 0, 3);
    }
    glDisable(GL_SCISSOR_TEST);
    glBindVertexArray(0);
    glDisable(GL_BLEND);
  }

  @Override
  public void close() {
    over.close();
    glDeleteVertexArrays(nothing);
    kept.close();
  }
}
