package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.quantity.AirKerma;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.Distance;
import wallchart.quantity.ElectricPower;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.FieldSize;
import wallchart.quantity.PartThickness;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;

class QuantityColumnsTest extends OnEveryDatabase {

    @Test
    void a_quantity_comes_back_equal_whatever_scale_its_column_has() {
        same(TubeVoltage.kilovolts("62.5"), TubeVoltage.class, "NUMERIC(6,3)");
        same(TubeCurrent.milliamperes("250"), TubeCurrent.class, "NUMERIC(6,1)");
        same(CurrentTimeProduct.milliampereSeconds("1.6"), CurrentTimeProduct.class, "NUMERIC(9,4)");
        same(ExposureTime.milliseconds("6.25"), ExposureTime.class, "NUMERIC(9,3)");
        same(PartThickness.centimetres("12.4"), PartThickness.class, "NUMERIC(5,2)");
        same(Distance.centimetres("111.76"), Distance.class, "NUMERIC(9,4)");
        same(ElectricPower.kilowatts("32"), ElectricPower.class, "NUMERIC(9,3)");
        same(new AirKerma(123.456789), AirKerma.class, "DOUBLE PRECISION");
        same(FieldSize.parse("35x43"), FieldSize.class, "VARCHAR(20)");
        same(LocalDate.of(2027, 1, 31), LocalDate.class, "DATE");
    }

    @Test
    void a_quantity_that_is_absent_goes_in_and_comes_out_as_null() {
        assertThat(database().<Boolean>read(tx -> tx.handle()
                        .createQuery("SELECT CAST(:absent AS NUMERIC(6,1)) IS NULL")
                        .bindByType("absent", null, TubeVoltage.class)
                        .mapTo(Boolean.class)
                        .one()))
                .isTrue();
        assertThat(database().<TubeVoltage>read(tx -> tx.handle()
                        .createQuery("SELECT CAST(NULL AS NUMERIC(6,1))")
                        .mapTo(TubeVoltage.class)
                        .one()))
                .isNull();
    }

    /** Clocks in Helsinki go back at 01:00 UTC on 2026-10-25: 03:30 there names two instants. */
    @ParameterizedTest
    @ValueSource(strings = {"2026-10-25T00:30:00.123456Z", "2026-10-25T01:30:00Z", "2026-03-29T00:30:00Z"})
    void an_instant_survives_the_night_the_clocks_change(String text) {
        var instant = Instant.parse(text);
        var usual = TimeZone.getDefault();
        TimeZone.setDefault(TimeZone.getTimeZone("Europe/Helsinki"));
        try {
            same(instant, Instant.class, "TIMESTAMP WITH TIME ZONE");
        } finally {
            TimeZone.setDefault(usual);
        }
    }

    private <Q> void same(Q quantity, Class<Q> type, String column) {
        var back = database().<Q>read(tx -> {
            tx.handle().execute("SET TIME ZONE 'Europe/Helsinki'");
            return tx.handle()
                    .createQuery("SELECT CAST(:quantity AS " + column + ")")
                    .bind("quantity", quantity)
                    .mapTo(type)
                    .one();
        });
        assertThat(back).isEqualTo(quantity);
    }
}
