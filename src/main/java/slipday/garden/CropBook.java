package slipday.garden;

import java.util.Map;

/** Every species and crop with the facts in force. */
public record CropBook(Map<String, Species> species, Map<String, Crop> crops) {}
