package slipday.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipday.testing.Golden;

/**
 * The recorded year used as its gardeners would: what each command prints, in one transcript. The
 * garden is copied first, as some commands write into it.
 */
class RecordedGardenTest {
  private static final Path GARDEN = Path.of("plans/tern-hollow");
  private static final Path GOLDEN = Path.of("src/test/resources/golden/tern-hollow");
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");

  @TempDir Path folder;

  @BeforeEach
  void copy() throws IOException {
    try (Stream<Path> all = Files.walk(GARDEN)) {
      for (Path path : all.filter(Files::isRegularFile).toList()) {
        Path target = folder.resolve(GARDEN.relativize(path).toString());
        Files.createDirectories(target.getParent());
        Files.copy(path, target);
      }
    }
    write(
        "kitchen.csv",
        "Day,Vine,Net kg,Brix,Taste (of 10),Remark",
        "2026-08-29,tern-amber-f3 plant 2,1.38,11.9,7,last of it",
        "2026-08-30,tern-amber-f3 plant 4,1.52,,6,",
        "2026-08-31,tern-amber-f3 plant 40,1.2,,,",
        "31.8.2027,tern-amber-f3 plant 5,1.3,,,");
    write(
        "pollen.csv",
        "day;lot;mother;father;tag",
        "2026-07-20;ropewalk-2023;3;5;23E",
        "2026-07-21;ropewalk-2023;5;2;25B",
        "2026-07-21;ropewalk-2023;6;2;26D");
    write("sizes.csv", "day;fruit;weight kg;tin kg", "2026-10-20;41A;1,62;0,17");
  }

  private void write(String file, String... lines) throws IOException {
    Files.writeString(folder.resolve(file), String.join("\n", lines) + "\n");
  }

  @Test
  void record() {
    String kitchen =
        "--columns 'date=Day,planting=Vine,weight=Net kg,sweetness=Brix,flavour=Taste (of 10)'";
    String pollen = "--columns 'date=day,planting=lot,plant=mother,by plant=father,tag=tag'";
    transcript(
        "recorded-record.txt",
        "slipday record recorded.season 2026-08-29 note tern-amber-f3, '\"the last week of it\"'",
        "slipday record recorded.season 2026-08-29 note tern-amber-f3, '\"the last week of it\"'",
        "slipday record recorded.season 2026-08-29 took 3Q",
        "slipday record recorded.season 2026-08-29 picked 3B, full slip, 1.2 kg",
        "slipday record recorded.season 2027-08-29 took 3B",
        "slipday record plan.season 2026-08-29 note '\"no folder of a record is taken in\"'",
        "slipday record recorded.season --from kitchen.csv " + kitchen,
        "slipday record recorded.season --from kitchen.csv --skip-bad " + kitchen,
        "slipday record recorded.season --from kitchen.csv --skip-bad " + kitchen,
        "slipday record recorded.season --from pollen.csv --verb sibbed " + pollen,
        "slipday record recorded.season --from pollen.csv --verb sibbed --skip-bad " + pollen,
        "slipday record recorded.season --from pollen.csv --verb sib " + pollen,
        "slipday record recorded.season --from pollen.csv --columns date=Day",
        "slipday record recorded.season --from pollen.csv",
        "slipday record recorded.season --from sizes.csv --verb weighed"
            + " --columns 'date=day,tag=fruit,weight=weight kg,less=tin kg'",
        "slipday record recorded.season");
  }

  @Test
  void seedAndDescent() {
    transcript(
        "recorded-seed.txt",
        "slipday lots recorded.season",
        "slipday lots recorded.season tern-amber-f4-10A ropewalk-amber-32B swap-table-2025",
        "slipday lots recorded.season tern-amber-f4-10A ropewalk-2026 --labels",
        "slipday lots recorded.season tern-amber-f3 --plants 12",
        "slipday lots recorded.season tern-amber-f5",
        "slipday descent recorded.season tern-amber-f4-10A",
        "slipday descent recorded.season ropewalk-amber-24B --with tern-amber-f4-10A",
        "slipday descent recorded.season ropewalk-2026",
        "slipday descent recorded.season 32B",
        "slipday descent recorded.season tern-amber-f3 plant 12",
        "slipday descent recorded.season 99Z",
        "slipday tags recorded.season",
        "slipday tags recorded.season --check --count 3");
  }

  @Test
  void nextSeason() {
    transcript(
        "recorded-next.txt",
        "slipday next-season recorded.season -o 2027.season",
        "slipday next-season recorded.season -o 2027.season");
  }

  private void transcript(String file, String... commands) {
    StringBuilder out = new StringBuilder();
    for (String command : commands) {
      List<String> words = words(command);
      Run run = Run.in(folder, words.subList(1, words.size()).toArray(new String[0]));
      String err = run.err().isEmpty() ? "" : "--- messages\n" + run.err();
      out.append("$ ").append(command).append('\n').append(run.out()).append(err);
      out.append("--- exit code ").append(run.exit()).append("\n\n");
    }
    Golden.check(GOLDEN.resolve(file), out.toString());
  }

  /** Quoted as a shell has it, single quotes only. */
  private static List<String> words(String command) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(command);
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    return words;
  }
}
