package swardcase;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Copies of records. */
public final class Records {

  private Records() {}

  /** A record with one of its components changed. */
  public static <T extends Record> T with(T record, String name, Object value) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    Object[] values = new Object[components.length];
    try {
      for (int i = 0; i < values.length; i++) {
        boolean changes = components[i].getName().equals(name);
        values[i] = changes ? value : components[i].getAccessor().invoke(record);
      }
      Class<?>[] types =
          Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
      @SuppressWarnings("unchecked")
      T changed = (T) record.getClass().getConstructor(types).newInstance(values);
      return changed;
    } catch (ReflectiveOperationException failure) {
      throw new IllegalArgumentException("no copy of a record with another " + name, failure);
    }
  }
}
