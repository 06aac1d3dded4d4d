package slantlight.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScoreFilesTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @Test
  void theJsonHoldsToThePublishedSchema() throws IOException {
    JsonNode json =
        MAPPER.readTree(ScoreJson.of(TestScores.score(), TestScores.verdicts(), TestScores.made()));
    assertThat(schema().validate(json)).isEmpty();
    assertThat(json.at("/scene/hash").asText()).isEqualTo(TestScores.made().sceneHash());
    assertThat(json.at("/surfaces/0/verdict/level").asInt()).isEqualTo(5);
    assertThat(json.at("/surfaces/0/worst/shadowLength").isNull()).isTrue();
  }

  @Test
  void aScoreWithoutVerdictsIsStillWhole() throws IOException {
    JsonNode json = MAPPER.readTree(ScoreJson.of(TestScores.score(), List.of(), TestScores.made()));
    assertThat(schema().validate(json)).isEmpty();
    assertThat(json.at("/surfaces/0/verdict").isNull()).isTrue();
  }

  @Test
  void theSchemaRefusesAWrongDocument() throws IOException {
    assertThat(schema().validate(MAPPER.readTree("{\"format\":\"slantlight-score\"}")))
        .isNotEmpty();
  }

  @Test
  void theSameScoreGivesTheSameBytes() {
    assertThat(ScoreJson.of(TestScores.score(), TestScores.verdicts(), TestScores.made()))
        .isEqualTo(ScoreJson.of(TestScores.score(), TestScores.verdicts(), TestScores.made()));
  }

  @Test
  void everyCsvRowHasTheCellsOfItsHeader() {
    String table = ScoreCsv.surfaces(TestScores.score(), TestScores.verdicts(), TestScores.made());
    assertThat(table).endsWith("\r\n");
    List<String> lines = table.lines().toList();
    assertThat(lines).hasSize(3);
    assertThat(lines.get(1))
        .startsWith("room/ceiling,Room ceiling,room,Room,ceiling,41.6,2.5,5,5,4,no,");
    String joints = ScoreCsv.joints(TestScores.score(), TestScores.made());
    assertThat(joints.lines().toList().get(1))
        .startsWith("room/ceiling#B1,room/ceiling,butt,3.6576,0,");
  }

  @Test
  void aCellIsNeverAFormula() {
    Csv csv = new Csv("a", "b", "c", "d", "e", "f");
    csv.text("=1+1").text("+1").text("-1").text("@SUM(A1)").text("\t=1").text("  =1").end();
    csv.text("a,b")
        .text("say \"x\"")
        .text("two\nlines")
        .number(-1.5)
        .number(Double.NaN)
        .text("")
        .end();
    assertThat(csv.toString())
        .isEqualTo(
            "a,b,c,d,e,f\r\n'=1+1,'+1,'-1,'@SUM(A1),'\t=1,'  =1\r\n"
                + "\"a,b\",\"say \"\"x\"\"\",\"two\nlines\",-1.5,,\r\n");
  }

  @Test
  void figuresKeepSixDigitsAndNoExponent() {
    assertThat(Figures.text(1234567.8)).isEqualTo("1234570");
    assertThat(Figures.text(0.000012345678)).isEqualTo("0.0000123457");
    assertThat(Figures.text(-0.0)).isEqualTo("0");
    assertThat(Figures.text(100)).isEqualTo("100");
    assertThat(Figures.text(Double.POSITIVE_INFINITY)).isEmpty();
  }

  private static JsonSchema schema() throws IOException {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(Files.readString(Path.of("docs", "score.schema.json")));
  }
}
