package slipday.climate;

/**
 * Where a garden is: degrees north and east (south and west negative), metres above the sea.
 *
 * @param latitude −90 to 90
 * @param longitude −180 to 180
 */
public record SitePlace(double latitude, double longitude, double elevation) {
  public SitePlace {
    if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) {
      throw new IllegalArgumentException(latitude + ", " + longitude + " is not a place on earth");
    }
  }

  public Hemisphere hemisphere() {
    return Hemisphere.of(latitude);
  }
}
