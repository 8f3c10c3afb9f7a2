/**
 * Who grazes what: ewes held off paddocks before joining, the feed lost there, and the feed they
 * must find elsewhere. Knows the calculators of feed and reproduction.
 */
package swardcase.grazing;
