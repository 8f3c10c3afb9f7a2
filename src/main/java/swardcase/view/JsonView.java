package swardcase.view;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.AnnotatedMember;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.report.PaddockResult;
import swardcase.report.PlanResult;
import swardcase.report.Report;
import swardcase.wording.Words;

/**
 * A result document as JSON; that of a decision is described by {@code docs/result.schema.json}.
 */
public final class JsonView {

  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .annotationIntrospector(new Spelling())
          .visibility(PropertyAccessor.IS_GETTER, Visibility.NONE)
          .addMixIn(Assumption.class, FlatAssumption.class)
          .addModule(
              new SimpleModule()
                  .addSerializer(Double.class, write(JsonView::number))
                  .addSerializer(double.class, write(JsonView::number))
                  .addSerializer(Month.class, write((of, to) -> to.writeNumber(of.getValue())))
                  .addSerializer(LocalDate.class, write((date, to) -> to.writeString("" + date)))
                  .addSerializer(MonthDay.class, write((day, to) -> to.writeString("" + day)))
                  .addSerializer(OptionalInt.class, write(JsonView::optional))
                  .addSerializer(OptionalDouble.class, write(JsonView::optional))
                  .addSerializer(raw(Optional.class), new OptionalWriter()))
          .build();

  private JsonView() {}

  /** The report as text, with a line break at its end; numbers have fifteen significant digits. */
  public static String of(Record report) {
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
    try {
      return MAPPER.writer(printer).writeValueAsString(report) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a report must be writable as JSON", e);
    }
  }

  /**
   * The record on one line, without a line break at its end. Signs outside ASCII are escaped, so
   * that the bytes do not hang on a charset.
   */
  public static String line(Record record) {
    try {
      return MAPPER.writer().with(JsonWriteFeature.ESCAPE_NON_ASCII).writeValueAsString(record);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a record must be writable as JSON", e);
    }
  }

  /** How a constant is written: {@code KEEP_OFF} reads {@code keep off}. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Whether a component of a record is left out where it is empty; all others are null there. */
  public static boolean leavesOut(Class<?> record, String component) {
    return record == PaddockResult.class && component.equals("sure")
        || record == PlanResult.class && component.equals("careful")
        || record == Report.class && component.equals("records");
  }

  /** Writes constants that say nothing else in lower-case words, and leaves out what may be. */
  private static final class Spelling extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1;

    @Override
    public JsonInclude.Value findPropertyInclusion(Annotated of) {
      return of instanceof AnnotatedMember member
              && leavesOut(member.getDeclaringClass(), member.getName())
          ? JsonInclude.Value.construct(Include.NON_EMPTY, Include.ALWAYS)
          : super.findPropertyInclusion(of);
    }

    @Override
    public String[] findEnumValues(
        MapperConfig<?> config, AnnotatedClass type, Enum<?>[] constants, String[] names) {
      return Arrays.stream(constants).map(JsonView::word).toArray(String[]::new);
    }
  }

  /** Low, likely and high stand beside the name instead of one level down. */
  private interface FlatAssumption {
    @JsonUnwrapped
    Range range();
  }

  private interface Writer<T> {
    void write(T value, JsonGenerator to) throws IOException;
  }

  private static <T> JsonSerializer<T> write(Writer<T> writer) {
    return new JsonSerializer<>() {
      @Override
      public void serialize(T value, JsonGenerator to, SerializerProvider provider)
          throws IOException {
        writer.write(value, to);
      }
    };
  }

  private static void number(Double value, JsonGenerator to) throws IOException {
    to.writeNumber(Words.fifteenDigits(value));
  }

  private static void optional(OptionalDouble value, JsonGenerator to) throws IOException {
    if (value.isPresent()) {
      number(value.getAsDouble(), to);
    } else {
      to.writeNull();
    }
  }

  private static void optional(OptionalInt value, JsonGenerator to) throws IOException {
    if (value.isPresent()) {
      to.writeNumber(value.getAsInt());
    } else {
      to.writeNull();
    }
  }

  private static final class OptionalWriter extends JsonSerializer<Optional<?>> {
    @Override
    public void serialize(Optional<?> value, JsonGenerator to, SerializerProvider provider)
        throws IOException {
      to.writePOJO(value.orElse(null));
    }

    @Override
    public boolean isEmpty(SerializerProvider provider, Optional<?> value) {
      return value.isEmpty();
    }
  }

  @SuppressWarnings("unchecked") // Class<Optional> stands for Optional of anything
  private static Class<Optional<?>> raw(Class<?> type) {
    return (Class<Optional<?>>) type;
  }
}
