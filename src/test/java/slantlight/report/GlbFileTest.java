package slantlight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.javagl.jgltf.model.AccessorFloatData;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.MeshPrimitiveModel;
import de.javagl.jgltf.model.NodeModel;
import de.javagl.jgltf.model.io.GltfModelReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Holds the .glb to the glTF 2.0 specification (Khronos) and to an independent reader. */
class GlbFileTest {
  private static final Map<String, Integer> WIDTH = Map.of("SCALAR", 1, "VEC3", 3, "VEC4", 4);
  private static final Map<Integer, Integer> SIZE = Map.of(5126, 4, 5125, 4, 5121, 1);

  /** glTF 2.0, 4.4: header, chunk lengths, types, alignment and padding. */
  @Test
  void theContainerIsAsSpecified() throws IOException {
    ByteBuffer glb = ByteBuffer.wrap(glb()).order(ByteOrder.LITTLE_ENDIAN);
    assertThat(glb.getInt()).isEqualTo(0x46546C67);
    assertThat(glb.getInt()).isEqualTo(2);
    assertThat(glb.getInt()).isEqualTo(glb.capacity());
    int json = glb.getInt();
    assertThat(json % 4).isZero();
    assertThat(glb.getInt()).isEqualTo(0x4E4F534A);
    glb.position(20 + json);
    int bin = glb.getInt();
    assertThat(bin % 4).isZero();
    assertThat(glb.getInt()).isEqualTo(0x004E4942);
    assertThat(28 + json + bin).isEqualTo(glb.capacity());
  }

  /** glTF 2.0, 3.6: buffers, views, accessors; 3.7.2: attributes and indices of a primitive. */
  @Test
  void accessorsLieInTheirViewsAndTellTheirRanges() throws IOException {
    JsonNode g = json(glb());
    ByteBuffer bin = bin(glb());
    assertThat(g.at("/asset/version").asText()).isEqualTo("2.0");
    long total = g.at("/buffers/0/byteLength").asLong();
    assertThat(total).isLessThanOrEqualTo(bin.capacity()).isGreaterThan(bin.capacity() - 4L);
    for (JsonNode view : g.get("bufferViews")) {
      assertThat(view.get("byteOffset").asLong() + view.get("byteLength").asLong())
          .isLessThanOrEqualTo(total);
    }
    for (JsonNode a : g.get("accessors")) {
      JsonNode view = g.get("bufferViews").get(a.get("bufferView").asInt());
      int unit = SIZE.get(a.get("componentType").asInt());
      int bytes = a.get("count").asInt() * WIDTH.get(a.get("type").asText()) * unit;
      assertThat(bytes).isLessThanOrEqualTo(view.get("byteLength").asInt());
      assertThat(view.get("byteOffset").asInt() % unit).isZero();
    }
    for (JsonNode mesh : g.get("meshes")) {
      primitive(g, bin, mesh.at("/primitives/0"));
    }
  }

  private static void primitive(JsonNode g, ByteBuffer bin, JsonNode p) {
    JsonNode position = g.get("accessors").get(p.at("/attributes/POSITION").asInt());
    JsonNode normal = g.get("accessors").get(p.at("/attributes/NORMAL").asInt());
    JsonNode colour = g.get("accessors").get(p.at("/attributes/COLOR_0").asInt());
    JsonNode indices = g.get("accessors").get(p.get("indices").asInt());
    int count = position.get("count").asInt();
    assertThat(normal.get("count").asInt()).isEqualTo(count);
    assertThat(colour.get("count").asInt()).isEqualTo(count);
    assertThat(colour.get("normalized").asBoolean()).isTrue();
    assertThat(indices.get("count").asInt() % 3).isZero();
    int at = offset(g, indices);
    for (int i = 0; i < indices.get("count").asInt(); i++) {
      assertThat(bin.getInt(at + 4 * i)).isBetween(0, count - 1);
    }
    int from = offset(g, position);
    for (int c = 0; c < 3; c++) {
      float low = Float.POSITIVE_INFINITY;
      float high = Float.NEGATIVE_INFINITY;
      for (int i = 0; i < count; i++) {
        float v = bin.getFloat(from + 12 * i + 4 * c);
        low = Math.min(low, v);
        high = Math.max(high, v);
      }
      assertThat(position.get("min").get(c).floatValue()).isEqualTo(low);
      assertThat(position.get("max").get(c).floatValue()).isEqualTo(high);
    }
    int n = offset(g, normal);
    for (int i = 0; i < count; i++) {
      double x = bin.getFloat(n + 12 * i);
      double y = bin.getFloat(n + 12 * i + 4);
      double z = bin.getFloat(n + 12 * i + 8);
      assertThat(Math.sqrt(x * x + y * y + z * z)).isCloseTo(1, within(1e-6));
    }
  }

