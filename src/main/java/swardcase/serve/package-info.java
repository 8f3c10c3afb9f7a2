/**
 * The farm in the browser of the same machine: guard, worker and routes. The only user of the HTTP
 * server. Shows nothing itself, and writes files only when told to save.
 */
package swardcase.serve;
