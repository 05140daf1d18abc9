package slipday.genetics.mixed;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.ejml.data.DMatrixSparseCSC;
import slipday.genetics.Pedigree;

/** Python with scipy, holding a system that it is asked to solve again and again. */
final class Scipy {
  private static final Path SCRIPT = Path.of("src", "bench", "python", "sparse.py");

  private final Path folder;
  private final Process python;
  private final BufferedWriter to;
  private final BufferedReader from;

  /**
   * @param upper the upper triangle of the equations
   */
  Scipy(DMatrixSparseCSC upper, double[] right, Pedigree pedigree) throws IOException {
    folder = Files.createTempDirectory("equations");
    write("equations.mtx", out -> equations(upper, out));
    write("right.txt", out -> numbers(right, out));
    write("pedigree.txt", out -> pedigree(pedigree, out));
    python =
        new ProcessBuilder("/usr/bin/python3", SCRIPT.toString(), folder.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    to = python.outputWriter(StandardCharsets.UTF_8);
    from = python.inputReader(StandardCharsets.UTF_8);
  }

  /** What it answers once it has done so; waits for it. */
  double ask(String what) throws IOException {
    to.write(what + "\n");
    to.flush();
    String answer = from.readLine();
    if (answer == null) {
      throw new IOException("scipy has ended; is python3-scipy there?");
    }
    return Double.parseDouble(answer);
  }

  /** In our order. */
  double[] solution() throws IOException {
    ask("write");
    try (Stream<String> lines = Files.lines(folder.resolve("solution.txt"))) {
      return lines.mapToDouble(Double::parseDouble).toArray();
    }
  }

  void close() throws IOException {
    to.close();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }

  private interface Writing {
    void to(PrintWriter out);
  }

  private void write(String name, Writing writing) {
    try (PrintWriter out =
        new PrintWriter(Files.newBufferedWriter(folder.resolve(name), StandardCharsets.UTF_8))) {
      writing.to(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** In the Matrix Market's exchange format. */
  private static void equations(DMatrixSparseCSC upper, PrintWriter out) {
    out.println("%%MatrixMarket matrix coordinate real symmetric");
    out.println(upper.numRows + " " + upper.numCols + " " + upper.nz_length);
    for (int column = 0; column < upper.numCols; column++) {
      for (int k = upper.col_idx[column]; k < upper.col_idx[column + 1]; k++) {
        // That format lists the lower triangle.
        out.println((column + 1) + " " + (upper.nz_rows[k] + 1) + " " + upper.nz_values[k]);
      }
    }
  }

  private static void numbers(double[] numbers, PrintWriter out) {
    for (double each : numbers) {
      out.println(each);
    }
  }

  /** A line a plant: what its own draw of genes adds, then parents with their shares. */
  private static void pedigree(Pedigree pedigree, PrintWriter out) {
    for (int plant = 0; plant < pedigree.size(); plant++) {
      Map<Integer, Double> parents = pedigree.parents(plant);
      double draw = parents.isEmpty() ? 1 : 0.5;
      for (Map.Entry<Integer, Double> parent : parents.entrySet()) {
        draw -= parent.getValue() * pedigree.inbreeding(parent.getKey()) / 2;
      }
      StringBuilder line = new StringBuilder().append(draw);
      parents.forEach((parent, share) -> line.append(' ').append(parent).append(' ').append(share));
      out.println(line);
    }
  }
}
