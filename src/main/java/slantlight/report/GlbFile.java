package slantlight.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.decide.Verdict;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Room;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.SurfaceScore;
import slantlight.sheet.Words;

/**
 * The rooms as one glTF 2.0 binary (.glb, Khronos specification 2.0, chapters 3 to 5): a node a
 * room, a surface and a joint, named by their ids, showing at level 4 as vertex colour. glTF is y
 * up, so a world point (x east, y north, z up) becomes (x, z, -y).
 */
final class GlbFile {
  private static final int FLOAT = 5126;
  private static final int UNSIGNED_INT = 5125;
  private static final int UNSIGNED_BYTE = 5121;
  private static final int ARRAY_BUFFER = 34962;
  private static final int ELEMENT_ARRAY_BUFFER = 34963;

  private final HouseScore score;
  private final List<Verdict> verdicts;
  private final Provenance made;
  private final Buffer buffer = new Buffer();
  private final List<Node> nodes = new ArrayList<>();
  private final List<Part> meshes = new ArrayList<>();

  private GlbFile(HouseScore score, List<Verdict> verdicts, Provenance made) {
    this.score = score;
    this.verdicts = verdicts;
    this.made = made;
  }

  /** Accessors of one mesh: position, normal, colour, indices. */
  private record Part(String name, int first) {}

  /** A node; mesh is -1 for none; extras are names and values in turn. */
  private record Node(String name, int mesh, List<Integer> children, List<Object> extras) {}

  /** Writes the file; {@code out} stays open. */
  static void write(HouseScore score, List<Verdict> verdicts, Provenance made, OutputStream out)
      throws IOException {
    GlbFile file = new GlbFile(score, verdicts, made);
    file.house();
    byte[] json = padded(file.json(), (byte) ' ');
    byte[] bin = padded(file.buffer.bytes.toByteArray(), (byte) 0);
    ByteBuffer head = ByteBuffer.allocate(20).order(ByteOrder.LITTLE_ENDIAN);
    head.putInt(0x46546C67).putInt(2).putInt(28 + json.length + bin.length);
    head.putInt(json.length).putInt(0x4E4F534A);
    out.write(head.array());
    out.write(json);
    ByteBuffer second = ByteBuffer.allocate(8).order(ByteOrder.LITTLE_ENDIAN);
    second.putInt(bin.length).putInt(0x004E4942);
    out.write(second.array());
    out.write(bin);
  }

  private void house() {
    House house = score.house();
    nodes.add(new Node(house.name(), -1, new ArrayList<>(), List.of()));
    for (Room room : house.rooms()) {
      int node = nodes.size();
      nodes.get(0).children().add(node);
      nodes.add(new Node(room.id(), -1, new ArrayList<>(), List.of("label", room.label())));
      for (Surface s : house.surfaces()) {
        if (s.roomId().equals(room.id())) {
          surface(s, nodes.get(node).children());
        }
      }
    }
  }

  private void surface(Surface surface, List<Integer> siblings) {
    Optional<SurfaceScore> scored =
        score.surfaces().stream().filter(s -> s.surfaceId().equals(surface.id())).findFirst();
    List<JointScore> joints = scored.map(SurfaceScore::joints).orElse(List.of());
    int mesh = mesh(surface.id(), surface.face(), RiskMesh.of(surface.face(), joints), 0);
    if (mesh < 0) {
      return;
    }
    List<Object> extras = new ArrayList<>(List.of("label", surface.label()));
    verdicts.stream()
        .filter(v -> v.surfaceId().equals(surface.id()))
        .findFirst()
        .ifPresent(v -> extras.addAll(List.of("level", v.level())));
    siblings.add(nodes.size());
    List<Integer> children = new ArrayList<>();
    nodes.add(new Node(surface.id(), mesh, children, extras));
    for (JointScore j : joints) {
      int strip = mesh(j.joint().id(), surface.face(), RiskMesh.of(j), RiskMesh.lift());
      if (strip >= 0) {
        double showing = j.atLevel(4).peakShowing();
        children.add(nodes.size());
        nodes.add(
            new Node(
                j.joint().id(),
                strip,
                List.of(),
                List.of(
                    "kind",
                    Words.word(j.joint().kind()),
                    "showing",
                    Figures.six(showing),
                    "band",
                    Words.word(Band.of(showing)))));
      }
    }
  }

