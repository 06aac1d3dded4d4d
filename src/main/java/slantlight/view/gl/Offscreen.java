package slantlight.view.gl;

import static org.lwjgl.egl.EGL10.EGL_BLUE_SIZE;
import static org.lwjgl.egl.EGL10.EGL_GREEN_SIZE;
import static org.lwjgl.egl.EGL10.EGL_HEIGHT;
import static org.lwjgl.egl.EGL10.EGL_NONE;
import static org.lwjgl.egl.EGL10.EGL_NO_CONTEXT;
import static org.lwjgl.egl.EGL10.EGL_PBUFFER_BIT;
import static org.lwjgl.egl.EGL10.EGL_RED_SIZE;
import static org.lwjgl.egl.EGL10.EGL_SURFACE_TYPE;
import static org.lwjgl.egl.EGL10.EGL_WIDTH;
import static org.lwjgl.egl.EGL10.eglChooseConfig;
import static org.lwjgl.egl.EGL10.eglCreateContext;
import static org.lwjgl.egl.EGL10.eglCreatePbufferSurface;
import static org.lwjgl.egl.EGL10.eglDestroyContext;
import static org.lwjgl.egl.EGL10.eglDestroySurface;
import static org.lwjgl.egl.EGL10.eglInitialize;
import static org.lwjgl.egl.EGL10.eglMakeCurrent;
import static org.lwjgl.egl.EGL10.eglTerminate;
import static org.lwjgl.egl.EGL12.EGL_RENDERABLE_TYPE;
import static org.lwjgl.egl.EGL12.eglBindAPI;
import static org.lwjgl.egl.EGL14.EGL_OPENGL_API;
import static org.lwjgl.egl.EGL14.EGL_OPENGL_BIT;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_MAJOR_VERSION;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_MINOR_VERSION;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_OPENGL_DEBUG;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_OPENGL_PROFILE_MASK;

import java.nio.IntBuffer;
import org.lwjgl.PointerBuffer;
import org.lwjgl.egl.EGL;
import org.lwjgl.egl.EXTPlatformDevice;
import org.lwjgl.glfw.GLFW;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.JNI;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/** Contexts without a display, for tests, films and stills. */
public final class Offscreen {
  private Offscreen() {}

  /** How an offscreen context is made. */
  public enum Way {
    /** Mesa's software renderer in memory (libosmesa6): slow, the same on every machine. */
    SOFTWARE,
    /** The first graphics card through EGL. */
    CARD
  }

  /**
   * Opens a context; draw into a {@link Target}.
   *
   * @throws GlUnavailable when there is none
   */
  public static GlContext open(Way way) {
    return open(way, true);
  }

  /**
   * Opens a context that listens to the driver's own messages or, faster, does not.
   *
   * @throws GlUnavailable when there is none
   */
  public static GlContext open(Way way, boolean debug) {
    return switch (way) {
      case SOFTWARE -> software(debug);
      case CARD -> card(debug);
    };
  }

  private static GlContext software(boolean debug) {
    load("OSMesa", "libOSMesa.so.8");
    GLFW.glfwInitHint(GLFW.GLFW_PLATFORM, GLFW.GLFW_PLATFORM_NULL);
    if (!GLFW.glfwInit()) {
      throw new GlUnavailable("GLFW did not start without a display.");
    }
    GLFW.glfwDefaultWindowHints();
    GLFW.glfwWindowHint(GLFW.GLFW_CONTEXT_CREATION_API, GLFW.GLFW_OSMESA_CONTEXT_API);
    GLFW.glfwWindowHint(GLFW.GLFW_CONTEXT_VERSION_MAJOR, 3);
    GLFW.glfwWindowHint(GLFW.GLFW_CONTEXT_VERSION_MINOR, 3);
    GLFW.glfwWindowHint(GLFW.GLFW_OPENGL_PROFILE, GLFW.GLFW_OPENGL_CORE_PROFILE);
    GLFW.glfwWindowHint(GLFW.GLFW_OPENGL_DEBUG_CONTEXT, debug ? GLFW.GLFW_TRUE : GLFW.GLFW_FALSE);
    GLFW.glfwWindowHint(GLFW.GLFW_VISIBLE, GLFW.GLFW_FALSE);
    long window = GLFW.glfwCreateWindow(16, 16, "offscreen", 0, 0);
    if (window == 0) {
      GLFW.glfwTerminate();
      throw new GlUnavailable(
          "No software OpenGL here. Install Mesa's offscreen library (Debian: libosmesa6).");
    }
    GLFW.glfwMakeContextCurrent(window);
    return new GlContext(
        () -> {
          GLFW.glfwDestroyWindow(window);
          GLFW.glfwTerminate();
        },
        debug);
  }

