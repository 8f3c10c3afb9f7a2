package swardcase.joining;

import java.util.Arrays;

/** A row of a simplex tableau that holds only its numbers that are not zero, by rising place. */
final class SparseRow {

  /** What rounding may leave where numbers of about 1 cancel; counts as zero. */
  private static final double ROUNDING = 1e-12;

  private int[] places;
  private double[] values;
  private int size;
  private double right;

  /** Numbers at rising places; the arrays are the row's from now on. */
  SparseRow(int[] places, double[] values, double right) {
    this.places = places;
    this.values = values;
    this.right = right;
    size = places.length;
  }

  /** Room to work in, without numbers. */
  SparseRow() {
    this(new int[0], new double[0], 0);
  }

  double right() {
    return right;
  }

  /** The number at a place; 0 where none is held. */
  double at(int place) {
    int k = Arrays.binarySearch(places, 0, size, place);
    return k < 0 ? 0 : values[k];
  }

  /** Adds a number at a place beyond all others. */
  void append(int place, double value) {
    if (size == places.length) {
      places = Arrays.copyOf(places, 2 * size + 2);
      values = Arrays.copyOf(values, 2 * size + 2);
    }
    places[size] = place;
    values[size++] = value;
  }

  /** Adds 1 to the count of each place held. */
  void count(int[] holders) {
    for (int k = 0; k < size; k++) {
      holders[places[k]]++;
    }
  }

  /** The last place that this row alone holds, with a number above zero; -1 if there is none. */
  int ownPlace(int[] holders) {
    int k = size - 1;
    while (k >= 0 && (holders[places[k]] > 1 || values[k] <= 0)) {
      k--;
    }
    return k < 0 ? -1 : places[k];
  }

  void divideBy(double divisor) {
    for (int k = 0; k < size; k++) {
      values[k] /= divisor;
    }
    right /= divisor;
  }

  /** Takes {@code factor} times this row from numbers that are all held. */
  void takeFrom(double[] numbers, double factor) {
    for (int k = 0; k < size; k++) {
      numbers[places[k]] -= values[k] * factor;
    }
  }

  /** Takes {@code factor} times another row from this one; {@code room} is overwritten. */
  void take(SparseRow other, double factor, SparseRow room) {
    room.makeRoom(size + other.size);
    int count = 0;
    int mine = 0;
    int theirs = 0;
    while (mine < size || theirs < other.size) {
      int here = mine < size ? places[mine] : Integer.MAX_VALUE;
      int there = theirs < other.size ? other.places[theirs] : Integer.MAX_VALUE;
      double value = 0;
      if (here <= there) {
        value = values[mine++];
      }
      if (there <= here) {
        value -= other.values[theirs++] * factor;
      }
      if (Math.abs(value) > ROUNDING) {
        room.places[count] = Math.min(here, there);
        room.values[count++] = value;
      }
    }
    room.size = count;
    right -= other.right * factor;
    swapNumbers(room);
  }

  private void makeRoom(int count) {
    if (places.length < count) {
      places = new int[2 * count];
      values = new double[2 * count];
    }
  }

  private void swapNumbers(SparseRow other) {
    int[] ownPlaces = places;
    double[] ownValues = values;
    int ownSize = size;
    places = other.places;
    values = other.values;
    size = other.size;
    other.places = ownPlaces;
    other.values = ownValues;
    other.size = ownSize;
  }
}
