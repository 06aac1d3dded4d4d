package slantlight.view.gl;

import static org.lwjgl.opengl.GL20C.GL_COMPILE_STATUS;
import static org.lwjgl.opengl.GL20C.GL_FRAGMENT_SHADER;
import static org.lwjgl.opengl.GL20C.GL_LINK_STATUS;
import static org.lwjgl.opengl.GL20C.GL_VERTEX_SHADER;
import static org.lwjgl.opengl.GL20C.glAttachShader;
import static org.lwjgl.opengl.GL20C.glCompileShader;
import static org.lwjgl.opengl.GL20C.glCreateProgram;
import static org.lwjgl.opengl.GL20C.glCreateShader;
import static org.lwjgl.opengl.GL20C.glDeleteProgram;
import static org.lwjgl.opengl.GL20C.glDeleteShader;
import static org.lwjgl.opengl.GL20C.glGetProgramInfoLog;
import static org.lwjgl.opengl.GL20C.glGetProgrami;
import static org.lwjgl.opengl.GL20C.glGetShaderInfoLog;
import static org.lwjgl.opengl.GL20C.glGetShaderi;
import static org.lwjgl.opengl.GL20C.glGetUniformLocation;
import static org.lwjgl.opengl.GL20C.glLinkProgram;
import static org.lwjgl.opengl.GL20C.glShaderSource;
import static org.lwjgl.opengl.GL20C.glUniform1f;
import static org.lwjgl.opengl.GL20C.glUniform1fv;
import static org.lwjgl.opengl.GL20C.glUniform1i;
import static org.lwjgl.opengl.GL20C.glUniform2f;
import static org.lwjgl.opengl.GL20C.glUniform3f;
import static org.lwjgl.opengl.GL20C.glUniform4f;
import static org.lwjgl.opengl.GL20C.glUniformMatrix4fv;
import static org.lwjgl.opengl.GL20C.glUseProgram;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.joml.Matrix4fc;
import slantlight.geom.Vec3;

/** A linked pair of shaders from the {@code shaders} folder. */
public final class Program implements AutoCloseable {
  private static final String FOLDER = "/slantlight/shaders/";
  private final int id;
  private final Map<String, Integer> places = new HashMap<>();

  /**
   * Compiles {@code vertexName.vert} and {@code fragmentName.frag}. A line {@code //! include file}
   * is replaced by that file's text.
   *
   * @throws IllegalStateException with the driver's log when they do not compile
   */
  public Program(String vertexName, String fragmentName) {
    int vertex = compile(GL_VERTEX_SHADER, vertexName + ".vert");
    int fragment = compile(GL_FRAGMENT_SHADER, fragmentName + ".frag");
    id = glCreateProgram();
    glAttachShader(id, vertex);
    glAttachShader(id, fragment);
    glLinkProgram(id);
    glDeleteShader(vertex);
    glDeleteShader(fragment);
    if (glGetProgrami(id, GL_LINK_STATUS) == 0) {
      throw new IllegalStateException(
          vertexName + ", " + fragmentName + ": " + glGetProgramInfoLog(id));
    }
  }

  private static int compile(int kind, String file) {
    int shader = glCreateShader(kind);
    glShaderSource(shader, source(file));
    glCompileShader(shader);
    if (glGetShaderi(shader, GL_COMPILE_STATUS) == 0) {
      throw new IllegalStateException(file + ": " + glGetShaderInfoLog(shader));
    }
    return shader;
  }

  private static String source(String file) {
    try (InputStream in = Program.class.getResourceAsStream(FOLDER + file)) {
      if (in == null) {
        throw new IllegalStateException("no shader " + file);
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      StringBuilder out = new StringBuilder();
      for (String line : text.split("\n", -1)) {
        String mark = "//! include ";
        out.append(line.startsWith(mark) ? source(line.substring(mark.length()).strip()) : line);
        out.append('\n');
      }
      return out.toString();
    } catch (IOException e) {
      throw new IllegalStateException("shader " + file + " cannot be read", e);
    }
  }

  /** Makes it the current program. */
  public Program use() {
    glUseProgram(id);
    return this;
  }

  private int place(String name) {
    return places.computeIfAbsent(name, n -> glGetUniformLocation(id, n));
  }

  public Program set(String name, int v) {
    glUniform1i(place(name), v);
    return this;
  }

  public Program set(String name, double v) {
    glUniform1f(place(name), (float) v);
    return this;
  }

  /** Sets an array of floats. */
  public Program set(String name, float[] values) {
    glUniform1fv(place(name), values);
    return this;
  }

  public Program set(String name, double x, double y) {
    glUniform2f(place(name), (float) x, (float) y);
    return this;
  }

  public Program set(String name, Vec3 v) {
    glUniform3f(place(name), (float) v.x(), (float) v.y(), (float) v.z());
    return this;
  }

  public Program set(String name, double x, double y, double z, double w) {
    glUniform4f(place(name), (float) x, (float) y, (float) z, (float) w);
    return this;
  }

  public Program set(String name, Matrix4fc m) {
    float[] values = new float[16];
    m.get(values);
    glUniformMatrix4fv(place(name), false, values);
    return this;
  }

  @Override
  public void close() {
    glDeleteProgram(id);
  }
}
