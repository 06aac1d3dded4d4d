package slantlight.view.gl;

import static org.lwjgl.opengl.GL11C.GL_FLOAT;
import static org.lwjgl.opengl.GL11C.GL_UNSIGNED_INT;
import static org.lwjgl.opengl.GL11C.glDrawElements;
import static org.lwjgl.opengl.GL14C.glMultiDrawElements;
import static org.lwjgl.opengl.GL15C.GL_ARRAY_BUFFER;
import static org.lwjgl.opengl.GL15C.GL_DYNAMIC_DRAW;
import static org.lwjgl.opengl.GL15C.GL_ELEMENT_ARRAY_BUFFER;
import static org.lwjgl.opengl.GL15C.GL_STATIC_DRAW;
import static org.lwjgl.opengl.GL15C.glBindBuffer;
import static org.lwjgl.opengl.GL15C.glBufferData;
import static org.lwjgl.opengl.GL15C.glDeleteBuffers;
import static org.lwjgl.opengl.GL15C.glGenBuffers;
import static org.lwjgl.opengl.GL20C.glEnableVertexAttribArray;
import static org.lwjgl.opengl.GL20C.glVertexAttribPointer;
import static org.lwjgl.opengl.GL30C.glBindVertexArray;
import static org.lwjgl.opengl.GL30C.glDeleteVertexArrays;
import static org.lwjgl.opengl.GL30C.glGenVertexArrays;

import org.lwjgl.PointerBuffer;
import org.lwjgl.system.MemoryStack;

/** Vertices and indices on the card. Attributes are interleaved floats, numbered from 0. */
public final class Mesh implements AutoCloseable {
  private final int array = glGenVertexArrays();
  private final int vertices = glGenBuffers();
  private final int indices = glGenBuffers();
  private int count;

  /**
   * An empty mesh.
   *
   * @param sizes floats of each attribute, in order
   */
  public Mesh(int... sizes) {
    glBindVertexArray(array);
    glBindBuffer(GL_ARRAY_BUFFER, vertices);
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, indices);
    int stride = 0;
    for (int s : sizes) {
      stride += s;
    }
    int at = 0;
    for (int i = 0; i < sizes.length; i++) {
      glEnableVertexAttribArray(i);
      glVertexAttribPointer(i, sizes[i], GL_FLOAT, false, stride * Float.BYTES, at * 4L);
      at += sizes[i];
    }
    glBindVertexArray(0);
  }

  /** Replaces everything. */
  public Mesh fill(float[] data, int[] index) {
    glBindVertexArray(array);
    glBindBuffer(GL_ARRAY_BUFFER, vertices);
    glBufferData(GL_ARRAY_BUFFER, data, GL_DYNAMIC_DRAW);
    glBufferData(GL_ELEMENT_ARRAY_BUFFER, index, GL_STATIC_DRAW);
    glBindVertexArray(0);
    count = index.length;
    return this;
  }

  /** Draws all of it as {@code GL_TRIANGLES}, {@code GL_LINES} and so on. */
  public void draw(int primitive) {
    draw(primitive, 0, count);
  }

  /** Draws a run of indices. */
  public void draw(int primitive, int first, int many) {
    if (many > 0) {
      glBindVertexArray(array);
      glDrawElements(primitive, many, GL_UNSIGNED_INT, first * 4L);
      glBindVertexArray(0);
    }
  }

  /**
   * Draws several runs of indices with one command.
   *
   * @param firsts first index of each
   * @param counts indices of each
   */
  public void draw(int primitive, int[] firsts, int[] counts) {
    if (counts.length == 0) {
      return;
    }
    try (MemoryStack stack = MemoryStack.stackPush()) {
      PointerBuffer places = stack.mallocPointer(firsts.length);
      for (int i = 0; i < firsts.length; i++) {
        places.put(i, firsts[i] * 4L);
      }
      glBindVertexArray(array);
      glMultiDrawElements(primitive, counts, GL_UNSIGNED_INT, places);
      glBindVertexArray(0);
    }
  }

  public int count() {
    return count;
  }

  @Override
  public void close() {
    glDeleteVertexArrays(array);
    glDeleteBuffers(vertices);
    glDeleteBuffers(indices);
  }
}
