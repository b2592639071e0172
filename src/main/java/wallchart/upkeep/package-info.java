/**
 * A room's equipment kept true to what stands in the room: the medical physicist enters a measurement or a replacement, sees first what
 * it does to the charts, answers for values that look wrong, and leaves a revision with its reason.
 *
 * <p>What is entered is worked out against the revision that the physicist saw, outside of any transaction; {@link
 * wallchart.equipment.Rooms#replace} then compares and sets. So of two who saw the same revision one wins, and what the event says
 * about the charts was computed for exactly the two states that it lies between.
 */
package wallchart.upkeep;
