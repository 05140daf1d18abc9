package slipday.output;

/** Commands offered, as they are typed into a POSIX shell. */
public final class Shell {
  private Shell() {}

  /**
   * @param does what comes after the tool's name and is typed as it stands
   * @param file named next, quoted where the shell would take it apart
   * @param more what follows, typed as it stands
   */
  public static String command(String does, String file, String more) {
    return "slipday " + does + " " + word(file) + (more.isEmpty() ? "" : " " + more);
  }

  static String word(String text) {
    String clean = Lines.clean(text);
    boolean plain =
        !clean.isEmpty()
            && clean.codePoints().allMatch(c -> Character.isLetterOrDigit(c) || isPlain(c));
    return plain ? clean : "'" + clean.replace("'", "'\\''") + "'";
  }

  private static boolean isPlain(int c) {
    return "-_./:,+=%".indexOf(c) >= 0 || Character.getType(c) == Character.NON_SPACING_MARK;
  }
}
