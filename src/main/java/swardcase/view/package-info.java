/**
 * The result as text for the terminal and as files for other programs. Sums nothing and chooses
 * nothing.
 */
package swardcase.view;
