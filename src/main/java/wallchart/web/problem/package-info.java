/** What an answer looks like when there is nothing to answer: RFC 9457 problems, one table of codes, one mapping to them. */
package wallchart.web.problem;
