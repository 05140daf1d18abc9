package slipday.command;

/** The option that asks for a picture in text. */
final class Charts {
  static final String FLAG = "--chart";

  private Charts() {}

  /**
   * @throws CommandFailure where a chart is asked for in a form it does not have
   */
  static void refuseOther(Args args, Form form) {
    if (args.has(FLAG) && form != Form.TEXT) {
      throw new CommandFailure("A chart is text only.", "Leave --chart or --format off.");
    }
  }
}
