/** What callers send, read strictly: what is not understood is refused with the name of the field, never ignored. */
package wallchart.web.request;
