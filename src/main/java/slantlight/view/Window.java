package slantlight.view;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lwjgl.glfw.Callbacks;
import org.lwjgl.glfw.GLFW;
import org.lwjgl.glfw.GLFWErrorCallback;
import org.lwjgl.system.MemoryStack;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.GlUnavailable;

/** A window of the desktop with an OpenGL context, and what the user did in it. */
final class Window implements AutoCloseable {
  private static final Map<Integer, String> NAMED =
      Map.ofEntries(
          Map.entry(GLFW.GLFW_KEY_TAB, "Tab"),
          Map.entry(GLFW.GLFW_KEY_ENTER, "Enter"),
          Map.entry(GLFW.GLFW_KEY_ESCAPE, "Esc"),
          Map.entry(GLFW.GLFW_KEY_SPACE, "Space"),
          Map.entry(GLFW.GLFW_KEY_LEFT, "Left"),
          Map.entry(GLFW.GLFW_KEY_RIGHT, "Right"),
          Map.entry(GLFW.GLFW_KEY_UP, "Up"),
          Map.entry(GLFW.GLFW_KEY_DOWN, "Down"));

  private final long handle;
  private final GlContext context;
  private final List<Event> events = new ArrayList<>();
  private double x;
  private double y;
  private boolean down;

  /** Something the user did; places in layout units. */
  sealed interface Event {
    record Key(Controls.Press press) implements Event {}

    record Down(double x, double y) implements Event {}

    record Up(double x, double y) implements Event {}

    /** The pointer moved with no button down. */
    record Move(double x, double y) implements Event {}

    record Drag(double x, double y, double dx, double dy) implements Event {}

    record Wheel(double notches) implements Event {}
  }

  /** The window's place on the desktop, screen coordinates. */
  record Place(int x, int y, int width, int height) {}

  /**
   * Opens a window.
   *
   * @throws GlUnavailable when there is no desktop or no OpenGL 3.3
   */
  Window(String title, Place place, boolean debug) {
    GLFWErrorCallback.create((code, text) -> {}).set();
    if (!GLFW.glfwInit()) {
      throw new GlUnavailable(
          "There is no desktop to open a window on. Use `film` or `report`, which need none.");
    }
    GLFW.glfwDefaultWindowHints();
    GLFW.glfwWindowHint(GLFW.GLFW_CONTEXT_VERSION_MAJOR, 3);
    GLFW.glfwWindowHint(GLFW.GLFW_CONTEXT_VERSION_MINOR, 3);
    GLFW.glfwWindowHint(GLFW.GLFW_OPENGL_PROFILE, GLFW.GLFW_OPENGL_CORE_PROFILE);
    GLFW.glfwWindowHint(GLFW.GLFW_OPENGL_FORWARD_COMPAT, GLFW.GLFW_TRUE);
    GLFW.glfwWindowHint(GLFW.GLFW_OPENGL_DEBUG_CONTEXT, debug ? GLFW.GLFW_TRUE : GLFW.GLFW_FALSE);
    GLFW.glfwWindowHint(GLFW.GLFW_SCALE_TO_MONITOR, GLFW.GLFW_TRUE);
    handle = GLFW.glfwCreateWindow(place.width(), place.height(), title, 0, 0);
    if (handle == 0) {
      GLFW.glfwTerminate();
      throw new GlUnavailable(
          "This computer gives no OpenGL 3.3 window. Update the graphics driver, or use `report`,"
              + " which needs none.");
    }
    if (place.x() >= 0) {
      GLFW.glfwSetWindowPos(handle, place.x(), place.y());
    }
    GLFW.glfwSetWindowSizeLimits(handle, 900, 560, GLFW.GLFW_DONT_CARE, GLFW.GLFW_DONT_CARE);
    GLFW.glfwMakeContextCurrent(handle);
    GLFW.glfwSwapInterval(1);
    context =
        new GlContext(
            () -> {
              Callbacks.glfwFreeCallbacks(handle);
              GLFW.glfwDestroyWindow(handle);
              GLFW.glfwTerminate();
            },
            debug);
    listen();
  }

