package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class WeighCommandTest {
  private static final String ROOM = "scenes/one-room.json";
  private static final String CEILING = "living/ceiling";

  @Test
  void remediesAreWeighedAndTheFrontierOnlyFalls() throws Exception {
    CommandRun run = CommandRun.of("weigh", ROOM, "--surface", "living", "--json");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCode.OK);
    JsonNode root = new ObjectMapper().readTree(run.out());
    assertThat(root.get("priceUnit").asText()).isEqualTo("ft2");
    assertThat(root.get("remedies")).isNotEmpty();
    double price = Double.NEGATIVE_INFINITY;
    double excess = Double.POSITIVE_INFINITY;
    for (JsonNode plan : root.get("frontier")) {
      assertThat(plan.get("price").asDouble()).isGreaterThan(price);
      assertThat(plan.get("excess").asDouble()).isLessThan(excess);
      price = plan.get("price").asDouble();
      excess = plan.get("excess").asDouble();
    }
  }

  @Test
  void aSceneDoesNotDifferFromItself() {
    CommandRun run = CommandRun.of("weigh", ROOM, ROOM, "--surface", CEILING);
    assertThat(run.code()).isEqualTo(ExitCode.OK);
    assertThat(run.out()).contains("No surface shows more or less than before.");
  }

  @Test
  void closingTheOnlyWindowQuietsTheCeilingByDay() throws Exception {
    CommandRun run =
        CommandRun.of("weigh", ROOM, "--without", "living/slider", "--surface", CEILING, "--json");
    JsonNode ceiling = new ObjectMapper().readTree(run.out()).at("/surfaces/0");
    assertThat(ceiling.get("showingAfter").asDouble())
        .isLessThan(ceiling.get("showingBefore").asDouble());
  }

  @Test
  void everyTurnIsScoredAndTheKindestIsNamed() throws Exception {
    CommandRun run =
        CommandRun.of("weigh", ROOM, "--sweep-facing", "120", "--surface", CEILING, "--json");
    JsonNode root = new ObjectMapper().readTree(run.out());
    assertThat(root.get("turns")).hasSize(3);
    double least = Double.POSITIVE_INFINITY;
    double ofKindest = Double.NaN;
    for (JsonNode turn : root.get("turns")) {
      double excess = turn.get("excess").asDouble();
      least = Math.min(least, excess);
      if (turn.get("turnDeg").asDouble() == root.get("kindestDeg").asDouble()) {
        ofKindest = excess;
      }
    }
    assertThat(ofKindest).isEqualTo(least);
  }

  @Test
  void theScheduleNamesLevelWorkAndBoards() {
    CommandRun run = CommandRun.of("weigh", ROOM, "--schedule", "--surface", CEILING);
    assertThat(run.out()).contains("finish schedule", "Living room ceiling", "Boards: ", "Level ");
  }

  @Test
  void contradictionsAreToldInOneLine() {
    assertUsage("ask for one thing at a time", "--budget", "5", "--schedule");
    assertUsage("from 1 to 180", "--sweep-facing", "0");
    assertUsage("give 0 or more", "--budget", "-1");
    assertUsage("give 0 to 3", "--house-wide", "4");
    assertUsage("no boarded surface or room", "--surface", "cellar");
    assertUsage("there are living/slider", "--without", "cellar/window");
    assertUsage("above 0 and at most 1", "--narrow", "living/slider=2");
  }

  private static void assertUsage(String message, String... options) {
    String[] args = new String[options.length + 2];
    args[0] = "weigh";
    args[1] = ROOM;
    System.arraycopy(options, 0, args, 2, options.length);
    CommandRun run = CommandRun.of(args);
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains(message);
    assertThat(run.out()).isEmpty();
  }
}
