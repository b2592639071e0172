package wallchart;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wallchart.SettingsDocument.GroupPart;
import wallchart.SettingsDocument.LevelPart;
import wallchart.chart.PatientGroup;
import wallchart.chart.RequiredFields;
import wallchart.document.DocumentReading;
import wallchart.document.Documents;
import wallchart.grading.PhysicsLimits;
import wallchart.quantity.LengthUnit;
import wallchart.signoff.ReviewLimits;
import wallchart.technique.LevelUnit;
import wallchart.technique.ReferenceLevel;

/** Reads a site's settings file over the defaults. */
final class SettingsFile {

    private final Path file;
    private final Settings defaults = Settings.defaults();

    private SettingsFile(Path file) {
        this.file = file;
    }

    /** @throws BadSettings for an unknown or repeated key, a bad value or a file that cannot be read */
    static Settings read(Path file) {
        var reading = Documents.yaml(file, SettingsDocument.class);
        if (reading instanceof DocumentReading.Unreadable<SettingsDocument> unreadable) {
            throw new BadSettings(file + key(unreadable.field()) + " " + unreadable.message());
        }
        return new SettingsFile(file).settings(((DocumentReading.Written<SettingsDocument>) reading).content());
    }

    private static String key(String pointer) {
        return pointer.isEmpty() ? "" : ": " + pointer.substring(1).replace('/', '.');
    }

    private Settings settings(SettingsDocument document) {
        return at(
                "",
                () -> new Settings(
                        at("server", () -> server(document.server())),
                        at("database", () -> database(document.database())),
                        at("site", () -> site(document.site())),
                        groups(document.patientGroups()),
                        at("chart", () -> chart(document.chart())),
                        levels(document.referenceLevels()),
                        at("session", () -> session(document.session())),
                        ledger(document.ledger()),
                        at("review", () -> review(document.review())),
                        at("physics", () -> physics(document.physics())),
                        at("equipment", () -> equipment(document.equipment()))));
    }

    private <T> T at(String key, Supplier<T> making) {
        try {
            return making.get();
        } catch (IllegalArgumentException bad) {
            throw new BadSettings(file + ": " + (key.isEmpty() ? "" : key + ": ") + bad.getMessage());
        }
    }

    private static <T> T or(T given, T otherwise) {
        return given == null ? otherwise : given;
    }

    private Settings.Server server(SettingsDocument.ServerPart part) {
        var standard = defaults.server();
        return part == null
                ? standard
                : new Settings.Server(
                        or(part.host(), standard.host()),
                        or(part.port(), standard.port()),
                        or(part.secureCookies(), standard.secureCookies()));
    }

    private Settings.DatabasePart database(SettingsDocument.DatabasePart part) {
        var standard = defaults.database();
        return part == null
                ? standard
                : new Settings.DatabasePart(
                        or(part.url(), standard.url()),
                        or(part.user(), standard.user()),
                        part.passwordFile() == null ? standard.passwordFile() : Path.of(part.passwordFile()),
                        or(part.poolSize(), standard.poolSize()));
    }

    private Settings.Site site(SettingsDocument.SitePart part) {
        return part == null
                ? defaults.site()
                : new Settings.Site(
                        or(part.name(), defaults.site().name()),
                        part.lengthUnit() == null ? defaults.site().lengthUnit() : lengthUnit(part.lengthUnit()),
                        part.address() == null || part.address().isBlank()
                                ? defaults.site().address()
                                : Optional.of(part.address()));
    }

    private static LengthUnit lengthUnit(String symbol) {
        return LengthUnit.find(symbol)
                .orElseThrow(() -> new IllegalArgumentException("lengthUnit is \"" + symbol + "\": write cm or in"));
    }

    private Settings.ChartPart chart(SettingsDocument.ChartPart part) {
        var standard = defaults.chart();
        return part == null
                ? standard
                : new Settings.ChartPart(
                        part.requiredFields() == null ? standard.requiredFields() : ruleSets(part.requiredFields()),
                        or(part.reviewAfterMonths(), standard.reviewAfterMonths()));
    }

