package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class InspectCommandTest {
  private static final String ROOM = "scenes/one-room.json";

  @Test
  void windowsLieInThePeriodAndLampsRakeAsHard() throws Exception {
    CommandRun run =
        CommandRun.of("inspect", ROOM, "--from", "2026-11-30", "--to", "2026-12-02", "--json");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCode.OK);
    JsonNode surfaces = new ObjectMapper().readTree(run.out()).get("surfaces");
    assertThat(surfaces).isNotEmpty();
    for (JsonNode s : surfaces) {
      for (JsonNode w : s.get("windows")) {
        assertThat(LocalDate.parse(w.get("day").asText()))
            .isBetween(LocalDate.of(2026, 11, 30), LocalDate.of(2026, 12, 2));
        assertThat(w.get("showing").asDouble()).isGreaterThanOrEqualTo(1);
      }
      JsonNode lamp = s.get("lamp");
      if (!lamp.isNull()) {
        assertThat(lamp.get("slant").asDouble())
            .isGreaterThanOrEqualTo(lamp.get("worstSlant").asDouble());
      }
    }
  }

  @Test
  void theListCanBeCheckedOffAndCarriesTheCautions() {
    CommandRun run = CommandRun.of("inspect", ROOM, "--from", "2026-11-30", "--to", "2026-11-30");
    assertThat(run.out()).containsPattern("joint [TBC]\\d+, 0\" to 20' 0\" from the left, ");
    assertThat(run.out()).contains("[ ] found", "never look at the sun", "ladders", "asbestos");
  }

  @Test
  void badDatesAreToldInOneLine() {
    assertUsage("give a date such as", "--from", "30.11.2026");
    assertUsage("is before", "--from", "2026-11-30", "--to", "2026-11-01");
    assertUsage("one calendar year", "--from", "2026-12-30", "--to", "2027-01-02");
    assertUsage("1950 to 2050", "--from", "2100-01-01");
  }

  private static void assertUsage(String message, String... options) {
    String[] args = new String[options.length + 2];
    args[0] = "inspect";
    args[1] = ROOM;
    System.arraycopy(options, 0, args, 2, options.length);
    CommandRun run = CommandRun.of(args);
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains(message);
  }
}
