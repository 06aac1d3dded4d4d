package slantlight.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Entry point of the command line. */
@Command(
    name = "slantlight",
    versionProvider = Main.Version.class,
    synopsisSubcommandLabel = "COMMAND",
    description =
        "Tells which drywall joints will show under raking light, when, why, and which remedy is"
            + " worth its money.",
    footer = {
      "",
      "Exit codes: 0 done, 1 faults in a scene or data file, 2 command line not understood,",
      "3 output could not be written, 4 defect of the program, 130 interrupted.",
      "A forecast from stated assumptions, no warranty of appearance."
    })
public final class Main implements Runnable {
  static final String TRACE = "--trace";

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and exit.")
  boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Print the version and exit.")
  boolean version;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  private Main() {}

  /** Runs one command and exits with one of the codes in {@link ExitCode}. */
  public static void main(String[] args) {
    Locale.setDefault(Locale.ROOT);
    Interruption interruption = Interruption.watch();
    int code = execute(args, writer(FileDescriptor.out), writer(FileDescriptor.err));
    interruption.over();
    System.exit(code);
  }

  /**
   * Runs one command.
   *
   * @return one of the codes in {@link ExitCode}
   */
  static int execute(String[] args, PrintWriter out, PrintWriter err) {
    if (args.length == 1 && (args[0].equals("-V") || args[0].equals("--version"))) {
      out.println(Version.text()); // without loading what parses the other options
      out.flush();
      return ExitCode.OK;
    }
    boolean trace = List.of(args).contains(TRACE);
    CommandLine line = new CommandLine(new Main());
    Commands.addTo(line, args);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setOut(out).setErr(err);
    line.setUsageHelpWidth(Terminal.HELP_WIDTH);
    line.setParameterExceptionHandler((e, arguments) -> usage(e, err));
    line.setExecutionExceptionHandler((e, l, parsed) -> failed(e, err, trace));
    int code;
    try {
      code = line.execute(args);
    } catch (OutOfMemoryError e) {
      code = outOfMemory(err);
    } catch (StackOverflowError e) {
      code = failed(e, err, trace);
    }
    err.flush();
    if (out.checkError() && code == ExitCode.OK) {
      err.println("slantlight: not all of the output could be written");
      err.flush();
      return ExitCode.OUTPUT;
    }
    return code;
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "Name a command, such as: slantlight score scenes/one-room.json");
  }

  private static int usage(ParameterException e, PrintWriter err) {
    CommandLine line = e.getCommandLine();
    err.println("slantlight: " + e.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(e, err);
    err.println("Try: " + line.getCommandSpec().qualifiedName() + " --help");
    return ExitCode.USAGE;
  }

  /** Tells what ended a command, or one scene of many, and gives its exit code. */
  static int failed(Throwable e, PrintWriter err, boolean trace) {
    int code = ExitCode.INTERNAL;
    if (e instanceof CommandFailure failure) {
      String sign = failure.exitCode() == ExitCode.USAGE ? "slantlight: " : "";
      err.println(sign + failure.getMessage());
      code = failure.exitCode();
    } else if (e instanceof CancellationException) {
      err.println("slantlight: stopped; nothing was left half-written");
      code = ExitCode.INTERRUPTED;
    } else if (e instanceof UncheckedIOException || e instanceof IOException) {
      err.println("slantlight: " + inputOrOutput(e));
      code = ExitCode.OUTPUT;
    } else if (e instanceof OutOfMemoryError) {
      code = outOfMemory(err);
    } else {
      err.println(
          "slantlight: this is a defect of the program, please report it: " + e + " " + place(e));
    }
    if (trace) {
      e.printStackTrace(err);
    }
    return code;
  }

  private static int outOfMemory(PrintWriter err) {
    err.println(
        "slantlight: out of memory; give it more with java -Xmx4g -jar ..., or ask for fewer"
            + " surfaces with --surface");
    return ExitCode.INTERNAL;
  }

  private static String inputOrOutput(Throwable e) {
    Throwable io = e instanceof UncheckedIOException ? e.getCause() : e;
    if (io instanceof FileSystemException f) {
      String reason = f.getReason() == null ? f.getClass().getSimpleName() : f.getReason();
      return f.getFile() + ": " + reason;
    }
    return io.getMessage();
  }

  private static String place(Throwable e) {
    StackTraceElement[] trace = e.getStackTrace();
    return trace.length == 0 ? "" : "at " + trace[0];
  }

  /** UTF-8 into files and pipes, the terminal's own character set on a terminal. */
  private static PrintWriter writer(FileDescriptor stream) {
    Charset charset =
        Terminal.attached()
            ? Charset.forName(System.getProperty("native.encoding", "UTF-8"))
            : StandardCharsets.UTF_8;
    return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), charset), false);
  }

  /** The version in the manifest of the jar. */
  static final class Version implements IVersionProvider {
    static String text() {
      String version = Main.class.getPackage().getImplementationVersion();
      return "slantlight " + (version == null ? "(not from its jar)" : version);
    }

    @Override
    public String[] getVersion() {
      return new String[] {text()};
    }
  }
}
