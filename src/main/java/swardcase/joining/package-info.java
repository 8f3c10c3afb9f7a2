/**
 * Where the ewes go before joining: which paddocks to keep them off, and which feed they eat
 * instead. Knows the outcome function and what lies below it; prints nothing and reads no file.
 */
package swardcase.joining;
