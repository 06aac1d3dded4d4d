package slantlight.scene;

import java.util.Optional;

/**
 * One thing that is wrong with a scene, told so that it can be mended.
 *
 * @param file the file as the user named it
 * @param line line, from 1; 0 when the fault belongs to the file as a whole
 * @param column column, from 1; 0 when the fault belongs to the file as a whole
 * @param jsonPath where in the file, such as {@code $.rooms[2].openings[0].head}
 * @param what what is wrong
 * @param expected what to write instead or what to do
 * @param nearest the valid choice nearest to what was written, if there is one
 */
public record Fault(
    String file,
    int line,
    int column,
    String jsonPath,
    String what,
    String expected,
    Optional<String> nearest) {
  /** One line for a person: place, path, what is wrong, what to do. */
  public String text() {
    StringBuilder out = new StringBuilder(file);
    if (line > 0) {
      out.append(':').append(line).append(':').append(column);
      out.append(' ').append(jsonPath);
    }
    out.append(": ").append(what).append("; ").append(expected);
    nearest.ifPresent(n -> out.append("; did you mean \"").append(n).append("\"?"));
    return out.toString();
  }
}
