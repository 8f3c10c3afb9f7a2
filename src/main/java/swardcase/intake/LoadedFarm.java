package swardcase.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import swardcase.farm.Farm;
import swardcase.farm.FlockRecord;
import swardcase.farm.PaddockShape;

/**
 * A farm and what its reader should tell the user about it.
 *
 * @param farm the farm, every number filled in
 * @param doubts what is allowed but odd, in a fixed order
 * @param notices what was left out or taken as a default, in plain sentences and in a fixed order
 * @param priceDate the day on which its prices and quotes were taken, if it says so
 * @param shapes where its paddocks lie, as far as a map says so
 */
public record LoadedFarm(
    Farm farm,
    List<Doubt> doubts,
    List<String> notices,
    Optional<LocalDate> priceDate,
    List<PaddockShape> shapes) {

  /** Copies the lists. */
  public LoadedFarm {
    doubts = List.copyOf(doubts);
    notices = List.copyOf(notices);
    shapes = List.copyOf(shapes);
  }

  /**
   * The same on a day, with a doubt if the prices are old by then or a record is of a later year.
   */
  public LoadedFarm on(LocalDate day) {
    List<Doubt> all = new ArrayList<>(doubts);
    farm.records().stream()
        .mapToInt(FlockRecord::year)
        .filter(year -> year > day.getYear())
        .distinct()
        .forEach(
            year ->
                all.add(
                    new Doubt(
                        "There are records of " + year + ", which is after " + day + ".",
                        "They count like the others: is the year right?")));
    priceDate.flatMap(taken -> PriceAge.doubt(taken, day)).ifPresent(all::add);
    return new LoadedFarm(farm, all, notices, priceDate, shapes);
  }

  /** All of it in sentences, doubts first. */
  public List<String> remarks() {
    return Stream.concat(doubts.stream().map(Doubt::sentence), notices.stream()).toList();
  }
}
