/**
 * Appraisal of yearly cash flows: present value, rates of return, payback, debt. Knows checks only.
 */
package swardcase.money;
