/** Numbers and reasons in words, the same in every view. Knows nothing of pages and files. */
package swardcase.wording;
