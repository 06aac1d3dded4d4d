package slantlight.scene;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Reads luminaires in the IES LM-63 format, editions of 1986, 1991, 1995, 2002 and 2019, Type C
 * photometry (layout from memory of the standard; see the tests for what is held).
 *
 * <p>Intensity is candela value x multiplier x ballast factor, x ballast-lamp factor in the
 * editions up to 1991 (later ones keep the place for other uses), x the tilt table's factor for a
 * luminaire that is not tilted. Absolute files (lumens per lamp -1) read the same: the candela
 * values are already the luminaire's own. Flux is integrated from the intensities.
 */
public final class Lm63Reader {
  private static final int MOST_BYTES = 4 << 20;
  private static final int MOST_ANGLES = 2000;
  private static final int MOST_VALUES = 500_000;
  private static final int MOST_KEYWORD_LINES = 2000;
  private static final double FOOT = 0.3048;

  private final Path file;
  private final List<String> lines;

  private Lm63Reader(Path file, List<String> lines) {
    this.file = file;
    this.lines = lines;
  }

  /**
   * Reads one luminaire.
   *
   * @throws Lm63Exception if the file cannot be read or used; its message says where, what and what
   *     to do
   */
  public static Photometry read(Path file) throws Lm63Exception {
    return new Lm63Reader(file, lines(file)).luminaire();
  }

  private static List<String> lines(Path file) throws Lm63Exception {
    if (Files.isDirectory(file)) {
      throw new Lm63Exception(file, 0, "this is a folder", "name the photometric file in it");
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(MOST_BYTES + 1);
    } catch (IOException e) {
      throw new Lm63Exception(
          file, 0, "the file cannot be read", "check its name, place and permissions");
    }
    if (bytes.length > MOST_BYTES) {
      throw new Lm63Exception(
          file, 0, "the file is larger than 4 MiB", "photometric files are a few kilobytes");
    }
    for (byte b : bytes) {
      if (b == 0) {
        throw new Lm63Exception(
            file, 0, "this is a binary file", "an LM-63 file is plain text, usually *.ies");
      }
    }
    return new String(bytes, StandardCharsets.ISO_8859_1).lines().toList();
  }

  private Photometry luminaire() throws Lm63Exception {
    int tilt = tiltLine();
    boolean ballastLampFactor = isUpTo1991();
    Lm63Numbers numbers = new Lm63Numbers(file, lines, tilt + 1);
    double factor = tiltFactor(tilt, numbers);
    numbers.number("the number of lamps");
    numbers.number("the lumens per lamp");
    factor *= numbers.number("the candela multiplier");
    int nVertical = numbers.whole("the number of vertical angles", 2, MOST_ANGLES);
    int nHorizontal = numbers.whole("the number of horizontal angles", 1, MOST_ANGLES);
    if ((long) nVertical * nHorizontal > MOST_VALUES) {
      throw fault(numbers, "the table is too large", "use a file with fewer angles");
    }
    checkType(numbers);
    double unit = numbers.whole("the unit of length", 1, 2) == 1 ? FOOT : 1;
    // A negative dimension marks a round opening of that diameter.
    double width = Math.abs(numbers.number("the width")) * unit;
    double length = Math.abs(numbers.number("the length")) * unit;
    double height = Math.abs(numbers.number("the height")) * unit;
    factor *= numbers.number("the ballast factor");
    double future = numbers.number("the number after the ballast factor");
    factor *= ballastLampFactor ? future : 1;
    numbers.number("the input watts");
    if (!(factor > 0)) {
      throw fault(numbers, "the multipliers make the light zero or negative", "correct them");
    }
    List<Double> vertical = numbers.table("the vertical angles", nVertical);
    checkVertical(vertical, numbers);
    List<Double> horizontal = numbers.table("the horizontal angles", nHorizontal);
    checkHorizontal(horizontal, numbers);
    List<List<Double>> candela = new ArrayList<>();
    for (int i = 0; i < nHorizontal; i++) {
      candela.add(plane(numbers, nVertical, factor, horizontal.get(i)));
    }
    numbers.end();
    Photometry read = unfolded(name(tilt), vertical, horizontal, candela, width, length, height);
    if (!(read.lumens() > 0)) {
      throw fault(numbers, "all candela values are zero", "a dark luminaire needs no file");
    }
    return read;
  }

  private int tiltLine() throws Lm63Exception {
    for (int i = 0; i < Math.min(lines.size(), MOST_KEYWORD_LINES); i++) {
      if (lines.get(i).strip().toUpperCase(Locale.ROOT).startsWith("TILT=")) {
        return i;
      }
    }
    throw new Lm63Exception(
        file, 0, "no TILT= line was found", "this is no LM-63 file, or it is cut short");
  }

  /** True for the first editions: IESNA91 in the first line, or (1986) no edition line at all. */
  private boolean isUpTo1991() throws Lm63Exception {
    String first = lines.get(0).strip().toUpperCase(Locale.ROOT);
    if (first.startsWith("IESNA91")) {
      return true;
    }
    if (first.startsWith("IESNA:LM-63-") || first.startsWith("IES:LM-63-")) {
      String year = first.substring(first.lastIndexOf('-') + 1);
      if (!List.of("1986", "1991", "1995", "2002", "2019").contains(year)) {
        throw new Lm63Exception(
            file,
            1,
            "edition \"" + Lm63Numbers.shortened(year) + "\" of LM-63 is not known",
            "use a file of 1986, 1991, 1995, 2002 or 2019");
      }
      return year.equals("1986") || year.equals("1991");
    }
    return true;
  }

