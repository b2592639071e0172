package wallchart.chart;

/** Which version of which room's chart. */
record VersionNumber(String room, int number) {

    static VersionNumber of(VersionHead head) {
        return new VersionNumber(head.room(), head.number());
    }

    /** As the ledger names it. */
    String object() {
        return room + "/version/" + number;
    }
}
