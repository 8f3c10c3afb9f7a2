package swardcase.farm;

import swardcase.evidence.Assumption;

/**
 * What things are worth, in the farm's currency.
 *
 * @param netValuePerLamb a lamb at marking or weaning, after the costs it would still cause
 * @param costPerDryEwe what a further dry ewe costs apart from her lamb; often 0
 * @param replacementEwe what it costs to replace a ewe
 * @param spareFeedPerTonneDm agistment value of feed nobody needs; 0 if it has no buyer
 * @param grossMarginPerEwe a year's margin of a further ewe before supplement
 * @param nitrogenPerKg what a kg of nitrogen that clover fixes is worth; 0 if it is not counted
 * @param leafTest price of one laboratory formononetin test
 * @param plantIdentification price, time included, of identifying one more plant
 * @param priceCorrelation how the prices of a lamb and of supplement move together, -0.95 to 0.95
 */
public record Prices(
    Assumption netValuePerLamb,
    Assumption costPerDryEwe,
    Assumption replacementEwe,
    Assumption spareFeedPerTonneDm,
    Assumption grossMarginPerEwe,
    Assumption nitrogenPerKg,
    Assumption leafTest,
    Assumption plantIdentification,
    Assumption priceCorrelation) {}
