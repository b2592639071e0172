/**
 * What a beam does, from first principles: its spectrum, its half-value layers, the air kerma at one metre, the backscatter at the
 * skin and the signal at the receptor behind a patient. The trade's rules of thumb are graded against it, a chart is checked
 * with it, and it stands in where a tube has no measured output. {@link wallchart.physics.BeamPhysics} is the door.
 *
 * <p>May use {@code quantity}, the JDK and Caffeine (bounded caches); no database, no clock, no I/O after the tables are read.
 *
 * <p>The decision that shaped it: the tungsten-target model of Tucker, Barnes and Chakraborty (Medical Physics 18:211, 1991) on
 * 1 keV bins, with tables beside it that name their source, rather than fitted polynomials: every number can be traced, and one
 * spectrum serves output, filtration, half-value layer and receptor alike. Inside the package a {@code PerEnergy} (one number per
 * 1 keV bin) is the currency.
 *
 * <p>Limits, to be told to whoever reads a result:
 *
 * <ul>
 *   <li>Constant potential, tungsten anode of 5 to 25 degrees, 40 to 150 kV, total filtration of 1.5 mm aluminium or more.
 *   <li>Uncalibrated: a real tube's output differs from the model's by some 25 % either way. Against the mean of a survey of about
 *       40 units (2015) the model is high: by 5-14 % at 3.5 mm Al, 19-29 % at 3.0 mm, 33-50 % at 2.5 mm. Say "uncalibrated" wherever it shows,
 *       or fit the model to the tube ({@link wallchart.physics.BeamPhysics#calibrate}): then 5 % within the measured tube voltages.
 *   <li>No heel effect; the same spectrum over the whole field.
 *   <li>A slab of water stands for the patient, up to 36 cm: no bone, no lung, no outline. One cm of soft tissue is about 0.98 cm of
 *       water, muscle 1.04, adipose 0.91, inflated lung 0.26, cortical bone 2.9 (at 60 keV).
 *   <li>The grid is aligned and has no covers; the only detector response is one CsI layer of 0.20 g/cm2.
 *   <li>Scatter by Monte Carlo: about 1 %, up to 3 % for narrow fields behind thick slabs. Below a factor of 1.05 between two
 *       predictions the model cannot tell them apart.
 * </ul>
 */
package wallchart.physics;
