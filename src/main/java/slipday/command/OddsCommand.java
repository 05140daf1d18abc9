package slipday.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.app.BuiltInCrops;
import slipday.garden.Crop;
import slipday.garden.CropBook;
import slipday.garden.CropFacts;
import slipday.garden.Facts;
import slipday.garden.Species;
import slipday.genetics.Selfing;
import slipday.odds.Fixing;
import slipday.odds.HowMany;
import slipday.odds.Keeping;
import slipday.odds.Rate;
import slipday.odds.RateReader;
import slipday.odds.Reckoning;
import slipday.odds.Storing;
import slipday.odds.TypeShare;
import slipday.output.Json;
import slipday.output.OddsText;
import slipday.output.data.OddsData;

/** How many: six questions that need no plan. */
final class OddsCommand {
  private static final String SHARES =
      "A share is written 1 in 16, 1/16, 6.25 %, or as a ratio with the part that is";
  private static final int MOST_WANTED = 10_000;
  private static final int MOST_GENERATIONS = 1_000;

  private OddsCommand() {}

  static Spec spec(Streams streams) {
    Map<String, Spec> parts = new LinkedHashMap<>();
    parts.put("find", find(streams));
    parts.put("sow", sow(streams));
    parts.put("pollinate", pollinate(streams));
    parts.put("keep", keep(streams));
    parts.put("fix", fix(streams));
    parts.put("store", store(streams));
    return Spec.of(
            "Says how many to grow, sow, pollinate or keep, with the reckoning.",
            "Six questions, none of which needs a plan.")
        .examples(
            "slipday odds find 3 at 1 in 16       plants to grow for three of a type",
            "slipday odds sow 12 at 44 of 50      seeds to sow after a test",
            "slipday odds pollinate 8 at 30 %     flowers for eight fruits",
            "slipday odds keep butternut          plants to keep a line",
            "slipday odds fix 95 %                generations of selfing",
            "slipday odds store 10 % at 20 C, 8 % at 10 C    how much longer seed lives")
        .parts(parts);
  }

  private static Spec asked(Spec spec) {
    return spec.option("--sure", "SHARE", "How sure to be; 95 % if not said.")
        .forms("text or json.", Form.TEXT, Form.JSON)
        .colour();
  }

  private static Spec find(Streams streams) {
    Spec spec =
        Spec.of(
                "Plants to grow to find some of a type.",
                SHARES,
                "wanted first, 1:15. Or the genes it is known by are told, and the generation.")
            .words("0..*", "0..*", "N at SHARE", "How many are wanted, and how often they come.")
            .option("--recessive", "N", "Genes at which it must show the recessive.")
            .option("--dominant", "N", "Genes at which it must show the dominant.")
            .option("--pure", "N", "Genes at which it must breed true for the dominant.")
            .option(
                "--in", "GENERATION", "What is grown, out of one F1 by selfing; F2 if not said.");
    return asked(spec)
        .examples(
            "slipday odds find 3 at 1 in 16",
            "slipday odds find 1 at 1:63 --sure 99%",
            "slipday odds find 2 --recessive 2 --dominant 1",
            "slipday odds find 2 --recessive 2 --in F4")
        .runs(args -> tell(found(args), args, streams));
  }

  private static Spec sow(Streams streams) {
    Spec spec =
        Spec.of(
                "Seeds to sow for so many plants.",
                "Germination is a share, 85 %, or the counts of a test, 44 of 50; a test's own",
                "doubt is reckoned in, and a small test asks for more seed.")
            .words("0..*", "1..*", "N at GERMINATION", "How many plants are wanted, of what seed.");
    return asked(spec)
        .examples("slipday odds sow 12 at 44 of 50", "slipday odds sow 20 at 90% --sure 99%")
        .runs(args -> tell(how(args, "N at GERMINATION", "12 at 44 of 50").seeds(), args, streams));
  }

  private static Spec pollinate(Streams streams) {
    Spec spec =
        Spec.of(
                "Flowers to pollinate by hand for so many fruits.",
                "The take is a share, 30 %, or counts, 3 of 20 that took; counts bring their own",
                "doubt. That the flowers of one vine take or fail together is not reckoned in.")
            .words("0..*", "1..*", "N at TAKE", "How many fruits are wanted, at what take.");
    return asked(spec)
        .examples("slipday odds pollinate 8 at 3 of 20", "slipday odds pollinate 8 at 30%")
        .runs(args -> tell(how(args, "N at TAKE", "8 at 3 of 20").flowers(), args, streams));
  }

  private static Spec keep(Streams streams) {
    Spec spec =
        Spec.of(
                "Plants to save seed of, to keep a line.",
                "The trade's figure for the crop, and what follows from chance: rare alleles",
                "lost, heterozygosity lost.")
            .words("0", "0..1", "CROP", "A crop or a species.")
            .option("--rare", "SHARE", "How rare an allele is not to be lost; 5 % if not said.")
            .option("--left", "SHARE", "Heterozygosity to be left; 90 % if not said.")
            .option("--generations", "N", "After how many generations; 10 if not said.");
    return asked(spec)
        .examples("slipday odds keep butternut", "slipday odds keep --rare 1% --generations 20")
        .runs(args -> tell(kept(args), args, streams));
  }

