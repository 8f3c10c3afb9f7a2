/**
 * Effect of formononetin in the diet on ewes: conception, sterility, losses at birth. A screening
 * estimate, never a diagnosis. Knows the calendar; reads no table and no file.
 */
package swardcase.reproduction;
