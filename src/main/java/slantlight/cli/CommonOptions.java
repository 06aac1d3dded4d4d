package slantlight.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Options and streams that every command has; use it as a picocli mixin. */
final class CommonOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  boolean help;

  @Option(names = Main.TRACE, description = "Show where in the program an error arose.")
  boolean trace;

  /** Results go here. */
  PrintWriter out() {
    return command.commandLine().getOut();
  }

  /** Messages go here. */
  PrintWriter err() {
    return command.commandLine().getErr();
  }
}
