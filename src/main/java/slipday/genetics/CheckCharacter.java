package slipday.genetics;

import java.util.Locale;
import java.util.Optional;

/**
 * A last character for a tag or a packet number that shows most slips of the pen: the two hybrid
 * systems of ISO/IEC 7064:2003. Every single wrong character is caught; two neighbours that changed
 * places are caught but for a few pairs. Small letters count as capitals.
 */
public enum CheckCharacter {
  /** Digits and capitals, one check character of the same alphabet. */
  MOD_37_36("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"),
  /** Digits, one check digit. */
  MOD_11_10("0123456789");

  private final String alphabet;

  CheckCharacter(String alphabet) {
    this.alphabet = alphabet;
  }

  /**
   * The check character to write after the text.
   *
   * @return empty where the text is empty or has a character outside the alphabet
   */
  public Optional<Character> of(String text) {
    int modulus = alphabet.length();
    return carry(text).map(carried -> alphabet.charAt((modulus + 1 - carried) % modulus));
  }

  /** Whether the last character is the check character of those before it. */
  public boolean holds(String whole) {
    if (whole.length() < 2) {
      return false;
    }
    int last = whole.length() - 1;
    char written = whole.substring(last).toUpperCase(Locale.ROOT).charAt(0);
    return of(whole.substring(0, last)).filter(check -> check == written).isPresent();
  }

  /** The state after the text: add the character modulo M, 0 as M, and double modulo M + 1. */
  private Optional<Integer> carry(String text) {
    int modulus = alphabet.length();
    int state = modulus;
    for (char character : text.toUpperCase(Locale.ROOT).toCharArray()) {
      int value = alphabet.indexOf(character);
      if (value < 0) {
        return Optional.empty();
      }
      int sum = (state + value) % modulus;
      state = 2 * (sum == 0 ? modulus : sum) % (modulus + 1);
    }
    return text.isEmpty() ? Optional.empty() : Optional.of(state);
  }
}
