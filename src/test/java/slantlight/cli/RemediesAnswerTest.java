package slantlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slantlight.decide.BudgetPlan;
import slantlight.decide.Menu;
import slantlight.decide.Option;
import slantlight.decide.Plan;
import slantlight.decide.PlanCheck;
import slantlight.decide.Pricing;
import slantlight.decide.Remedy;
import slantlight.decide.RemedyStudy;
import slantlight.geom.Vec3;
import slantlight.report.TestScores;
import slantlight.scene.Shade;
import slantlight.scene.Sheen;
import slantlight.score.HouseScore;

/** The box room with invented remedies: a plan that shades its window and paints its wall. */
class RemediesAnswerTest {
  private static final String CEILING = "room/ceiling";
  private static final String WALL = "room/west";
  private static final HouseScore SCORE = TestScores.score();
  private static final Pricing PRICING = new Pricing(SCORE.house());

  private static final Remedy SHADE =
      new Remedy.ShadeOpening("room/window", "south window", new Shade(0.2, true));
  private static final Remedy MOVE =
      new Remedy.MoveLamp("room/sconce", "sconce", new Vec3(0, 0.3048, 0));

  private static final Option CEILING_AS_IT_IS = option(CEILING, List.of(), 0, 6.8, 4);
  private static final Option WALL_AS_IT_IS = option(WALL, List.of(), 0, 3.5, 1);
  private static final Option CEILING_5 =
      option(CEILING, List.of(new Remedy.Finish(CEILING, 5)), 416, 2.9, 0);
  private static final Option WALL_PAINTED =
      option(
          WALL,
          List.of(new Remedy.LowerSheen(WALL, Sheen.FLAT), new Remedy.LighterColour(WALL, 0.85)),
          5,
          2.7,
          0.1);

  private static Option option(
      String id, List<Remedy> changes, long price, double peak, double excess) {
    return new Option(id, changes, 4, price, peak, excess);
  }

  private static String printed() {
    // The window is 4.4 m x 2.44 m: 115.6 ft2, rounded up 116; a lamp counts 1 m2, 11 ft2.
    List<Menu> menus =
        List.of(
            new Menu(List.of(), 0, List.of(List.of(CEILING_AS_IT_IS), List.of(WALL_AS_IT_IS))),
            new Menu(
                List.of(SHADE, MOVE), 127, List.of(List.of(CEILING_5), List.of(WALL_PAINTED))));
    BudgetPlan budget = BudgetPlan.of(menus);
    Plan plan = budget.within(10_000).orElseThrow();
    PlanCheck check = new PlanCheck(Map.of(CEILING, 2.8, WALL, 2.6));
    RemediesAnswer answer =
        new RemediesAnswer(
            new SceneFile(Path.of("box.json"), SCORE.house(), List.of(), TestScores.made()),
            SCORE,
            new RemedyStudy(SCORE, List.of(), menus),
            budget,
            Map.of("by hand", plan),
            Map.of("by hand", check),
            PRICING);
    StringWriter text = new StringWriter();
    answer.print(new PrintWriter(text, true), 160);
    return text.toString();
  }

  @Test
  void theRowsOfAPlanAddUpToItsPrice() {
    String text = printed();
    assertThat(text).contains("Plan by hand: 548 ft2");
    String table = text.substring(text.indexOf("where"), text.indexOf("Left above"));
    assertThat(table)
        .containsPattern("house +cloth shade \\(20 % through\\) on the south window +116\\b")
        .containsPattern("house +mount the sconce 1' 0\" farther off +11\\b");
    BigDecimal sum = BigDecimal.ZERO;
    Matcher price = Pattern.compile("(?m)^(?:house|Room) .*?  +(\\d+)\\b").matcher(table);
    while (price.find()) {
      sum = sum.add(new BigDecimal(price.group(1)));
    }
    assertThat(sum).isEqualTo("548");
  }

  /**
   * The limit of the room is 2.5: one surface stands above it for so few hours that it is borne.
   */
  @Test
  void aSurfaceAboveItsLimitThatIsBorneIsMarked() {
    assertThat(printed())
        .containsPattern("Room ceiling .*2\\.9 +enough +2\\.8 +2\\.5")
        .containsPattern("Room west .*2\\.7 +2\\.6 +2\\.5")
        .contains("Left above the limit: Room west (2.7).");
  }

  @Test
  void aStepOfTheFrontierNamesEachSurfaceOnceByItsLabel() {
    String text = printed();
    String frontier = text.substring(text.indexOf("What each next sum buys"));
    assertThat(frontier.replaceAll("\\s+", " "))
        .contains(
            "house: cloth shade (20 % through) on the south window, mount the sconce 1' 0\" farther"
                + " off; Room ceiling: finish to level 5; Room west: paint it flat, paint it lighter,"
                + " LRV 85 or more")
        .doesNotContain("room/");
  }
}
