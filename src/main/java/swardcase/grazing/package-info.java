/**
 * Who grazes what: the cleanest paddocks to those whom it helps most; ewes held off paddocks before
 * joining, the feed lost there, and the feed they must find elsewhere. Knows the calculators of
 * feed and reproduction.
 */
package swardcase.grazing;
