package slantlight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import slantlight.scene.WholeFile;

/** What a command found out, in the forms that it can be asked for. */
interface Answer {
  /** For a person, in lines of at most {@code width} characters where cells allow. */
  void print(PrintWriter out, int width);

  /** Everything, for a machine. */
  String json();

  /** The main table, for a spreadsheet. */
  String csv();

  /** Writes the answer as the options ask, to a file or to the command's output. */
  static void give(Answer answer, OutputOptions options, CommonOptions common) throws IOException {
    Path file = options.out();
    String text =
        options.json()
            ? answer.json()
            : options.csv()
                ? answer.csv()
                : words(answer, file == null ? Terminal.width() : Terminal.FILE_WIDTH);
    if (file != null) {
      WholeFile.write(file, text);
    } else {
      common.out().print(text);
      common.out().flush();
    }
  }

  private static String words(Answer answer, int width) {
    StringWriter words = new StringWriter();
    PrintWriter writer = new PrintWriter(words);
    answer.print(writer, width);
    writer.flush();
    return words.toString();
  }
}
