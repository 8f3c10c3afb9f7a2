package swardcase.intake;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.farm.Finance;
import swardcase.farm.Loan;
import swardcase.farm.Management;
import swardcase.farm.Prices;
import swardcase.reading.Fields;

/** Reads prices, finance and the manager's choices. */
final class MoneyReader {

  private static final String PRICE_DATE = "price_date";
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2999;
  private static final double MOST = 1e9;
  private static final double LEAST_TOLERANCE = 1;
  private static final String RISK_TOLERANCE = "risk tolerance";

  private final Defaults defaults;
  private final String currency;

  MoneyReader(Defaults defaults, String currency) {
    this.defaults = defaults;
    this.currency = currency;
  }

  /** The day on which the prices and quotes of the file were taken, if it says so. */
  static Optional<LocalDate> priceDate(Fields farm) {
    Optional<LocalDate> date = farm.findText(PRICE_DATE).flatMap(MoneyReader::date);
    if (farm.has(PRICE_DATE) && date.isEmpty()) {
      farm.fault(PRICE_DATE, "must be a date such as 2026-10-01");
    }
    return date;
  }

  private static Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text))
          .filter(date -> date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR);
    } catch (DateTimeException notADate) {
      return Optional.empty();
    }
  }

  Prices prices(Fields prices) {
    return new Prices(
        money(prices, "net_value_per_lamb", "net-value-per-lamb"),
        money(prices, "cost_per_dry_ewe", "cost-per-dry-ewe"),
        money(prices, "replacement_ewe", "replacement-ewe"),
        money(prices, "spare_feed_per_tonne_dm", "spare-feed"),
        money(prices, "gross_margin_per_ewe", "gross-margin-per-ewe"),
        money(prices, "nitrogen_per_kg", "nitrogen-price"),
        money(prices, "leaf_test", "leaf-test-price"),
        money(prices, "plant_identification", "plant-identification-price"),
        defaults.orUser(
            "price-correlation", prices.findRange("lamb_supplement_correlation", -0.95, 0.95)));
  }

  /** Rate, horizon and limits of a farm of so many hectares. */
  Finance finance(Fields finance, double areaHa) {
    OptionalInt horizon = finance.findWhole("horizon_years", 1, 40);
    Fields loan = finance.section("loan");
    return new Finance(
        percent(finance, "discount_rate_percent", "discount-rate", 100),
        horizon.orElseGet(() -> (int) Math.round(defaults.get("horizon-years").likely())),
        finance.findNumber("budget_per_year", 0, MOST),
        percent(finance, "most_out_of_grazing_percent", "most-out-of-grazing", 100),
        finance.findNumber("most_crop_ha", 0, MOST),
        money(finance, "end_value_per_ha", "end-value-per-ha"),
        riskTolerance(finance, areaHa),
        finance.has("loan") ? loan.make(() -> loan(loan)) : Optional.empty());
  }

  /** What the farm tells of itself; else as many hectares as it has of what the tables say. */
  private Assumption riskTolerance(Fields finance, double areaHa) {
    Optional<Range> user = finance.findExact("risk_tolerance", LEAST_TOLERANCE, MOST);
    Assumption perHa = defaults.unsaid("risk-tolerance-per-ha");
    return user.isPresent()
        ? Assumption.ofFarm(RISK_TOLERANCE, user.get(), currency)
        : new Assumption(
            RISK_TOLERANCE,
            perHa.range().times(areaHa),
            Currencies.OF_TABLES,
            perHa.evidence(),
            perHa.source(),
            perHa.setBy());
  }

  private static Loan loan(Fields loan) {
    return new Loan(loan.number("rate_percent", 0, 100) / 100, loan.whole("years", 1, 40));
  }

  Management management(Fields management) {
    return new Management(
        percent(management, "condition_deficit_percent", "condition-deficit", 50),
        percent(management, "most_ewe_increase_percent", "most-ewe-increase", 300),
        defaults.orUser("weaning-weeks", management.findRange("weaning_weeks", 4, 30)),
        money(management, "loss_limit", "loss-limit"),
        money(management, "use_rule_per_ha", "use-rule-per-ha"),
        money(management, "scan_per_ewe", "scan-per-ewe"),
        money(management, "grazing_in_order_per_ewe", "grazing-in-order-per-ewe"));
  }

  private Assumption percent(Fields fields, String key, String row, double high) {
    return defaults.orPercent(row, fields.findRange(key, 0, high));
  }

  /** A sum of money in the farm's currency; a default keeps the currency of its table row. */
  private Assumption money(Fields fields, String key, String row) {
    Optional<Range> user = fields.findRange(key, 0, MOST);
    Assumption read = defaults.orUser(row, user);
    return user.isEmpty() ? read : Currencies.ofFarm(read, currency);
  }
}
