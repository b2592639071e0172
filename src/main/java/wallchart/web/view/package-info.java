/** The JSON of the interface: records whose components are its members, each made from one domain value. */
package wallchart.web.view;
