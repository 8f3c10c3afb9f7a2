/** Preconditions and the building of their messages. Knows nothing of the rest of the program. */
package swardcase.check;
