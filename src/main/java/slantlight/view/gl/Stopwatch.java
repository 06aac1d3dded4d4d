package slantlight.view.gl;

import static org.lwjgl.opengl.GL15C.glDeleteQueries;
import static org.lwjgl.opengl.GL15C.glGenQueries;
import static org.lwjgl.opengl.GL33C.GL_QUERY_RESULT;
import static org.lwjgl.opengl.GL33C.GL_TIMESTAMP;
import static org.lwjgl.opengl.GL33C.glGetQueryObjectui64;
import static org.lwjgl.opengl.GL33C.glQueryCounter;

import java.util.ArrayList;
import java.util.List;

/** Splits a frame's time into parts, on the processor and on the card. */
public final class Stopwatch implements AutoCloseable {
  private final List<String> parts = new ArrayList<>();
  private final List<Long> sent = new ArrayList<>();
  private final List<Integer> queries = new ArrayList<>();

  /**
   * One part of a frame.
   *
   * @param sendMs time taken to give the commands
   * @param drawMs time between the ends of the part before and of this part on the card
   */
  public record Lap(String part, double sendMs, double drawMs) {}

  /** Starts a frame. */
  public void start() {
    parts.clear();
    sent.clear();
    lap("");
  }

  /** Ends a part of the frame. */
  public void lap(String part) {
    if (queries.size() == parts.size()) {
      queries.add(glGenQueries());
    }
    glQueryCounter(queries.get(parts.size()), GL_TIMESTAMP);
    parts.add(part);
    sent.add(System.nanoTime());
  }

  /** The parts of the frame since {@link #start}; waits for the card. */
  public List<Lap> laps() {
    List<Lap> out = new ArrayList<>();
    long before = glGetQueryObjectui64(queries.get(0), GL_QUERY_RESULT);
    for (int i = 1; i < parts.size(); i++) {
      long now = glGetQueryObjectui64(queries.get(i), GL_QUERY_RESULT);
      out.add(new Lap(parts.get(i), (sent.get(i) - sent.get(i - 1)) / 1e6, (now - before) / 1e6));
      before = now;
    }
    return out;
  }

  @Override
  public void close() {
    queries.forEach(q -> glDeleteQueries(q));
  }
}
