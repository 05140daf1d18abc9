package slipday.garden;

import java.util.Map;
import java.util.Optional;

/** Every species and crop with the facts in force. */
public record CropBook(Map<String, Species> species, Map<String, Crop> crops) {
  /** The crop of a name, or of another word that means it alone. */
  public Optional<Crop> crop(String name) {
    Crop named = crops.get(name);
    return named != null ? Optional.of(named) : new CropWords(crops).alone(name);
  }

  /** What may have been meant by a name that neither a crop nor a species has. */
  public String help(String name) {
    return new CropWords(crops).hint(name, species.keySet()).help();
  }
}
