package slantlight.scene.gbxml;

import java.util.List;

/**
 * A scene made from another file.
 *
 * @param scene the scene file's text
 * @param rooms how many rooms
 * @param windows how many windows, skylights and glazed doors
 * @param doors how many other doors
 * @param passages how many open ways between rooms
 * @param notes what was left out, guessed or not understood, one line each
 */
public record Imported(
    String scene, int rooms, int windows, int doors, int passages, List<String> notes) {
  public Imported {
    notes = List.copyOf(notes);
  }
}