  /** Must run before LWJGL first touches OpenGL: it reads these settings once. */
  private static void load(String api, String library) {
    Configuration.OPENGL_CONTEXT_API.set(api);
    if (!library.isEmpty()) {
      Configuration.OPENGL_LIBRARY_NAME.set(library);
    }
  }

  private static GlContext card(boolean debug) {
    load("EGL", "");
    try (MemoryStack stack = MemoryStack.stackPush()) {
      IntBuffer count = stack.mallocInt(1);
      long display = display(stack);
      eglInitialize(display, stack.mallocInt(1), stack.mallocInt(1));
      EGL.createDisplayCapabilities(display);
      eglBindAPI(EGL_OPENGL_API);
      PointerBuffer configs = stack.mallocPointer(1);
      int[] wanted = {
        EGL_SURFACE_TYPE,
        EGL_PBUFFER_BIT,
        EGL_RENDERABLE_TYPE,
        EGL_OPENGL_BIT,
        EGL_RED_SIZE,
        8,
        EGL_GREEN_SIZE,
        8,
        EGL_BLUE_SIZE,
        8,
        EGL_NONE
      };
      eglChooseConfig(display, stack.ints(wanted), configs, count);
      int[] context = {
        EGL_CONTEXT_MAJOR_VERSION,
        3,
        EGL_CONTEXT_MINOR_VERSION,
        3,
        EGL_CONTEXT_OPENGL_PROFILE_MASK,
        EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT,
        EGL_CONTEXT_OPENGL_DEBUG,
        debug ? 1 : 0,
        EGL_NONE
      };
      long handle = eglCreateContext(display, configs.get(0), EGL_NO_CONTEXT, stack.ints(context));
      if (handle == MemoryUtil.NULL) {
        eglTerminate(display);
        throw new GlUnavailable("The graphics card offers no OpenGL 3.3 core context.");
      }
      long buffer =
          eglCreatePbufferSurface(
              display, configs.get(0), stack.ints(EGL_WIDTH, 16, EGL_HEIGHT, 16, EGL_NONE));
      eglMakeCurrent(display, buffer, buffer, handle);
      return new GlContext(
          () -> {
            eglMakeCurrent(display, 0, 0, 0);
            eglDestroySurface(display, buffer);
            eglDestroyContext(display, handle);
            eglTerminate(display);
          },
          debug);
    }
  }

  /**
   * The first card's display. Its functions are asked for by name: some dispatch libraries offer
   * them without naming the extension that LWJGL looks for.
   */
  private static long display(MemoryStack stack) {
    long query = EGL.getFunctionProvider().getFunctionAddress("eglQueryDevicesEXT");
    long open = EGL.getFunctionProvider().getFunctionAddress("eglGetPlatformDisplayEXT");
    if (query == MemoryUtil.NULL || open == MemoryUtil.NULL) {
      throw new GlUnavailable("EGL cannot list graphics cards on this computer.");
    }
    PointerBuffer devices = stack.mallocPointer(16);
    IntBuffer count = stack.callocInt(1);
    JNI.callPPI(16, MemoryUtil.memAddress(devices), MemoryUtil.memAddress(count), query);
    if (count.get(0) == 0) {
      throw new GlUnavailable("EGL found no graphics card.");
    }
    return JNI.callPPP(
        EXTPlatformDevice.EGL_PLATFORM_DEVICE_EXT, devices.get(0), MemoryUtil.NULL, open);
  }
}
