package slantlight.cli;

import java.io.PrintWriter;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a completion script for bash and zsh. */
@Command(
    name = "completion",
    description = "Print a bash and zsh completion script: source <(slantlight completion)")
final class CompletionCommand implements Runnable {
  @Spec private CommandSpec spec;
  @Mixin private CommonOptions common;

  @Override
  public void run() {
    PrintWriter out = common.out();
    out.print(AutoComplete.bash("slantlight", spec.root().commandLine()));
    out.flush();
  }
}
