package wallchart.store;

import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.Function;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.argument.Argument;
import org.jdbi.v3.core.argument.ArgumentFactory;
import org.jdbi.v3.core.argument.NullArgument;
import org.jdbi.v3.core.config.ConfigRegistry;
import wallchart.quantity.AirKerma;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.Distance;
import wallchart.quantity.ElectricPower;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.FieldSize;
import wallchart.quantity.PartThickness;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;

/**
 * How a quantity, an instant and a date stand in a column: numeric for what people set (the constructor fixes the scale, so
 * a stored 12.50 equals 12.5), double precision for what physics computes, {@code 24x30} for a field size.
 *
 * <p>Instants go in and come out as UTC offset date-times: a {@code java.sql.Timestamp} would pass through the zone of the
 * machine and lose an hour when clocks go back.
 */
final class QuantityColumns {

    private QuantityColumns() {}

    static void register(Jdbi jdbi) {
        decimal(jdbi, TubeVoltage.class, TubeVoltage::new, TubeVoltage::kilovolts);
        decimal(jdbi, TubeCurrent.class, TubeCurrent::new, TubeCurrent::milliamperes);
        decimal(jdbi, CurrentTimeProduct.class, CurrentTimeProduct::new, CurrentTimeProduct::milliampereSeconds);
        decimal(jdbi, ExposureTime.class, ExposureTime::new, ExposureTime::milliseconds);
        decimal(jdbi, PartThickness.class, PartThickness::new, PartThickness::centimetres);
        decimal(jdbi, Distance.class, Distance::new, Distance::centimetres);
        decimal(jdbi, ElectricPower.class, ElectricPower::new, ElectricPower::kilowatts);
        column(jdbi, AirKerma.class, Types.DOUBLE, Double.class, AirKerma::new, AirKerma::micrograys);
        column(jdbi, FieldSize.class, Types.VARCHAR, String.class, FieldSize::parse, FieldSize::toString);
        column(jdbi, LocalDate.class, Types.DATE, LocalDate.class, date -> date, date -> date);
        column(
                jdbi,
                Instant.class,
                Types.TIMESTAMP_WITH_TIMEZONE,
                OffsetDateTime.class,
                OffsetDateTime::toInstant,
                instant -> instant.atOffset(ZoneOffset.UTC));
    }

    private static <Q> void decimal(
            Jdbi jdbi, Class<Q> quantity, Function<BigDecimal, Q> in, Function<Q, BigDecimal> out) {
        column(jdbi, quantity, Types.NUMERIC, BigDecimal.class, in, out);
    }

    private static <Q, C> void column(
            Jdbi jdbi, Class<Q> type, int sqlType, Class<C> stored, Function<C, Q> in, Function<Q, C> out) {
        jdbi.registerColumnMapper(type, (rows, column, context) -> {
            var value = rows.getObject(column, stored);
            return value == null ? null : in.apply(value);
        });
        jdbi.registerArgument(new PreparedFor<>(type, value -> bound(value, sqlType, out)));
    }

    private static <Q> Argument bound(Q value, int sqlType, Function<Q, ?> out) {
        return value == null
                ? new NullArgument(sqlType)
                : (position, statement, context) -> statement.setObject(position, out.apply(value), sqlType);
    }

    /** Jdbi asks factories of this kind first, and has one of its own that binds an instant as a local timestamp. */
    private record PreparedFor<Q>(Class<Q> type, Function<Q, Argument> binding) implements ArgumentFactory.Preparable {

        @Override
        public Optional<Function<Object, Argument>> prepare(Type asked, ConfigRegistry config) {
            return asked.equals(type) ? Optional.of(value -> binding.apply(type.cast(value))) : Optional.empty();
        }

        @Override
        public Optional<Argument> build(Type asked, Object value, ConfigRegistry config) {
            return prepare(asked, config).map(prepared -> prepared.apply(value));
        }
    }
}