  private double tiltFactor(int tilt, Lm63Numbers numbers) throws Lm63Exception {
    String value = lines.get(tilt).strip().substring("TILT=".length()).strip();
    if (value.equalsIgnoreCase("NONE")) {
      return 1;
    }
    if (!value.equalsIgnoreCase("INCLUDE")) {
      throw new Lm63Exception(
          file,
          tilt + 1,
          "the tilt table is in another file (" + Lm63Numbers.shortened(value) + ")",
          "copy it in after TILT=INCLUDE, or write TILT=NONE if the lamp does not mind tilting");
    }
    numbers.whole("the lamp-to-luminaire geometry", 1, 3);
    int pairs = numbers.whole("the number of tilt angles", 1, MOST_ANGLES);
    List<Double> angles = numbers.table("the tilt angles", pairs);
    List<Double> factors = numbers.table("the tilt factors", pairs);
    checkAscending(angles, "tilt angles", numbers);
    int zero = angles.indexOf(0.0);
    return zero < 0 ? factors.get(0) : factors.get(zero);
  }

  private void checkType(Lm63Numbers numbers) throws Lm63Exception {
    int type = numbers.whole("the photometric type", 1, 3);
    if (type != 1) {
      throw fault(
          numbers,
          "the file has Type " + (type == 2 ? "B" : "A") + " photometry (floodlights, headlamps)",
          "ask the maker for a Type C file");
    }
  }

  private void checkVertical(List<Double> angles, Lm63Numbers numbers) throws Lm63Exception {
    checkAscending(angles, "vertical angles", numbers);
    double first = angles.get(0);
    double last = angles.get(angles.size() - 1);
    if ((first != 0 && first != 90) || (last != 90 && last != 180) || first == last) {
      throw fault(
          numbers,
          "the vertical angles run from " + first + " to " + last,
          "Type C runs from 0 or 90 to 90 or 180");
    }
  }

  private void checkHorizontal(List<Double> angles, Lm63Numbers numbers) throws Lm63Exception {
    checkAscending(angles, "horizontal angles", numbers);
    double first = angles.get(0);
    double last = angles.get(angles.size() - 1);
    boolean whole =
        first == 0 && (angles.size() == 1 ? last == 0 : last == 90 || last == 180 || last == 360);
    boolean acrossC90 = first == 90 && last == 270;
    if (!whole && !acrossC90) {
      throw fault(
          numbers,
          "the horizontal angles run from " + first + " to " + last,
          "Type C has one angle 0, or runs from 0 to 90, 180 or 360, or from 90 to 270");
    }
  }

  private void checkAscending(List<Double> angles, String what, Lm63Numbers numbers)
      throws Lm63Exception {
    for (int i = 1; i < angles.size(); i++) {
      if (!(angles.get(i) > angles.get(i - 1))) {
        throw fault(
            numbers,
            "the " + what + " do not ascend at " + angles.get(i),
            "the counts of angles are wrong or a value is damaged");
      }
    }
  }

  private List<Double> plane(Lm63Numbers numbers, int count, double factor, double c)
      throws Lm63Exception {
    List<Double> out = new ArrayList<>(count);
    for (double value : numbers.table("the candela values at C " + Lm63Numbers.plain(c), count)) {
      if (value < 0) {
        throw fault(numbers, "a candela value is " + value, "it must be 0 or more");
      }
      out.add(value * factor);
    }
    return out;
  }

  /** Writes out a table that is even about the C90 plane (90 to 270 given) round the circle. */
  private static Photometry unfolded(
      String name,
      List<Double> vertical,
      List<Double> horizontal,
      List<List<Double>> candela,
      double width,
      double length,
      double height) {
    if (horizontal.get(0) != 90) {
      return Photometry.of(name, vertical, horizontal, candela, width, length, height);
    }
    Photometry given =
        new Photometry(name, vertical, horizontal, candela, width, length, height, 0);
    List<Double> round = new ArrayList<>(horizontal);
    for (double c : horizontal) {
      // C and 180 - C are alike; the mirrored half runs from 270 through 360 to 450.
      double mirrored = (540 - c) % 360;
      if (mirrored < 90 || mirrored > 270) {
        round.add(mirrored);
      }
    }
    if (!round.contains(0.0)) {
      round.add(0.0);
    }
    round.add(360.0);
    Collections.sort(round);
    List<List<Double>> planes = new ArrayList<>();
    for (double c : round) {
      double within = c < 90 ? 180 - c : c > 270 ? 540 - c : c;
      List<Double> plane = new ArrayList<>();
      for (double g : vertical) {
        plane.add(given.candela(Math.toRadians(g), Math.toRadians(within)));
      }
      planes.add(plane);
    }
    return Photometry.of(name, vertical, round, planes, width, length, height);
  }

  private String name(int tilt) {
    for (String key : List.of("[LUMINAIRE]", "[LUMCAT]")) {
      for (String line : lines.subList(0, tilt)) {
        String text = line.strip();
        if (text.toUpperCase(Locale.ROOT).startsWith(key)) {
          String value = text.substring(key.length()).strip();
          if (!value.isEmpty()) {
            return value.replaceAll("\\p{Cc}", "?");
          }
        }
      }
    }
    Path last = file.getFileName();
    return last == null ? file.toString() : last.toString();
  }

  private Lm63Exception fault(Lm63Numbers numbers, String problem, String remedy) {
    return new Lm63Exception(file, numbers.line(), problem, remedy);
  }
}
