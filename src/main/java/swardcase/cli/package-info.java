/** The command line: options, wiring, exit codes and streams. The only user of picocli. */
package swardcase.cli;
