package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class BoardsCommandTest {
  private static final String ROOM = "scenes/one-room.json";

  @Test
  void tableNamesEverySurfaceQuantitiesAndCuts() {
    CommandRun run = CommandRun.of("boards", ROOM);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCode.OK);
    assertThat(run.out())
        .contains(
            "living/ceiling", "living/wall-north", "board 48 in x 14 ft, 1/2 in", "joint tape")
        .contains("local codes");
    // Ceilings are hung before walls.
    String cuts = run.out().substring(run.out().indexOf("Order"));
    assertThat(cuts.indexOf("living/ceiling")).isLessThan(cuts.indexOf("living/wall"));
  }

  /** Whoever cuts boards by this command and reads a score must hold the same boards in hand. */
  @Test
  void boardsAreThoseThatAScoreSpeaksOf() throws Exception {
    ObjectMapper json = new ObjectMapper();
    JsonNode laid = json.readTree(CommandRun.of("boards", ROOM, "--json").out()).get("surfaces");
    JsonNode scored =
        json.readTree(CommandRun.of("score", ROOM, "--json", "--days", "90").out()).get("surfaces");
    assertThat(laid).hasSameSizeAs(scored);
    for (int i = 0; i < laid.size(); i++) {
      assertThat(laid.get(i).get("reason")).isEqualTo(scored.get(i).get("boardReason"));
      assertThat(laid.get(i).get("joints").findValuesAsText("id"))
          .isEqualTo(scored.get(i).get("joints").findValuesAsText("id"));
    }
  }

  @Test
  void evenBoardsNeedNoLightAndSaySo() {
    CommandRun run = CommandRun.of("boards", ROOM, "--even");
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("without --even the boards may lie otherwise");
  }

  @Test
  void whatOneBoardLeavesServesAnotherPiece() throws Exception {
    JsonNode root =
        new ObjectMapper().readTree(CommandRun.of("boards", ROOM, "--even", "--json").out());
    int pieces = root.get("cutList").size();
    int cut = 0;
    for (JsonNode sheet : root.get("sheets")) {
      cut += sheet.get("pieces").size();
    }
    assertThat(cut).isEqualTo(pieces);
    assertThat(root.get("sheets").size()).isLessThan(pieces);
    assertThat(CommandRun.of("boards", ROOM, "--even").out()).contains("rest of ", "the rest for ");
  }

  @Test
  void jsonCoversTheCeilingOnceAndObeysTheCarry() throws Exception {
    CommandRun run =
        CommandRun.of(
            "boards", ROOM, "--even", "--json", "--carry", "10'", "--surface", "living/ceiling");
    JsonNode surface = new ObjectMapper().readTree(run.out()).at("/surfaces/0");
    double area = 0;
    for (JsonNode b : surface.get("boards")) {
      assertThat(b.get("stockLength").asDouble()).isLessThanOrEqualTo(3.048 + 1e-9);
      area += b.get("area").asDouble();
    }
    assertThat(area)
        .isCloseTo(20 * 14 * 0.3048 * 0.3048, org.assertj.core.api.Assertions.within(1e-6));
  }

  @Test
  void runTurnsTheBoards() {
    assertThat(
            CommandRun.of("boards", ROOM, "--even", "--run", "across", "--surface", "living").out())
        .doesNotContain(" along   ");
    assertThat(
            CommandRun.of("boards", ROOM, "--even", "--run", "along", "--surface", "living").out())
        .doesNotContain(" across  ");
  }

  @Test
  void fixedBoardStays() {
    CommandRun run =
        CommandRun.of(
            "boards",
            ROOM,
            "--surface",
            "living/wall-north",
            "--csv",
            "--run",
            "across",
            "--fix",
            "living/wall-north=4',5',12',9'");
    assertThat(run.code()).isEqualTo(ExitCode.OK);
    assertThat(run.out()).contains(",1.2192,1.524,3.6576,2.7432,");
  }

  @Test
  void boardsThatCannotStayTogetherAreRefused() {
    CommandRun run =
        CommandRun.of(
            "boards",
            ROOM,
            "--surface",
            "living/wall-north",
            "--run",
            "across",
            "--fix",
            "living/wall-north=4',5',12',9'",
            "--fix",
            "living/wall-north=10',4',18',8'");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("--fix: living/wall-north: ", "release one of them");
  }

  @Test
  void wrongOptionsAreNamed() {
    assertThat(CommandRun.of("boards", ROOM, "--surface", "attic").err())
        .contains("living/ceiling");
    assertThat(CommandRun.of("boards", ROOM, "--carry", "long").err()).contains("--carry long");
    assertThat(CommandRun.of("boards", ROOM, "--level", "6").err()).contains("0 to 5");
    assertThat(CommandRun.of("boards", "scenes/none.json").code()).isEqualTo(ExitCode.FAULTS);
  }
}
