package slipday.command;

import picocli.CommandLine.Option;

/** The option every command has. */
final class HelpOption {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Shows this help.")
  private boolean help;
}
