package wallchart.physics;

/** What a beam passes through on its way. */
enum Material {
    WATER("water"),
    AIR("air"),
    ALUMINIUM("Al"),
    COPPER("Cu");

    private final String nameInTables;

    Material(String nameInTables) {
        this.nameInTables = nameInTables;
    }

    String nameInTables() {
        return nameInTables;
    }
}
