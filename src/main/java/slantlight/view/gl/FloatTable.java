package slantlight.view.gl;

import static org.lwjgl.opengl.GL13C.GL_TEXTURE0;
import static org.lwjgl.opengl.GL13C.glActiveTexture;
import static org.lwjgl.opengl.GL15C.GL_STREAM_DRAW;
import static org.lwjgl.opengl.GL15C.glBindBuffer;
import static org.lwjgl.opengl.GL15C.glBufferData;
import static org.lwjgl.opengl.GL15C.glDeleteBuffers;
import static org.lwjgl.opengl.GL15C.glGenBuffers;
import static org.lwjgl.opengl.GL30C.GL_RGBA32F;
import static org.lwjgl.opengl.GL31C.GL_TEXTURE_BUFFER;
import static org.lwjgl.opengl.GL31C.glTexBuffer;

import org.lwjgl.opengl.GL11C;

/** Values that shaders look up by number, four floats a place (a buffer texture). */
public final class FloatTable implements AutoCloseable {
  private final int buffer = glGenBuffers();
  private final int texture = GL11C.glGenTextures();

  /** An empty table. */
  public FloatTable() {
    fill(new float[4]);
  }

  /** Replaces everything. */
  public void fill(float[] values) {
    glBindBuffer(GL_TEXTURE_BUFFER, buffer);
    glBufferData(GL_TEXTURE_BUFFER, values.length == 0 ? new float[4] : values, GL_STREAM_DRAW);
    GL11C.glBindTexture(GL_TEXTURE_BUFFER, texture);
    glTexBuffer(GL_TEXTURE_BUFFER, GL_RGBA32F, buffer);
  }

  /** Puts it on a texture unit. */
  public void bind(int unit) {
    glActiveTexture(GL_TEXTURE0 + unit);
    GL11C.glBindTexture(GL_TEXTURE_BUFFER, texture);
    glActiveTexture(GL_TEXTURE0);
  }

  @Override
  public void close() {
    GL11C.glDeleteTextures(texture);
    glDeleteBuffers(buffer);
  }
}
