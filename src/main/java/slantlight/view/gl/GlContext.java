package slantlight.view.gl;

import static org.lwjgl.opengl.GL11C.GL_NO_ERROR;
import static org.lwjgl.opengl.GL11C.GL_RENDERER;
import static org.lwjgl.opengl.GL11C.GL_VERSION;
import static org.lwjgl.opengl.GL11C.glGetError;
import static org.lwjgl.opengl.GL11C.glGetString;
import static org.lwjgl.opengl.GL43C.GL_DEBUG_OUTPUT;
import static org.lwjgl.opengl.GL43C.GL_DEBUG_OUTPUT_SYNCHRONOUS;
import static org.lwjgl.opengl.GL43C.GL_DEBUG_TYPE_ERROR;
import static org.lwjgl.opengl.GL43C.glDebugMessageCallback;

import java.util.ArrayList;
import java.util.List;
import org.lwjgl.opengl.GL;
import org.lwjgl.opengl.GL11C;
import org.lwjgl.opengl.GLCapabilities;
import org.lwjgl.opengl.GLDebugMessageCallback;
import org.lwjgl.system.MemoryUtil;

/**
 * A current OpenGL 3.3 core context. The one who opens it uses it from the same thread and closes
 * it. Errors that the driver reports are kept; {@link #check} throws when there are any.
 */
public final class GlContext implements AutoCloseable {
  private final Surface surface;
  private final GLDebugMessageCallback callback;
  private final List<String> errors = new ArrayList<>();

  /** What the context draws on and how it goes away. */
  public interface Surface extends AutoCloseable {
    @Override
    void close();
  }

  /**
   * Takes over a context that is current on this thread.
   *
   * @param debug whether to listen to the driver's own messages
   * @throws GlUnavailable when it is older than 3.3
   */
  public GlContext(Surface surface, boolean debug) {
    this.surface = surface;
    GLCapabilities caps = GL.createCapabilities();
    if (!caps.OpenGL33) {
      String version = glGetString(GL_VERSION);
      surface.close();
      throw new GlUnavailable(
          "This computer offers OpenGL "
              + version
              + "; the viewer needs 3.3 or newer. Update the graphics driver, or use `report`,"
              + " which needs none.");
    }
    if (debug && caps.glDebugMessageCallback != 0) {
      callback = GLDebugMessageCallback.create(this::hear);
      GL11C.glEnable(GL_DEBUG_OUTPUT);
      GL11C.glEnable(GL_DEBUG_OUTPUT_SYNCHRONOUS);
      glDebugMessageCallback(callback, 0);
    } else {
      callback = null;
    }
  }

  private void hear(
      int source, int type, int id, int severity, int length, long message, long user) {
    if (type == GL_DEBUG_TYPE_ERROR) {
      errors.add(MemoryUtil.memUTF8(message, length));
    }
  }

  /** Name of the renderer, such as "llvmpipe (LLVM 15.0.6, 256 bits)". */
  public String renderer() {
    return glGetString(GL_RENDERER) + ", OpenGL " + glGetString(GL_VERSION);
  }

  /**
   * Throws when anything went wrong since the last call.
   *
   * @throws IllegalStateException with every error reported
   */
  public void check() {
    List<String> found = new ArrayList<>(errors);
    errors.clear();
    for (int e = glGetError(); e != GL_NO_ERROR; e = glGetError()) {
      found.add("glGetError 0x" + Integer.toHexString(e));
    }
    if (!found.isEmpty()) {
      throw new IllegalStateException("OpenGL: " + String.join("; ", found));
    }
  }

  @Override
  public void close() {
    if (callback != null) {
      glDebugMessageCallback(null, 0);
      callback.free();
    }
    GL.setCapabilities(null);
    surface.close();
  }
}
