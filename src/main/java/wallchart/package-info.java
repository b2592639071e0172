/**
 * Where the program is put together: arguments become a command, settings become services, services become a server. Uses every
 * package and is used by none.
 */
package wallchart;
