package slipday.syntax;

/**
 * The texts of words. Most words of a file come again and again; those that do share one string,
 * which costs less room, and less time where it is looked up.
 */
final class WordTexts {
  private static final int SLOTS = 1 << 12;
  private static final int LONGEST_SHARED = 24;
  private static final int HASH_FACTOR = 31;

  private final String source;
  private final String[] slots = new String[SLOTS];

  WordTexts(String source) {
    this.source = source;
  }

  String text(int start, int end) {
    int length = end - start;
    if (length > LONGEST_SHARED) {
      return source.substring(start, end);
    }
    int hash = length;
    for (int i = start; i < end; i++) {
      hash = hash * HASH_FACTOR + source.charAt(i);
    }
    int slot = (hash ^ (hash >>> 12)) & (SLOTS - 1);
    String shared = slots[slot];
    if (shared != null && shared.length() == length && source.startsWith(shared, start)) {
      return shared;
    }
    String text = source.substring(start, end);
    slots[slot] = text;
    return text;
  }
}
