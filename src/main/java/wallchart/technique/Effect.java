package wallchart.technique;

/**
 * What one rule does to a technique: adds kilovolts or multiplies the current-time product. Effects commute.
 *
 * @param rule slug of the rule
 * @param text the effect in words
 * @param addKilovolts 0 for none
 * @param timesCurrentTime 1 for none
 */
record Effect(String rule, String text, double addKilovolts, double timesCurrentTime) {

    static Effect none(String rule, String text) {
        return new Effect(rule, text, 0, 1);
    }

    static Effect addKilovolts(String rule, String text, double kilovolts) {
        return new Effect(rule, text, kilovolts, 1);
    }

    static Effect multiply(String rule, String text, double factor) {
        return new Effect(rule, text, 0, factor);
    }
}
