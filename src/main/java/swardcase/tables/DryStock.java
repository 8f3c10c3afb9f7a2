package swardcase.tables;

import java.util.Optional;
import swardcase.evidence.Assumption;

/**
 * A class of stock other than joined ewes.
 *
 * @param dsePerHead dry sheep equivalents a head
 * @param mostRiskyDays days that such stock may spend on risky green feed within one joining plan;
 *     empty if they are not limited
 */
public record DryStock(Assumption dsePerHead, Optional<Assumption> mostRiskyDays) {}
