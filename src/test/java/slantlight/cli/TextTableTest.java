package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class TextTableTest {
  private final TextTable table =
      new TextTable(TextTable.left("Room"), TextTable.right("Level"), TextTable.wrap("Why"))
          .row("Great room", "5", "ground light through the south slider runs across the joints")
          .row("Cl\u00f4set", "4", "quiet");

  @Test
  void alignsColumns() {
    assertThat(printed(200).lines().toList())
        .containsExactly(
            "Room        Level  Why",
            "Great room      5  ground light through the south slider runs across the joints",
            "Cl\u00f4set          4  quiet");
  }

  @Test
  void wrapsAtSpacesToTheWidth() {
    assertThat(printed(45).lines().toList())
        .containsExactly(
            "Room        Level  Why",
            "Great room      5  ground light through the",
            "                   south slider runs across",
            "                   the joints",
            "Cl\u00f4set          4  quiet");
  }

  @Test
  void neverCutsAWord() {
    assertThat(TextTable.wrapped("a verylongword b", 4)).containsExactly("a", "verylongword", "b");
  }

  @Test
  void refusesARowOfAnotherLength() {
    assertThatThrownBy(() -> table.row("one")).isInstanceOf(IllegalArgumentException.class);
  }

  private String printed(int width) {
    StringWriter out = new StringWriter();
    table.print(new PrintWriter(out), width);
    return out.toString();
  }
}
