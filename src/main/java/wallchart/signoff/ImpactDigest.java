package wallchart.signoff;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import wallchart.chart.RowFields;
import wallchart.quantity.Decimals;
import wallchart.store.CanonicalJson;

/**
 * What a signature and a concurrence name: SHA-256 over the canonical JSON (RFC 8785) of an impact, every number of it a decimal
 * string as it was shown, every row whole.
 */
final class ImpactDigest {

    private static final JsonMapper MAPPER = new JsonMapper();

    private ImpactDigest() {}

    static String of(String room, List<RowImpact> rows, List<AdjustmentImpact> adjustments, ReviewLimits limits) {
        var json = Map.of(
                "room", room,
                "rows", rows.stream().map(ImpactDigest::row).toList(),
                "adjustments",
                        adjustments.stream().map(ImpactDigest::adjustment).toList(),
                "maxExposureShiftDb", written(OptionalDouble.of(limits.maxExposureShiftDb())),
                "maxKermaRisePercent", String.valueOf(limits.maxKermaRisePercent()));
        try {
            return CanonicalJson.of(MAPPER.writeValueAsString(json)).digest();
        } catch (JsonProcessingException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static Map<String, Object> row(RowImpact row) {
        var words = shown(
                row.exposureShiftDb(),
                row.predictedShiftDb(),
                row.kermaChangePercent(),
                row.needsPhysicist(),
                row.remarks());
        words.put("row", row.rowKey());
        words.put("kind", row.kind().slug());
        row.before().ifPresent(before -> words.put("before", RowFields.of(before)));
        row.after().ifPresent(after -> words.put("after", RowFields.of(after)));
        return words;
    }

    private static Map<String, Object> adjustment(AdjustmentImpact adjustment) {
        var words = shown(
                adjustment.exposureShiftDb(),
                adjustment.predictedShiftDb(),
                adjustment.kermaChangePercent(),
                adjustment.needsPhysicist(),
                adjustment.remarks());
        words.put("adjustment", adjustment.name());
        adjustment.before().ifPresent(before -> words.put("before", RowFields.of(before)));
        adjustment.after().ifPresent(after -> words.put("after", RowFields.of(after)));
        return words;
    }

    private static Map<String, Object> shown(
            OptionalDouble decibels,
            OptionalDouble predicted,
            OptionalDouble percent,
            boolean needsPhysicist,
            List<String> remarks) {
        var words = new TreeMap<String, Object>();
        words.put("exposureShiftDb", written(decibels));
        words.put("predictedShiftDb", written(predicted));
        words.put("kermaChangePercent", written(percent));
        words.put("needsPhysicist", String.valueOf(needsPhysicist));
        words.put("remarks", remarks);
        return words;
    }

    /** Plain digits, or empty where nothing is known. */
    private static String written(OptionalDouble number) {
        return number.isEmpty() ? "" : Decimals.plain(BigDecimal.valueOf(number.getAsDouble()));
    }
}
