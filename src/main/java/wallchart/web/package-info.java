/**
 * The department's pages and its programming interface over HTTP: requests become calls of the services, what they return
 * becomes JSON, and every "no" becomes a problem (RFC 9457).
 *
 * <p>May use everything else; nothing may use it but the composition root. {@link wallchart.web.Routes} holds every address
 * with its method, its roles and its handler; a route without a role does not start. A handler reads, calls and answers. The
 * OpenAPI document beside this package is written by hand and every web test holds the answers against it.
 */
package wallchart.web;
