package wallchart.web.request;

import com.fasterxml.jackson.databind.ObjectReader;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wallchart.chart.RowFields;
import wallchart.chart.RowKey;
import wallchart.quantity.Decimals;
import wallchart.web.view.Json;

/**
 * What an author sends while drafting: a row, or all named adjustments, as numbers and texts by the names of a chart file. What
 * they mean is for those to say who read rows.
 */
public final class EditBodies {

    /** More than any field of a chart holds. */
    private static final int LONGEST_FIELD = 1000;

    /** How an answer names what an author writes: adjustments are put as they were read, too. */
    private static final Map<String, String> AS_ANSWERED = Map.of("addKV", "addKv", "timesMAs", "timesMas");

    private static final ObjectReader ROW = Json.readerFor(WrittenFields.class);
    private static final ObjectReader ADJUSTMENTS = Json.readerFor(AdjustmentsBody.class);

    private EditBodies() {}

    /** All named adjustments as they are to be. */
    record AdjustmentsBody(List<WrittenFields> adjustments) {}

    /**
     * The fields of the row.
     *
     * @param key what the address says; its parts stand for those that the body leaves out
     */
    public static Map<String, String> row(Context ctx, RowKey key) {
        WrittenFields body = Bodies.readJson(ctx, ROW);
        var written = new LinkedHashMap<>(body.texts());
        var members = new Members();
        var named = written.remove("key");
        if (named != null && !named.equals(key.toString())) {
            members.wrong("/key", "is another than the address's: leave it out; the row moves by its other members");
        }
        check(members, "", new WrittenFields(written), RowFields.NAMES);
        members.refuseMistakes();
        var fields = new LinkedHashMap<>(texts(key));
        fields.putAll(written);
        return fields;
    }

    private static Map<String, String> texts(RowKey key) {
        return Map.of(
                "bodyPart", key.examination().bodyPart(),
                "projection", key.examination().projection(),
                "patientGroup", key.examination().patientGroup(),
                "support", key.examination().support().slug(),
                "bandFromCm", Decimals.plain(key.band().from().centimetres()),
                "bandToCm", Decimals.plain(key.band().to().centimetres()));
    }

    /** The fields of each adjustment, in their order. */
    public static List<Map<String, String>> adjustments(Context ctx) {
        AdjustmentsBody body = Bodies.readJson(ctx, ADJUSTMENTS);
        var members = new Members();
        if (body.adjustments() == null) {
            members.wrong("/adjustments", "must be the list of all adjustments; empty for none");
            members.refuseMistakes();
        }
        var given = body.adjustments().stream().map(EditBodies::asWritten).toList();
        for (int i = 0; i < given.size(); i++) {
            check(members, "/adjustments/" + i, given.get(i), RowFields.ADJUSTMENT_NAMES);
        }
        members.refuseMistakes();
        return given.stream().map(WrittenFields::texts).toList();
    }

    /** What stands there under both names keeps the answer's, and is refused for it. */
    private static WrittenFields asWritten(WrittenFields given) {
        if (given == null) {
            return null;
        }
        var texts = new LinkedHashMap<String, String>();
        given.texts().forEach((name, text) -> {
            var written = AS_ANSWERED.getOrDefault(name, name);
            texts.put(given.texts().containsKey(written) ? name : written, text);
        });
        return new WrittenFields(texts);
    }

    static void check(Members members, String at, WrittenFields given, List<String> names) {
        if (given == null) {
            members.wrong(at, "is null: leave it out, or fill it in");
            return;
        }
        given.texts().forEach((name, text) -> {
            var pointer = at + "/" + Parameters.echo(name).replace("~", "~0").replace("/", "~1");
            if (!names.contains(name)) {
                members.wrong(pointer, "there is no such member: leave it out, or correct its name");
            } else if (!text.isEmpty()) {
                members.plainText(pointer, text, LONGEST_FIELD);
            }
        });
    }
}