  private static Spec fix(Streams streams) {
    return Spec.of(
            "Generations of selfing until plants are alike.",
            "Out of an F1: the first generation with so many of the genes fixed in a plant,",
            "or with so many plants fixed at all of some genes.")
        .words("0..*", "1..*", "SHARE", "How much is to be fixed, such as 95 %.")
        .option("--genes", "N", "The share is of plants fixed at all of so many genes.")
        .forms("text or json.", Form.TEXT, Form.JSON)
        .colour()
        .examples("slipday odds fix 95 %", "slipday odds fix 90 % --genes 5")
        .runs(args -> tell(fixed(args), args, streams));
  }

  private static Spec store(Streams streams) {
    return Spec.of(
            "How much longer seed lives where it lies drier or cooler.",
            "How moist the seed is and how warm it lies, and then the same of another place.")
        .words("0..*", "1..*", "PLACE, PLACE", "Moisture and warmth of both, such as 8 % at 10 C.")
        .forms("text or json.", Form.TEXT, Form.JSON)
        .colour()
        .examples("slipday odds store 10 % at 20 C, 8 % at 10 C")
        .runs(args -> tell(stored(args), args, streams));
  }

  private static Reckoning stored(Args args) {
    return Storing.read(String.join(" ", args.words("PLACE, PLACE")))
        .match(r -> r, why -> Numbers.fail(why, "For example: 10 % at 20 C, 8 % at 10 C"));
  }

  private static int tell(Reckoning reckoning, Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    OddsData data = OddsData.of(reckoning);
    String text =
        form == Form.JSON ? Json.text(data) : new OddsText(data, Colour.ink(args, streams)).text();
    streams.out().print(text);
    return Exit.CLEAN;
  }

  private static Reckoning found(Args args) {
    boolean byGenes = args.has("--recessive") || args.has("--dominant") || args.has("--pure");
    if (!byGenes) {
      if (args.has("--in")) {
        throw new CommandFailure(
            "A generation alone does not say how often a type comes.",
            "Say its genes too, such as --recessive 1 --in F3.");
      }
      return how(args, "N at SHARE", "3 at 1 in 16").plants(List.of());
    }
    List<String> words = args.words("N at SHARE");
    if (words.size() > 1) {
      throw new CommandFailure(
          "Either a share or genes are to be given, and not both.", "Leave one of them off.");
    }
    int wanted = words.isEmpty() ? 1 : wanted(words.get(0), "3 --recessive 2");
    int recessive = Numbers.whole(args, "--recessive", 0, TypeShare.MOST_GENES, 0);
    int dominant = Numbers.whole(args, "--dominant", 0, TypeShare.MOST_GENES, 0);
    int pure = Numbers.whole(args, "--pure", 0, TypeShare.MOST_GENES, 0);
    TypeShare type =
        TypeShare.of(recessive, dominant, pure, generation(args))
            .match(t -> t, why -> Numbers.fail(why, "For example --recessive 2 --in F3."));
    return new HowMany(wanted, type.rate(), sure(args)).plants(type.steps());
  }

  private static int generation(Args args) {
    String text = args.text("--in", "F2");
    if (!text.matches("[Ff]\\d{1,2}")) {
      throw new CommandFailure(
          "--in takes a generation of selfing, F2 to F"
              + Selfing.LAST
              + ", and not `"
              + text
              + "`.",
          "For any other, find its share and write: slipday odds find 1 at 1 in 2");
    }
    return Integer.parseInt(text.substring(1));
  }

  /** What stands before and after {@code at}. */
  private static HowMany how(Args args, String label, String example) {
    String asked = String.join(" ", args.words(label));
    String[] parts = asked.split("\\s+at\\s+", 2);
    if (parts.length < 2) {
      throw new CommandFailure(
          asked.isEmpty() ? "Nothing is asked." : "`" + asked + "` does not say at what share.",
          "For example: " + example);
    }
    Rate rate =
        RateReader.read(parts[1])
            .match(r -> r, why -> Numbers.fail(why, "For example: " + example));
    return new HowMany(wanted(parts[0], example), rate, sure(args));
  }

  private static int wanted(String text, String example) {
    return Numbers.whole(text, 1, MOST_WANTED)
        .orElseThrow(
            () ->
                new CommandFailure(
                    "How many are wanted is a whole number from 1 to "
                        + MOST_WANTED
                        + ", and not `"
                        + text
                        + "`.",
                    "For example: " + example));
  }

  private static double sure(Args args) {
    return Numbers.share(args, "--sure", 0.95);
  }

  private static Reckoning kept(Args args) {
    List<String> name = args.words("CROP");
    Optional<Facts> facts = name.stream().findFirst().map(OddsCommand::facts);
    Keeping keeping =
        new Keeping(
            Numbers.share(args, "--rare", 0.05),
            Numbers.share(args, "--left", 0.9),
            Numbers.whole(args, "--generations", 1, MOST_GENERATIONS, 10),
            sure(args));
    return keeping.reckon(
        name.stream().findFirst(), facts.flatMap(f -> f.get(CropFacts.POPULATION)));
  }

  private static Facts facts(String name) {
    CropBook book = BuiltInCrops.book();
    Optional<Facts> facts =
        book.crop(name)
            .map(Crop::facts)
            .or(() -> Optional.ofNullable(book.species().get(name)).map(Species::facts));
    return facts.orElseGet(
        () -> Numbers.fail("There is no crop or species `" + name + "`.", book.help(name)));
  }

  private static Reckoning fixed(Args args) {
    String asked = String.join(" ", args.words("SHARE"));
    double share = Numbers.certain(asked, "The share to be fixed");
    return Fixing.reckon(share, Numbers.whole(args, "--genes", 1, MOST_WANTED, 1));
  }
}
