package slipday.architecture;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slipday.testing.Golden;

/** The floors as the root package's documentation draws them: the one place they are written. */
record Drawing(Map<String, Integer> floors) {
  private static final Path FILE = Path.of("src/main/java/slipday/package-info.java");
  private static final Pattern ROW = Pattern.compile(" \\* ( |\\d)  (\\S.*)");

  static Drawing read() {
    return of(Golden.read(FILE));
  }

  /** A row is a floor's number or a blank, then packages and what they hold, two blanks apart. */
  static Drawing of(String javadoc) {
    Map<String, Integer> floors = new LinkedHashMap<>();
    int floor = -1;
    String drawing = javadoc.substring(javadoc.indexOf("<pre>"), javadoc.indexOf("</pre>"));
    for (String line : drawing.lines().skip(1).toList()) {
      Matcher row = ROW.matcher(line);
      if (!row.matches()) {
        if (!line.isBlank() && !line.strip().equals("*")) {
          throw new IllegalStateException("Not a row of the drawing: " + line);
        }
        continue;
      }
      floor = row.group(1).isBlank() ? floor : Integer.parseInt(row.group(1));
      List<String> cells = List.of(row.group(2).split(" {2,}"));
      for (int i = 0; i < cells.size(); i += 2) {
        floors.put(cells.get(i), floor);
      }
    }
    return new Drawing(Map.copyOf(floors));
  }

  int floorOf(String name) {
    Integer floor = floors.get(name);
    if (floor == null) {
      throw new IllegalStateException("The drawing has no package " + name + ".");
    }
    return floor;
  }

  /** The first part after {@code slipday.}; empty for the root package. */
  static String topPackage(String packageName) {
    String[] parts = packageName.split("\\.");
    return parts.length < 2 ? "" : parts[1];
  }
}
