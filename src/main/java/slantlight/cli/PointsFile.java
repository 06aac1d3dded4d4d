package slantlight.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.geom.Vec3;
import slantlight.units.Length;
import slantlight.units.LengthUnit;

/**
 * Points at which light is asked for, as CSV: x, y, z, nx, ny, nz, in that order, with an optional
 * name before them and an optional heading line. Blank lines and lines that begin with # are passed
 * over. Places may be written as lengths ({@code 14' 6"}); the normal may have any length but zero.
 */
final class PointsFile {
  private static final long MOST_BYTES = 16L << 20;
  private static final int MOST_POINTS = 100_000;
  private static final int MOST_FAULTS = 50;
  private static final String[] FIELDS = {"x", "y", "z", "nx", "ny", "nz"};

  private final String file;
  private final LengthUnit unit;
  private final List<String> faults = new ArrayList<>();

  private PointsFile(String file, LengthUnit unit) {
    this.file = file;
    this.unit = unit;
  }

  /**
   * One point.
   *
   * @param line where it stands in the file, from 1
   * @param at world, m
   * @param normal unit vector
   */
  record Point(int line, String name, Vec3 at, Vec3 normal) {}

  /**
   * Reads all points.
   *
   * @param unit the unit of plain numbers
   * @throws CommandFailure with every fault
   */
  static List<Point> read(Path file, LengthUnit unit) {
    return parse(file.toString(), text(file), unit);
  }

  /**
   * Reads all points of a text.
   *
   * @param file its name, for messages
   */
  static List<Point> parse(String file, String text, LengthUnit unit) {
    PointsFile reader = new PointsFile(file, unit);
    List<Point> points = reader.points(text);
    if (points.isEmpty() && reader.faults.isEmpty()) {
      reader.faults.add(file + ": there is no point in it; write lines of x,y,z,nx,ny,nz");
    }
    if (!reader.faults.isEmpty()) {
      throw CommandFailure.faults(String.join("\n", reader.faults));
    }
    return points;
  }

  private static String text(Path file) {
    try {
      if (!Files.isRegularFile(file)) {
        throw CommandFailure.faults(
            file + (Files.exists(file) ? ": is no file" : ": there is no such file"));
      }
      if (Files.size(file) > MOST_BYTES) {
        throw CommandFailure.faults(file + ": is larger than 16 MiB; split it");
      }
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
          .toString();
    } catch (CharacterCodingException e) {
      throw CommandFailure.faults(file + ": is no text in UTF-8; save it as plain CSV");
    } catch (IOException e) {
      throw CommandFailure.faults(file + ": cannot be read (" + e.getMessage() + ")");
    }
  }

  private List<Point> points(String text) {
    List<Point> points = new ArrayList<>();
    String body = text.startsWith("\ufeff") ? text.substring(1) : text;
    boolean headingMayCome = true;
    int number = 0;
    for (String line : body.split("\r\n|\r|\n", -1)) {
      number++;
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      List<String> cells = cells(line);
      if (headingMayCome && isHeading(cells)) {
        headingMayCome = false;
        continue;
      }
      headingMayCome = false;
      int before = faults.size();
      Optional<Point> point = point(number, cells, points.size() + 1);
      point.ifPresent(points::add);
      if (faults.size() > before && faults.size() >= MOST_FAULTS) {
        faults.add(file + ": and perhaps more; these come first");
        break;
      }
      if (points.size() > MOST_POINTS) {
        faults.add(file + ": has more than " + MOST_POINTS + " points; split it");
        break;
      }
    }
    return points;
  }

  /** Cells of a line; a cell may stand in quotes, with "" for a quote, as in RFC 4180. */
  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    boolean blank = true;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"' && !quoted && blank) {
        quoted = true;
        blank = false;
        cell.setLength(0);
      } else if (quoted && c == '"') {
        if (i + 1 < line.length() && line.charAt(i + 1) == '"') {
          cell.append(c);
          i++;
        } else {
          quoted = false;
        }
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString().strip());
        cell.setLength(0);
        blank = true;
      } else {
        cell.append(c);
        blank &= Character.isWhitespace(c);
      }
    }
    cells.add(cell.toString().strip());
    return cells;
  }

  private static boolean isHeading(List<String> cells) {
    int n = cells.size();
    return n >= 6
        && cells.get(n - 6).toLowerCase(Locale.ROOT).startsWith("x")
        && cells.get(n - 1).toLowerCase(Locale.ROOT).startsWith("nz");
  }

  private Optional<Point> point(int line, List<String> cells, int count) {
    int n = cells.size();
    if (n != 6 && n != 7) {
      fault(line, "has " + n + " cells; write x,y,z,nx,ny,nz, with a name before them if you like");
      return Optional.empty();
    }
    int before = faults.size();
    double[] v = new double[6];
    for (int i = 0; i < 6; i++) {
      String cell = cells.get(n - 6 + i);
      v[i] = i < 3 ? length(line, FIELDS[i], cell) : number(line, FIELDS[i], cell);
    }
    Vec3 normal = new Vec3(v[3], v[4], v[5]);
    if (faults.size() == before && !(normal.length() > 1e-9)) {
      fault(line, "the normal nx,ny,nz has no length; write where the meter faces, such as 0,0,1");
    }
    if (faults.size() > before) {
      return Optional.empty();
    }
    String name = n == 7 && !cells.get(0).isEmpty() ? plain(cells.get(0)) : "P" + count;
    return Optional.of(new Point(line, name, new Vec3(v[0], v[1], v[2]), normal.unit()));
  }

  private double length(int line, String field, String cell) {
    Optional<Length> length = Length.parse(cell, unit);
    if (length.isPresent() && Math.abs(length.get().metres()) < 1e6) {
      return length.get().metres();
    }
    fault(line, field + " is \"" + shown(cell) + "\"; write " + Length.FORMS);
    return Double.NaN;
  }

  private double number(int line, String field, String cell) {
    if (cell.matches("[+-]?(\\d{1,12}(\\.\\d{0,20})?|\\.\\d{1,20})([eE][+-]?\\d{1,2})?")) {
      double value = Double.parseDouble(cell);
      if (Math.abs(value) < 1e12) {
        return value;
      }
    }
    fault(line, field + " is \"" + shown(cell) + "\"; write a number such as 0 or -0.707");
    return Double.NaN;
  }

  private void fault(int line, String what) {
    faults.add(file + ":" + line + ": " + what);
  }

  /** Text of a file may steer a terminal: control characters go out as question marks. */
  private static String plain(String cell) {
    return cell.replaceAll("\\p{Cc}", "?");
  }

  private static String shown(String cell) {
    String clean = plain(cell);
    return clean.length() > 40 ? clean.substring(0, 40) + "..." : clean;
  }
}
