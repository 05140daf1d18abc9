package slipday.output.calendar;

import java.util.function.Supplier;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.util.MapTimeZoneCache;
import org.jspecify.annotations.Nullable;

/**
 * Zones the calendar library has read. Its own cache fails on a zone that it does not know; this
 * one says so. Named in {@code ical4j.properties}.
 */
public final class ZoneCache extends MapTimeZoneCache {
  @Override
  public @Nullable VTimeZone getTimezone(String id, Supplier<@Nullable VTimeZone> reader) {
    if (!containsId(id)) {
      VTimeZone read = reader.get();
      if (read == null) {
        return null;
      }
      putIfAbsent(id, read);
    }
    return getTimezone(id);
  }
}
