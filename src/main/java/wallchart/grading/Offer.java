package wallchart.grading;

import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.TubeVoltage;

/**
 * A setting that gives the receptor as much for less kerma at the skin: to be weighed by people, never an order.
 *
 * @param kV a station
 * @param mAs the nearest station
 * @param grid id, or {@code none}
 * @param savedPercent entrance air kerma saved, before rounding to stations
 * @param text row, thickness, setting, saving and what the image pays for it
 */
public record Offer(TubeVoltage kV, CurrentTimeProduct mAs, String grid, double savedPercent, String text) {}
