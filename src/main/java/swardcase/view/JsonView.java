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
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedMember;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.util.RawValue;
import java.io.IOException;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
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
          .annotationIntrospector(new LeavingOut())
          .visibility(PropertyAccessor.IS_GETTER, Visibility.NONE)
          .enumNamingStrategy(JsonView::word)
          .addMixIn(Assumption.class, FlatAssumption.class)
          .addModule(
              new SimpleModule()
                  .addSerializer(Double.class, as(JsonView::number))
                  .addSerializer(double.class, as(JsonView::number))
                  .addSerializer(Month.class, as(Month::getValue))
                  .addSerializer(LocalDate.class, as(LocalDate::toString))
                  .addSerializer(MonthDay.class, as(MonthDay::toString))
                  .addSerializer(OptionalInt.class, as(n -> n.isPresent() ? n.getAsInt() : null))
                  .addSerializer(
                      OptionalDouble.class, as(n -> n.isPresent() ? n.getAsDouble() : null))
                  .addSerializer(raw(Optional.class), as(any -> any.orElse(null))))
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
    return word(constant.name());
  }

  private static String word(String constant) {
    return constant.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Whether a component of a record is left out where it is empty; all others are null there. */
  public static boolean leavesOut(Class<?> record, String component) {
    return record == PaddockResult.class && component.equals("sure")
        || record == PlanResult.class && component.equals("careful")
        || record == Report.class && component.equals("records");
  }

  private static final class LeavingOut extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1;

    @Override
    public JsonInclude.Value findPropertyInclusion(Annotated of) {
      return of instanceof AnnotatedMember member
              && leavesOut(member.getDeclaringClass(), member.getName())
          ? JsonInclude.Value.construct(Include.NON_EMPTY, Include.ALWAYS)
          : super.findPropertyInclusion(of);
    }
  }

  /** Low, likely and high stand beside the name instead of one level down. */
  private interface FlatAssumption {
    @JsonUnwrapped
    Range range();
  }

  private static RawValue number(Double value) {
    return new RawValue(Words.fifteenDigits(value));
  }

  /** Writes a value as a plainer one; nothing is written as null. */
  private static <T> JsonSerializer<T> as(Function<T, Object> plain) {
    return new JsonSerializer<>() {
      @Override
      public void serialize(T value, JsonGenerator to, SerializerProvider provider)
          throws IOException {
        provider.defaultSerializeValue(plain.apply(value), to);
      }

      @Override
      public boolean isEmpty(SerializerProvider provider, T value) {
        return plain.apply(value) == null;
      }
    };
  }

  @SuppressWarnings("unchecked") // Class<Optional> stands for Optional of anything
  private static Class<Optional<?>> raw(Class<?> type) {
    return (Class<Optional<?>>) type;
  }
}