  private void listen() {
    GLFW.glfwSetKeyCallback(
        handle,
        (w, key, code, action, mods) -> {
          String name = NAMED.get(key);
          if (name == null && key >= GLFW.GLFW_KEY_0 && key <= GLFW.GLFW_KEY_Z) {
            String printed = GLFW.glfwGetKeyName(key, code);
            name = printed == null ? "" : printed.toUpperCase(Locale.ROOT);
          }
          if ("Q".equals(name) && (mods & GLFW.GLFW_MOD_CONTROL) != 0) {
            GLFW.glfwSetWindowShouldClose(handle, true);
          }
          if (name != null && action != GLFW.GLFW_RELEASE) {
            boolean shift = (mods & GLFW.GLFW_MOD_SHIFT) != 0;
            events.add(new Event.Key(new Controls.Press(name, shift)));
          }
        });
    GLFW.glfwSetCursorPosCallback(
        handle,
        (w, px, py) -> {
          double k = unitsPerScreen();
          double nx = px * k;
          double ny = py * k;
          if (down) {
            events.add(new Event.Drag(nx, ny, nx - x, ny - y));
          } else {
            events.add(new Event.Move(nx, ny));
          }
          x = nx;
          y = ny;
        });
    GLFW.glfwSetMouseButtonCallback(
        handle,
        (w, button, action, mods) -> {
          if (button == GLFW.GLFW_MOUSE_BUTTON_LEFT) {
            down = action == GLFW.GLFW_PRESS;
            events.add(down ? new Event.Down(x, y) : new Event.Up(x, y));
          }
        });
    GLFW.glfwSetScrollCallback(handle, (w, dx, dy) -> events.add(new Event.Wheel(dy)));
  }

  /** Pixels per layout unit. */
  double scale() {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      java.nio.FloatBuffer s = stack.mallocFloat(2);
      GLFW.glfwGetWindowContentScale(handle, s.slice(0, 1), s.slice(1, 1));
      return Math.max(1, s.get(0));
    }
  }

  private double unitsPerScreen() {
    int[] pixels = pixels();
    try (MemoryStack stack = MemoryStack.stackPush()) {
      IntBuffer w = stack.mallocInt(1);
      IntBuffer h = stack.mallocInt(1);
      GLFW.glfwGetWindowSize(handle, w, h);
      return pixels[0] / scale() / Math.max(1, w.get(0));
    }
  }

  /** Width and height of the picture in pixels. */
  int[] pixels() {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      IntBuffer w = stack.mallocInt(1);
      IntBuffer h = stack.mallocInt(1);
      GLFW.glfwGetFramebufferSize(handle, w, h);
      return new int[] {w.get(0), h.get(0)};
    }
  }

  Place place() {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      IntBuffer b = stack.mallocInt(4);
      GLFW.glfwGetWindowPos(handle, b.slice(0, 1), b.slice(1, 1));
      GLFW.glfwGetWindowSize(handle, b.slice(2, 1), b.slice(3, 1));
      return new Place(b.get(0), b.get(1), b.get(2), b.get(3));
    }
  }

  /** Waits for something to happen, but no longer than that; returns what did. */
  List<Event> events(double seconds) {
    if (seconds > 0) {
      GLFW.glfwWaitEventsTimeout(seconds);
    } else {
      GLFW.glfwPollEvents();
    }
    List<Event> out = List.copyOf(events);
    events.clear();
    return out;
  }

  boolean open() {
    return !GLFW.glfwWindowShouldClose(handle);
  }

  void swap() {
    GLFW.glfwSwapBuffers(handle);
  }

  /** The whole screen, or back to a window. */
  void wholeScreen(Place back) {
    long monitor = GLFW.glfwGetPrimaryMonitor();
    if (GLFW.glfwGetWindowMonitor(handle) != 0 || monitor == 0) {
      GLFW.glfwSetWindowMonitor(
          handle, 0, back.x(), back.y(), back.width(), back.height(), GLFW.GLFW_DONT_CARE);
      return;
    }
    org.lwjgl.glfw.GLFWVidMode mode = GLFW.glfwGetVideoMode(monitor);
    if (mode != null) {
      GLFW.glfwSetWindowMonitor(
          handle, monitor, 0, 0, mode.width(), mode.height(), mode.refreshRate());
    }
  }

  GlContext context() {
    return context;
  }

  @Override
  public void close() {
    context.close();
  }
}
