package slantlight.cli;

import java.util.List;
import picocli.CommandLine;

/**
 * The subcommands by name. Only the one that is asked for is loaded: reading the annotations of all
 * of them would double the start-up time.
 */
final class Commands {
  /** In the order of the help text: the main job first. */
  static final List<String> NAMES =
      List.of(
          "score", //
          "check", //
          "new", //
          "import", //
          "meter", //
          "boards", //
          "weigh", //
          "inspect", //
          "report", //
          "show", //
          "film", //
          "completion");

  /** Works, but is in no help text. */
  private static final String FOR_DEVELOPERS = "docs-pictures";

  private Commands() {}

  /** A new command object, for picocli. */
  private static Object make(String name) {
    return switch (name) {
      case "score" -> new ScoreCommand();
      case "check" -> new CheckCommand();
      case "new" -> new NewCommand();
      case "import" -> new ImportCommand();
      case "meter" -> new MeterCommand();
      case "report" -> new ReportCommand();
      case "boards" -> new BoardsCommand();
      case "weigh" -> new WeighCommand();
      case "inspect" -> new InspectCommand();
      case "show" -> new ShowCommand();
      case "film" -> new FilmCommand();
      case "completion" -> new CompletionCommand();
      default -> throw new IllegalArgumentException(name);
    };
  }

  /** Adds the commands that these arguments can need. */
  static void addTo(CommandLine main, String... args) {
    if (args.length > 0 && args[0].equals(FOR_DEVELOPERS)) {
      main.addSubcommand(FOR_DEVELOPERS, new DocsPicturesCommand());
      return;
    }
    for (String arg : args) {
      if (NAMES.contains(arg)) {
        if (arg.equals("completion")) {
          break;
        }
        main.addSubcommand(arg, make(arg));
        return;
      }
    }
    addAll(main);
  }

  static void addAll(CommandLine main) {
    for (String name : NAMES) {
      main.addSubcommand(name, make(name));
    }
  }
}
