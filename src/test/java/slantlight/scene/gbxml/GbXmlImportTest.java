package slantlight.scene.gbxml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slantlight.geom.Face;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/** Reads an invented house whose every size is known. */
class GbXmlImportTest {
  private static final Path TWO_ROOMS = Path.of("src/test/resources/gbxml/two-rooms.xml");

  @TempDir Path folder;

  @Test
  void roomsComeOutInTheirTrueSizes() throws Exception {
    House house = house(GbXmlImport.read(TWO_ROOMS).scene());
    assertThat(house.name()).isEqualTo("Two invented rooms");
    assertThat(house.rooms()).hasSize(2);
    assertThat(house.room("living-room").outline()).hasSize(4);
    assertThat(Face.signedArea(house.room("living-room").outline())).isCloseTo(24, within(1e-6));
    assertThat(house.room("living-room").height()).isCloseTo(2.7, within(1e-6));
    assertThat(house.room("studio-north").label()).isEqualTo("Studio <north>");
    assertThat(house.site().latitudeDeg()).isEqualTo(44.9);
    assertThat(house.site().elevation()).isEqualTo(270);
    Surface shed =
        house.surfaces().stream()
            .filter(s -> s.roomId().equals("studio-north") && s.kind() == SurfaceKind.CEILING)
            .findFirst()
            .orElseThrow();
    assertThat(shed.face().area()).isCloseTo(6 * Math.hypot(5, 1), within(1e-3));
    assertThat(house.outside().blocks()).hasSize(1);
  }

  @Test
  void windowsLieWhereTheFileHasThem() throws Exception {
    Imported imported = GbXmlImport.read(TWO_ROOMS);
    assertThat(imported.windows()).isEqualTo(5);
    assertThat(imported.doors()).isEqualTo(1);
    assertThat(imported.passages()).isEqualTo(1);
    House house = house(imported.scene());
    Opening sink = opening(house, "sink window");
    box(sink, new Vec3(1, 0, 0.9), new Vec3(3, 0, 2.1));
    assertThat(sink.transmittance()).isEqualTo(0.72);
    assertThat(sink.panes()).isEqualTo(2);
    box(opening(house, "terrace slider"), new Vec3(3.5, 0, 0), new Vec3(5.5, 0, 2.2));
    box(opening(house, "north light"), new Vec3(1, 9, 0.5), new Vec3(5, 9, 2.3));
    box(opening(house, "roof light"), new Vec3(2, 1, 2.7), new Vec3(3, 2, 2.7));
    // A solid door lets no light in: a hole in the wall's board and no opening.
    assertThat(house.surfaces())
        .filteredOn(w -> w.boarded() && w.id().equals("living-room/wall-east"))
        .hasSize(1)
        .allMatch(w -> Math.abs(w.face().area() - (4 * 2.7 - 0.9 * 2)) < 1e-3);
    Opening passage = opening(house, "mid-b");
    assertThat(passage.kind()).isEqualTo(OpeningKind.PASSAGE);
    assertThat(passage.toRoomId()).contains("studio-north");
    box(passage, new Vec3(2, 4, 0), new Vec3(4, 4, 2.4));
  }

  @Test
  void whatWasNotUnderstoodIsTold() throws Exception {
    assertThat(GbXmlImport.read(TWO_ROOMS).notes())
        .anyMatch(n -> n.contains("space Lost has no floor"))
        .anyMatch(n -> n.contains("surface bare has no PlanarGeometry"))
        .anyMatch(n -> n.contains("type \"Curtain\" was not understood"))
        .anyMatch(n -> n.contains("triangle is no upright rectangle"))
        .anyMatch(n -> n.contains("sliding door terrace slider was taken as glass"))
        .anyMatch(n -> n.contains("Etc/GMT+6"))
        .anyMatch(n -> n.contains("paint, framing"));
  }

  @Test
  void feetAreFeet() throws Exception {
    String feet =
        Files.readString(TWO_ROOMS).replace("lengthUnit=\"Meters\"", "lengthUnit=\"Feet\"");
    Path file = Files.writeString(folder.resolve("feet.xml"), feet);
    String scene = GbXmlImport.read(file).scene();
    assertThat(scene).contains("0.823"); // 2.7 ft high
    assertThat(scene).contains("[ 1.829, 0 ]"); // 6 ft wide
  }

  /** An entity that would read another file or swell is refused, not followed. */
  @Test
  void entitiesAreRefused() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
    Path evil =
        Files.writeString(
            folder.resolve("evil.xml"),
            "<?xml version=\"1.0\"?><!DOCTYPE gbXML [<!ENTITY x SYSTEM \""
                + secret.toUri()
                + "\">]><gbXML><Campus><Name>&x;</Name></Campus></gbXML>");
    assertThatThrownBy(() -> GbXmlImport.read(evil))
        .isInstanceOf(ImportException.class)
        .hasMessageContaining("evil.xml")
        .hasMessageNotContaining("secret");
  }

  @Test
  void badFilesGetOneClearMessage() throws IOException {
    Path cut = Files.writeString(folder.resolve("cut.xml"), "<gbXML>\n<Campus>");
    assertThatThrownBy(() -> GbXmlImport.read(cut))
        .isInstanceOf(ImportException.class)
        .hasMessageMatching("(?s).*cut\\.xml:2: not well-formed XML.*");
    Path other = Files.writeString(folder.resolve("other.xml"), "<html/>");
    assertThatThrownBy(() -> GbXmlImport.read(other)).hasMessageContaining("not gbXML");
    Path empty = Files.writeString(folder.resolve("empty.xml"), "<gbXML><Campus/></gbXML>");
    assertThatThrownBy(() -> GbXmlImport.read(empty)).hasMessageContaining("no Space element");
    assertThatThrownBy(() -> GbXmlImport.read(folder.resolve("none.xml")))
        .hasMessageContaining("cannot be read");
    Path unit = Files.writeString(folder.resolve("unit.xml"), "<gbXML lengthUnit=\"Cubits\"/>");
    assertThatThrownBy(() -> GbXmlImport.read(unit)).hasMessageContaining("Cubits is none of");
  }

  private House house(String scene) throws IOException {
    Path file = Files.writeString(folder.resolve("scene.json"), scene);
    Read read = SceneReader.read(file);
    assertThat(read).as(read.toString()).isInstanceOf(Read.Ok.class);
    return ((Read.Ok) read).house();
  }

  private static Opening opening(House house, String label) {
    return house.openings().stream().filter(o -> o.label().equals(label)).findFirst().orElseThrow();
  }

  private static void box(Opening o, Vec3 low, Vec3 high) {
    for (int axis = 0; axis < 3; axis++) {
      int a = axis;
      double least = o.face().corners().stream().mapToDouble(p -> of(p, a)).min().orElseThrow();
      double most = o.face().corners().stream().mapToDouble(p -> of(p, a)).max().orElseThrow();
      assertThat(least).as(o.label()).isCloseTo(of(low, a), within(1e-3));
      assertThat(most).as(o.label()).isCloseTo(of(high, a), within(1e-3));
    }
  }

  private static double of(Vec3 p, int axis) {
    return axis == 0 ? p.x() : axis == 1 ? p.y() : p.z();
  }
}
