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
        .contains("living/ceiling", "living/wall-north", "board 4' 0\" x 14' 0\"", "joint tape")
        .contains("local codes");
    // Ceilings are hung before walls.
    String cuts = run.out().substring(run.out().indexOf("Order"));
    assertThat(cuts.indexOf("living/ceiling")).isLessThan(cuts.indexOf("living/wall"));
  }

  @Test
  void jsonCoversTheCeilingOnceAndObeysTheCarry() throws Exception {
    CommandRun run =
        CommandRun.of("boards", ROOM, "--json", "--carry", "10'", "--surface", "living/ceiling");
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
    assertThat(CommandRun.of("boards", ROOM, "--run", "across", "--surface", "living").out())
        .doesNotContain(" along   ");
    assertThat(CommandRun.of("boards", ROOM, "--run", "along", "--surface", "living").out())
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