  private int mesh(String name, Face face, RiskMesh mesh, double lift) {
    if (mesh.triangles().isEmpty()) {
      return -1;
    }
    Frame frame = face.frame();
    List<Vec3> world = mesh.points().stream().map(p -> turned(frame.toWorld(p, lift))).toList();
    meshes.add(new Part(name, buffer.accessors.size()));
    buffer.vectors(world, true);
    buffer.vectors(world.stream().map(p -> turned(frame.n())).toList(), false);
    buffer.colours(mesh.colours());
    buffer.indices(mesh.triangles());
    return meshes.size() - 1;
  }

  private static Vec3 turned(Vec3 p) {
    return new Vec3(p.x(), p.z(), -p.y());
  }

  private byte[] json() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JsonGenerator g = new JsonFactory().createGenerator(out)) {
      g.writeStartObject();
      g.writeObjectFieldStart("asset");
      g.writeStringField("version", "2.0");
      g.writeStringField("generator", "Slantlight " + made.version());
      g.writeObjectFieldStart("extras");
      g.writeStringField("scene", made.sceneHash());
      g.writeEndObject();
      g.writeEndObject();
      g.writeNumberField("scene", 0);
      g.writeArrayFieldStart("scenes");
      g.writeStartObject();
      g.writeArrayFieldStart("nodes");
      g.writeNumber(0);
      g.writeEndArray();
      g.writeEndObject();
      g.writeEndArray();
      writeNodes(g);
      writeMeshes(g);
      writeMaterial(g);
      buffer.write(g);
      g.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toByteArray();
  }

  private void writeNodes(JsonGenerator g) throws IOException {
    g.writeArrayFieldStart("nodes");
    for (Node n : nodes) {
      g.writeStartObject();
      g.writeStringField("name", n.name());
      if (n.mesh() >= 0) {
        g.writeNumberField("mesh", n.mesh());
      }
      if (!n.children().isEmpty()) {
        g.writeArrayFieldStart("children");
        for (int child : n.children()) {
          g.writeNumber(child);
        }
        g.writeEndArray();
      }
      if (!n.extras().isEmpty()) {
        g.writeObjectFieldStart("extras");
        for (int i = 0; i < n.extras().size(); i += 2) {
          g.writeObjectField((String) n.extras().get(i), n.extras().get(i + 1));
        }
        g.writeEndObject();
      }
      g.writeEndObject();
    }
    g.writeEndArray();
  }

  private void writeMeshes(JsonGenerator g) throws IOException {
    g.writeArrayFieldStart("meshes");
    for (Part m : meshes) {
      g.writeStartObject();
      g.writeStringField("name", m.name());
      g.writeArrayFieldStart("primitives");
      g.writeStartObject();
      g.writeObjectFieldStart("attributes");
      g.writeNumberField("POSITION", m.first());
      g.writeNumberField("NORMAL", m.first() + 1);
      g.writeNumberField("COLOR_0", m.first() + 2);
      g.writeEndObject();
      g.writeNumberField("indices", m.first() + 3);
      g.writeNumberField("material", 0);
      g.writeEndObject();
      g.writeEndArray();
      g.writeEndObject();
    }
    g.writeEndArray();
  }

  private static void writeMaterial(JsonGenerator g) throws IOException {
    g.writeArrayFieldStart("materials");
    g.writeStartObject();
    g.writeStringField("name", "showing");
    g.writeObjectFieldStart("pbrMetallicRoughness");
    g.writeNumberField("metallicFactor", 0);
    g.writeNumberField("roughnessFactor", 1);
    g.writeEndObject();
    g.writeEndObject();
    g.writeEndArray();
  }

  private static byte[] padded(byte[] bytes, byte fill) {
    byte[] out = java.util.Arrays.copyOf(bytes, (bytes.length + 3) / 4 * 4);
    java.util.Arrays.fill(out, bytes.length, out.length, fill);
    return out;
  }

  /** The binary buffer with its views and accessors, one view an accessor. */
  private static final class Buffer {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final List<Accessor> accessors = new ArrayList<>();

    private record Accessor(
        int offset,
        int length,
        int target,
        int type,
        String shape,
        int count,
        List<float[]> range) {}

    void vectors(List<Vec3> list, boolean range) {
      ByteBuffer b = buffer(12 * list.size());
      List<float[]> span =
          List.of(
              new float[] {
                Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY
              },
              new float[] {
                Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY
              });
      for (Vec3 v : list) {
        float[] c = {(float) v.x(), (float) v.y(), (float) v.z()};
        for (int i = 0; i < 3; i++) {
          b.putFloat(c[i]);
          span.get(0)[i] = Math.min(span.get(0)[i], c[i]);
          span.get(1)[i] = Math.max(span.get(1)[i], c[i]);
        }
      }
      add(b, ARRAY_BUFFER, FLOAT, "VEC3", list.size(), range ? span : List.of());
    }

    /** Colours as glTF wants them: linear, with alpha. */
    void colours(List<Integer> list) {
      ByteBuffer b = buffer(4 * list.size());
      for (int rgb : list) {
        b.put(linear(rgb >> 16 & 255)).put(linear(rgb >> 8 & 255)).put(linear(rgb & 255));
        b.put((byte) 255);
      }
      add(b, ARRAY_BUFFER, UNSIGNED_BYTE, "VEC4", list.size(), List.of());
    }

    void indices(List<Integer> list) {
      ByteBuffer b = buffer(4 * list.size());
      list.forEach(b::putInt);
      add(b, ELEMENT_ARRAY_BUFFER, UNSIGNED_INT, "SCALAR", list.size(), List.of());
    }

    private void add(ByteBuffer b, int target, int type, String shape, int n, List<float[]> range) {
      accessors.add(new Accessor(bytes.size(), b.capacity(), target, type, shape, n, range));
      bytes.write(b.array(), b.arrayOffset(), b.capacity());
    }

    private static ByteBuffer buffer(int size) {
      return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static byte linear(int channel) {
      double c = channel / 255.0;
      double l = c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
      return (byte) Math.round(255 * l);
    }

    void write(JsonGenerator g) throws IOException {
      g.writeArrayFieldStart("buffers");
      g.writeStartObject();
      g.writeNumberField("byteLength", bytes.size());
      g.writeEndObject();
      g.writeEndArray();
      g.writeArrayFieldStart("bufferViews");
      for (Accessor a : accessors) {
        g.writeStartObject();
        g.writeNumberField("buffer", 0);
        g.writeNumberField("byteOffset", a.offset());
        g.writeNumberField("byteLength", a.length());
        g.writeNumberField("target", a.target());
        g.writeEndObject();
      }
      g.writeEndArray();
      g.writeArrayFieldStart("accessors");
      for (int i = 0; i < accessors.size(); i++) {
        Accessor a = accessors.get(i);
        g.writeStartObject();
        g.writeNumberField("bufferView", i);
        g.writeNumberField("componentType", a.type());
        if (a.type() == UNSIGNED_BYTE) {
          g.writeBooleanField("normalized", true);
        }
        g.writeNumberField("count", a.count());
        g.writeStringField("type", a.shape());
        if (!a.range().isEmpty()) {
          range(g, "min", a.range().get(0));
          range(g, "max", a.range().get(1));
        }
        g.writeEndObject();
      }
      g.writeEndArray();
    }

    private static void range(JsonGenerator g, String name, float[] values) throws IOException {
      g.writeArrayFieldStart(name);
      for (float v : values) {
        g.writeNumber(v);
      }
      g.writeEndArray();
    }
  }
}
