package wallchart.chart;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
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

/**
 * Turns the texts of a row, by the names of {@link RowFields}, into a {@link Row}, or says everything that cannot be read. What the
 * texts leave to a default is explicit in the row: the middle of the band, the method's rate, no filter.
 *
 * <p>Stateless and thread-safe. Terms are taken as written; {@link ChartCheck} judges them.
 */
public final class RowReader {

    private RowReader() {}

    /** Reads one row; a field that is missing in the map counts as empty. */
    public static RowReading read(Map<String, String> fields) {
        var texts = new FieldTexts(fields);
        var key = key(texts);
        var setting = setting(texts);
        var positioning = texts.at("centralRayAngleDeg", () -> positioning(texts));
        var reference = texts.optional("referenceThicknessCm", quantity(PartThickness::new));
        if (texts.problems().isEmpty()) {
            var row = texts.at(
                    "referenceThicknessCm",
                    () -> new Row(
                            key.orElseThrow(),
                            reference.orElseGet(() -> key.get().band().middle()),
                            setting.orElseThrow(),
                            positioning.orElseThrow()));
            if (row.isPresent()) {
                return new RowReading.Accepted(row.get());
            }
        }
        return new RowReading.Refused(texts.problems());
    }

    private static <Q> Function<String, Q> quantity(Function<BigDecimal, Q> of) {
        return digits -> of.apply(FieldTexts.number(digits));
    }

    private static Optional<RowKey> key(FieldTexts texts) {
        var bodyPart = texts.required("bodyPart", text -> text);
        var projection = texts.required("projection", text -> text);
        var group = texts.required("patientGroup", text -> text);
        var support = texts.required(
                "support", FieldTexts.word(SupportKind::find, "tabletop, table-bucky, wall-bucky or mobile"));
        var from = texts.required("bandFromCm", quantity(PartThickness::new));
        var to = texts.required("bandToCm", quantity(PartThickness::new));
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        var band = texts.at("bandToCm", () -> new Band(from.get(), to.get()));
        return texts.problems().isEmpty()
                ? Optional.of(new RowKey(
                        new ExaminationKey(bodyPart.get(), projection.get(), group.get(), support.get()), band.get()))
                : Optional.empty();
    }

    private static Optional<RowSetting> setting(FieldTexts texts) {
        var kV = texts.required("kV", quantity(TubeVoltage::new));
        var control = control(texts);
        var focalSpot = texts.required("focalSpot", FieldTexts.word(FocalSpotName::find, "small or large"));
        var grid = texts.required("grid", text -> text);
        var sid = texts.required("sidCm", quantity(Distance::new));
        var receptor = texts.required("receptor", text -> text);
        var field = texts.required("fieldCm", FieldSize::parse);
        var orientation = texts.required("orientation", FieldTexts.word(Orientation::find, "lengthwise or crosswise"));
        var filter = texts.optional("addedFiltration", Filtration::parse);
        var target = texts.optional("targetExposureIndex", FieldTexts::whole);
        var method = method(texts);
        var window = window(texts);
        var longest = texts.optional("longestTimeMs", quantity(RowReader::time));
        return texts.problems().isEmpty()
                ? Optional.of(new RowSetting(
                        kV.get(),
                        control.get(),
                        focalSpot.get(),
                        grid.get(),
                        sid.get(),
                        receptor.get(),
                        field.get(),
                        orientation.get(),
                        filter.orElse(Filtration.NONE),
                        target,
                        method.get(),
                        window,
                        longest))
                : Optional.empty();
    }

    private static Optional<ExposureControl> control(FieldTexts texts) {
        boolean manual = !texts.isEmpty("mAs");
        boolean automatic =
                Set.of("aecChambers", "aecDensity", "backupMAs").stream().anyMatch(f -> !texts.isEmpty(f));
        if (manual && automatic) {
            texts.problem("mAs", "stands beside AEC fields: give mAs, or chambers, density and back-up, not both");
            return Optional.empty();
        }
        if (!automatic) {
            return texts.required("mAs", digits -> new ExposureControl.Manual(mAs(digits)));
        }
        var chambers = texts.required("aecChambers", RowReader::chambers);
        var density = texts.required("aecDensity", FieldTexts::whole);
        var backup = texts.required("backupMAs", RowReader::mAs);
        return chambers.isEmpty() || density.isEmpty() || backup.isEmpty()
                ? Optional.empty()
                : texts.at(
                        "backupMAs", () -> new ExposureControl.Automatic(chambers.get(), density.get(), backup.get()));
    }

    private static CurrentTimeProduct mAs(String digits) {
        return new CurrentTimeProduct(FieldTexts.number(digits));
    }

    private static Set<Chamber> chambers(String text) {
        var chambers = EnumSet.noneOf(Chamber.class);
        Arrays.stream(text.split("\\+", -1))
                .map(FieldTexts.word(Chamber::find, "left, centre, right, or several such as left+right"))
                .forEach(chambers::add);
        return chambers;
    }

    private static ExposureTime time(BigDecimal milliseconds) {
        if (milliseconds.signum() == 0) {
            throw new IllegalArgumentException("longest exposure time is 0 ms: it must be over 0");
        }
        return new ExposureTime(milliseconds);
    }

    private static Optional<ThicknessMethod> method(FieldTexts texts) {
        var slug = texts.required("thicknessMethod", RowReader::knownMethod);
        boolean hasRate = !texts.isEmpty("thicknessRate");
        var rate = texts.optional("thicknessRate", FieldTexts::number);
        return slug.isEmpty() || hasRate != rate.isPresent()
                ? Optional.empty()
                : texts.at("thicknessRate", () -> ThicknessMethod.of(slug.get(), rate));
    }

    private static String knownMethod(String slug) {
        return ThicknessMethod.of(slug, Optional.empty()).slug();
    }

    private static Optional<VoltageWindow> window(FieldTexts texts) {
        if (texts.isEmpty("kVFrom") && texts.isEmpty("kVTo")) {
            return Optional.empty();
        }
        var from = texts.required("kVFrom", quantity(TubeVoltage::new));
        var to = texts.required("kVTo", quantity(TubeVoltage::new));
        return from.isEmpty() || to.isEmpty()
                ? Optional.empty()
                : texts.at("kVFrom", () -> new VoltageWindow(from.get(), to.get()));
    }

    private static Positioning positioning(FieldTexts texts) {
        return new Positioning(
                texts.text("measureAt"),
                texts.optional("centralRayAngleDeg", FieldTexts::number),
                texts.text("centring"),
                texts.text("breathing"),
                texts.text("shielding"),
                texts.text("notes"));
    }
}
