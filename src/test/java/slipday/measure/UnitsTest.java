package slipday.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * Figures in the units a gardener writes. Conversions by the exact definitions of foot, pound and
 * degree Fahrenheit (international yard and pound agreement, 1959).
 */
class UnitsTest {
  private static final Units IMPERIAL = new Units(true, true, true);

  @Test
  void temperaturesAndDifferencesAreToldApart() {
    assertThat(Units.METRIC.temperature(12.54)).isEqualTo("12.5 °C");
    assertThat(IMPERIAL.temperature(10)).isEqualTo("50 °F");
    assertThat(IMPERIAL.written(-2)).isEqualTo("28.4 F");
    assertThat(IMPERIAL.difference(10)).isEqualTo("18 °F");
    assertThat(IMPERIAL.writtenDifference(1.5)).isEqualTo("2.7 F");
    assertThat(Units.METRIC.writtenDifference(3)).isEqualTo("3 C");
    assertThat(Units.METRIC.inBothScales(20)).isEqualTo("20 °C (68 °F)");
    assertThat(IMPERIAL.inBothScales(20)).isEqualTo("68 °F (20 °C)");
    assertThat(IMPERIAL.wholeDegrees(-40)).isEqualTo(-40);
    assertThat(IMPERIAL.heat(100) + IMPERIAL.heatUnit()).isEqualTo("180.0F-days");
  }

  @Test
  void lengthsAreToldAsOneMeasuresThem() {
    assertThat(Units.METRIC.length(0.6)).isEqualTo("60 cm");
    assertThat(Units.METRIC.length(2.5)).isEqualTo("2.5 m");
    assertThat(IMPERIAL.length(0.508)).isEqualTo("20 inch");
    assertThat(IMPERIAL.length(0.9144)).isEqualTo("3 ft");
    assertThat(Units.METRIC.distance(3.26)).isEqualTo("3.3 m");
    assertThat(Units.METRIC.distance(140.4)).isEqualTo("140 m");
    assertThat(IMPERIAL.distance(804.672)).isEqualTo("2640 ft");
    assertThat(IMPERIAL.wholeDistance(1)).isEqualTo("3 ft");
    assertThat(IMPERIAL.area(1)).isEqualTo("10.8 sqft");
    assertThat(Units.METRIC.area(1.04)).isEqualTo("1 sqm");
  }

  @Test
  void weightsAreToldAsOneWeighsThem() {
    assertThat(Units.METRIC.mass(1.254)).isEqualTo("1.25 kg");
    assertThat(Units.METRIC.mass(0.25)).isEqualTo("250 g");
    assertThat(IMPERIAL.mass(0.45359237)).isEqualTo("1 lb");
    assertThat(IMPERIAL.mass(1.16)).isEqualTo("2 lb 9 oz");
    assertThat(IMPERIAL.mass(0.1)).isEqualTo("3.5 oz");
    assertThat(Units.METRIC.masses(new Range(0.9, 1.4))).isEqualTo("900 g to 1.4 kg");
    assertThat(IMPERIAL.masses(Range.of(0.45359237))).isEqualTo("1 lb");
  }
}