  /** glTF 2.0, 3.5.2: nodes form strict trees. */
  @Test
  void nodesFormOneTree() throws IOException {
    JsonNode g = json(glb());
    Set<Integer> children = new HashSet<>();
    for (JsonNode node : g.get("nodes")) {
      if (node.has("children")) {
        assertThat(node.get("children")).isNotEmpty();
        for (JsonNode child : node.get("children")) {
          assertThat(children.add(child.asInt())).isTrue();
        }
      }
    }
    assertThat(children).hasSize(g.get("nodes").size() - 1).doesNotContain(0);
  }

  /** Read back by jgltf: every joint is a node of its name; the ceiling is where it should be. */
  @Test
  void anIndependentReaderFindsRoomsAndJoints() throws IOException {
    GltfModel model = new GltfModelReader().readWithoutReferences(new ByteArrayInputStream(glb()));
    Map<String, NodeModel> byName = new HashMap<>();
    model.getNodeModels().forEach(n -> byName.put(n.getName(), n));
    TestScores.score()
        .surfaces()
        .forEach(s -> s.joints().forEach(j -> assertThat(byName).containsKey(j.joint().id())));
    assertThat(byName).containsKeys("room", "room/floor", "room/ceiling");
    MeshPrimitiveModel ceiling =
        byName.get("room/ceiling").getMeshModels().get(0).getMeshPrimitiveModels().get(0);
    AccessorFloatData positions =
        (AccessorFloatData) ceiling.getAttributes().get("POSITION").getAccessorData();
    for (int i = 0; i < positions.getNumElements(); i++) {
      assertThat(positions.get(i, 1)).isEqualTo(2.75f);
      assertThat(positions.get(i, 2)).isBetween(-8f, 0f);
    }
  }

  /** The triangles of a face cover its area, holes left out, and face into the room. */
  @Test
  void trianglesCoverTheFace() {
    slantlight.geom.Face south = TestScores.house().surface("room/south").face();
    RiskMesh mesh = RiskMesh.of(south, List.of());
    double sum = 0;
    for (int i = 0; i < mesh.triangles().size(); i += 3) {
      double area =
          slantlight.geom.Face.signedArea(
              List.of(
                  mesh.points().get(mesh.triangles().get(i)),
                  mesh.points().get(mesh.triangles().get(i + 1)),
                  mesh.points().get(mesh.triangles().get(i + 2))));
      assertThat(area).isPositive();
      sum += area;
    }
    assertThat(sum).isCloseTo(south.area(), within(1e-6));
  }

  @Test
  void sameScoreSameBytes() throws IOException {
    assertThat(glb()).isEqualTo(glb());
  }

  private static int offset(JsonNode g, JsonNode accessor) {
    return g.get("bufferViews").get(accessor.get("bufferView").asInt()).get("byteOffset").asInt();
  }

  private static byte[] glb() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    GlbFile.write(TestScores.score(), TestScores.verdicts(), TestScores.made(), out);
    return out.toByteArray();
  }

  private static JsonNode json(byte[] glb) throws IOException {
    int length = ByteBuffer.wrap(glb).order(ByteOrder.LITTLE_ENDIAN).getInt(12);
    return new ObjectMapper().readTree(glb, 20, length);
  }

  private static ByteBuffer bin(byte[] glb) {
    int json = ByteBuffer.wrap(glb).order(ByteOrder.LITTLE_ENDIAN).getInt(12);
    byte[] part = java.util.Arrays.copyOfRange(glb, 28 + json, glb.length);
    return ByteBuffer.wrap(part).order(ByteOrder.LITTLE_ENDIAN);
  }
}
