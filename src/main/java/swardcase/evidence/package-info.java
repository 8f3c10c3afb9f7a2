/**
 * A number together with its range, its unit and where it came from. Knows {@code chance} and
 * {@code check}; every other package may use it.
 */
package swardcase.evidence;
