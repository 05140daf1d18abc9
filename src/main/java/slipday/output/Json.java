package slipday.output;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import slipday.measure.Quantity;

/** Data as JSON: fields in the order they are declared, dates as 2026-05-14, none as null. */
public final class Json {
  private static final JsonMapper MAPPER = mapper();

  private Json() {}

  private static JsonMapper mapper() {
    SimpleModule module = new SimpleModule();
    module.addSerializer(LocalDate.class, ToStringSerializer.instance);
    module.addSerializer(Optional.class, new OrNull());
    module.addSerializer(Double.class, new Rounded());
    module.addSerializer(double.class, new Rounded());
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    Separators separators =
        Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER);
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(separators)
            .withObjectIndenter(indenter)
            .withArrayIndenter(indenter);
    return JsonMapper.builder().addModule(module).defaultPrettyPrinter(printer).build();
  }

  /** The document, ended by a line end. */
  public static String text(Object data) {
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(data) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** At most four decimals, without an exponent. */
  private static final class Rounded extends JsonSerializer<Double> {
    @Override
    public void serialize(Double value, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      json.writeNumber(Quantity.plain(value));
    }
  }

  @SuppressWarnings("rawtypes") // the class literal of a generic type is raw
  private static final class OrNull extends JsonSerializer<Optional> {
    @Override
    public void serialize(Optional value, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      if (value.isEmpty()) {
        json.writeNull();
      } else {
        provider.defaultSerializeValue(value.get(), json);
      }
    }
  }
}
