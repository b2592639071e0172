/**
 * Documents that people write by hand, YAML files and JSON bodies, read into records.
 *
 * <p>Uses nothing else of ours. One place, so that settings, equipment and department files are equally strict, and so that no other
 * package configures a parser.
 */
package wallchart.document;
