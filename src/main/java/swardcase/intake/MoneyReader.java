package swardcase.intake;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;
import swardcase.farm.Finance;
import swardcase.farm.Loan;
import swardcase.farm.Management;
import swardcase.farm.Prices;

/** Reads prices, finance and the manager's choices. */
final class MoneyReader {

  /** The key of the day on which prices were taken. */
  static final String PRICE_DATE = "price_date";

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
    Optional<String> text = farm.findText(PRICE_DATE);
    Optional<LocalDate> date = text.flatMap(MoneyReader::date);
    if (text.isPresent() && date.isEmpty()) {
      farm.fault(PRICE_DATE, "must be a date such as 2026-10-01", text.get());
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
    Prices read =
        new Prices(
            money(prices, "net_value_per_lamb", "net-value-per-lamb"),
            money(prices, "cost_per_dry_ewe", "cost-per-dry-ewe"),
            money(prices, "replacement_ewe", "replacement-ewe"),
            money(prices, "spare_feed_per_tonne_dm", "spare-feed"),
            money(prices, "gross_margin_per_ewe", "gross-margin-per-ewe"),
            money(prices, "nitrogen_per_kg", "nitrogen-price"),
            money(prices, "leaf_test", "leaf-test-price"),
            money(prices, "plant_identification", "plant-identification-price"),
            defaults.orUser(
                "price-correlation",
                prices.findRange("lamb_supplement_correlation", -0.95, 0.95),
                1));
    prices.finish();
    return read;
  }

  Optional<Finance> finance(Fields finance) {
    int before = finance.faults().count();
    Assumption rate = percent(finance, "discount_rate_percent", "discount-rate", 100);
    Optional<Range> horizon =
        finance.findWhole("horizon_years", 1, 40).stream().mapToObj(Range::exactly).findFirst();
    Assumption years = defaults.orUser("horizon-years", horizon, 1);
    OptionalDouble budget = finance.findNumber("budget_per_year", 0, MOST);
    Assumption out = percent(finance, "most_out_of_grazing_percent", "most-out-of-grazing", 100);
    OptionalDouble crop = finance.findNumber("most_crop_ha", 0, MOST);
    Assumption endValue = money(finance, "end_value_per_ha", "end-value-per-ha");
    Assumption tolerance = riskTolerance(finance);
    Optional<Loan> loan = loan(finance);
    finance.finish();
    return finance
        .faults()
        .build(
            before,
            finance.place(),
            () ->
                new Finance(
                    rate,
                    (int) Math.round(years.likely()),
                    years.setBy(),
                    budget,
                    out,
                    crop,
                    endValue,
                    tolerance,
                    loan));
  }

  /** For the whole farm if the farm tells it; else for a hectare, as the tables do. */
  private Assumption riskTolerance(Fields finance) {
    Optional<Range> user =
        finance.findNumber("risk_tolerance", LEAST_TOLERANCE, MOST).stream()
            .mapToObj(Range::exactly)
            .findFirst();
    return user.isPresent()
        ? Assumption.ofFarm(RISK_TOLERANCE, user.get(), currency)
        : defaults.unsaid("risk-tolerance-per-ha");
  }

  /** The default for a hectare becomes that of a farm of so many hectares. */
  static Finance ofWholeFarm(Finance finance, double areaHa) {
    Assumption tolerance = finance.riskTolerance();
    return tolerance.setBy() == SetBy.USER
        ? finance
        : finance.withRiskTolerance(
            new Assumption(
                RISK_TOLERANCE,
                tolerance.range().times(areaHa),
                Currencies.OF_TABLES,
                tolerance.evidence(),
                tolerance.source(),
                tolerance.setBy()));
  }

  private static Optional<Loan> loan(Fields finance) {
    if (!finance.has("loan")) {
      return Optional.empty();
    }
    Fields loan = finance.section("loan");
    int before = loan.faults().count();
    OptionalDouble rate = loan.findNumber("rate_percent", 0, 100);
    OptionalInt years = loan.findWhole("years", 1, 40);
    if (!loan.has("rate_percent") || !loan.has("years")) {
      loan.faults().add(loan.place(), "must give rate_percent and years", "");
    }
    loan.finish();
    return loan.faults()
        .build(before, loan.place(), () -> new Loan(rate.orElseThrow() / 100, years.orElseThrow()));
  }

  Optional<Management> management(Fields management) {
    int before = management.faults().count();
    Assumption deficit = percent(management, "condition_deficit_percent", "condition-deficit", 50);
    Assumption rise = percent(management, "most_ewe_increase_percent", "most-ewe-increase", 300);
    Assumption weaning =
        defaults.orUser("weaning-weeks", management.findRange("weaning_weeks", 4, 30), 1);
    Assumption loss = money(management, "loss_limit", "loss-limit");
    Assumption rule = money(management, "use_rule_per_ha", "use-rule-per-ha");
    Assumption scan = money(management, "scan_per_ewe", "scan-per-ewe");
    Assumption order = money(management, "grazing_in_order_per_ewe", "grazing-in-order-per-ewe");
    management.finish();
    return management
        .faults()
        .build(
            before,
            management.place(),
            () -> new Management(deficit, rise, weaning, loss, rule, scan, order));
  }

  private Assumption percent(Fields fields, String key, String row, double high) {
    return defaults.orUser(row, fields.findRange(key, 0, high), 100);
  }

  /** A sum of money in the farm's currency; a default keeps the currency of its table row. */
  private Assumption money(Fields fields, String key, String row) {
    Optional<Range> user = fields.findRange(key, 0, MOST);
    Assumption read = defaults.orUser(row, user, 1);
    return user.isEmpty()
        ? read
        : Assumption.ofFarm(
            read.name(), read.range(), read.unit().replace(Currencies.OF_TABLES, currency));
  }
}
