package slipday.crops;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CropFilesTest {
  private final CropLibrary library = new CropLibrary();

  @Test
  void everyLineIsUnderstood() {
    assertThat(library.blocks()).isNotEmpty();
    assertThat(library.findings()).isEmpty();
  }
}
