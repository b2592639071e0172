package wallchart.chart;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import wallchart.equipment.Chamber;
import wallchart.equipment.FocalSpotName;
import wallchart.equipment.SupportKind;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.Distance;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.FieldSize;
import wallchart.quantity.Filtration;
import wallchart.quantity.PartThickness;
import wallchart.quantity.TubeVoltage;

/** Builds one row: at first the lumbar spine AP of {@link ChartFixtures#aRow()}, then whatever a test needs. */
public final class RowBuilder implements Cloneable {

    private String bodyPart = "LSPINE";
    private String projection = "ap";
    private String patientGroup = PatientGroup.ADULT;
    private SupportKind support = SupportKind.TABLE_BUCKY;
    private Band band = Band.centimetres("18", "24");
    private Optional<PartThickness> referenceThickness = Optional.empty();
    private TubeVoltage kV = TubeVoltage.kilovolts(75);
    private ExposureControl control = new ExposureControl.Manual(CurrentTimeProduct.milliampereSeconds(25));
    private FocalSpotName focalSpot = FocalSpotName.LARGE;
    private String grid = "g10";
    private Distance sid = Distance.centimetres(110);
    private String receptor = "dr1";
    private FieldSize field = FieldSize.parse("24x43");
    private Orientation orientation = Orientation.LENGTHWISE;
    private Filtration addedFiltration = Filtration.NONE;
    private Optional<Integer> targetExposureIndex = Optional.empty();
    private ThicknessMethod method = ThicknessMethod.of("kv-per-cm", Optional.empty());
    private Optional<VoltageWindow> window = Optional.empty();
    private Optional<ExposureTime> longestTime = Optional.empty();
    private String measureAt = "level of L3";
    private Optional<BigDecimal> angle = Optional.of(BigDecimal.ZERO);
    private String centring = "midline at L3";
    private String breathing = "expiration";
    private String shielding = "none, site policy";
    private String notes = "";

    /** Another examination, at the same support and for the same group. */
    public RowBuilder of(String part, String view) {
        bodyPart = part;
        projection = view;
        return this;
    }

    public RowBuilder forGroup(String group) {
        patientGroup = group;
        return this;
    }

    public RowBuilder at(SupportKind other) {
        support = other;
        return this;
    }

    public RowBuilder withBand(String fromCm, String toCm) {
        band = Band.centimetres(fromCm, toCm);
        return this;
    }

    public RowBuilder withBand(int fromCm, int toCm) {
        return withBand(String.valueOf(fromCm), String.valueOf(toCm));
    }

    public RowBuilder withReferenceThickness(String cm) {
        referenceThickness = Optional.of(PartThickness.centimetres(cm));
        return this;
    }

    public RowBuilder withKV(String digits) {
        kV = TubeVoltage.kilovolts(digits);
        return this;
    }

    public RowBuilder withMAs(String digits) {
        control = new ExposureControl.Manual(CurrentTimeProduct.milliampereSeconds(digits));
        return this;
    }

    public RowBuilder withAec(int density, String backupMAs, Chamber... chambers) {
        control = new ExposureControl.Automatic(
                EnumSet.copyOf(List.of(chambers)), density, CurrentTimeProduct.milliampereSeconds(backupMAs));
        return this;
    }

    public RowBuilder with(FocalSpotName other) {
        focalSpot = other;
        return this;
    }

    public RowBuilder withGrid(String id) {
        grid = id;
        return this;
    }

    public RowBuilder withSid(String cm) {
        sid = Distance.centimetres(cm);
        return this;
    }

    public RowBuilder withReceptor(String id, String fieldCm) {
        receptor = id;
        field = FieldSize.parse(fieldCm);
        return this;
    }

    public RowBuilder with(Orientation other) {
        orientation = other;
        return this;
    }

    public RowBuilder with(Filtration added) {
        addedFiltration = added;
        return this;
    }

    public RowBuilder withTargetExposureIndex(int target) {
        targetExposureIndex = Optional.of(target);
        return this;
    }

    /** With the method's default rate. */
    public RowBuilder withMethod(String slug) {
        method = ThicknessMethod.of(slug, Optional.empty());
        return this;
    }

    public RowBuilder withMethod(String slug, String rate) {
        method = ThicknessMethod.of(slug, Optional.of(new BigDecimal(rate)));
        return this;
    }

    public RowBuilder withKVWindow(String from, String to) {
        window = Optional.of(new VoltageWindow(TubeVoltage.kilovolts(from), TubeVoltage.kilovolts(to)));
        return this;
    }

    public RowBuilder withLongestTime(String ms) {
        longestTime = Optional.of(ExposureTime.milliseconds(ms));
        return this;
    }

    public RowBuilder withShielding(String text) {
        shielding = text;
        return this;
    }

    public RowBuilder withMeasureAt(String text) {
        measureAt = text;
        return this;
    }

    public RowBuilder withNotes(String text) {
        notes = text;
        return this;
    }

    public RowBuilder withoutAngle() {
        angle = Optional.empty();
        return this;
    }

    public RowBuilder withCentring(String text) {
        centring = text;
        return this;
    }

    public RowBuilder withBreathing(String text) {
        breathing = text;
        return this;
    }

    /** This row so far; both can then be changed apart. */
    public RowBuilder copy() {
        try {
            return (RowBuilder) clone();
        } catch (CloneNotSupportedException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    public Row row() {
        return new Row(
                new RowKey(new ExaminationKey(bodyPart, projection, patientGroup, support), band),
                referenceThickness.orElseGet(band::middle),
                new RowSetting(
                        kV,
                        control,
                        focalSpot,
                        grid,
                        sid,
                        receptor,
                        field,
                        orientation,
                        addedFiltration,
                        targetExposureIndex,
                        method,
                        window,
                        longestTime),
                new Positioning(measureAt, angle, centring, breathing, shielding, notes));
    }
}