    private static Set<RequiredFields> ruleSets(List<String> slugs) {
        return slugs.stream()
                .map(slug -> RequiredFields.find(slug)
                        .orElseThrow(() -> new IllegalArgumentException("requiredFields: \"" + slug
                                + "\" is no rule set known here: see config/site.example.yaml")))
                .collect(Collectors.toUnmodifiableSet());
    }

    private Settings.SessionPart session(SettingsDocument.SessionPart part) {
        var standard = defaults.session();
        return part == null
                ? standard
                : new Settings.SessionPart(
                        part.idleMinutes() == null ? standard.idle() : Duration.ofMinutes(part.idleMinutes()),
                        part.absoluteHours() == null ? standard.absolute() : Duration.ofHours(part.absoluteHours()));
    }

    /** An empty folder is the usual one. */
    private Settings.LedgerPart ledger(SettingsDocument.LedgerPart part) {
        return part == null || part.folder() == null
                ? defaults.ledger()
                : new Settings.LedgerPart(Optional.of(part.folder())
                        .filter(folder -> !folder.isBlank())
                        .map(Path::of));
    }

    private ReviewLimits review(SettingsDocument.ReviewPart part) {
        var standard = defaults.reviewLimits();
        return part == null
                ? standard
                : new ReviewLimits(
                        part.maxExposureShiftDb() == null
                                ? standard.maxExposureShiftDb()
                                : part.maxExposureShiftDb().doubleValue(),
                        or(part.maxKermaRisePercent(), standard.maxKermaRisePercent()));
    }

    private PhysicsLimits physics(SettingsDocument.PhysicsPart part) {
        var standard = defaults.physicsLimits();
        return part == null
                ? standard
                : new PhysicsLimits(
                        part.maxJumpDb() == null
                                ? standard.maxJumpDb()
                                : part.maxJumpDb().doubleValue(),
                        part.maxSlopeDbPerCm() == null
                                ? standard.maxSlopeDbPerCm()
                                : part.maxSlopeDbPerCm().doubleValue());
    }

    private List<PatientGroup> groups(List<GroupPart> parts) {
        return parts == null
                ? defaults.patientGroups()
                : IntStream.range(0, parts.size())
                        .mapToObj(i -> at("patientGroups." + i, () -> group(parts.get(i))))
                        .toList();
    }

    private static PatientGroup group(GroupPart part) {
        var basis = PatientGroup.Basis.find(required("by", part.by()))
                .orElseThrow(
                        () -> new IllegalArgumentException("by is \"" + part.by() + "\": write age, weight or size"));
        return new PatientGroup(required("id", part.id()), required("label", part.label()), basis);
    }

    private List<ReferenceLevel> levels(List<LevelPart> parts) {
        return parts == null
                ? defaults.referenceLevels()
                : IntStream.range(0, parts.size())
                        .mapToObj(i -> at("referenceLevels." + i, () -> level(parts.get(i))))
                        .toList();
    }

    private static ReferenceLevel level(LevelPart part) {
        var quantity = ReferenceLevel.Quantity.find(required("quantity", part.quantity()))
                .orElseThrow(() -> new IllegalArgumentException("quantity is \"" + part.quantity()
                        + "\": write entrance-surface-air-kerma, incident-air-kerma or kerma-area-product"));
        var unit = LevelUnit.find(required("unit", part.unit()))
                .orElseThrow(() -> new IllegalArgumentException("unit is \"" + part.unit() + "\": write "
                        + LevelUnit.choices(quantity == ReferenceLevel.Quantity.KERMA_AREA_PRODUCT)));
        return new ReferenceLevel(
                required("bodyPart", part.bodyPart()),
                required("projection", part.projection()),
                required("patientGroup", part.patientGroup()),
                quantity,
                required("value", part.value()),
                unit,
                required("year", part.year()),
                required("source", part.source()));
    }

    private static <T> T required(String key, T value) {
        if (value == null) {
            throw new IllegalArgumentException(key + " is missing: it must be given");
        }
        return value;
    }

    private Settings.EquipmentPart equipment(SettingsDocument.EquipmentPart part) {
        var standard = defaults.equipment();
        return part == null
                ? standard
                : new Settings.EquipmentPart(or(part.outputDueMonths(), standard.outputDueMonths()));
    }
}
