package slantlight.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import slantlight.decide.Verdict;
import slantlight.report.Provenance;
import slantlight.report.ScoreCsv;
import slantlight.report.ScoreJson;
import slantlight.score.HouseScore;

/** The forms in which a score can be asked for. */
enum ScoreForm {
  TEXT(".txt"),
  JSON(".json"),
  CSV(".csv"),
  JOINTS_CSV(".joints.csv");

  private final String ending;

  ScoreForm(String ending) {
    this.ending = ending;
  }

  /** What the name of a file of this form ends with. */
  String ending() {
    return ending;
  }

  /**
   * The score of a house in this form.
   *
   * @param width characters in a line, of texts for people
   */
  String of(HouseScore score, List<Verdict> verdicts, Provenance made, int width) {
    return switch (this) {
      case TEXT -> words(score, verdicts, width);
      case JSON -> ScoreJson.of(score, verdicts, made);
      case CSV -> ScoreCsv.surfaces(score, verdicts, made);
      case JOINTS_CSV -> ScoreCsv.joints(score, made);
    };
  }

  private static String words(HouseScore score, List<Verdict> verdicts, int width) {
    StringWriter words = new StringWriter();
    PrintWriter writer = new PrintWriter(words);
    new ScoreText(score, verdicts, width).print(writer);
    writer.flush();
    return words.toString();
  }
}
