/**
 * The farm folder as it is written: begun anew from answers, tried before it is saved, saved whole
 * or not at all. It may not know how it is asked for: no command line, no page.
 */
package swardcase.folder;
