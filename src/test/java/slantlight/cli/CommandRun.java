package slantlight.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What one command printed and returned, run inside this process. */
public record CommandRun(int code, String out, String err) {
  /** Runs the command line as a user would. */
  public static CommandRun of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.execute(args, new PrintWriter(out), new PrintWriter(err));
    return new CommandRun(code, out.toString(), err.toString());
  }
}
