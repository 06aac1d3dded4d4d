package slantlight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFolderTest {
  private static final EnumSet<ReportFolder.Part> BUT_PDF =
      EnumSet.of(ReportFolder.Part.DATA, ReportFolder.Part.SHEETS, ReportFolder.Part.MODEL);

  @TempDir Path folder;

  @Test
  void writesEveryPartAndOnlyIntoItsFolder() throws IOException {
    Path out = folder.resolve("out");
    List<Path> files =
        ReportFolder.write(TestReports.data(), out, BUT_PDF, PrintedSheets.THAT_MATTER);
    assertThat(files).allMatch(f -> f.startsWith(out)).allMatch(Files::isRegularFile);
    assertThat(files.stream().map(f -> out.relativize(f).toString().replace('\\', '/')))
        .contains(
            "report.html",
            "score.json",
            "surfaces.csv",
            "joints.csv",
            "rooms.glb",
            "sheets/room.ceiling.svg",
            "sheets/room.ceiling-section.svg",
            "sheets/room.west-calendar.svg",
            "sheets/sun-path.svg",
            "sheets/cost.svg");
    assertThat(Files.readString(out.resolve("sheets/room.ceiling.svg")))
        .contains(TestScores.made().sceneHash());
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).containsExactly(out);
    }
  }

  @Test
  void writesOverOlderFilesAndLeavesOthersAlone() throws IOException {
    Files.writeString(folder.resolve("report.html"), "old");
    Files.writeString(folder.resolve("mine.txt"), "mine");
    ReportFolder.write(
        TestReports.data(), folder, EnumSet.noneOf(ReportFolder.Part.class), PrintedSheets.ALL);
    assertThat(Files.readString(folder.resolve("report.html"))).startsWith("<!DOCTYPE html>");
    assertThat(folder.resolve("mine.txt")).hasContent("mine");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).hasSize(2);
    }
  }

  @Test
  void aFileInPlaceOfTheFolderIsNamed() throws IOException {
    Path taken = Files.writeString(folder.resolve("taken"), "x");
    assertThatThrownBy(
            () -> ReportFolder.write(TestReports.data(), taken, BUT_PDF, PrintedSheets.THAT_MATTER))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("a file has the name of the folder");
    assertThat(taken).hasContent("x");
  }

  @Test
  void namesOfDifferentThingsStayApart() {
    assertThat(ReportFolder.safeName("great-room/ceiling")).isEqualTo("great-room.ceiling");
    assertThat(ReportFolder.safeName("a:b")).isNotEqualTo(ReportFolder.safeName("a*b"));
    assertThat(ReportFolder.safeName("\u05d7\u05d3\u05e8")).startsWith("item-");
    assertThat(ReportFolder.safeName("../../x")).isEqualTo(ReportFolder.safeName("../../x"));
  }

  /** Any text whatever gives one harmless path component. */
  static class Names {
    @Property(tries = 300)
    boolean areOneSafeComponent(@ForAll String text) {
      return ReportFolder.safeName(text).matches("[A-Za-z][A-Za-z0-9._-]{0,99}");
    }
  }
}
