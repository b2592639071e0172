/**
 * From files that people wrote to typed records, with what is wrong and where; never writes a chart.
 *
 * <p>The outside world gets its own strictness here: size limits, UTF-8 only, plain digits only, unknown and repeated names
 * refused. Everything that can be wrong with a file is an answer with a place in it, not an exception.
 */
package wallchart.intake;
