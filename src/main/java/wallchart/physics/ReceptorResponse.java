package wallchart.physics;

/** What counts as signal at the receptor. Signals of different responses have different units: compare ratios only. */
public enum ReceptorResponse {
    /** Air kerma in the receptor plane, microgray: what a dosimeter there would read. */
    AIR_KERMA("air"),
    /** Energy absorbed in a caesium iodide layer of 0.20 g/cm2, keV per cm2: a common flat-panel detector. */
    CESIUM_IODIDE("csi");

    private final String nameInTables;

    ReceptorResponse(String nameInTables) {
        this.nameInTables = nameInTables;
    }

    String nameInTables() {
        return nameInTables;
    }
}
