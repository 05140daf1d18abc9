package slipday.command;

/** Where a page goes. */
final class PageOutput {
  static final String[] OPTION = {"-o", "--output"};
  static final String SAYS = "The file to write; standard output if none is named.";

  private final Args args;
  private final Streams streams;

  PageOutput(Args args, Streams streams) {
    this.args = args;
    this.streams = streams;
  }

  /** To the file named, which is told, or else to standard output. */
  void write(String page) {
    String output = args.text("--output", "");
    if (output.isEmpty()) {
      streams.out().print(page);
    } else {
      FileWriting.replace(streams.path(output), output, page);
      streams.out().print(output + ": " + (page.length() + 1023) / 1024 + " kB.\n");
    }
  }
}
