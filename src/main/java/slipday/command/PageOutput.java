package slipday.command;

/** Where a page goes. */
final class PageOutput {
  static final String[] OPTION = {"-o", "--output"};
  static final String SAYS = "The file to write; - or none is standard output.";

  private static final String STDOUT = "-";

  private final Args args;
  private final Streams streams;
  private final PlanInput plan;

  /**
   * @param plan what the page is made of: none of its files is written over
   */
  PageOutput(Args args, Streams streams, PlanInput plan) {
    this.args = args;
    this.streams = streams;
    this.plan = plan;
  }

  /** The file named; empty for standard output. */
  static String named(Args args) {
    String output = args.text("--output", "");
    return output.equals(STDOUT) ? "" : output;
  }

  /**
   * @throws CommandFailure if the file named is one that the plan was read from
   */
  void refuseToOverwrite() {
    String output = named(args);
    if (!output.isEmpty()) {
      plan.refuseToOverwrite(streams.path(output), output);
    }
  }

  /** To the file named, which is told, or else to standard output. */
  void write(String page) {
    write(page, (page.length() + 1023) / 1024 + " kB");
  }

  /**
   * To the file named, which is told, or else to standard output.
   *
   * @param size what is told of it
   */
  void write(String page, String size) {
    String output = named(args);
    if (output.isEmpty()) {
      streams.out().print(page);
    } else {
      refuseToOverwrite();
      FileWriting.replace(streams.path(output), output, page);
      streams.out().print(output + ": " + size + ".\n");
    }
  }
}
