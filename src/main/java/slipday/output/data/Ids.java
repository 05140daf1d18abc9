package slipday.output.data;

import java.util.Locale;

/** Names of the model's constants as data writes them: {@code first-male}. */
final class Ids {
  private Ids() {}

  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
