package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MeterCommandTest {
  /** A black room under a uniform sky of 1000 cd/m2 over black ground; a bare hole to the south. */
  private static final String BLACK_ROOM =
      """
      {
        "slantlight": 1, "name": "Black room", "note": "An invented room.", "units": "m",
        "site": { "latitude": 45, "longitude": -93, "zone": "America/Chicago" },
        "prescribed": { "skyType": 5, "zenithLuminance": 1000, "groundLuminance": 0 },
        "rooms": [ { "id": "a", "use": "living", "height": 3,
          "outline": [[-5, 0], [5, 0], [5, 6], [-5, 6]],
          "openings": [ { "id": "w", "label": "south hole", "kind": "window", "wall": "south",
            "offset": 3, "width": 2, "height": 2, "transmittance": 1, "panes": 0, "frame": 0,
            "reveal": 0 } ],
          "finishes": {
            "walls": { "paint": { "lrv": 0, "sheen": "flat" } },
            "floor": { "paint": { "lrv": 0, "sheen": "flat" } },
            "ceiling": { "paint": { "lrv": 0, "sheen": "flat" } } } } ]
      }
      """;

  @TempDir private Path folder;
  private Path scene;
  private Path points;

  @BeforeEach
  void write() throws IOException {
    scene = Files.writeString(folder.resolve("black.json"), BLACK_ROOM);
    points = Files.writeString(folder.resolve("points.csv"), "desk,0,2,0,0,0,1\n");
  }

  @Test
  void blackRoomFollowsTheConfigurationFactor() throws IOException {
    // Element perpendicular to a rectangle, X = Y = 1: 0.055734 (Howell's catalog B-4).
    CommandRun run =
        CommandRun.of("meter", scene.toString(), "--points", points.toString(), "--json");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCode.OK);
    JsonNode point = new ObjectMapper().readTree(run.out()).at("/points/0");
    assertThat(point.get("illuminance").asDouble())
        .isCloseTo(1000 * Math.PI * 0.055734, within(0.5));
    assertThat(point.at("/sources/0/label").asText()).isEqualTo("sky light through the south hole");
    assertThat(point.get("sources")).hasSize(1);
  }

  @Test
  void tableNamesPointRoomAndSource() {
    CommandRun run = CommandRun.of("meter", scene.toString(), "--points", points.toString());
    assertThat(run.code()).isEqualTo(ExitCode.OK);
    assertThat(run.out())
        .startsWith("Black room, as the scene states")
        .containsPattern("desk +a +all +175\\.\\d")
        .containsPattern("- sky light through the south hole +175\\.\\d");
  }

  @Test
  void partsBySourceAddUpToTheWhole() throws IOException {
    CommandRun run =
        CommandRun.of(
            "meter",
            "scenes/one-room.json",
            "--points",
            Files.writeString(points, "10',7',9',0,0,-1\n").toString(),
            "--at",
            "2026-12-21T12:00",
            "--lamps",
            "on",
            "--json");
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.OK);
    JsonNode point = new ObjectMapper().readTree(run.out()).at("/points/0");
    double sum = 0;
    for (JsonNode source : point.get("sources")) {
      sum += source.get("illuminance").asDouble();
    }
    double whole = point.get("illuminance").asDouble();
    assertThat(sum).isCloseTo(whole, within(0.001 * whole));
    assertThat(point.at("/lightVector/2").asDouble()).isCloseTo(-whole, within(0.001 * whole));
  }

  @Test
  void everyBadLineIsToldInOnePass() throws IOException {
    Files.writeString(points, "x,y,z,nx,ny,nz\n1,2\n0,0,abc,0,0,1\n0,2,1,0,0,0\n0,2,1,0,NaN,1\n");
    CommandRun run = CommandRun.of("meter", scene.toString(), "--points", points.toString());
    assertThat(run.code()).isEqualTo(ExitCode.FAULTS);
    assertThat(run.err().lines().map(l -> l.substring(points.toString().length())))
        .containsExactly(
            ":2: has 2 cells; write x,y,z,nx,ny,nz, with a name before them if you like",
            ":3: z is \"abc\"; write a number or a string such as \"14' 6 1/2\\\"\" or \"4.42 m\"",
            ":4: the normal nx,ny,nz has no length; write where the meter faces, such as 0,0,1",
            ":5: ny is \"NaN\"; write a number such as 0 or -0.707");
  }

  @Test
  void pointsOutsideAndInsideWallsAreFaults() throws IOException {
    Files.writeString(points, "out,9,9,1,0,0,1\nwall,-5,3,1,-1,0,0\nunder,0,2,-1,0,0,1\n");
    CommandRun run = CommandRun.of("meter", scene.toString(), "--points", points.toString());
    assertThat(run.code()).isEqualTo(ExitCode.FAULTS);
    assertThat(run.err())
        .contains("point out at (9.000, 9.000, 1.000) m is in no room")
        .contains("point wall at (-5.000, 3.000, 1.000) m faces into something solid")
        .contains("point under at (0.000, 2.000, -1.000) m is in no room");
  }

  @Test
  void usageErrorsNameTheRemedy() {
    String[] start = {"meter", "scenes/one-room.json", "--points", points.toString()};
    assertThat(with(start).err()).contains("give --at a local clock time");
    assertThat(with(start, "--at", "noon").err()).contains("--at is \"noon\"");
    assertThat(with(start, "--at", "2126-01-01T12:00").err()).contains("between 1950 and 2050");
    assertThat(with(start, "--at", "prescribed").err()).contains("states no light of its own");
    assertThat(with(start, "--at", "2026-01-01T12:00", "--weather", "fog").err())
        .contains("write clear, partly or overcast");
    assertThat(with(start, "--at", "2026-01-01T12:00", "--csv", "--json").code())
        .isEqualTo(ExitCode.USAGE);
  }

  private static CommandRun with(String[] start, String... more) {
    String[] all = java.util.Arrays.copyOf(start, start.length + more.length);
    System.arraycopy(more, 0, all, start.length, more.length);
    CommandRun run = CommandRun.of(all);
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.out()).isEmpty();
    return run;
  }
}
