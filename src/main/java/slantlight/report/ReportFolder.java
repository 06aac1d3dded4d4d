package slantlight.report;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import slantlight.scene.WholeFile;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;
import slantlight.sheet.CalendarSheet;
import slantlight.sheet.CuttingSheet;
import slantlight.sheet.Drawing;
import slantlight.sheet.FrontierSheet;
import slantlight.sheet.SectionSheet;
import slantlight.sheet.SunPathSheet;
import slantlight.sheet.SurfaceSheet;
import slantlight.sheet.SvgText;
import slantlight.units.Measures;

/** Writes a report and everything that goes with it into one folder, each file whole or not. */
public final class ReportFolder {
  private static final int NAME_LIMIT = 80;

  private final Path folder;
  private final List<Path> written = new ArrayList<>();

  private ReportFolder(Path folder) {
    this.folder = folder;
  }

  /** What to write besides the page. */
  public enum Part {
    PDF,
    DATA,
    SHEETS,
    MODEL
  }

  /**
   * Writes {@code report.html} and the parts asked for: {@code report.pdf}; {@code score.json},
   * {@code surfaces.csv} and {@code joints.csv}; {@code sheets/*.svg}; {@code rooms.glb}. Older
   * files of these names are replaced, others are left alone.
   *
   * @param printed sheets in the PDF, and in the page when it is printed
   * @return the files, in the order written
   * @throws IOException if one cannot be written; those before it are whole
   */
  public static List<Path> write(
      ReportData data, Path folder, Set<Part> parts, PrintedSheets printed) throws IOException {
    ReportFolder out = new ReportFolder(folder);
    make(folder);
    out.file("report.html", ReportPage.forScreen(data, printed));
    if (parts.contains(Part.DATA)) {
      out.file("score.json", ScoreJson.of(data.score(), data.verdicts(), data.made()));
      out.file("surfaces.csv", ScoreCsv.surfaces(data.score(), data.verdicts(), data.made()));
      out.file("joints.csv", ScoreCsv.joints(data.score(), data.made()));
    }
    if (parts.contains(Part.SHEETS)) {
      out.sheets(data);
    }
    if (parts.contains(Part.MODEL)) {
      out.file("rooms.glb", s -> GlbFile.write(data.score(), data.verdicts(), data.made(), s));
    }
    if (parts.contains(Part.PDF)) {
      out.file("report.pdf", s -> ReportPdf.write(data, printed, s));
    }
    return List.copyOf(out.written);
  }

  private void sheets(ReportData data) throws IOException {
    make(folder.resolve("sheets"));
    List<Drawing> drawings = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (SurfaceScore s : data.score().surfaces()) {
      String id = fresh(safeName(s.surfaceId()), names);
      String label = data.score().house().surface(s.surfaceId()).label();
      drawings.add(SurfaceSheet.of(data.score().house(), s, id));
      SectionSheet.of(data.score().house(), s, id + "-section").ifPresent(drawings::add);
      drawings.add(
          CalendarSheet.of(
              s.calendar(),
              data.score().house().site(),
              data.score().year(),
              id + "-calendar",
              label));
    }
    drawings.add(SunPathSheet.of(data.score().house(), data.score().year(), "sun-path"));
    data.money()
        .filter(m -> !m.frontier().isEmpty())
        .ifPresent(m -> drawings.add(FrontierSheet.of(m.frontier(), m.unit(), "cost")));
    HouseScore score = data.score();
    drawings.addAll(
        CuttingSheet.of(score.cuttingPlan(), Measures.printed(score.house().units()), "cutting"));
    for (Drawing d : drawings) {
      file("sheets/" + d.id() + ".svg", SvgText.file(d, data.made().toString()));
    }
  }

  private void file(String name, String text) throws IOException {
    Path path = folder.resolve(name);
    WholeFile.write(path, text);
    written.add(path);
  }

  private void file(String name, WholeFile.Content content) throws IOException {
    Path path = folder.resolve(name);
    WholeFile.write(path, content);
    written.add(path);
  }

  /**
   * Makes the folder if needed and finds out whether it can be written to, so that nobody waits for
   * a report that then has no place.
   *
   * @throws IOException with a message for the user if it cannot be used
   */
  public static void prepare(Path folder) throws IOException {
    make(folder);
    Path probe = folder.resolve(".slantlight-probe");
    WholeFile.write(probe, "");
    Files.delete(probe);
  }

  private static void make(Path path) throws IOException {
    if (Files.exists(path) && !Files.isDirectory(path)) {
      throw new IOException(path + ": a file has the name of the folder; choose another --out");
    }
    try {
      Files.createDirectories(path);
    } catch (AccessDeniedException e) {
      throw new IOException(
          path + ": the folder cannot be made here; choose another --out or change the rights", e);
    }
  }

  /** The name, with a number if it is taken. */
  private static String fresh(String name, Set<String> taken) {
    String free = name;
    for (int i = 2; !taken.add(free.toLowerCase(Locale.ROOT)); i++) {
      free = name + "-" + i;
    }
    return free;
  }

  /**
   * A file name and XML id made from any text: begins with a letter, then letters, digits, dot,
   * dash and underscore; never a path. A slash becomes a dot; where anything else is lost a digest
   * of the text keeps different texts apart.
   */
  static String safeName(String text) {
    String dotted = text.replace('/', '.');
    String name =
        Normalizer.normalize(dotted, Normalizer.Form.NFKD)
            .replaceAll("\\p{M}+", "")
            .replaceAll("[^A-Za-z0-9._]+", "-")
            .replaceAll("^[^A-Za-z]+|[-.]+$", "");
    if (name.length() > NAME_LIMIT) {
      name = name.substring(0, NAME_LIMIT);
    }
    if (!name.isEmpty() && name.equals(dotted)) {
      return name;
    }
    return (name.isEmpty() ? "item" : name) + String.format(Locale.ROOT, "-%08x", text.hashCode());
  }
}
