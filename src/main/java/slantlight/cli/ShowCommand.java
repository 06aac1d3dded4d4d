package slantlight.cli;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slantlight.scene.House;
import slantlight.view.Show;
import slantlight.view.gl.GlUnavailable;

/** The viewer's window. */
@Command(
    name = "show",
    description =
        "Opens a window on the house: risk painted on the surfaces, boards, and the surfaces as"
            + " lit. Press H in it for the keys. Needs a desktop and OpenGL 3.3.")
final class ShowCommand implements Runnable {
  @Mixin private CommonOptions common;

  @Parameters(paramLabel = "SCENE", description = "Scene file; edits to it are seen at once.")
  private Path scene;

  @Option(
      names = "--stills",
      paramLabel = "FOLDER",
      defaultValue = ".",
      description = "Where kept pictures go (default: here).")
  private Path stills;

  @Option(names = "--gl-debug", description = "Ask the graphics driver for its own messages.")
  private boolean debug;

  @Option(names = "--times", description = "Say how long the first picture and the scores took.")
  private boolean times;

  @Override
  public void run() {
    House house = Scenes.read(scene, common.err());
    try {
      Show.run(scene, house, stills, debug, this::say);
    } catch (GlUnavailable e) {
      throw CommandFailure.output("slantlight: " + e.getMessage(), e);
    }
  }

  private void say(String time) {
    if (times) {
      common.err().println(time);
      common.err().flush();
    }
  }
}
