package wallchart;

import java.math.BigDecimal;
import java.util.List;

/** Settings as a site writes them: anything may be missing (null), then the default holds. Units stand in the names. */
record SettingsDocument(
        ServerPart server,
        DatabasePart database,
        SitePart site,
        List<GroupPart> patientGroups,
        ChartPart chart,
        List<LevelPart> referenceLevels,
        SessionPart session,
        LedgerPart ledger,
        ReviewPart review,
        PhysicsPart physics,
        EquipmentPart equipment) {

    record ServerPart(String host, Integer port, Boolean secureCookies) {}

    record DatabasePart(String url, String user, String passwordFile, Integer poolSize) {}

    record SitePart(String name, String lengthUnit, String address) {}

    record GroupPart(String id, String label, String by) {}

    record ChartPart(List<String> requiredFields, Integer reviewAfterMonths) {}

    record LevelPart(
            String bodyPart,
            String projection,
            String patientGroup,
            String quantity,
            BigDecimal value,
            String unit,
            Integer year,
            String source) {}

    record SessionPart(Integer idleMinutes, Integer absoluteHours) {}

    record LedgerPart(String folder) {}

    record ReviewPart(BigDecimal maxExposureShiftDb, Integer maxKermaRisePercent) {}

    record PhysicsPart(BigDecimal maxJumpDb, BigDecimal maxSlopeDbPerCm) {}

    record EquipmentPart(Integer outputDueMonths) {}
}
