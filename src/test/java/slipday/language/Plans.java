package slipday.language;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import slipday.testing.Golden;

/** Season files to begin from, and ways to change them by chance. */
public final class Plans {
  private static final List<Path> FOLDERS =
      List.of(
          Path.of("src/test/resources/language"), Path.of("plans"), Path.of("src/main/resources"));
  private static final String SHARDS =
      "{}[]()<>\"“”„'’#,;:%-−–.½ \t\n\r\u00A0\uFEFF\u0000\uD83C\uDF48\uD800éß°C0123456789abxyz";

  private Plans() {}

  /** Every season file of the project. */
  public static List<Path> files() {
    return FOLDERS.stream().filter(Files::isDirectory).flatMap(Plans::in).toList();
  }

  private static Stream<Path> in(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(p -> p.toString().endsWith(".season")).sorted().toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Any text at all, and more often texts near to one of the language. */
  public static Arbitrary<String> anyText() {
    Arbitrary<String> chars = Arbitraries.strings().ofMaxLength(200);
    Arbitrary<String> shards =
        Arbitraries.strings().withChars(SHARDS.toCharArray()).ofMaxLength(200);
    Arbitrary<String> words =
        Arbitraries.of(vocabulary()).list().ofMaxSize(40).map(l -> String.join("", l));
    return Arbitraries.oneOf(chars, shards, words);
  }

  private static List<String> vocabulary() {
    List<String> words = new ArrayList<>(Declaration.words());
    Clauses.all().forEach(c -> words.addAll(List.of(c.example().split("(?<= )"))));
    words.addAll(
        List.of("\n", "\n  ", " ", "\r\n", ",", ", ", "#", "# x", "\"", "“", "3-5", "−1", "½"));
    return words.stream().flatMap(w -> Stream.of(w, "\n", " ")).toList();
  }

  /** A project's file with some characters or lines put in, taken out, swapped or doubled. */
  public static Arbitrary<String> mutated() {
    return Combinators.combine(
            Arbitraries.of(files()), Arbitraries.longs(), Arbitraries.integers().between(0, 20))
        .as((file, seed, changes) -> mutated(Golden.read(file), new Random(seed), changes));
  }

  private static String mutated(String text, Random random, int changes) {
    StringBuilder changed = new StringBuilder(text);
    for (int i = 0; i < changes && changed.length() > 1; i++) {
      boolean lines = random.nextInt(3) == 0;
      int[] one = piece(changed, random, lines);
      String taken = changed.substring(one[0], one[1]);
      switch (random.nextInt(4)) {
        case 0 -> changed.insert(one[0], SHARDS.charAt(random.nextInt(SHARDS.length())));
        case 1 -> changed.delete(one[0], one[1]);
        case 2 -> changed.insert(one[0], taken);
        default -> {
          changed.delete(one[0], one[1]);
          changed.insert(random.nextInt(changed.length() + 1), taken);
        }
      }
    }
    return changed.toString();
  }

  private static int[] piece(StringBuilder text, Random random, boolean line) {
    int at = random.nextInt(text.length());
    if (!line) {
      return new int[] {at, at + 1};
    }
    int start = text.lastIndexOf("\n", at) + 1;
    int end = text.indexOf("\n", at);
    return end < start ? new int[] {start, text.length()} : new int[] {start, end + 1};
  }
}
