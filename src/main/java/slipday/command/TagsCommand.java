package slipday.command;

import slipday.descent.Tags;
import slipday.output.Json;
import slipday.output.TagsText;
import slipday.output.data.TagsData;

final class TagsCommand {
  private static final String DIGITS = "[1-9]\\d{0,2}";

  private TagsCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Says which tags are free for the season's next pollinations.",
            "A tag is a number and a letter, 3A. With --check a last character follows, by",
            "ISO/IEC 7064 (mod 37,36), that shows most slips of the pen.")
        .plan()
        .flag("--check", "Adds the check character.")
        .option("--count", "N", "How many for each planting; 6 if nothing is said.")
        .forms("text or json.", Form.TEXT, Form.JSON)
        .examples(
            "slipday tags plan.season",
            "slipday tags plan.season --check",
            "slipday tags plan.season --count 20")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    String count = args.text("--count", "6");
    if (!count.matches(DIGITS)) {
      throw new CommandFailure(
          "--count takes a whole number from 1 to 999, and not `" + count + "`.",
          "For example --count 20.");
    }
    PlanInput plan = new PlanInput(args, streams);
    boolean check = args.has("--check");
    return plan.withSeason(
        season -> {
          TagsData data =
              TagsData.of(
                  plan.name(),
                  season,
                  check,
                  Tags.free(season.garden(), Integer.parseInt(count), check));
          streams
              .out()
              .print(form == Form.JSON ? Json.text(data) : new TagsText(data, plan.ink()).text());
        });
  }
}
