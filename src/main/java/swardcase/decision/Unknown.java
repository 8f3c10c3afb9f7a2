package swardcase.decision;

import swardcase.chance.DrawnInformation;
import swardcase.evidence.Assumption;

/**
 * One uncertain number and what it would be worth to know it before choosing a plan.
 *
 * @param name of the number, without the action where several share it
 * @param place of the input in the register
 * @param input the number
 * @param value of knowing it alone
 * @param varianceShare share of the variance of the plan's net present value that a straight line
 *     in this input explains, 0 to 1
 */
public record Unknown(
    String name, int place, Assumption input, DrawnInformation value, double varianceShare) {}
